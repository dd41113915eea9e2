package asfound.finding;

import asfound.model.EquipmentKind;
import asfound.network.Equipment;
import asfound.network.Served;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A source of supply was found that no drawing shows. It may be a source that no drawing names, or a drawn one
 * joined where no drawing shows it.
 */
public record UndocumentedSource(Event event) implements Finding {

    static final Guide GUIDE = new Guide(
            "undocumented-source",
            "A source of supply was found that no drawing shows.",
            "With every drawn device open, this source can still hold the equipment live.",
            "Do not isolate by the drawings of this equipment; add the source and its device to the one-line and the schedule, and put up the directory of sources.",
            List.of(
                    "NFPA 70 230.2(E), 700.7, 702.7, 705.10: a directory or plaque of all sources at one site",
                    "29 CFR 1910.333(b)(2)(ii) and 1910.147(d): isolate from every source",
                    "NIOSH state FACE investigation 04WA080: a supply that the as-built drawings did not show"),
            new Guide.Example(
                    List.of("MDP/7 PANEL LP-1", "LP-1/42 SPARE"), List.of("LP-1/42 fed by INV-1 [kind inverter]")),
            new Guide.NearMiss(
                    "The source is drawn where it was found.",
                    new Guide.Example(
                            List.of("MDP/7 PANEL LP-1", "LP-1/42 INV-1", "INV-1 is inverter", "INV-1 -> LP-1"),
                            List.of("LP-1/42 fed by INV-1 [kind inverter]"))));

    static final Rule RULE = new Rule(GUIDE, UndocumentedSource::find);

    @Override
    public Guide guide() {
        return GUIDE;
    }

    private static List<UndocumentedSource> find(Facts facts) {
        Map<String, List<Comparison>> bySource = new LinkedHashMap<>();
        for (Comparison c : facts.open())
            for (Served s : c.seen())
                s.equipment()
                        .filter(name -> isUndocumented(facts, c, name))
                        .ifPresent(name -> bySource.computeIfAbsent(name, n -> new ArrayList<>())
                                .add(c));
        for (Equipment e : facts.network().equipment())
            if (e.found() && !e.drawn() && e.kind().isSource())
                bySource.computeIfAbsent(e.name(), n -> new ArrayList<>());
        return bySource.entrySet().stream()
                .map(e -> of(facts, e.getKey(), e.getValue()))
                .toList();
    }

    /** A source that no drawing shows, or a drawn one that was found to supply where no drawing lets it. */
    private static boolean isUndocumented(Facts facts, Comparison c, String name) {
        EquipmentKind kind = facts.kindOf(name);
        boolean drawn = facts.index().equipment(name).filter(Equipment::drawn).isPresent();
        return kind.isPureSource() ? c.backfed() || !drawn || c.drawn().isEmpty() : kind.isSource() && !drawn;
    }

    private static UndocumentedSource of(Facts facts, String source, List<Comparison> joins) {
        Optional<Equipment> equipment = facts.index().equipment(source);
        List<Comparison> own = facts.index().devicesOf(source).stream()
                .filter(facts::isOpen)
                .filter(c -> equipment.filter(Equipment::drawn).isEmpty())
                .toList();
        List<Comparison> all =
                Stream.concat(joins.stream(), own.stream()).distinct().toList();
        boolean drawn = equipment.filter(Equipment::drawn).isPresent();
        String at = joins.isEmpty()
                ? ""
                : " at "
                        + Words.list(joins.stream()
                                .map(c -> c.device().label() + " (drawn: " + c.drawnInWords() + ")")
                                .toList());
        String name = equipment.map(Words::named).orElse(source);
        String message = equipment.map(Words::namedFirst).orElse(source) + " was found" + at
                + (drawn ? ", where no drawing joins it." : ", and no drawing shows it.")
                + " It can hold the equipment live with every drawn device open.";
        String correction = "Draw " + source + at + ", and put it in the directory of sources.";
        Events event = Events.about(Finding.Part.of(source))
                .severity(Severity.DANGER)
                .sides(drawn ? source + " drawn elsewhere" : "not drawn", name + " found" + at)
                .says(message, correction)
                .with(facts, all)
                .corrections(Redraw.newSource(facts, source, all, correction));
        equipment.filter(e -> !e.drawn()).ifPresent(e -> event.evidence(e.seenBy()));
        return new UndocumentedSource(event.build());
    }
}
