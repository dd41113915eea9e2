package asfound.report.table;

import asfound.audit.Audit;
import asfound.finding.Severity;
import asfound.report.Cautions;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.stream.Stream;
import org.dhatim.fastexcel.Position;
import org.dhatim.fastexcel.StyleSetter;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * The correction list as a workbook that is worked through with a pen or on the screen: filters, a header that stays in
 * sight and is printed on every page, one page wide, a column for the tick.
 */
public final class CorrectionsWorkbook {

    /** In characters of the usual size; what is printed fits across a page at a size that can be read. */
    private static final Form CORRECTIONS =
            new Form(CorrectionRows.COLUMNS, 17, 9, 10, 9, 11, 18, 18, 10, 25, 20, 15, 9, 6, 22);

    private static final Form TO_BE_TOLD = new Form(TellRows.COLUMNS, 16, 9, 42, 24, 22, 22, 30, 6);

    private static final int SIZE = 9;
    /** Of a line of that size, and the most that a row can have, in points. */
    private static final double LINE = 12, TALLEST = 408;

    private static final int HEADER = 2;
    private static final int MOST_ROWS = Worksheet.MAX_ROWS - HEADER - 2;

    private CorrectionsWorkbook() {}

    /** The columns of a sheet; one for programs is hidden. */
    private record Form(List<String> columns, double... widths) {
        private static final String FOR_PROGRAMS = "box"; // a drafter has the marked drawing

        int last() {
            return columns.size() - 1;
        }

        /** How many columns are seen; the hidden one is the last. */
        int seen() {
            return columns.contains(FOR_PROGRAMS) ? last() : columns.size();
        }
    }

    /** Leaves {@code out} open. The same audit gives the same bytes. */
    public static void write(Audit audit, OutputStream out) throws IOException {
        ByteArrayOutputStream dated = new ByteArrayOutputStream();
        try (Workbook book = new Workbook(dated, "asfound", null)) {
            String building = audit.recordSet().building();
            sheet(
                    book,
                    "Corrections",
                    building + ": corrections to the drawings",
                    CORRECTIONS,
                    CorrectionRows.changes(audit));
            sheet(
                    book,
                    "Look first",
                    building + ": to be looked at before any change",
                    CORRECTIONS,
                    CorrectionRows.looks(audit));
            List<List<String>> accepted = CorrectionRows.accepted(audit);
            if (!accepted.isEmpty())
                sheet(book, "Accepted", building + ": accepted as they stand", CORRECTIONS, accepted);
            sheet(book, "To be told", building + ": who relies on what is corrected", TO_BE_TOLD, TellRows.of(audit));
            cautions(book);
        }
        SameZip.copy(dated.toByteArray(), out);
    }

    private static void sheet(Workbook book, String name, String title, Form form, List<List<String>> rows) {
        Worksheet sheet = book.newWorksheet(name);
        List<String> columns = form.columns();
        int last = form.last();
        for (int c = 0; c <= last; c++) sheet.width(c, form.widths()[c]);
        text(sheet, 0, 0, title + " (" + rows.size() + ")");
        sheet.style(0, 0).bold().fontSize(14).set();
        text(sheet, 1, 0, form == TO_BE_TOLD ? Cautions.TELL + " " + Cautions.SHORT : Cautions.SHORT);
        sheet.range(1, 0, 1, last).merge();
        sheet.range(1, 0, 1, last)
                .style()
                .bold()
                .wrapText(true)
                .verticalAlignment("top")
                .set();
        sheet.rowHeight(1, form == TO_BE_TOLD ? 58 : 32);
        for (int c = 0; c <= last; c++) text(sheet, HEADER, c, columns.get(c));
        sheet.range(HEADER, 0, HEADER, last)
                .style()
                .bold()
                .fontSize(SIZE)
                .wrapText(true)
                .verticalAlignment("top")
                .fillColor("E6E6E6")
                .borderStyle("thin")
                .set();
        sheet.rowHeight(HEADER, height(columns, form));
        int written = Math.min(rows.size(), MOST_ROWS);
        for (int r = 0; r < written; r++) row(sheet, HEADER + 1 + r, rows.get(r), form);
        if (rows.isEmpty()) text(sheet, HEADER + 1, 0, "None.");
        if (written < rows.size())
            text(
                    sheet,
                    HEADER + 1 + written,
                    0,
                    "A sheet holds no more: all " + rows.size() + " rows are in the .csv file.");
        if (written > 0) sheet.setAutoFilter(HEADER, 0, HEADER + written, last);
        sheet.freezePane(0, HEADER + 1);
        if (form.seen() <= last) sheet.hideColumn(last);
        print(sheet);
        sheet.repeatRows(HEADER);
    }

    private static void row(Worksheet sheet, int r, List<String> cells, Form form) {
        for (int c = 0; c < cells.size(); c++) text(sheet, r, c, cells.get(c));
        int severity = form.columns().indexOf("severity");
        boolean danger = cells.get(severity).equals(Severity.DANGER.word());
        for (int c = 0; c < cells.size(); c++) {
            StyleSetter style = sheet.style(r, c)
                    .fontSize(SIZE)
                    .wrapText(true)
                    .verticalAlignment("top")
                    .borderStyle("thin")
                    .borderColor("B0B0B0");
            if (danger && c == severity) style = style.bold();
            style.set();
        }
        sheet.rowHeight(r, height(cells, form));
    }

    /** Spreadsheets do not all find the height of wrapped text by themselves when they open or print a file. */
    private static double height(List<String> cells, Form form) {
        int lines = 1;
        for (int c = 0; c < form.seen(); c++)
            lines = Math.max(lines, lines(cells.get(c), (int) (form.widths()[c] * 11 / SIZE) - 2));
        return Math.min(TALLEST, lines * LINE + 3);
    }

    private static int lines(String text, int width) {
        int lines = 0;
        for (String line : text.split("\n", -1)) {
            lines++;
            int at = 0;
            for (String word : line.split(" ")) {
                if (at > 0 && at + 1 + word.length() > width) {
                    lines++;
                    at = 0;
                }
                lines += Math.max(0, word.length() - 1) / width;
                at += (at > 0 ? 1 : 0) + word.length();
            }
        }
        return lines;
    }

    private static void print(Worksheet sheet) {
        sheet.pageOrientation("landscape");
        sheet.setFitToPage(true);
        sheet.fitToWidth((short) 1);
        sheet.fitToHeight((short) 0);
        sheet.leftMargin(0.4f);
        sheet.rightMargin(0.4f);
        sheet.footer("Test for absence of voltage. Qualified persons only.", Position.LEFT, "Arial", 8);
        sheet.footer("Page &P of &N", Position.RIGHT, "Arial", 8);
    }

    private static void cautions(Workbook book) {
        Worksheet sheet = book.newWorksheet("Cautions");
        sheet.width(0, 110);
        int r = 0;
        for (String line :
                Stream.concat(Stream.of(Cautions.AGREES), Cautions.ALL.stream()).toList()) {
            text(sheet, r, 0, line);
            sheet.style(r++, 0).wrapText(true).verticalAlignment("top").set();
        }
        print(sheet);
    }

    /** Always as text: nothing that comes from a drawing is a number, a date or a formula to a spreadsheet. */
    private static void text(Worksheet sheet, int row, int column, String text) {
        if (!text.isEmpty()) sheet.value(row, column, CellLimit.fit(text));
    }
}
