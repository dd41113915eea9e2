package asfound.finding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The shifts that together explain most of a panel's displaced entries, and of those the fewest. Each way is tried as the
 * first, and the largest of what is left taken after it; where two explanations are as good, the plainer first one stays.
 *
 * @param shifts in the order in which they were taken
 * @param asGood what else may have been done to the card, explaining as many entries by as many shifts; empty where nothing
 */
record FewestShifts(List<Shift> shifts, Optional<String> asGood) {

    private static final Comparator<List<Shift>> BETTER = Comparator.comparingInt(FewestShifts::hits)
            .thenComparing(Comparator.comparingInt((List<Shift> s) -> s.size()).reversed());

    static FewestShifts of(Facts facts, List<Comparison> panel) {
        List<List<Shift>> explanations = Displacement.of(facts, panel).stream()
                .map(first -> beginningWith(first, facts, panel))
                .toList();
        List<Shift> best = explanations.stream()
                .reduce((kept, other) -> BETTER.compare(other, kept) > 0 ? other : kept)
                .orElse(List.of());
        Optional<String> asGood = explanations.stream()
                .filter(other -> BETTER.compare(other, best) == 0)
                .filter(other -> !manners(other).equals(manners(best)))
                .map(FewestShifts::inWords)
                .findFirst();
        return new FewestShifts(best, asGood);
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

    private static int hits(List<Shift> shifts) {
        return shifts.stream().mapToInt(Shift::hits).sum();
    }

    private static List<Shift.Manner> manners(List<Shift> shifts) {
        return shifts.stream().map(Shift::manner).sorted().toList();
    }

    private static String inWords(List<Shift> shifts) {
        return Words.list(shifts.stream().map(Shift::how).sorted().toList());
    }
}
