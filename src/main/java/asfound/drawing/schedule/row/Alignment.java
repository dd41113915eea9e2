package asfound.drawing.schedule.row;

import java.util.List;

/** How the lines of a wrapped entry lie to its position, where no rules part the cells. */
enum Alignment {
    MIDDLE,
    /** The first line beside the position. */
    TOP,
    /** The last line beside the position. */
    BOTTOM;

    private static final double CLOSE = 0.01;
    /** Costs that differ by less are the same. */
    private static final double ALIKE = 1e-6;

    /**
     * That in which the lines of a column lie best to the positions: as one line each they lie alike in all.
     *
     * @param rows the levels of the rows
     * @param size of the rows' type
     */
    static Alignment of(List<ColumnLines.Line> lines, double[] rows, double size) {
        double[] levels =
                lines.stream().mapToDouble(ColumnLines.Line::y).sorted().toArray();
        Alignment best = MIDDLE;
        double bestCost = Double.MAX_VALUE;
        for (Alignment a : values()) {
            // nothing lies better than in place
            if (bestCost <= ALIKE) break;
            double cost = a.cost(levels, rows, size);
            if (cost < bestCost - ALIKE) {
                bestCost = cost;
                best = a;
            }
        }
        return best;
    }

    /** The row, of those from first to last, to which a line on this level belongs. */
    int row(double y, double[] rows, int first, int last, double size) {
        double slack = 0.35 * size;
        int best = first;
        for (int r = first; r <= last; r++) {
            boolean better = switch (this) {
                case TOP -> rows[r] <= y + slack;
                case BOTTOM -> r > first && rows[r - 1] < y - slack;
                case MIDDLE -> Math.abs(rows[r] - y) < Math.abs(rows[best] - y);
            };
            if (better) best = r;
        }
        return best;
    }

    /**
     * How far the entries lie from their positions and their lines from each other, in type sizes.
     *
     * @param lines their levels from top to bottom
     */
    private double cost(double[] lines, double[] rows, double size) {
        int[] ends = new int[rows.length];
        double[] byRow = byRow(lines, rows, size, ends);
        double cost = 0;
        for (int r = 0; r < rows.length; r++) {
            int from = r == 0 ? 0 : ends[r - 1], to = ends[r];
            if (from == to) continue;
            double first = byRow[from], last = byRow[to - 1];
            double lies = switch (this) {
                case TOP -> first;
                case BOTTOM -> last;
                case MIDDLE -> (first + last) / 2;
            };
            cost += Math.abs(lies - rows[r]) / size;
            // lines of one entry follow each other closely; of two ways to put them together the closer one
            for (int i = from + 1; i < to; i++) {
                double apart = (byRow[i] - byRow[i - 1]) / size;
                cost += Math.max(0, apart - 1.6) + CLOSE * apart;
            }
        }
        return cost;
    }

    /**
     * The lines row by row, those of each from top to bottom.
     *
     * @param ends takes for each row where its lines end
     */
    private double[] byRow(double[] lines, double[] rows, double size, int[] ends) {
        int[] row = new int[lines.length];
        for (int i = 0; i < lines.length; i++) {
            row[i] = row(lines[i], rows, 0, rows.length - 1, size);
            ends[row[i]]++;
        }
        for (int r = 1; r < rows.length; r++) ends[r] += ends[r - 1];
        double[] out = new double[lines.length];
        int[] next = ends.clone();
        for (int i = lines.length - 1; i >= 0; i--) out[--next[row[i]]] = lines[i];
        return out;
    }
}
