package asfound.drawing.schedule.cell;

import asfound.drawing.schedule.phrase.PositionText;
import asfound.drawing.schedule.phrase.Titles;
import asfound.drawing.schedule.text.Headings;
import asfound.drawing.schedule.text.NameText;
import asfound.drawing.schedule.text.Role;
import asfound.drawing.schedule.text.WholeNumbers;
import asfound.recordset.Grid;
import asfound.recordset.GridRow;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Headings that come again in one table of a spreadsheet, every so many rows as it is printed, perhaps with the panel's name
 * above them once more. The rows go on below them as if they were not there: the positions go on, and no other panel is named.
 */
final class RepeatedHeadings {

    /** A heading has at least so many cells, and is no higher than so many rows. */
    private static final int CELLS = 3;

    private static final int HIGHEST = 3;
    /** So many rows of titles stand between at most. */
    private static final int TITLES = 2;

    private static final double HEADED = 0.8;

    private final List<GridRow> rows;
    private final NavigableSet<Integer> found = new TreeSet<>();

    private RepeatedHeadings(Grid grid) {
        rows = grid.rows();
        for (int r = 0; r < rows.size(); r++) {
            List<Integer> positions = positions(rows.get(r));
            if (!positions.isEmpty() && !found.contains(rows.get(r).number())) again(r, positions);
        }
    }

    /** The numbers of the rows that say nothing new. */
    static NavigableSet<Integer> of(Grid grid) {
        return new RepeatedHeadings(grid).found;
    }

    /** The columns of positions that a row heads; none where it is no row of headings. */
    static List<Integer> positions(GridRow row) {
        List<Integer> sure = new ArrayList<>(), may = new ArrayList<>();
        int said = 0, known = 0;
        for (int c = 0; c < row.cells().size(); c++) {
            if (row.cell(c).isBlank()) continue;
            if (PositionText.parse(row.cell(c)).isPresent()) return List.of();
            said++;
            String text = row.cell(c).replaceAll("\\s+", " ");
            double weight = Headings.weight(text, Role.POSITION);
            if (weight >= HEADED) sure.add(c);
            else if (weight > 0) may.add(c);
            if (!Headings.weigh(text).isEmpty()) known++;
        }
        if (said < CELLS || known * 2 < said) return List.of();
        return sure.isEmpty() ? may : sure;
    }

    private void again(int head, List<Integer> positions) {
        for (int r = head + 2; r < rows.size(); r++) {
            if (!isSame(rows.get(head), rows.get(r))) continue;
            int from = r;
            while (from > head + 1
                    && r - from < HIGHEST - 1
                    && head - (r - from) > 0
                    && isUpperLine(rows.get(head - (r - from) - 1), rows.get(from - 1))) from--;
            int first = from;
            while (first > head + 1 && from - first < TITLES && isTitleAgain(first - 1)) first--;
            if (!goesOn(head, first, r, positions)) return;
            for (int k = first; k <= r; k++) found.add(rows.get(k).number());
        }
    }

    /** All that the second says the first says too; beside the first a header may stand. */
    private static boolean isSame(GridRow first, GridRow again) {
        int said = 0;
        for (int c = 0; c < again.cells().size(); c++) {
            if (again.cell(c).isBlank()) continue;
            said++;
            if (!first.cell(c).strip().equals(again.cell(c).strip())) return false;
        }
        int both = (int) first.cells().stream().filter(c -> !c.isBlank()).count();
        return said > 0 && said * 2 > both;
    }

    /** The upper line of headings in two rows, or of the groups that they make. */
    private static boolean isUpperLine(GridRow first, GridRow again) {
        return isSame(first, again)
                && first.cells().stream().noneMatch(c -> PositionText.parse(c).isPresent());
    }

    /** One cell that names a panel which a row further up has named. */
    private boolean isTitleAgain(int r) {
        List<String> said =
                rows.get(r).cells().stream().filter(c -> !c.isBlank()).toList();
        if (said.size() != 1) return false;
        Optional<String> name = Titles.nameIn(said.get(0)).map(RepeatedHeadings::plain);
        return name.isPresent() && namedAbove(r).contains(name.get());
    }

    private Set<String> namedAbove(int row) {
        Set<String> out = new HashSet<>();
        for (int r = 0; r < row; r++)
            for (String cell : rows.get(r).cells()) {
                if (cell.isBlank() || cell.length() > 60) continue;
                Titles.nameIn(cell).map(RepeatedHeadings::plain).ifPresent(out::add);
                out.add(plain(cell));
            }
        return out;
    }

    private static String plain(String name) {
        return NameText.name(name).toUpperCase(Locale.ROOT);
    }

    /** In each column of positions they rise over the headings, or the even ones begin below the odd ones. */
    private boolean goesOn(int head, int first, int last, List<Integer> positions) {
        // a list that names the panel in each row goes on with the next panel
        boolean listed = rows.get(head).cells().stream().anyMatch(c -> Headings.weight(c, Role.PANEL) >= HEADED);
        boolean any = listed;
        for (int column : listed ? List.<Integer>of() : positions) {
            Optional<Integer> before = Optional.empty(), after = Optional.empty();
            boolean odd = true;
            for (int r = head + 1; r < first; r++) {
                Optional<Integer> own = number(r, column);
                if (own.isPresent()) {
                    before = own;
                    odd &= own.get() % 2 == 1;
                }
            }
            for (int r = last + 1; r < rows.size() && after.isEmpty(); r++) {
                if (!positions(rows.get(r)).isEmpty()) break;
                after = number(r, column);
            }
            if (before.isEmpty() || after.isEmpty()) continue;
            if (after.get() <= before.get() && !(odd && after.get() == 2)) return false;
            any = true;
        }
        return any;
    }

    private Optional<Integer> number(int r, int column) {
        return number(rows.get(r), column);
    }

    /** The first of the positions in a cell, whole though it be written with a point and a zero. */
    static Optional<Integer> number(GridRow row, int column) {
        String cell = row.cell(column).strip();
        return PositionText.parse(cell.matches("\\d{1,3}[.,]0+") ? WholeNumbers.plain(cell) : cell)
                .map(PositionText::order);
    }
}
