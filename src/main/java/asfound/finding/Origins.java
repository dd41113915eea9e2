package asfound.finding;

import asfound.finding.Comparison.Answer;
import asfound.network.Served;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Which other entries are drawn to feed what a device was traced to. */
final class Origins {

    private Origins() {}

    /**
     * Candidates for one traced device, those of its own panel first. An entry that was itself found as drawn is none.
     * Descriptions are sought in other panels only where they hold a number: {@code LIGHTING} stands on every card.
     */
    static List<Comparison> of(Facts facts, Comparison traced) {
        Set<Comparison> origins = new LinkedHashSet<>();
        for (Served seen : traced.seen()) {
            if (seen.equipment().isPresent()) equipment(facts, seen, origins);
            else description(facts, traced, seen, origins);
        }
        origins.removeIf(o -> o.device().equals(traced.device()) || o.answer() == Answer.AGREES);
        return origins.stream()
                .sorted(java.util.Comparator.comparing(o -> !o.panel().equals(traced.panel())))
                .toList();
    }

    private static void equipment(Facts facts, Served seen, Set<Comparison> origins) {
        origins.addAll(facts.index().drawnTo(seen));
        for (String name : facts.through().relativesOf(seen.equipment().get()))
            origins.addAll(facts.index().drawnTo(new Served(name, java.util.Optional.of(name))));
    }

    private static void description(Facts facts, Comparison traced, Served seen, Set<Comparison> origins) {
        List<Comparison> alike = facts.index().drawnTo(seen);
        boolean specific = seen.text().chars().anyMatch(Character::isDigit);
        for (Comparison c : alike) if (specific || c.panel().equals(traced.panel())) origins.add(c);
        if (!origins.isEmpty()) return;
        for (Comparison c : facts.index().devicesOf(traced.panel()))
            if (c.answer() != Answer.AGREES && isDrawnAs(facts, c, seen)) origins.add(c);
    }

    private static boolean isDrawnAs(Facts facts, Comparison c, Served seen) {
        return !c.drawn().isEmpty()
                && c.drawn().stream().anyMatch(d -> facts.sames().same(d, seen));
    }
}
