package asfound.drawing.schedule.table;

import asfound.drawing.schedule.spine.Spine;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Sides of one panel that stand beside each other: their numbers continue or complete one another. */
final class Neighbours {

    private Neighbours() {}

    /**
     * Whether a side goes on the numbers of those before it.
     *
     * @param panel the sides to its left
     */
    static boolean belongs(List<Side> panel, Side next) {
        Side last = panel.get(panel.size() - 1);
        Spine a = last.spine(), b = next.spine();
        if (Math.abs(a.firstY() - b.firstY()) > 1.2 * Math.max(a.pitch(), b.pitch())) return false;
        Set<Integer> seen = new HashSet<>();
        panel.forEach(s -> seen.addAll(s.spine().everyNumber()));
        long again = b.everyNumber().stream().filter(seen::contains).count();
        if (again * 5 > b.tokens().size()) return false;
        int lowest = b.numbers().stream().min(Integer::compare).orElse(1);
        if (a.isOdd() && b.isEven() && (panel.size() == 1 || isSecondSide(panel, b))) return true;
        if (a.isEven() && b.isEven() && b.numbers().get(0) == Collections.max(a.everyNumber()) + 2) return true;
        boolean exchanged = a.isEven() && b.isOdd() && panel.size() == 1;
        if (exchanged && lowest == 1 && seen.contains(2) && !seen.contains(1)) return true;
        // the second side of a further section beside the first: 43, 45 and on, then 44, 46 and on
        if (a.isOdd() && b.isEven() && lowest == lowest(a) + 1) return true;
        if (lowest == 1) return false;
        int highest = seen.stream().max(Integer::compare).orElse(0);
        if (lowest == highest + 1 || lowest > highest && lowest - highest < 4) return true;
        // the second half of a sheet whose columns go on from another page; a device may end them without a number
        return lowest > highest
                && (a.step() == 1 && b.step() == 1
                        || isList(a) && isList(b) && last.sequence().equals(next.sequence()))
                && Math.abs(a.lastY() - b.lastY()) < 3.5 * Math.max(a.pitch(), b.pitch());
    }

    /** All odd positions stand in columns side by side, and the even ones begin beside them. */
    private static boolean isSecondSide(List<Side> panel, Spine even) {
        return even.numbers().get(0) == 2
                && panel.stream().allMatch(s -> s.spine().isOdd())
                && panel.get(0).spine().numbers().get(0) == 1;
    }

    private static int lowest(Spine s) {
        return s.numbers().stream().min(Integer::compare).orElse(1);
    }

    /** Its numbers are neither odd ones nor even ones alone. */
    static boolean isList(Spine s) {
        return !s.isOdd() && !s.isEven();
    }
}
