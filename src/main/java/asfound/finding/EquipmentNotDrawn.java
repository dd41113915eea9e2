package asfound.finding;

import asfound.network.Equipment;
import asfound.network.Served;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Equipment was found that no drawing shows. What feeds it, and its own circuits as far as they were traced,
 * belong to the same event.
 */
public record EquipmentNotDrawn(Event event) implements Finding {

    static final Guide GUIDE = new Guide(
            "equipment-not-drawn",
            "Equipment was found that no drawing shows.",
            "Nobody can plan its isolation, and what it feeds is on no drawing either.",
            "Add the equipment, its supply and its directory to the drawings before anyone isolates by them.",
            List.of(
                    "NFPA 70E-2024 205.3: single-line diagrams legible and current",
                    "NFPA 70 408.4(B): a feeder-supplied board is marked with where its supply originates",
                    "NFPA 70E-2021 120.5: find all sources of supply from up-to-date drawings and tags"),
            new Guide.Example(
                    List.of("MDP/7 PANEL LP-1", "MDP/9 SPARE"),
                    List.of("MDP/9 feeds Panel LP-5 [kind panel]", "LP-5/1 feeds Recept rm 501")),
            new Guide.NearMiss(
                    "Only a label names it: equipment that was only read of was not found.",
                    new Guide.Example(
                            List.of("MDP/7 PANEL LP-1", "MDP/9 SPARE"),
                            List.of("MDP/9 feeds Panel LP-5 [kind panel label]"))));

    static final Rule RULE = new Rule(GUIDE, EquipmentNotDrawn::find);

    @Override
    public Guide guide() {
        return GUIDE;
    }

    private static List<EquipmentNotDrawn> find(Facts facts) {
        return facts.network().equipment().stream()
                .filter(e -> e.found() && !e.drawn() && isToBeDrawn(facts, e))
                .map(e -> of(facts, e))
                .toList();
    }

    /** Equipment that others are fed from. A load that stands at the end of one circuit is told at its circuit. */
    static boolean isToBeDrawn(Facts facts, Equipment e) {
        if (e.kind().isSource()) return false;
        return e.kind().isDistribution() || !facts.index().devicesOf(e.name()).isEmpty();
    }

    private static EquipmentNotDrawn of(Facts facts, Equipment e) {
        Served itself = new Served(e.name(), Optional.of(e.name()));
        List<Comparison> feeding =
                facts.index().tracedTo(itself).stream().filter(facts::isOpen).toList();
        List<Comparison> own = facts.index().devicesOf(e.name()).stream()
                .filter(facts::isOpen)
                .filter(c -> c.seen().stream().noneMatch(s -> feedsAnotherUndrawn(facts, c, s)))
                .toList();
        List<Comparison> all = Stream.concat(feeding.stream(), own.stream()).toList();
        String fedBy = feeding.isEmpty()
                ? " Its supply was not traced."
                : " It is fed by "
                        + Words.list(feeding.stream()
                                .map(c -> c.device().label() + " (drawn: " + c.drawnInWords() + ")")
                                .toList())
                        + ".";
        Optional<Renamed> renamed = Renamed.of(facts, e, feeding, own);
        String message = Words.namedFirst(e) + " was found and no drawing shows it." + fedBy
                + (own.isEmpty() ? "" : " " + Words.count(own.size(), "circuit") + " of it traced.")
                + renamed.map(Renamed::inWords).orElse("");
        String correction = renamed.filter(Renamed::isCertain)
                .map(r -> "Rename " + r.drawn() + " to " + e.name() + " on every drawing.")
                .orElse("Draw " + e.name() + ", its supply and its directory.");
        Events event = Events.about(Finding.Part.of(e.name()))
                .severity(Severities.fails(facts, e.name()) ? Severity.DANGER : Severity.WARNING)
                .sides("not drawn", Words.named(e) + " found")
                .says(message, correction)
                .with(facts, all)
                .evidence(e.seenBy());
        renamed.ifPresent(r -> event.part(Finding.Part.of(r.drawn())));
        return new EquipmentNotDrawn(event.corrections(
                        renamed.filter(Renamed::isCertain).isPresent()
                                ? renamed.get().corrections(facts, correction)
                                : Redraw.newEquipment(facts, e, all, correction))
                .build());
    }

    private static boolean feedsAnotherUndrawn(Facts facts, Comparison c, Served s) {
        return s.equipment()
                .flatMap(facts.index()::equipment)
                .filter(o -> !o.name().equals(c.panel()) && o.found() && !o.drawn() && isToBeDrawn(facts, o))
                .isPresent();
    }
}
