package asfound.drawing.schedule.row;

import asfound.drawing.page.Sheet;
import asfound.drawing.page.Word;
import asfound.drawing.schedule.column.Column;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.table.LoadsByKind;
import asfound.drawing.schedule.table.LoadsInTurn;
import asfound.drawing.schedule.table.Side;
import asfound.drawing.schedule.text.FrameAndTrip;
import asfound.drawing.schedule.text.Role;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Puts what stands in a side's columns to its rows. */
public final class RowReader {

    private final Side side;
    private final List<Side> all;
    private final List<Row> rows;
    private final double bottom;
    private final ColumnLines columns;
    private final Cells cells;
    private final Brackets brackets;
    private final List<Leftover> strays = new ArrayList<>();

    /** @param all the sides of the table, this one among them */
    public RowReader(Sheet sheet, Phrases phrases, Side side, List<Side> all, double top) {
        this.side = side;
        this.all = all;
        rows = RowLattice.rows(sheet, phrases, side, all, top);
        double first = Math.min(top, rows.get(0).y() - 0.6 * side.spine().size());
        bottom = LastRow.bottom(sheet, phrases, side, all, rows);
        columns = new ColumnLines(sheet, phrases, side, first, bottom);
        cells = new Cells(sheet, side, rows, first, bottom);
        brackets = new Brackets(sheet, side, rows);
    }

    public List<Row> read() {
        List<Column> kinds = LoadsByKind.parts(side);
        side.roles().forEach((role, column) -> {
            if (role == Role.LOAD && !kinds.isEmpty()) placeSums(kinds);
            else place(role, column);
        });
        DevicesInWords.part(side, rows);
        return rows;
    }

    /** Text of a column that no row took. */
    public List<Leftover> strays() {
        return strays;
    }

    /** The words that stand in some cell or were told as strays. */
    public Set<Word> taken() {
        return columns.taken();
    }

    public double bottom() {
        return bottom;
    }

    /** Of loads by their kinds, what stands in a row is its load: {@code 700 + 480}. */
    private void placeSums(List<Column> kinds) {
        Map<Row, Row.Cell> sums = new LinkedHashMap<>();
        for (Column kind : kinds) {
            place(Role.LOAD, kind);
            for (Row row : rows) {
                Optional<Row.Cell> own = row.take(Role.LOAD);
                own.filter(Row.Cell::says).ifPresent(cell -> sums.merge(row, cell, Row.Cell::plus));
            }
        }
        sums.forEach((row, cell) -> row.replace(Role.LOAD, cell));
    }

    /** Of a column that is the other side's too, what stands on this side's rows. */
    private void placeLevel(Role role, List<ColumnLines.Line> lines, List<Double> others) {
        double near = LoadsInTurn.LEVEL * side.spine().size();
        for (ColumnLines.Line line : lines) {
            Optional<Row> own = rows.stream()
                    .filter(r -> r.token().isPresent() && Math.abs(r.y() - line.y()) < near)
                    .findFirst();
            Row.Cell cell = new Row.Cell(line.text(), line.text(), line.box(), 0);
            boolean theirs = others.stream().anyMatch(y -> Math.abs(y - line.y()) < near);
            if (own.isPresent() && line.struck()) own.get().putStruck(role, cell);
            else if (own.isPresent()) own.get().put(role, cell);
            else if (!theirs) strays.add(new Leftover(line.text(), line.box()));
        }
    }

    private void place(Role role, Column column) {
        List<ColumnLines.Line> lines = columns.in(role, column);
        if (role.isLoad() && all.size() == 2) {
            List<Double> others = LoadsInTurn.levelsOfOthers(side, column, all);
            if (!others.isEmpty()) {
                placeLevel(role, lines, others);
                return;
            }
        }
        Cells.Bounds bounds = cells.bounds(column);
        // where each row has a cell of its own, the cells tell
        Alignment alignment = bounds.cells() >= rows.size() ? Alignment.MIDDLE : cells.alignment(lines);
        // each pole has its own load
        boolean device = !role.isLoad() && role != Role.PHASE;
        boolean rating = role == Role.RATING || role == Role.DEVICE;
        Map<Row, List<Row.Cell>> struck = new LinkedHashMap<>();
        for (ColumnLines.Line line : lines) {
            Optional<Cells.Range> own = (device ? brackets.of(line, lines) : cells.beside(line, lines, bounds))
                    .or(() -> cells.rows(line.y(), bounds, alignment));
            String text = rating ? FrameAndTrip.trip(column.heading(), line.text()) : line.text();
            if (own.isPresent()) {
                Row row = rows.get(own.get().first());
                Row.Cell cell =
                        new Row.Cell(text, line.text(), line.box(), own.get().further());
                if (line.struck())
                    struck.computeIfAbsent(row, r -> new ArrayList<>()).add(cell);
                else row.put(role, cell);
            } else strays.add(new Leftover(line.text(), line.box()));
        }
        struck.forEach((row, old) -> old.forEach(cell -> row.putStruck(role, cell)));
    }
}
