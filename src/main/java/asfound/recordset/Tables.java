package asfound.recordset;

import static java.util.stream.Collectors.joining;

import asfound.model.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds the tables in a file's raw cells: where the header stands and what its columns mean. */
public final class Tables {

    /** A header stands among the first rows of a sheet, below titles. */
    static final int HEADER_WITHIN = 60;

    private Tables() {}

    /**
     * Reads a survey, feeder or equipment table. Title rows above the header are passed over; a header that comes again
     * begins a new table. A missing column is a problem, and a table without a column that it needs is not given.
     */
    public static TableReading read(Source source, Settings settings, Limits limits) {
        GridReading reading = Grids.read(source, limits);
        ProblemList problems = new ProblemList(source.file());
        problems.addAll(reading.problems());
        List<Table> tables = new ArrayList<>();
        for (Grid grid : reading.grids()) tables.addAll(tables(grid, settings, problems));
        return new TableReading(tables, problems.all());
    }

    private static List<Table> tables(Grid grid, Settings settings, ProblemList problems) {
        List<Table> tables = new ArrayList<>();
        Table table = null;
        for (int i = 0; i < grid.rows().size(); i++) {
            GridRow row = grid.rows().get(i);
            Optional<Source.Kind> headed =
                    table == null || mayHead(row, table) ? Columns.headed(row, settings) : Optional.empty();
            if (headed.isPresent()) {
                table = table(grid, headed.get(), row, settings);
                tables.add(table);
                sayTwice(table, row, problems);
                sayUnknown(table, row, problems);
            } else if (table != null) {
                table.rows().add(row);
                checkLength(table, row, problems);
            } else if (i + 1 >= Math.min(HEADER_WITHIN, grid.rows().size())) {
                sayMissing(grid, settings, problems);
                return List.of();
            }
        }
        return tables;
    }

    /** Only a row that begins with a column's name can be a header once more. */
    private static boolean mayHead(GridRow row, Table table) {
        String first =
                row.cells().stream().filter(c -> !c.isBlank()).findFirst().orElse("");
        return first.length() <= 30 && Columns.isName(table.kind(), first);
    }

    private static Table table(Grid grid, Source.Kind kind, GridRow header, Settings settings) {
        List<String> columns = Columns.ours(kind, header.cells(), settings);
        return new Table(grid.file(), grid.sheet(), kind, columns, header.cells(), new ArrayList<>());
    }

    private static void sayTwice(Table table, GridRow header, ProblemList problems) {
        for (int i = 0; i < table.columns().size(); i++) {
            String cell = header.cell(i);
            if (cell.isBlank() || !table.columns().get(i).isEmpty()) continue;
            String meant = Columns.meant(table.kind(), cell);
            if (!meant.isEmpty() && table.has(meant))
                problems.add(
                        "columns of one meaning",
                        table.place(header),
                        "Two columns mean '" + meant + "': '"
                                + header.cell(table.columns().indexOf(meant)).strip() + "' was read, '" + cell.strip()
                                + "' was not.",
                        "Rename one of them, or name the right one under 'columns' in record.yaml.");
        }
    }

    /** A column's name may be a slip, and then all its values would be lost without a word. */
    private static void sayUnknown(Table table, GridRow header, ProblemList problems) {
        List<String> unknown = new ArrayList<>();
        boolean ofPlan =
                table.kind() == Source.Kind.SURVEY && header.cells().stream().anyMatch(Columns::isPlanRank);
        for (int i = 0; i < header.cells().size(); i++)
            if (!header.cell(i).isBlank()
                    && table.columns().get(i).isEmpty()
                    && Columns.meant(table.kind(), header.cell(i)).isEmpty()
                    && !(ofPlan && Columns.isOfPlan(header.cell(i)))) unknown.add(header.cell(i));
        if (!unknown.isEmpty())
            problems.add(
                    "tables with columns that are not known",
                    table.place(header),
                    (unknown.size() == 1
                                    ? "A column is not known and was not read: "
                                    : "Columns that are not known were not read: ")
                            + seen(new GridRow(header.number(), unknown)) + ".",
                    "Nothing need be done if they say nothing of the supply; else name them under 'columns' in record.yaml.");
    }

    private static void checkLength(Table table, GridRow row, ProblemList problems) {
        int columns = table.headers().size();
        boolean more = false;
        for (int i = columns; i < row.cells().size(); i++) more |= !row.cell(i).isBlank();
        if (more)
            problems.add(
                    "rows with too many fields",
                    table.place(row),
                    "The row has more fields than the " + columns + " columns of the header; its values may stand under"
                            + " the wrong ones.",
                    "Put a field that holds the delimiter in quotation marks.");
        if (row.cells().size() < columns && lacksNeeded(table, row))
            problems.add(
                    "rows with too few fields",
                    table.place(row),
                    "The row has " + row.cells().size() + " fields, fewer than the " + columns
                            + " columns of the header.",
                    "Complete the row; the missing fields were taken as blank.");
    }

    /** Spreadsheets leave blank fields at the end of a row out; only a row without its main fields is short. */
    private static boolean lacksNeeded(Table table, GridRow row) {
        int last = switch (table.kind()) {
            case SURVEY ->
                Math.max(
                        Math.max(
                                table.columns().indexOf("found"),
                                table.columns().indexOf("relation")),
                        table.columns().indexOf("method"));
            case FEEDERS -> table.columns().indexOf("to");
            default -> table.columns().indexOf("name");
        };
        return row.cells().size() <= last;
    }

    private static void sayMissing(Grid grid, Settings settings, ProblemList problems) {
        for (GridRow row :
                grid.rows().subList(0, Math.min(HEADER_WITHIN, grid.rows().size()))) {
            Optional<Source.Kind> nearly = Columns.nearlyHeaded(row, settings);
            if (nearly.isEmpty()) continue;
            String missing = Columns.missing(nearly.get(), Columns.ours(nearly.get(), row.cells(), settings)).stream()
                    .map(m -> "'" + m + "'")
                    .collect(joining(" and "));
            problems.add(
                    "tables without a needed column",
                    grid.place(row),
                    "The table has no column for " + missing + ". Its columns are: " + seen(row) + ".",
                    "Rename a column, or name it under 'columns' in record.yaml; the table was not read.");
            return;
        }
        problems.add(
                "tables that were not understood",
                grid.rows().isEmpty()
                        ? Place.file(grid.file())
                        : grid.place(grid.rows().get(0)),
                "No header row was found among the first rows. "
                        + (grid.rows().isEmpty()
                                ? "The table is empty."
                                : "The first row reads: " + seen(grid.rows().get(0)) + "."),
                "A survey needs the columns panel, circuit and found; a one-line needs from and to, or name and kind.");
    }

    /** The cells of a row as a list for a message, not longer than a person reads. */
    static String seen(GridRow row) {
        List<String> cells = row.cells().stream()
                .filter(c -> !c.isBlank())
                .map(c -> c.strip().replaceAll("\\p{Cntrl}", " "))
                .map(c -> c.length() > 40 ? c.substring(0, 40) + "…" : c)
                .toList();
        String shown = cells.stream().limit(20).collect(joining(", "));
        return cells.size() > 20 ? shown + " and " + (cells.size() - 20) + " more" : shown;
    }
}
