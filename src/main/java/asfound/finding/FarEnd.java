package asfound.finding;

import asfound.finding.Finding.Part;
import asfound.model.Observation;
import asfound.network.Served;
import java.util.ArrayList;
import java.util.List;

/** One connection seen from both of its ends is one fact: {@code MDP/7 feeds LP-1} and {@code LP-1/M fed by MDP}. */
final class FarEnd {

    private FarEnd() {}

    /** Open differences at the other end of a device's connections that say no more than the device's own traces. */
    static List<Comparison> of(Facts facts, Comparison c) {
        if (c.backfed()) return List.of();
        List<Comparison> ends = new ArrayList<>();
        for (Served far : c.seen())
            far.equipment()
                    .ifPresent(name -> facts.index().devicesOf(name).stream()
                            .filter(e -> e.backfed() && facts.isOpen(e) && names(e, c.panel()))
                            .forEach(ends::add));
        return ends;
    }

    /** A device seen to be fed from where another open difference already says so. */
    static boolean isToldAtTheNearEnd(Facts facts, Comparison c) {
        return c.backfed()
                && c.seen().stream()
                        .flatMap(s -> s.equipment().stream())
                        .flatMap(s -> facts.index().devicesOf(s).stream())
                        .anyMatch(near -> !near.backfed() && facts.isOpen(near) && names(near, c.panel()));
    }

    static List<Part> partsOf(Facts facts, Comparison c) {
        return of(facts, c).stream().map(Comparison::part).toList();
    }

    static List<Observation> evidenceOf(Facts facts, Comparison c) {
        List<Observation> all = new ArrayList<>(c.evidence());
        for (Comparison end : of(facts, c)) all.addAll(end.evidence());
        return all;
    }

    private static boolean names(Comparison c, String equipment) {
        return c.seen().stream()
                .anyMatch(s -> s.equipment().filter(equipment::equals).isPresent());
    }
}
