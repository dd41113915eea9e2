package asfound.finding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The shifts that together explain most of a panel's displaced entries, and of those the fewest. Each way is tried as the
 * first, and the largest of what is left taken after it; where two explanations are as good, the plainer first one stays.
 */
final class FewestShifts {

    private FewestShifts() {}

    static List<Shift> of(Facts facts, List<Comparison> panel) {
        List<Shift> ways = Displacement.of(facts, panel);
        return ways.stream()
                .map(first -> beginningWith(first, facts, panel))
                .reduce((best, other) -> isBetter(other, best) ? other : best)
                .orElse(List.of());
    }

    private static List<Shift> beginningWith(Shift first, Facts facts, List<Comparison> panel) {
        List<Shift> all = new ArrayList<>(List.of(first));
        Facts left = facts.explainedAt(first.devices());
        List<Shift> ways = Displacement.of(left, panel);
        while (!ways.isEmpty()) {
            Shift largest = ways.stream()
                    .reduce((best, other) -> other.hits() > best.hits() ? other : best)
                    .get();
            all.add(largest);
            left = left.explainedAt(largest.devices());
            ways = Displacement.of(left, panel);
        }
        return all;
    }

    private static boolean isBetter(List<Shift> one, List<Shift> other) {
        Comparator<List<Shift>> most = Comparator.comparingInt(FewestShifts::hits);
        return most.thenComparing(Comparator.comparingInt((List<Shift> s) -> s.size())
                                .reversed())
                        .compare(one, other)
                > 0;
    }

    private static int hits(List<Shift> shifts) {
        return shifts.stream().mapToInt(Shift::hits).sum();
    }
}
