package asfound.drawing.schedule.sample;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** A worksheet or text table that is being filled in. Rows and columns are counted from 0. */
final class GridPaper {

    /** @param figure whether a spreadsheet would keep it as a number */
    record Cell(String text, boolean figure, boolean struck, Optional<LocalDate> day) {

        Cell(String text, boolean figure, boolean struck) {
            this(text, figure, struck, Optional.empty());
        }
    }

    /** Cells that are one. */
    record Joined(int top, int left, int bottom, int right) {}

    private final String name;
    private final TreeMap<Integer, TreeMap<Integer, Cell>> rows = new TreeMap<>();
    private final List<Joined> joined = new ArrayList<>();
    private final Set<Integer> hiddenRows = new TreeSet<>();
    private final Set<Integer> hiddenColumns = new TreeSet<>();
    private final Map<Integer, Set<Integer>> positions = new TreeMap<>();
    private final Map<Integer, Integer> lines = new TreeMap<>();

    GridPaper(String name) {
        this.name = name;
    }

    String name() {
        return name;
    }

    void text(int row, int column, String text) {
        put(row, column, new Cell(text, false, false));
    }

    void figure(int row, int column, String text) {
        put(row, column, new Cell(text, true, false));
    }

    private void put(int row, int column, Cell cell) {
        if (cell.text().isEmpty()) return;
        rows.computeIfAbsent(row, r -> new TreeMap<>()).put(column, cell);
    }

    void day(int row, int column, LocalDate day) {
        put(row, column, new Cell(day.toString(), false, false, Optional.of(day)));
    }

    void strike(int row, int column) {
        Cell cell = cell(row, column);
        if (cell != null) put(row, column, new Cell(cell.text(), cell.figure(), true, cell.day()));
    }

    void join(int top, int left, int bottom, int right) {
        if (top < bottom || left < right) joined.add(new Joined(top, left, bottom, right));
    }

    void hideRow(int row) {
        hiddenRows.add(row);
    }

    void hideColumn(int column) {
        hiddenColumns.add(column);
    }

    /** Remembers that a position is drawn in a row, for what is said of rows. */
    void stands(int row, int position) {
        positions.computeIfAbsent(row, r -> new HashSet<>()).add(position);
    }

    /** Remembers on which line of a text a row begins; both are counted from 0. */
    void begins(int row, int line) {
        lines.put(line, row);
    }

    /** @param line of a text; the row of a worksheet */
    Set<Integer> positionsIn(int line) {
        return positions.getOrDefault(lines.getOrDefault(line, line), Set.of());
    }

    Cell cell(int row, int column) {
        return rows.getOrDefault(row, new TreeMap<>()).get(column);
    }

    TreeMap<Integer, TreeMap<Integer, Cell>> rows() {
        return rows;
    }

    List<Joined> joined() {
        return joined;
    }

    Set<Integer> hiddenRows() {
        return hiddenRows;
    }

    Set<Integer> hiddenColumns() {
        return hiddenColumns;
    }

    int height() {
        return rows.isEmpty() ? 0 : rows.lastKey() + 1;
    }

    int width() {
        return rows.values().stream().mapToInt(r -> r.lastKey() + 1).max().orElse(0);
    }
}
