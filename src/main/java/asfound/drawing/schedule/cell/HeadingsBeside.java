package asfound.drawing.schedule.cell;

import asfound.model.Directory;
import asfound.model.Problem;
import asfound.recordset.Grid;
import asfound.recordset.GridRow;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Headings of one of several tables side by side that come again on a level where the others have their rows. What stands below
 * them may be taken for another table's, so all directories of such a sheet are doubtful.
 */
final class HeadingsBeside {

    private static final int CELLS = 3;
    /** So far below headings the next position stands at most. */
    private static final int BELOW = 5;

    private static final double DOUBTFUL = Directory.DOUBTFUL - 0.05;

    private final List<GridRow> rows;
    private final NavigableSet<Integer> again = new TreeSet<>();

    private HeadingsBeside(Grid grid) {
        rows = grid.rows();
        NavigableSet<Integer> whole = RepeatedHeadings.of(grid);
        for (int r = 0; r < rows.size(); r++)
            for (int from = 0; from < rows.get(r).cells().size(); ) {
                int to = from;
                while (!rows.get(r).cell(to).isBlank()) to++;
                if (to - from >= CELLS) block(r, from, to, whole);
                from = to + 1;
            }
    }

    /** The directories of a sheet, doubted where it has such headings. */
    static List<Directory> doubted(Grid grid, List<Directory> read) {
        if (read.size() < 2) return read;
        NavigableSet<Integer> again = new HeadingsBeside(grid).again;
        return again.isEmpty()
                ? read
                : read.stream().map(d -> doubted(grid, d, again)).toList();
    }

    private static Directory doubted(Grid grid, Directory d, NavigableSet<Integer> again) {
        List<Problem> problems = new ArrayList<>(d.problems());
        problems.add(new Problem(
                grid.place(new GridRow(again.first(), List.of())),
                "The headings of a table come again in row " + again.first()
                        + ", beside rows of another; rows below may belong to another directory of this sheet.",
                "Put each panel on a sheet of its own, or its headings once."));
        return new Directory(
                d.panel(),
                d.header(),
                d.circuits(),
                d.totals(),
                d.place(),
                Math.min(d.confidence(), DOUBTFUL),
                d.unread(),
                problems);
    }

    /** A run of headings, one of positions among them: looks for it further down. */
    private void block(int head, int from, int to, NavigableSet<Integer> whole) {
        List<String> cells = rows.get(head)
                .cells()
                .subList(from, Math.min(to, rows.get(head).cells().size()));
        List<Integer> positions =
                RepeatedHeadings.positions(new GridRow(rows.get(head).number(), cells));
        if (positions.isEmpty()) return;
        int column = from + positions.get(0);
        Optional<Integer> last = Optional.empty();
        for (int r = head + 1; r < rows.size(); r++) {
            Optional<Integer> number = RepeatedHeadings.number(rows.get(r), column);
            if (number.isPresent()) last = number;
            boolean same = last.isPresent() && !whole.contains(rows.get(r).number()) && isSame(head, r, from, to);
            if (!same) continue;
            Optional<Integer> next = Optional.empty();
            for (int k = r + 1; k < Math.min(rows.size(), r + BELOW) && next.isEmpty(); k++)
                next = RepeatedHeadings.number(rows.get(k), column);
            if (next.isPresent() && next.get() > last.get())
                again.add(rows.get(r).number());
        }
    }

    private boolean isSame(int head, int r, int from, int to) {
        for (int c = from; c < to; c++)
            if (!rows.get(head).cell(c).strip().equals(rows.get(r).cell(c).strip())) return false;
        return true;
    }
}
