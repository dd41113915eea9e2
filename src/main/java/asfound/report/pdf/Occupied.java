package asfound.report.pdf;

import asfound.model.Box;
import java.util.Optional;

/** Where a page, as displayed, already has ink or notes: a coarse grid of weights, to find room for one more note. */
final class Occupied {

    /** Weights: crossing a ruling is untidy, covering a word hides what the drawing says. */
    static final float LINE = 1, TEXT = 8, NOTE = 60;

    /**
     * A place that was found.
     *
     * @param cost the way to it in points, and much more for every point of ink under it
     */
    record Room(Box box, double cost) {}

    /** At most this many cells each way, whatever the size of the sheet. */
    private static final int MOST_CELLS = 900;

    private final double cell;
    private final int columns;
    private final int rows;
    private final float[] weight;
    /** Sums of all weights up to each cell; made anew when something was added. */
    private double[] sums;

    Occupied(double width, double height) {
        cell = Math.max(1, Math.max(width, height) / MOST_CELLS);
        columns = Math.max(1, (int) Math.ceil(width / cell));
        rows = Math.max(1, (int) Math.ceil(height / cell));
        weight = new float[columns * rows];
    }

    void add(Box box, float heavy) {
        sums = null;
        int x0 = clamp(box.x(), columns), x1 = clamp(box.right(), columns);
        int y0 = clamp(box.y(), rows), y1 = clamp(box.bottom(), rows);
        if (box.right() < 0 || box.bottom() < 0 || box.x() > columns * cell || box.y() > rows * cell) return;
        for (int y = y0; y <= y1; y++)
            for (int x = x0; x <= x1; x++) weight[y * columns + x] = Math.max(weight[y * columns + x], heavy);
    }

    private int clamp(double at, int most) {
        return (int) Math.max(0, Math.min(most - 1, Math.floor(at / cell)));
    }

    /** So that any box's sum is four look-ups. */
    private double[] sums() {
        double[] sums = new double[(columns + 1) * (rows + 1)];
        for (int y = 0; y < rows; y++) {
            double row = 0;
            for (int x = 0; x < columns; x++) {
                row += weight[y * columns + x];
                sums[(y + 1) * (columns + 1) + x + 1] = sums[y * (columns + 1) + x + 1] + row;
            }
        }
        return sums;
    }

    /**
     * The best place for a box of that size: over as little ink as can be, then as near to {@code target} as can be, and
     * rather beside than above or below it. Empty where the page is smaller than the box.
     */
    Optional<Room> room(double w, double h, Box target) {
        if (sums == null) sums = sums();
        int wide = (int) Math.ceil(w / cell), high = (int) Math.ceil(h / cell);
        int middle = clamp(target.centreY() - h / 2, rows);
        Room best = null;
        // from the target's own level outwards, until the way alone costs more than the best place
        for (int step = 0; step <= 2 * rows; step++) {
            int y = middle + (step % 2 == 0 ? step / 2 : -(step + 1) / 2);
            if (y < 1 || y + high >= rows) continue;
            double away = upAndDown(y * cell, h, target);
            if (best != null && away >= best.cost()) {
                if (step > 2 * target.h() / cell + 4) break;
                continue;
            }
            best = alongRow(y, w, h, wide, high, target, away, best);
        }
        return Optional.ofNullable(best);
    }

    private Room alongRow(int y, double w, double h, int wide, int high, Box target, double away, Room best) {
        Room least = best;
        for (int x = 1; x + wide < columns; x++) {
            double way = away + Math.max(0, Math.max(target.x() - (x * cell + w), x * cell - target.right()));
            if (least != null && way >= least.cost()) continue;
            double cost = way + inked(x, y, wide, high) * 4 * cell * cell;
            if (least == null || cost < least.cost()) least = new Room(new Box(x * cell, y * cell, w, h), cost);
        }
        return least;
    }

    private double inked(int x, int y, int wide, int high) {
        int stride = columns + 1;
        return sums[(y + high) * stride + x + wide]
                - sums[y * stride + x + wide]
                - sums[(y + high) * stride + x]
                + sums[y * stride + x];
    }

    /** The ink that a line crosses, from one point to another; its two ends not counted. */
    double along(double x1, double y1, double x2, double y2) {
        int steps = (int) Math.max(1, Math.hypot(x2 - x1, y2 - y1) / cell);
        double sum = 0;
        for (int i = 2; i < steps - 1; i++) {
            double share = i / (double) steps;
            int x = clamp(x1 + (x2 - x1) * share, columns), y = clamp(y1 + (y2 - y1) * share, rows);
            sum += weight[y * columns + x];
        }
        return sum * cell;
    }

    /** Beside a row its middle counts; beside a whole table any height will do. */
    private static double upAndDown(double y, double h, Box target) {
        return 2.5
                * (target.h() > 3 * h
                        ? Math.max(0, Math.max(target.y() - (y + h), y - target.bottom()))
                        : Math.abs(y + h / 2 - target.centreY()));
    }
}
