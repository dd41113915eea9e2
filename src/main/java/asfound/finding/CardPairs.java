package asfound.finding;

import asfound.finding.Comparison.Answer;
import asfound.network.Served;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Which two panels may have each other's card: devices at the same position of both where one names, on paper or as
 * traced, a number that the other does. Numbers and equipment only, for {@code LIGHTING} stands on every card.
 */
final class CardPairs {

    /** A number that this many panels have at one position tells none of them apart. */
    private static final int COMMON = 20;

    /** A panel whose traced devices do not meet its card, and the panel whose card or circuits they may be. */
    record Pair(String panel, String other) {}

    private record Sign(String position, String number) {}

    private CardPairs() {}

    /** Pairs that share signs at enough positions to be looked at, in order of their names. */
    static List<Pair> of(Facts facts) {
        List<Comparison> wrong = wrong(facts);
        Map<Sign, Set<String>> panels = new HashMap<>();
        for (Comparison c : wrong) for (Sign s : signs(c)) panels.put(s, new LinkedHashSet<>());
        if (panels.isEmpty()) return List.of();
        Set<String> positions = panels.keySet().stream().map(Sign::position).collect(Collectors.toSet());
        for (List<Comparison> devices : facts.index().panels().values())
            for (Comparison c : devices)
                if (positions.contains(c.device().key()))
                    for (Sign s : signs(c))
                        if (panels.containsKey(s)) panels.get(s).add(c.panel());
        return pairs(shared(wrong, panels));
    }

    /** Devices traced to something else than drawn, of the panels that have as many as make an event. */
    private static List<Comparison> wrong(Facts facts) {
        Map<String, List<Comparison>> byPanel = facts.open().stream()
                .filter(c -> c.answer() == Answer.OTHER && !c.backfed())
                .collect(Collectors.groupingBy(Comparison::panel, TreeMap::new, Collectors.toList()));
        return byPanel.values().stream()
                .filter(own -> own.size() >= Shift.RUN)
                .flatMap(List::stream)
                .toList();
    }

    /** To each panel the others, and to each of them the positions at which the two share a sign. */
    private static Map<String, Map<String, Set<String>>> shared(List<Comparison> wrong, Map<Sign, Set<String>> panels) {
        Map<String, Map<String, Set<String>>> shared = new TreeMap<>();
        for (Comparison c : wrong)
            for (Sign s : signs(c)) {
                if (panels.get(s).size() > COMMON) continue;
                for (String other : panels.get(s))
                    if (!other.equals(c.panel()))
                        shared.computeIfAbsent(c.panel(), k -> new TreeMap<>())
                                .computeIfAbsent(other, k -> new LinkedHashSet<>())
                                .add(s.position());
            }
        return shared;
    }

    private static List<Pair> pairs(Map<String, Map<String, Set<String>>> shared) {
        List<Pair> pairs = new ArrayList<>();
        shared.forEach((panel, others) -> others.forEach((other, positions) -> {
            if (positions.size() >= Shift.RUN) pairs.add(new Pair(panel, other));
        }));
        return pairs;
    }

    private static Set<Sign> signs(Comparison c) {
        Set<Sign> signs = new LinkedHashSet<>();
        for (Served s : c.drawn()) add(signs, c.device().key(), s);
        for (Served s : c.seen()) add(signs, c.device().key(), s);
        return signs;
    }

    private static void add(Set<Sign> signs, String key, Served thing) {
        thing.equipment().ifPresent(e -> signs.add(new Sign(key, "=" + e)));
        String text = thing.text();
        for (int i = 0; i < text.length(); i++) {
            int from = i;
            while (i < text.length() && Character.isDigit(text.charAt(i))) i++;
            if (i > from) signs.add(new Sign(key, text.substring(from, i)));
        }
    }

    /** It holds a number or is equipment: said of one thing in the building. */
    static boolean isSpecific(Served thing) {
        return thing.equipment().isPresent() || thing.text().chars().anyMatch(Character::isDigit);
    }
}
