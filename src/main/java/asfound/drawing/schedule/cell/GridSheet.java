package asfound.drawing.schedule.cell;

import asfound.drawing.page.Rule;
import asfound.drawing.page.Rules;
import asfound.drawing.page.Sheet;
import asfound.drawing.page.Word;
import asfound.drawing.schedule.text.WholeNumbers;
import asfound.model.Box;
import asfound.model.Place;
import asfound.recordset.Grid;
import asfound.recordset.GridRow;
import asfound.recordset.MergedCells.Area;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeMap;

/**
 * Lays the cells of a table or worksheet out as a ruled page, so that the one way of reading pages reads them too. A unit
 * is a point; only the order and the neighbourhood of cells count, not the sizes.
 */
final class GridSheet {

    private static final double LETTER = 5;
    private static final double SIZE = 8;
    private static final double LINE = 10;
    private static final int WIDEST = 60;

    private final Grid grid;
    private final double[] x;
    private final double[] y;
    private final int[] numbers;
    /** The rows' numbers as they would be if each took one line; blank rows are counted, and are no rows of the grid. */
    private final int[] levels;

    private final int columns;
    private final Map<Integer, Integer> rowOf = new HashMap<>();
    /** By the key of their first cell, in order: what is laid out must not hang on an order of hashes. */
    private final Map<Long, Area> joined = new TreeMap<>();

    /** By column, the rows whose numbers are whole. */
    private final List<Set<Integer>> whole = new ArrayList<>();

    private final Set<Long> inside = new HashSet<>();

    private GridSheet(Grid grid, List<Area> areas, NavigableSet<Integer> leftOut) {
        this.grid = grid;
        columns = grid.rows().stream().mapToInt(r -> r.cells().size()).max().orElse(0);
        numbers = new int[grid.rows().size()];
        levels = new int[numbers.length];
        for (int r = 0; r < numbers.length; r++) {
            numbers[r] = grid.rows().get(r).number();
            rowOf.put(numbers[r], r);
        }
        for (int r = 1; r < numbers.length; r++) levels[r] = levels[r - 1] + step(r, leftOut);
        for (Area a : areas) join(a);
        for (int c = 0; c < columns; c++) whole.add(WholeNumbers.of(grid, c));
        x = new double[columns + 1];
        y = new double[numbers.length + 1];
        measure();
    }

    static Sheet of(Grid grid, List<Area> areas) {
        NavigableSet<Integer> leftOut = RepeatedHeadings.of(grid);
        List<GridRow> rows =
                grid.rows().stream().filter(r -> !leftOut.contains(r.number())).toList();
        return new GridSheet(new Grid(grid.file(), grid.sheet(), rows), areas, leftOut).sheet();
    }

    /** By how many lines a row stands below the one before; over headings that come again the rows go on. */
    private int step(int r, NavigableSet<Integer> leftOut) {
        int above = numbers[r - 1], own = numbers[r];
        Integer between = leftOut.higher(above);
        if (between != null && between < own) return 1;
        return Math.max(1, own - above - furtherLines(grid.rows().get(r - 1)));
    }

    /** A row of a text takes as many lines more as its cells have breaks; one of a workbook takes none. */
    private int furtherLines(GridRow row) {
        if (!grid.sheet().isEmpty()) return 0;
        return (int) row.cells().stream()
                .mapToLong(c -> c.chars().filter(ch -> ch == '\n').count())
                .sum();
    }

    private void join(Area a) {
        if ((long) (a.lastRow() - a.firstRow() + 1) * (a.lastColumn() - a.firstColumn() + 1) > 20_000) return;
        Integer top = rowOf.get(a.firstRow());
        if (top == null) return;
        int bottom = top;
        while (bottom + 1 < numbers.length && numbers[bottom + 1] <= a.lastRow()) bottom++;
        joined.put(
                key(top, a.firstColumn()),
                new Area(top, a.firstColumn(), bottom, Math.min(a.lastColumn(), columns - 1)));
        for (int r = top; r <= bottom; r++)
            for (int c = a.firstColumn(); c <= a.lastColumn() && c < columns; c++)
                if (r != top || c != a.firstColumn()) inside.add(key(r, c));
    }

    private static long key(int row, int column) {
        return (long) row * 4096 + column;
    }

    private void measure() {
        int[] width = new int[columns];
        for (int r = 0; r < numbers.length; r++) {
            int lines = 1;
            for (int c = 0; c < columns; c++) {
                String[] text = lines(r, c);
                Area area = joined.get(key(r, c));
                if (area == null || area.lastRow() == r) lines = Math.max(lines, text.length);
                if (area == null || area.lastColumn() == c)
                    for (String line : text) width[c] = Math.max(width[c], Math.min(WIDEST, line.length()));
            }
            double above = r > 0 ? Math.min(4, levels[r] - levels[r - 1] - 1) * (LINE + 4) : 0;
            if (r == 0) y[0] = 20;
            else y[r] += above;
            y[r + 1] = y[r] + lines * LINE + 4;
        }
        for (Area area : joined.values()) widen(area, width);
        x[0] = 20;
        for (int c = 0; c < columns; c++) x[c + 1] = x[c] + (width[c] + 3) * LETTER;
    }

    /** What stands in joined cells fits into them together, so that it does not run into the cells beside. */
    private void widen(Area area, int[] width) {
        int columns = area.lastColumn() - area.firstColumn() + 1, room = 3 * (columns - 1);
        for (int c = area.firstColumn(); c <= area.lastColumn(); c++) room += width[c];
        int longest = 0;
        for (String line : lines(area.firstRow(), area.firstColumn())) longest = Math.max(longest, line.length());
        int lacking = Math.min(WIDEST, longest) - room;
        if (columns > 0 && lacking > 0)
            for (int c = area.firstColumn(); c <= area.lastColumn(); c++) width[c] += (lacking + columns - 1) / columns;
    }

    private String[] lines(int r, int c) {
        String written = grid.rows().get(r).cell(c);
        String cell = whole.get(c).contains(r) ? WholeNumbers.plain(written) : written;
        return cell.isBlank() ? new String[0] : cell.strip().split("\\s*\\R\\s*");
    }

    private Sheet sheet() {
        GridRegions regions = GridRegions.of(levels, filled());
        List<Word> words = new ArrayList<>();
        List<Rule> across = new ArrayList<>(), down = new ArrayList<>();
        for (int r = 0; r < numbers.length; r++)
            for (int c = 0; c < columns; c++) {
                if (inside.contains(key(r, c))) continue;
                Area area = joined.getOrDefault(key(r, c), new Area(r, c, r, c));
                double left = x[c], right = x[area.lastColumn() + 1], top = y[r], bottom = foot(area.lastRow());
                if (regions.hold(r, c)) {
                    across.add(new Rule(top, left, right));
                    across.add(new Rule(bottom, left, right));
                    down.add(new Rule(left, top, bottom));
                    down.add(new Rule(right, top, bottom));
                }
                // in cells joined over several rows at the first of them, as the row that the text belongs to
                write(lines(r, c), left, top, area.lastRow() > r ? foot(r) : bottom, words);
            }
        double width = columns == 0 ? 0 : x[columns] + 20;
        double height = numbers.length == 0 ? 0 : y[numbers.length] + 20;
        return new Sheet(width, height, words, Rules.joined(across), Rules.joined(down), this::place);
    }

    /** Which cells hold something, those that are joined to such a one among them. */
    private boolean[][] filled() {
        boolean[][] filled = new boolean[numbers.length][columns];
        for (int r = 0; r < numbers.length; r++)
            for (int c = 0; c < columns; c++) {
                if (grid.rows().get(r).cell(c).isBlank()) continue;
                Area area = joined.getOrDefault(key(r, c), new Area(r, c, r, c));
                for (int i = r; i <= area.lastRow(); i++)
                    for (int k = c; k <= area.lastColumn(); k++) filled[i][k] = true;
            }
        return filled;
    }

    private double foot(int r) {
        GridRow row = grid.rows().get(r);
        int lines = 1;
        for (int c = 0; c < row.cells().size(); c++)
            if (!joined.containsKey(key(r, c)) || joined.get(key(r, c)).lastRow() == r)
                lines = Math.max(lines, lines(r, c).length);
        return y[r] + lines * LINE + 4;
    }

    private static void write(String[] lines, double left, double top, double bottom, List<Word> words) {
        double first = Math.max(top + 2, (top + bottom) / 2 - lines.length * LINE / 2);
        for (int i = 0; i < lines.length; i++) {
            double at = left + 3;
            for (String word : lines[i].split("\\s+")) {
                double width = word.length() * LETTER * 0.9;
                words.add(new Word(word, new Box(at, first + i * LINE + 1, width, SIZE), SIZE, true));
                at += width + 0.3 * SIZE;
            }
        }
    }

    private Place place(Box box) {
        int r = 0;
        while (r + 1 < numbers.length && y[r + 1] <= box.y() + 0.5) r++;
        return Place.row(grid.file(), grid.sheet(), numbers.length == 0 ? 1 : numbers[r]);
    }
}
