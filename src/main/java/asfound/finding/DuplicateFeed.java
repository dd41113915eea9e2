package asfound.finding;

import asfound.finding.Comparison.Answer;
import asfound.model.EquipmentKind;
import asfound.network.Connection;
import asfound.network.Device;
import asfound.network.Served;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One thing was traced to two or more devices, with no tie or transfer switch to explain it. Parallel poles of one
 * device are one device.
 */
public record DuplicateFeed(Event event) implements Finding {

    static final Guide GUIDE = new Guide(
            "duplicate-feed",
            "One thing was traced to two or more devices, with no tie or transfer switch to explain it.",
            "Opening the drawn device alone leaves the equipment live through the other.",
            "Isolate by all of the devices named, until one is taken off; draw both, and have an engineer look at how two supplies came to be joined.",
            List.of(
                    "29 CFR 1910.333(b)(2)(ii) and 1910.147(d): isolate from every source",
                    "NFPA 70E-2021 120.5: find all sources of supply from up-to-date drawings and tags"),
            new Guide.Example(
                    List.of("MDP/7 PANEL LP-1", "MDP/9 SPARE"), List.of("MDP/7 feeds LP-1", "MDP/9 feeds LP-1")),
            new Guide.NearMiss(
                    "Two poles of one device are one feed.",
                    new Guide.Example(
                            List.of("MDP/7-9-11 PANEL LP-1"), List.of("MDP/7 feeds LP-1", "MDP/9 feeds LP-1"))));

    static final Rule RULE = new Rule(GUIDE, DuplicateFeed::find);

    @Override
    public Guide guide() {
        return GUIDE;
    }

    /** Things that the same devices feed are one event. */
    private static List<DuplicateFeed> find(Facts facts) {
        Map<List<Comparison>, List<String>> fedAlike = new LinkedHashMap<>();
        Set<String> told = new HashSet<>();
        Map<String, List<Comparison>> tagged = tagged(facts);
        for (Comparison c : facts.open()) {
            for (Served thing : c.seen()) {
                if (c.backfed() || !isOneThing(facts, thing) || !told.add(thing.inWords())) continue;
                List<Comparison> feeding = feeding(facts, thing, tagged);
                if (separate(feeding) < 2) continue;
                List<String> things = fedAlike.computeIfAbsent(feeding, f -> new ArrayList<>());
                if (things.stream().noneMatch(t -> isAlso(facts, t, thing))) things.add(thing.inWords());
            }
        }
        return fedAlike.entrySet().stream()
                .map(e -> of(facts, e.getValue(), e.getKey()))
                .toList();
    }

    /**
     * Equipment under its own name, or a load with a tag or number of its own; a transfer switch or source has several by
     * design.
     */
    private static boolean isOneThing(Facts facts, Served thing) {
        if (thing.equipment().isEmpty())
            return Tags.isOne(thing.text())
                    || !Tags.isOfPlace(thing.text()) && facts.sames().isNumberedLoad(thing);
        EquipmentKind kind = facts.kindOf(thing.equipment().get());
        return kind != EquipmentKind.TRANSFER_SWITCH && !kind.isSource();
    }

    /** Devices traced to tagged loads, by the numbers in their texts, where a device that differs was traced to such a number. */
    private static Map<String, List<Comparison>> tagged(Facts facts) {
        Set<String> sought = new HashSet<>();
        for (Comparison c : facts.open()) numbers(facts, c).forEach(sought::add);
        Map<String, List<Comparison>> tagged = new HashMap<>();
        if (sought.isEmpty()) return tagged;
        for (Comparison c : facts.comparisons())
            numbers(facts, c)
                    .filter(sought::contains)
                    .distinct()
                    .forEach(n ->
                            tagged.computeIfAbsent(n, k -> new ArrayList<>(2)).add(c));
        return tagged;
    }

    private static Stream<String> numbers(Facts facts, Comparison c) {
        return c.backfed()
                ? Stream.empty()
                : c.seen().stream()
                        .filter(s -> s.equipment().isEmpty() && isOneThing(facts, s))
                        .flatMap(s -> Tags.number(s.text()).stream());
    }

    /** Equipment by its one name; a load by its tag, in whatever words: {@code UNIT HEATER UH-1}, {@code unit htr 1}. */
    private static Stream<Comparison> tracedTo(Facts facts, Served thing, Map<String, List<Comparison>> tagged) {
        Stream<Comparison> alike = facts.index().tracedTo(thing).stream();
        if (thing.equipment().isPresent()) return alike;
        return Tags.number(thing.text())
                .map(number -> tagged.getOrDefault(number, List.of()).stream()
                        .filter(c ->
                                c.seen().stream().anyMatch(s -> facts.sames().same(s, thing))))
                .orElse(alike);
    }

    private static boolean isAlso(Facts facts, String told, Served thing) {
        return thing.equipment().isEmpty() && facts.sames().same(new Served(told, Optional.empty()), thing);
    }

    /** Devices traced to it, but for those of a tie, and those in series behind another of them. */
    private static List<Comparison> feeding(Facts facts, Served thing, Map<String, List<Comparison>> tagged) {
        Set<Device> ties = thing.equipment().stream()
                .flatMap(e -> facts.index().touching(e).stream())
                .filter(connection -> connection.flow() == Connection.Flow.TIE)
                .flatMap(connection -> connection.devices().stream())
                .collect(Collectors.toSet());
        return tracedTo(facts, thing, tagged)
                .filter(c -> c.answer() == Answer.AGREES || facts.isOpen(c))
                .filter(c -> !ties.contains(c.device()))
                .filter(c -> !facts.through().passes(c.panel()))
                .filter(c -> facts.isOpen(c) || !isOwnSource(facts.kindOf(c.panel())))
                .toList();
    }

    /** A source of the building's own stands beside the supply by design; where it is drawn so, it is no second feed. */
    private static boolean isOwnSource(EquipmentKind kind) {
        return kind.isPureSource() && kind != EquipmentKind.UTILITY;
    }

    /** How many feeds they are: poles on consecutive positions of one side, drawn alike or not at all, are one device. */
    private static int separate(List<Comparison> feeding) {
        int feeds = 0;
        for (Comparison c : feeding) {
            boolean furtherPole = feeding.stream().anyMatch(o -> isNextPole(o, c));
            if (!furtherPole) feeds++;
        }
        return feeds;
    }

    private static boolean isNextPole(Comparison pole, Comparison next) {
        return pole.panel().equals(next.panel())
                && pole.drawn().equals(next.drawn())
                && Comparisons.isNumber(pole.device().key())
                && Comparisons.isNumber(next.device().key())
                && Displaced.position(next) == Displaced.position(pole) + 2;
    }

    private static DuplicateFeed of(Facts facts, List<String> things, List<Comparison> feeding) {
        List<Comparison> undrawnFirst = Stream.concat(
                        feeding.stream().filter(facts::isOpen), feeding.stream().filter(c -> !facts.isOpen(c)))
                .toList();
        String labels = Words.list(feeding.stream().map(c -> c.device().label()).toList());
        boolean one = things.size() == 1;
        String message = Words.list(things) + (one ? " was" : " were each") + " traced to " + labels
                + ", with no tie or transfer switch to explain it: opening one leaves " + (one ? "it" : "them")
                + " live through the other.";
        String correction = "Draw " + Words.list(things) + " at each of " + labels + " until one feed is taken off.";
        return new DuplicateFeed(Events.at(facts, undrawnFirst)
                .severity(Severity.DANGER)
                .says(message, correction)
                .corrections(Redraw.corrections(
                        facts, feeding.stream().filter(facts::isOpen).toList(), correction))
                .build());
    }
}
