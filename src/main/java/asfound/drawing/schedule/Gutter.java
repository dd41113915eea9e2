package asfound.drawing.schedule;

import asfound.model.Box;
import java.util.Comparator;
import java.util.List;

/** Where what belongs to one of two tables side by side is parted from what belongs to the other. */
final class Gutter {

    /** How far above a table its header is looked for. */
    private static final int LINES = 30;

    private Gutter() {}

    /**
     * The middle of the widest strip between the two tables in which nothing stands beside their headers either: a header
     * may begin further left than its table.
     */
    static double between(Phrases phrases, Box left, Box right) {
        double from = left.right(), to = right.x(), middle = (from + to) / 2;
        double foot = Math.max(left.bottom(), right.bottom()), top = Math.min(left.y(), right.y());
        List<Phrase> within = phrases.between(top - LINES * phrases.largest(), foot).stream()
                .filter(p ->
                        p.right() > from && p.left() < to && p.centreY() < foot && p.centreY() > top - LINES * p.size())
                .sorted(Comparator.comparingDouble(Phrase::left))
                .toList();
        double free = from, widest = 0, best = middle;
        for (Phrase p : within) {
            if (p.left() - free > widest) {
                widest = p.left() - free;
                best = (p.left() + free) / 2;
            }
            free = Math.max(free, p.right());
        }
        if (to - free > widest) best = (to + free) / 2;
        return within.isEmpty() ? middle : best;
    }
}
