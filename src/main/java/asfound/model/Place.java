package asfound.model;

import java.util.Comparator;
import java.util.Optional;

/**
 * Where a value stands, so that a person can lay a finger on it. {@code file} is relative to the record set, with
 * forward slashes on every system.
 */
public sealed interface Place extends Comparable<Place> {

    String file();

    /** A whole file. */
    record InFile(String file) implements Place {}

    /**
     * A page of a drawing.
     *
     * @param page the page's number, from 1
     * @param area where on the page, if known
     */
    record OnPage(String file, int page, Optional<Box> area) implements Place {}

    /**
     * A row of a table.
     *
     * @param sheet the sheet of a workbook; empty for a plain table
     * @param row the row's number as a spreadsheet or editor shows it, from 1, title and header rows counted
     */
    record InRow(String file, String sheet, int row) implements Place {}

    static Place file(String file) {
        return new InFile(file);
    }

    static Place page(String file, int page) {
        return new OnPage(file, page, Optional.empty());
    }

    static Place page(String file, int page, Box area) {
        return new OnPage(file, page, Optional.of(area));
    }

    static Place row(String file, int row) {
        return new InRow(file, "", row);
    }

    static Place row(String file, String sheet, int row) {
        return new InRow(file, sheet, row);
    }

    /** The page's number where this is on a page; 1 for a table or a whole file. */
    default int pageNumber() {
        return this instanceof OnPage p ? p.page() : 1;
    }

    /** The row's number where this is a row; 0 otherwise. */
    default int rowNumber() {
        return this instanceof InRow r ? r.row() : 0;
    }

    /** The place in words without the file: {@code page 3}, {@code row 12}, {@code sheet LP, row 4}; empty for a file. */
    default String within() {
        if (this instanceof OnPage p) return "page " + p.page();
        if (this instanceof InRow r) return (r.sheet().isEmpty() ? "" : "sheet " + r.sheet() + ", ") + "row " + r.row();
        return "";
    }

    /** The place in words: {@code drawings/LP.pdf, page 3}. */
    default String inWords() {
        return within().isEmpty() ? file() : file() + ", " + within();
    }

    Comparator<Place> ORDER = Comparator.comparing((Place p) -> p.file())
            .thenComparing(p -> p instanceof InRow r ? r.sheet() : "")
            .thenComparingInt(p -> p instanceof OnPage o ? o.page() : p.rowNumber())
            .thenComparingDouble(
                    p -> p instanceof OnPage o ? o.area().map(Box::y).orElse(-1.0) : 0)
            .thenComparingDouble(
                    p -> p instanceof OnPage o ? o.area().map(Box::x).orElse(-1.0) : 0);

    @Override
    default int compareTo(Place other) {
        return ORDER.compare(this, other);
    }
}
