package asfound.drawing.schedule.cell;

import asfound.recordset.Patience;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * The rectangles of a worksheet that hold something, each apart from the others by blank cells: a table, a header beside it,
 * notes. A column that stays blank between two of them shows where the one ends.
 */
final class GridRegions {

    /** Rows or columns, from the first to the last. */
    private record Rectangle(int top, int left, int bottom, int right) {

        boolean overlaps(Rectangle o) {
            return left <= o.right && o.left <= right && top <= o.bottom && o.top <= bottom;
        }

        /** A single blank column parts them, and they go on beside each other along most of their rows: one table. */
        boolean goesOn(Rectangle o) {
            boolean near = left <= o.right + 2 && o.left <= right + 2;
            int common = Math.min(bottom, o.bottom) - Math.max(top, o.top) + 1;
            return near && common * 5 >= Math.max(bottom - top, o.bottom - o.top) * 3 + 3;
        }

        Rectangle with(Rectangle o) {
            return new Rectangle(
                    Math.min(top, o.top), Math.min(left, o.left), Math.max(bottom, o.bottom), Math.max(right, o.right));
        }
    }

    /** A sheet in more pieces is taken as one: it is no sheet of schedules, and each piece costs time. */
    private static final int MOST = 400;

    private final boolean[][] held;

    private GridRegions(boolean[][] held) {
        this.held = held;
    }

    /**
     * @param levels the rows' numbers: blank rows are left out among them
     * @param filled by row and column, which cells hold something
     */
    static GridRegions of(int[] levels, boolean[][] filled) {
        List<Rectangle> open = new ArrayList<>();
        boolean[][] seen = new boolean[filled.length][filled.length == 0 ? 0 : filled[0].length];
        for (int r = 0; r < filled.length; r++)
            for (int c = 0; c < filled[r].length; c++)
                if (filled[r][c] && !seen[r][c] && open.size() <= MOST) add(open, from(levels, filled, seen, r, c));
        if (open.size() > MOST) open = List.of(new Rectangle(0, 0, filled.length - 1, filled[0].length - 1));
        boolean[][] held = new boolean[filled.length][filled.length == 0 ? 0 : filled[0].length];
        for (Rectangle region : open)
            for (int r = region.top(); r <= region.bottom(); r++)
                for (int c = region.left(); c <= region.right(); c++) held[r][c] = true;
        return new GridRegions(held);
    }

    /** All cells that can be reached from one over neighbours, corner to corner too. */
    private static Rectangle from(int[] levels, boolean[][] filled, boolean[][] seen, int row, int column) {
        Rectangle out = new Rectangle(row, column, row, column);
        Patience.check();
        Deque<int[]> next = new ArrayDeque<>(List.of(new int[] {row, column}));
        seen[row][column] = true;
        while (!next.isEmpty()) {
            int[] at = next.pop();
            out = out.with(new Rectangle(at[0], at[1], at[0], at[1]));
            for (int r = Math.max(0, at[0] - 1); r <= Math.min(filled.length - 1, at[0] + 1); r++)
                for (int c = Math.max(0, at[1] - 1); c <= Math.min(filled[r].length - 1, at[1] + 1); c++)
                    if (filled[r][c] && !seen[r][c] && Math.abs(levels[r] - levels[at[0]]) <= 1) {
                        seen[r][c] = true;
                        next.push(new int[] {r, c});
                    }
        }
        return out;
    }

    private static void add(List<Rectangle> open, Rectangle region) {
        Rectangle whole = region;
        for (boolean grown = true; grown; ) {
            grown = false;
            for (Rectangle o : List.copyOf(open))
                if (o.overlaps(whole) || o.goesOn(whole)) {
                    whole = whole.with(o);
                    open.remove(o);
                    grown = true;
                }
        }
        open.add(whole);
    }

    boolean hold(int row, int column) {
        return held[row][column];
    }
}
