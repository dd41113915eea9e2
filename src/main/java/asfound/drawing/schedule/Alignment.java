package asfound.drawing.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** How the lines of a wrapped entry lie to its position, where no rules part the cells. */
enum Alignment {
    MIDDLE,
    /** The first line beside the position. */
    TOP,
    /** The last line beside the position. */
    BOTTOM;

    private static final double CLOSE = 0.01;

    /**
     * That in which the lines of a column lie best to the positions: as one line each they lie alike in all.
     *
     * @param size of the rows' type
     */
    static Alignment of(List<ColumnLines.Line> lines, List<Row> rows, double size) {
        Alignment best = MIDDLE;
        double bestCost = Double.MAX_VALUE;
        for (Alignment a : values()) {
            double cost = a.cost(lines, rows, size);
            if (cost < bestCost - 1e-6) {
                bestCost = cost;
                best = a;
            }
        }
        return best;
    }

    /** The row, of those from first to last, to which a line on this level belongs. */
    int row(double y, List<Row> rows, int first, int last, double size) {
        double slack = 0.35 * size;
        int best = first;
        for (int r = first; r <= last; r++) {
            double at = rows.get(r).y();
            boolean better = switch (this) {
                case TOP -> at <= y + slack;
                case BOTTOM -> r > first && rows.get(r - 1).y() < y - slack;
                case MIDDLE -> Math.abs(at - y) < Math.abs(rows.get(best).y() - y);
            };
            if (better) best = r;
        }
        return best;
    }

    /** How far the entries lie from their positions and their lines from each other, in type sizes. */
    private double cost(List<ColumnLines.Line> lines, List<Row> rows, double size) {
        List<List<Double>> byRow = new ArrayList<>();
        for (int r = 0; r < rows.size(); r++) byRow.add(new ArrayList<>());
        for (ColumnLines.Line line : lines)
            byRow.get(row(line.y(), rows, 0, rows.size() - 1, size)).add(line.y());
        double cost = 0;
        for (int r = 0; r < rows.size(); r++) {
            List<Double> own = byRow.get(r);
            if (own.isEmpty()) continue;
            own.sort(Comparator.naturalOrder());
            double first = own.get(0), last = own.get(own.size() - 1);
            double lies = switch (this) {
                case TOP -> first;
                case BOTTOM -> last;
                case MIDDLE -> (first + last) / 2;
            };
            cost += Math.abs(lies - rows.get(r).y()) / size;
            // lines of one entry follow each other closely; of two ways to put them together the closer one
            for (int i = 1; i < own.size(); i++) {
                double apart = (own.get(i) - own.get(i - 1)) / size;
                cost += Math.max(0, apart - 1.6) + CLOSE * apart;
            }
        }
        return cost;
    }
}
