package asfound.recordset;

import asfound.model.Place;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.dhatim.fastexcel.reader.SheetVisibility;

/** Reads the sheets of an Office Open XML workbook as raw cells. */
final class WorkbookGrids {

    private final Source source;
    private final Limits limits;
    private final ProblemList problems;
    private final Instant deadline;

    private WorkbookGrids(Source source, Limits limits) {
        this.source = source;
        this.limits = limits;
        this.problems = new ProblemList(source.file());
        this.deadline = Instant.now().plus(limits.fileTime());
    }

    static GridReading read(Source source, Limits limits) throws IOException {
        WorkbookGrids reading = new WorkbookGrids(source, limits);
        List<Grid> grids = reading.grids();
        return new GridReading(grids, reading.problems.all());
    }

    private List<Grid> grids() throws IOException {
        Optional<WorkbookGuard.Refusal> refusal = WorkbookGuard.check(source.path(), limits, deadline);
        if (refusal.isPresent()) {
            problems.add(refusal.get().message(), refusal.get().remedy());
            return List.of();
        }
        List<Grid> grids = new ArrayList<>();
        try (InputStream in = Files.newInputStream(source.path());
                ReadableWorkbook workbook = new ReadableWorkbook(in, new ReadingOptions(isStyled(), true))) {
            for (Iterator<Sheet> sheets = workbook.getSheets().iterator(); sheets.hasNext(); ) {
                Sheet sheet = sheets.next();
                if (sheet.getVisibility() == SheetVisibility.VISIBLE) grids.add(grid(sheet));
                else
                    problems.add(
                            "The sheet " + sheet.getName() + " is hidden and was not read.",
                            "Show it in the spreadsheet program if it belongs to the records.");
            }
        } catch (RuntimeException damaged) {
            problems.add(
                    "The workbook could not be read: " + reason(damaged) + ".",
                    "Open it in a spreadsheet program, save it again as .xlsx, or export its sheets as CSV.");
        }
        if (problems.all().isEmpty() && grids.stream().allMatch(g -> g.rows().isEmpty()))
            problems.add("No sheet of the workbook holds any text.", "Check that the file is the right one.");
        return grids;
    }

    /** Styles are an optional part (ECMA-376-1, 12.3.20), and the library takes cells' formats from nowhere else. */
    private boolean isStyled() throws IOException {
        try (ZipFile zip = new ZipFile(source.path().toFile())) {
            return zip.stream()
                    .anyMatch(part -> part.getName().toLowerCase(Locale.ROOT).endsWith("/styles.xml"));
        }
    }

    private static String reason(Throwable damaged) {
        Throwable root = damaged;
        while (root.getCause() != null) root = root.getCause();
        String message = root.getMessage();
        return message == null
                ? root.getClass().getSimpleName()
                : message.lines().findFirst().orElse("").strip();
    }

    private Grid grid(Sheet sheet) throws IOException {
        List<GridRow> rows = new ArrayList<>();
        int number = 0;
        try (Stream<Row> stream = sheet.openStream()) {
            for (Iterator<Row> all = stream.iterator(); all.hasNext(); ) {
                Row row = all.next();
                // a row need not tell its number (ECMA-376-1, 18.3.1.73): it then follows the row before
                number = Math.max(number + 1, row.getRowNum());
                Place place = Place.row(source.file(), sheet.getName(), number);
                boolean tooMany = rows.size() >= limits.rows();
                if (tooMany || Instant.now().isAfter(deadline)) {
                    problems.add(
                            "sheets cut short",
                            place,
                            (tooMany
                                            ? "The sheet is longer than the limit of " + limits.rows() + " rows"
                                            : "The workbook takes longer than "
                                                    + limits.fileTime().toSeconds() + " s, the limit for one file")
                                    + "; from this row on it was not read.",
                            "Split the file, or " + (tooMany ? Limit.ROWS : Limit.FILE_SECONDS).raise() + ".");
                    break;
                }
                GridRow cells = new GridRow(number, cells(row, place));
                if (!cells.isBlank()) rows.add(cells);
            }
        } catch (RuntimeException damaged) {
            int last = rows.isEmpty() ? 0 : rows.get(rows.size() - 1).number();
            problems.add(
                    "damaged sheets",
                    Place.row(source.file(), sheet.getName(), last + 1),
                    "The sheet could not be read from here on: " + reason(damaged) + ".",
                    "Open the workbook in a spreadsheet program and save it again.");
        }
        return new Grid(source.file(), sheet.getName(), rows);
    }

    private List<String> cells(Row row, Place place) {
        List<String> cells = new ArrayList<>();
        for (int c = 0; c < row.getCellCount(); c++) {
            if (c >= limits.columns()) {
                problems.add(
                        "rows past the most columns",
                        place,
                        "The row has more than " + limits.columns() + " columns; the further ones were not read.",
                        "Remove what is not needed, or " + Limit.COLUMNS.raise() + ".");
                break;
            }
            String text = row.hasCell(c) ? Unshowable.replaced(text(row.getCell(c)), place, problems) : "";
            if (text.length() > limits.fieldChars()) {
                problems.add(
                        "fields that are too long",
                        place,
                        "A field has " + text.length() + " characters; only the first " + limits.fieldChars()
                                + " were read.",
                        "Shorten it, or " + Limit.FIELD_CHARS.raise() + ".");
                text = text.substring(0, limits.fieldChars());
            }
            cells.add(text);
        }
        return cells;
    }

    private static String text(Cell cell) {
        if (cell == null || cell.getType() == CellType.EMPTY) return "";
        if (cell.getType() == CellType.NUMBER) return number(cell);
        String text = cell.getType() == CellType.STRING ? cell.asString() : cell.getRawValue();
        return text == null ? "" : text.replace("\0", "");
    }

    /** A number as people write it: 7 and not 7.0, and a day where the cell is formatted as one. */
    private static String number(Cell cell) {
        if (isDay(cell.getDataFormatString()))
            return cell.asDate().toLocalDate().toString();
        return cell.asNumber().stripTrailingZeros().toPlainString();
    }

    private static boolean isDay(String format) {
        if (format == null) return false;
        String bare = format.replaceAll("\"[^\"]*\"|\\[[^]]*]|\\\\.", "").toLowerCase(Locale.ROOT);
        boolean month = bare.contains("m");
        return bare.contains("y") && (bare.contains("d") || month) || bare.contains("d") && month;
    }
}
