package asfound.report.pdf;

import asfound.model.Box;

/** The line from a note to the entry that it is about. */
final class Leader {

    /** Nearer than this a note needs no line. */
    private static final double NEAR = 5;

    private static final int TRIED = 24;

    private Leader() {}

    /**
     * From the note's edge to the entry's edge, both as displayed, over as few words as can be; null where the note
     * stands at the entry.
     */
    static double[][] between(Box note, Box entry, Occupied occupied) {
        double[][] best = null;
        double least = Double.MAX_VALUE;
        for (int i = 0; i <= TRIED; i++) {
            double share = i / (double) TRIED;
            double x = entry.x() + entry.w() * share, y = entry.y() + entry.h() * share;
            double fromX = clamp(x, note.x() + 2, note.right() - 2), fromY = clamp(y, note.y(), note.bottom());
            double toX = clamp(fromX, entry.x(), entry.right()), toY = clamp(fromY, entry.y(), entry.bottom());
            double length = Math.hypot(toX - fromX, toY - fromY);
            if (length < NEAR) return null;
            double cost = length + occupied.along(fromX, fromY, toX, toY) * 3;
            if (cost >= least) continue;
            least = cost;
            best = new double[][] {{fromX, fromY}, {toX, toY}};
        }
        return best;
    }

    static Box around(Box note, double[][] leader, double margin) {
        Box line = new Box(
                Math.min(leader[0][0], leader[1][0]) - margin,
                Math.min(leader[0][1], leader[1][1]) - margin,
                Math.abs(leader[0][0] - leader[1][0]) + 2 * margin,
                Math.abs(leader[0][1] - leader[1][1]) + 2 * margin);
        return line.union(note);
    }

    private static double clamp(double v, double least, double most) {
        return Math.max(least, Math.min(most, v));
    }
}
