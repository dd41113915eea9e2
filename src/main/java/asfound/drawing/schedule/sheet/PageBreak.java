package asfound.drawing.schedule.sheet;

import asfound.model.Directory.Circuit;
import asfound.model.Stated;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * The entries on both sides of a page break put together. A device may begin on one page and have the rows of its further
 * poles on the next.
 *
 * @param circuits in order of their lowest position
 * @param twice positions that an entry on either page claims for itself
 * @param found positions of the second page whose device was found on the first
 */
record PageBreak(List<Circuit> circuits, List<Integer> twice, Set<Integer> found) {

    static PageBreak join(List<Circuit> before, List<Circuit> after) {
        List<Circuit> all = new ArrayList<>(before);
        Set<Integer> taken = new TreeSet<>(), twice = new TreeSet<>(), found = new TreeSet<>();
        before.forEach(c -> taken.addAll(c.positions()));
        for (Circuit c : after) {
            int home = headOf(all.subList(0, before.size()), c);
            if (home >= 0) {
                all.set(home, with(all.get(home), c));
                found.addAll(c.positions());
                continue;
            }
            for (int p : c.positions()) if (!taken.add(p)) twice.add(p);
            all.add(c);
        }
        all.sort(Comparator.comparingInt(Circuit::position));
        return new PageBreak(all, List.copyOf(twice), found);
    }

    /** The device of the page before whose further pole this row is: blank but for a load, or printed once more. */
    private static int headOf(List<Circuit> before, Circuit row) {
        for (int i = 0; i < before.size(); i++) {
            Circuit head = before.get(i);
            boolean own = head.positions().containsAll(row.positions()) || isNextPole(head, row);
            if (own && (isRest(row) || repeats(head, row))) return i;
        }
        return -1;
    }

    /** The device has more poles than positions so far, and this is the next. */
    private static boolean isNextPole(Circuit head, Circuit row) {
        List<Integer> own = head.positions();
        int step = own.size() > 1 ? own.get(1) - own.get(0) : 2;
        int last = own.get(own.size() - 1);
        return own.size() < head.poles() && row.positions().equals(List.of(last + step));
    }

    private static boolean repeats(Circuit head, Circuit row) {
        return row.description().or("").equals(head.description().or(""))
                && row.ratingA().value().equals(head.ratingA().value());
    }

    /** Nothing of a device of its own stands in the row; a load may. */
    static boolean isRest(Circuit c) {
        return c.description().isBlank() && c.ratingA().isBlank();
    }

    private static Circuit with(Circuit head, Circuit row) {
        Set<Integer> positions = new TreeSet<>(head.positions());
        positions.addAll(row.positions());
        return new Circuit(
                List.copyOf(positions),
                head.label(),
                Math.max(head.poles(), positions.size()),
                head.ratingA(),
                head.description(),
                head.use(),
                loads(head.loadVA(), row.loadVA()),
                head.place());
    }

    /** By phase where both are; else as sums. */
    private static List<Stated<Double>> loads(List<Stated<Double>> a, List<Stated<Double>> b) {
        if (a.isEmpty() || b.isEmpty()) return a.isEmpty() ? b : a;
        List<Stated<Double>> out = new ArrayList<>();
        for (int i = 0; i < Math.max(a.size(), b.size()); i++) {
            Stated<Double> x = i < a.size() ? a.get(i) : Stated.blank(), y = i < b.size() ? b.get(i) : Stated.blank();
            if (x.isBlank() || y.isBlank()) out.add(x.isBlank() ? y : x);
            else {
                String raw = x.raw() + " + " + y.raw();
                boolean read = x.isStated() && y.isStated();
                out.add(new Stated<>(
                        read ? java.util.Optional.of(x.or(0.0) + y.or(0.0)) : java.util.Optional.empty(),
                        raw,
                        x.place()));
            }
        }
        return out;
    }
}
