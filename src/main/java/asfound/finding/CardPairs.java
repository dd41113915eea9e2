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
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which two panels may have each other's card: devices at the same position of both where one names, on paper or as
 * traced, a number that the other does. Numbers and equipment only, for {@code LIGHTING} stands on every card.
 */
final class CardPairs {

    private static final Pattern NUMBER = Pattern.compile("[A-Za-z]*-?\\d+[A-Za-z]?");

    /** A number that this many panels have at one position tells none of them apart. */
    private static final int COMMON = 20;

    /** A panel whose traced devices do not meet its card, and the panel whose card or circuits they may be. */
    record Pair(String panel, String other) {}

    private record Sign(String position, String number) {}

    private CardPairs() {}

    /** Pairs that share signs at enough positions to be looked at, in order of their names. */
    static List<Pair> of(Facts facts) {
        Map<Sign, Set<String>> panels = new HashMap<>();
        List<Comparison> wrong = facts.open().stream()
                .filter(c -> c.answer() == Answer.OTHER && !c.backfed())
                .toList();
        for (Comparison c : wrong) for (Sign s : signs(c)) panels.putIfAbsent(s, new LinkedHashSet<>());
        for (List<Comparison> devices : facts.index().panels().values())
            for (Comparison c : devices)
                for (Sign s : signs(c)) if (panels.containsKey(s)) panels.get(s).add(c.panel());
        Map<String, Map<String, Set<String>>> shared = new TreeMap<>();
        for (Comparison c : wrong)
            for (Sign s : signs(c))
                if (panels.get(s).size() <= COMMON)
                    for (String other : panels.get(s))
                        if (!other.equals(c.panel()))
                            shared.computeIfAbsent(c.panel(), k -> new TreeMap<>())
                                    .computeIfAbsent(other, k -> new LinkedHashSet<>())
                                    .add(s.position());
        List<Pair> pairs = new ArrayList<>();
        shared.forEach((panel, others) -> others.forEach((other, positions) -> {
            if (positions.size() >= Shift.RUN) pairs.add(new Pair(panel, other));
        }));
        return pairs;
    }

    private static Set<Sign> signs(Comparison c) {
        Set<Sign> signs = new LinkedHashSet<>();
        for (Served s : c.drawn()) add(signs, c, s);
        for (Served s : c.seen()) add(signs, c, s);
        return signs;
    }

    private static void add(Set<Sign> signs, Comparison c, Served thing) {
        String key = c.device().key();
        thing.equipment().ifPresent(e -> signs.add(new Sign(key, "=" + e)));
        Matcher numbers = NUMBER.matcher(thing.text());
        while (numbers.find()) signs.add(new Sign(key, numbers.group().replaceAll("\\D", "")));
    }

    /** It holds a number or is equipment: said of one thing in the building. */
    static boolean isSpecific(Served thing) {
        return thing.equipment().isPresent() || thing.text().chars().anyMatch(Character::isDigit);
    }
}
