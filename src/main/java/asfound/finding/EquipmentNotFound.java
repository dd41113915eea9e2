package asfound.finding;

import asfound.finding.Comparison.Answer;
import asfound.model.Directory;
import asfound.network.Equipment;
import asfound.network.Served;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Drawn equipment was not met by any observation, though its drawn supply was traced. The drawn devices were found
 * feeding nothing, or missing.
 */
public record EquipmentNotFound(Event event) implements Finding {

    static final Guide GUIDE = new Guide(
            "equipment-not-found",
            "Drawn equipment was not met by any observation, though its drawn supply was traced.",
            "Either it is gone, or it is fed from where no drawing shows.",
            "Look for it on site; if it is gone take it off the drawings, else trace its supply before any isolation.",
            List.of(
                    "NFPA 70E-2024 205.3: single-line diagrams legible and current",
                    "NFPA 70E-2021 120.5: find all sources of supply from up-to-date drawings and tags"),
            new Guide.Example(
                    List.of("MDP is switchboard", "LP-1 is panel", "MDP/7 -> LP-1"), List.of("MDP/7 nothing")),
            new Guide.NearMiss(
                    "Its drawn supply was not traced.",
                    new Guide.Example(
                            List.of("MDP is switchboard", "LP-1 is panel", "MDP/7 -> LP-1"),
                            List.of("MDP/9 nothing"))));

    static final Rule RULE = new Rule(GUIDE, EquipmentNotFound::find);

    @Override
    public Guide guide() {
        return GUIDE;
    }

    private static List<EquipmentNotFound> find(Facts facts) {
        boolean everythingTraced = facts.comparisons().stream()
                .filter(EquipmentNotFound::isInUse)
                .filter(c -> c.answer() == Answer.SILENT || c.answer() == Answer.CONFLICT)
                .allMatch(c -> facts.index()
                        .equipment(c.panel())
                        .filter(Equipment::found)
                        .isEmpty());
        return facts.network().equipment().stream()
                .filter(e -> e.drawn() && !e.found() && !e.kind().isPureSource())
                .flatMap(e -> of(facts, e, everythingTraced).stream())
                .toList();
    }

    /**
     * Every drawn supply of it was traced to nothing; or, where everything drawn was traced, to something else. A load that
     * only a directory names is told at its circuit.
     */
    private static Optional<EquipmentNotFound> of(Facts facts, Equipment e, boolean everythingTraced) {
        List<Comparison> supplies = facts.index().drawnTo(new Served(e.name(), Optional.of(e.name())));
        boolean gone = !supplies.isEmpty() && supplies.stream().allMatch(c -> isGone(facts, c));
        boolean nowhere = everythingTraced
                && (facts.index().paper().onOneLine(e.name())
                        || facts.index().devicesOf(e.name()).stream().anyMatch(EquipmentNotFound::isInUse))
                && !supplies.isEmpty()
                && supplies.stream().allMatch(c -> facts.isOpen(c) && c.answer() != Answer.NOT_FED);
        if (!(gone && isDrawnItself(facts, e)) && !nowhere) return Optional.empty();
        List<Comparison> told = supplies.stream().filter(c -> isGone(facts, c)).toList();
        String labels =
                Words.list(supplies.stream().map(c -> c.device().label()).toList());
        String seen = supplies.stream()
                .map(c -> c.device().label() + " " + c.seenInWords())
                .collect(Collectors.joining("; "));
        String message = Words.namedFirst(e) + " is drawn as fed from " + labels
                + "; these were traced, and no observation met it. Found: " + seen + ".";
        String correction = "Look for " + e.name() + "; if it is gone, take it off the drawings.";
        Events event = Events.about(Finding.Part.of(e.name()))
                .severity(Severities.fails(facts, e.name()) ? Severity.DANGER : Severity.WARNING)
                .sides("fed from " + labels, seen)
                .says(message, correction)
                .drawings(e.drawnAt())
                .with(facts, told)
                .corrections(Redraw.withdrawn(facts, e, told, correction));
        return Optional.of(new EquipmentNotFound(event.build()));
    }

    private static boolean isInUse(Comparison c) {
        return c.at().showings().stream().anyMatch(s -> s.use() == Directory.Use.LOAD);
    }

    private static boolean isGone(Facts facts, Comparison c) {
        return c.answer() == Answer.NOTHING && facts.isOpen(c);
    }

    private static boolean isDrawnItself(Facts facts, Equipment e) {
        return e.kind().isDistribution()
                || !facts.index().paper().directories(e.name()).isEmpty()
                || facts.index().paper().onOneLine(e.name());
    }
}
