package asfound.drawing.schedule.row;

import asfound.drawing.page.Rule;
import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.column.Column;
import asfound.drawing.schedule.spine.Spine;
import asfound.drawing.schedule.table.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The cells of a side's columns, as rules part them, and the rows that each cell belongs to. */
final class Cells {

    /**
     * The rules that part the cells of a column.
     *
     * @param levels from top to bottom, the edges of the body among them
     */
    record Bounds(List<Double> levels) {

        int cells() {
            return levels.size() - 1;
        }

        /** The cell that a level lies in. */
        private int at(double y) {
            int low = 0, high = cells() - 1;
            while (low < high) {
                int mid = (low + high + 1) >>> 1;
                if (levels.get(mid) <= y) low = mid;
                else high = mid - 1;
            }
            return low;
        }

        private double top(int cell) {
            return levels.get(cell);
        }

        private double bottom(int cell) {
            return levels.get(cell + 1);
        }
    }

    /** Rows that follow each other, by their indices. */
    record Range(int first, int last) {

        int further() {
            return last - first;
        }
    }

    /** No device has more poles: what reaches over more rows is a column without rules of its own. */
    private static final int MOST_POLES = 4;

    /** No further above or below a position, in sizes of type, something stands beside it. */
    private static final double BESIDE = 0.35;

    private final Sheet sheet;
    private final Spine spine;
    private final List<Row> rows;
    private final double[] levels;
    private final double top;
    private final double bottom;
    private final Bounds positions;

    /**
     * @param top where the first row begins
     * @param bottom where the last row ends
     */
    Cells(Sheet sheet, Side side, List<Row> rows, double top, double bottom) {
        this.sheet = sheet;
        spine = side.spine();
        this.rows = rows;
        levels = rows.stream().mapToDouble(Row::y).toArray();
        this.top = top;
        this.bottom = bottom;
        positions = bounds(new Column(spine.left(), spine.right(), "", List.of(), Map.of()));
    }

    Bounds bounds(Column column) {
        List<Double> out = new ArrayList<>();
        out.add(top - 2);
        List<Rule> rules = sheet.across().between(top + 0.5, bottom - 0.5);
        for (int i = 0; i < rules.size(); ) {
            double at = rules.get(i).at(), covered = 0;
            int j = i;
            while (j < rules.size() && rules.get(j).at() - at < 1.2)
                covered += rules.get(j++).covers(column.left(), column.right());
            if (covered > 0.6 * column.width()) out.add(at);
            i = j;
        }
        out.add(bottom + spine.size());
        return new Bounds(out);
    }

    /** How the lines of a column lie to the rows. */
    Alignment alignment(List<ColumnLines.Line> lines) {
        return Alignment.of(lines, levels, spine.size());
    }

    /** The rows that a line on this level of a column belongs to; empty where it belongs to none. */
    Optional<Range> rows(double y, Bounds bounds, Alignment alignment) {
        int cell = bounds.at(y);
        int first = below(bounds.top(cell)), last = below(bounds.bottom(cell)) - 1;
        if (first > last) return beside(y);
        // no device has so many poles: the column has no rules of its own
        if (bounds.cells() == 1 && last - first >= MOST_POLES) return Optional.of(alone(y, alignment, first, last));
        if (first == last || isMerged(first, last)) return Optional.of(new Range(first, last));
        return Optional.of(alone(y, alignment, first, last));
    }

    /**
     * The row that a pole's load stands beside, where it shares a cell of several rows with another: each pole has its own. Empty
     * where it is alone in its cell, or between rows.
     */
    Optional<Range> beside(ColumnLines.Line line, List<ColumnLines.Line> column, Bounds bounds) {
        int cell = bounds.at(line.y());
        int first = below(bounds.top(cell)), last = below(bounds.bottom(cell)) - 1;
        if (first >= last || last - first >= MOST_POLES) return Optional.empty();
        boolean shared = column.stream().anyMatch(o -> o != line && bounds.at(o.y()) == cell);
        for (int r = first; shared && r <= last; r++)
            if (Math.abs(levels[r] - line.y()) < BESIDE * spine.size()) return Optional.of(new Range(r, r));
        return Optional.empty();
    }

    private Range alone(double y, Alignment alignment, int first, int last) {
        int row = alignment.row(y, levels, first, last, spine.size());
        return new Range(row, row);
    }

    /** A cell beside a taller cell of the position. */
    private Optional<Range> beside(double y) {
        int cell = positions.at(y);
        int row = below(positions.top(cell));
        boolean own = row < levels.length && levels[row] < positions.bottom(cell);
        return own ? Optional.of(new Range(row, row)) : Optional.empty();
    }

    /** The first row below a level. */
    private int below(double y) {
        int low = 0, high = levels.length;
        while (low < high) {
            int mid = (low + high) >>> 1;
            if (levels[mid] <= y) low = mid + 1;
            else high = mid;
        }
        return low;
    }

    /** The positions of these rows stand in cells of their own, so the wider cell was made by joining them. */
    private boolean isMerged(int first, int last) {
        if (last - first >= MOST_POLES) return false;
        for (int r = first; r < last; r++) {
            double x = rows.get(r).token().map(t -> t.phrase().centreX()).orElse(spine.centreX());
            boolean parted = false;
            for (Rule rule : sheet.across().between(levels[r], levels[r + 1])) parted |= rule.passes(x);
            if (!parted) return false;
        }
        return true;
    }
}
