package asfound.drawing.schedule.sheet;

import asfound.drawing.page.Word;
import asfound.drawing.schedule.device.Circuits;
import asfound.drawing.schedule.device.Draft;
import asfound.drawing.schedule.row.Leftover;
import asfound.drawing.schedule.spine.Spine;
import asfound.drawing.schedule.table.Side;
import asfound.drawing.schedule.table.Table;
import asfound.drawing.schedule.text.Role;
import asfound.model.Box;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A directory whose two halves stand one below the other, each under headings of its own: odd positions and then even
 * ones, or the first half of the numbers and then the second. The second half has no name of its own.
 */
final class Halves {

    private Halves() {}

    static boolean complete(Table a, Table b) {
        if (a.sides().size() == 2 && b.sides().size() == 2) return isNextSection(a, b);
        if (a.sides().size() != 1 || b.sides().size() != 1) return false;
        Side first = a.sides().get(0), second = b.sides().get(0);
        if (first.roles().containsKey(Role.PANEL) || second.roles().containsKey(Role.PANEL)) return false;
        if (!first.sequence().equals(second.sequence())) return false;
        Spine one = first.spine(), two = second.spine();
        if (one.tokens().size() < 3 || two.tokens().size() < 2) return false;
        boolean odd = one.isOdd() && two.isEven() && lowest(one) == 1 && lowest(two) == 2;
        boolean on = one.step() == 1 && two.step() == 1 && lowest(one) == 1 && lowest(two) == highest(one) + 1;
        return odd && Math.abs(highest(one) - highest(two)) <= 3 || on;
    }

    /** A panel of several sections, each with both its sides: 1 to 42, and 43 to 84 below or beside. */
    private static boolean isNextSection(Table a, Table b) {
        for (int s = 0; s < 2; s++) {
            Side first = a.sides().get(s), second = b.sides().get(s);
            if (!first.sequence().equals(second.sequence())) return false;
            if (first.roles().containsKey(Role.PANEL)) return false;
            if (first.spine().tokens().size() < 3 || second.spine().tokens().size() < 2) return false;
            if (first.spine().step() != second.spine().step()) return false;
        }
        int end = a.sides().stream().mapToInt(s -> highest(s.spine())).max().orElse(0);
        return b.sides().stream().mapToInt(s -> lowest(s.spine())).min().orElse(0) == end + 1;
    }

    private static int lowest(Spine s) {
        return s.everyNumber().stream().min(Integer::compare).orElse(0);
    }

    private static int highest(Spine s) {
        return s.everyNumber().stream().max(Integer::compare).orElse(0);
    }

    /** Both halves as one table; its box is that of the first half, under the panel's name. */
    static Table table(Table a, Table b) {
        List<Side> sides = new ArrayList<>(a.sides());
        sides.addAll(b.sides());
        return new Table(sides, a.bodyTop(), a.box());
    }

    static Circuits circuits(Circuits a, Circuits b) {
        List<Draft> drafts = new ArrayList<>(a.drafts());
        drafts.addAll(b.drafts());
        drafts.sort(Comparator.comparingInt(d -> d.positions().get(0)));
        List<Leftover> strays = new ArrayList<>(a.strays());
        strays.addAll(b.strays());
        Box box = a.box();
        Set<Word> taken = new HashSet<>(a.taken());
        taken.addAll(b.taken());
        return new Circuits(a.name(), drafts, strays, taken, a.cost() + b.cost(), box, false);
    }
}
