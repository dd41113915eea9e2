package asfound.drawing.schedule.cell;

import asfound.drawing.schedule.phrase.PositionText;
import asfound.drawing.schedule.text.Headings;
import asfound.drawing.schedule.text.Role;
import asfound.drawing.schedule.text.Texts;
import asfound.model.Problem;
import asfound.recordset.Grid;
import asfound.recordset.GridRow;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Lists of positions that a spreadsheet has turned into something else while they were typed: {@code 1-3} into a day in
 * January, {@code 1,3} into the fraction 1.3 where a comma parts fractions, {@code 18,20} into 18.2. In a column headed as
 * positions they are put back; the rows are told, for that is not what the file says.
 */
final class ChangedPositions {

    private static final double HEADED = 0.8;
    private static final int NAMED = 8;
    private static final Pattern FRACTION = Pattern.compile("(\\d{1,2})\\.(\\d{1,2})");

    private final Grid grid;
    private final Map<Integer, Map<Integer, String>> changed = new HashMap<>();
    private final List<Integer> read = new ArrayList<>();
    private final List<Integer> unread = new ArrayList<>();
    private String first = "";
    private String lost = "";

    private ChangedPositions(Grid grid) {
        this.grid = grid;
        int columns = grid.rows().stream().mapToInt(r -> r.cells().size()).max().orElse(0);
        for (int c = 0; c < columns; c++) column(c);
    }

    static ChangedPositions of(Grid grid) {
        return new ChangedPositions(grid);
    }

    /** The cells with their positions put back. */
    Grid grid() {
        if (changed.isEmpty()) return grid;
        List<GridRow> rows = new ArrayList<>();
        for (GridRow row : grid.rows()) {
            List<String> cells = new ArrayList<>(row.cells());
            changed.getOrDefault(row.number(), Map.of()).forEach(cells::set);
            rows.add(new GridRow(row.number(), cells));
        }
        return new Grid(grid.file(), grid.sheet(), rows);
    }

    /** What was put back, and what could not be. */
    List<Problem> problems() {
        List<Problem> out = new ArrayList<>();
        if (!read.isEmpty())
            out.add(new Problem(
                    grid.place(new GridRow(read.get(0), List.of())),
                    "Positions that a spreadsheet took for a day or a fraction were put back, as " + first + ": "
                            + rows(read) + ".",
                    "Look whether these are the positions; keep cells of positions as text."));
        if (!unread.isEmpty())
            out.add(new Problem(
                    grid.place(new GridRow(unread.get(0), List.of())),
                    "A day or fraction stands where positions should, and is none that positions became, as '" + lost
                            + "': " + rows(unread) + ".",
                    "Read these rows by hand; keep cells of positions as text."));
        return out;
    }

    private static String rows(List<Integer> all) {
        List<Integer> rows = all.stream().distinct().sorted().toList();
        String named = rows.stream().limit(NAMED).map(String::valueOf).collect(Collectors.joining(", "));
        String more = rows.size() > NAMED ? " and " + (rows.size() - NAMED) + " more" : "";
        return (rows.size() == 1 ? "row " : "rows ") + named + more;
    }

    private void column(int c) {
        double headed = 0;
        String above = "";
        int aboveRow = -1;
        List<GridRow> under = new ArrayList<>();
        Set<String> headings = new HashSet<>();
        for (GridRow row : grid.rows()) {
            String cell = row.cell(c).strip().replaceAll("\\s+", " ");
            // the marks of further poles count for nothing
            if (cell.isEmpty() || Texts.isMark(cell)) continue;
            boolean letters = cell.chars().anyMatch(Character::isLetter) || cell.equals("#");
            if (!letters || DateText.parse(cell).isPresent()) {
                if (headed > 0) under.add(row);
                continue;
            }
            boolean joined = row.number() == aboveRow + 1;
            double heads = Math.max(heads(cell), joined ? heads(above + " " + cell) : 0);
            aboveRow = row.number();
            // below headings that come again the column goes on
            if (heads == headed && headings.contains(cell)) {
                above = cell;
                continue;
            }
            if (heads > 0) headings.add(cell);
            if (heads > 0 || PositionText.parse(cell).isEmpty()) {
                putBack(c, under, headed >= HEADED);
                under.clear();
                headed = heads;
            }
            above = cell;
        }
        putBack(c, under, headed >= HEADED);
    }

    private static double heads(String text) {
        return Headings.weight(text, Role.POSITION);
    }

    /** @param surely the heading says positions and nothing else: fractions are put back too */
    private void putBack(int c, List<GridRow> under, boolean surely) {
        Set<Integer> typed = new HashSet<>();
        for (GridRow row : under)
            DateText.parse(row.cell(c)).filter(d -> !d.hasThird()).ifPresent(d -> typed.add(d.year()));
        long positions = under.stream()
                .filter(r -> PositionText.parse(r.cell(c)).isPresent())
                .count();
        boolean fractions = surely && positions * 2 >= under.size();
        for (GridRow row : under) {
            String cell = row.cell(c).strip();
            Optional<DateText> day = DateText.parse(cell);
            Matcher fraction = FRACTION.matcher(cell);
            if (day.isPresent()) {
                // all days of one year are those of the year in which they were typed
                boolean third =
                        day.get().hasThird() && !typed.contains(day.get().year());
                put(c, row, day.get().positions(third));
            } else if (fractions && fraction.matches() && !fraction.group(2).startsWith("0"))
                put(c, row, ofFraction(fraction));
        }
    }

    /** {@code 18.2} was {@code 18,20}: a fraction loses its last zero. */
    private static Optional<String> ofFraction(Matcher fraction) {
        int a = Integer.parseInt(fraction.group(1)), b = Integer.parseInt(fraction.group(2));
        if (b <= a && fraction.group(2).length() == 1) b *= 10;
        String list = a + "," + b;
        return b > a ? PositionText.parse(list).map(p -> list) : Optional.empty();
    }

    private void put(int c, GridRow row, Optional<String> positions) {
        String cell = row.cell(c).strip();
        if (positions.isEmpty()) {
            if (lost.isEmpty()) lost = cell;
            unread.add(row.number());
            return;
        }
        if (first.isEmpty()) first = "'" + cell + "' to " + positions.get();
        changed.computeIfAbsent(row.number(), r -> new HashMap<>()).put(c, positions.get());
        read.add(row.number());
    }
}
