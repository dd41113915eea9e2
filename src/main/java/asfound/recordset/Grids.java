package asfound.recordset;

import asfound.model.Place;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a table file, text or workbook, as raw cells. */
public final class Grids {

    private Grids() {}

    /**
     * Reads a file's sheets as raw cells, title rows and all.
     *
     * @return what could be read, with the problems; never an exception for what stands in the file
     */
    public static GridReading read(Source source, Limits limits) {
        try {
            return source.kind() == Source.Kind.WORKBOOK || FileKinds.isZip(source.path())
                    ? WorkbookGrids.read(source, limits)
                    : text(source, limits, limits.rows());
        } catch (IOException gone) {
            ProblemList problems = new ProblemList(source.file());
            problems.add(Reasons.unreadable(gone), Reasons.CHECK_FILE);
            return new GridReading(List.of(), problems.all());
        }
    }

    /** The first rows of a text table; what is wrong with them is not reported here. */
    static Grid beginning(Source source, Limits limits, int rows) throws IOException {
        return text(source, limits, rows).grids().get(0);
    }

    private static GridReading text(Source source, Limits limits, int most) throws IOException {
        ProblemList problems = new ProblemList(source.file());
        List<GridRow> rows = new ArrayList<>();
        Instant deadline = Instant.now().plus(limits.fileTime());
        try (InputStream in = Files.newInputStream(source.path());
                TextLines lines = new TextLines(in, source.file(), limits, problems)) {
            DelimitedRows all = new DelimitedRows(lines, source.file(), limits, problems);
            for (Optional<GridRow> row = all.next(); row.isPresent(); row = all.next()) {
                if (rows.size() >= most || Instant.now().isAfter(deadline)) {
                    boolean tooMany = rows.size() >= most;
                    problems.add(
                            "tables cut short",
                            Place.row(source.file(), row.get().number()),
                            (tooMany
                                            ? "The table is longer than the limit of " + limits.rows() + " rows"
                                            : "The table takes longer than "
                                                    + limits.fileTime().toSeconds() + " s, the limit for one file")
                                    + "; from this row on it was not read.",
                            "Split the file, or " + (tooMany ? Limit.ROWS : Limit.FILE_SECONDS).raise() + ".");
                    break;
                }
                if (!row.get().isBlank()) rows.add(row.get());
            }
        }
        return new GridReading(List.of(new Grid(source.file(), "", rows)), problems.all());
    }
}
