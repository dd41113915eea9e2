package asfound.finding;

import asfound.finding.Comparison.Answer;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The numbered entries of one panel, and those of them that were found at another position of the same panel. */
final class Displaced {

    private final Facts facts;
    private final List<Comparison> entries;
    /** An entry to the devices of the panel where what it names was found. */
    private final Map<Comparison, List<Comparison>> foundAt = new LinkedHashMap<>();
    /** The same the other way round. */
    private final Map<Comparison, List<Comparison>> origins = new LinkedHashMap<>();

    Displaced(Facts facts, List<Comparison> panel) {
        this.facts = facts;
        entries = panel.stream()
                .filter(c -> Comparisons.isNumber(c.device().key()))
                .sorted(Comparator.comparingInt(Displaced::position))
                .toList();
        Map<Integer, Comparison> byPosition = new HashMap<>();
        for (Comparison c : entries) byPosition.put(position(c), c);
        for (Comparison c : entries) {
            boolean displaced = facts.isOpen(c) && !c.backfed() && c.seen().size() == 1;
            if (!displaced || c.answer() == Answer.NOTHING) continue;
            List<Comparison> here = Origins.of(facts, c).stream()
                    .filter(o -> Comparisons.isNumber(o.device().key()) && byPosition.get(position(o)) == o)
                    .toList();
            for (Comparison o : here)
                foundAt.computeIfAbsent(o, k -> new java.util.ArrayList<>(1)).add(c);
            if (!here.isEmpty()) origins.put(c, here);
        }
    }

    static int position(Comparison c) {
        return Integer.parseInt(c.device().key());
    }

    static int row(Comparison c) {
        return (position(c) - 1) / 2;
    }

    /** In order of position. */
    List<Comparison> entries() {
        return entries;
    }

    /** Those of one side. */
    List<Comparison> side(boolean odd) {
        return entries.stream().filter(c -> position(c) % 2 == (odd ? 1 : 0)).toList();
    }

    /** The entries that were found elsewhere in the panel. */
    List<Comparison> moved() {
        return List.copyOf(foundAt.keySet());
    }

    /** The devices of the panel where what an entry names was found. */
    List<Comparison> foundAt(Comparison entry) {
        return foundAt.getOrDefault(entry, List.of());
    }

    /** The entries of the panel that name what a device was traced to. */
    List<Comparison> originsOf(Comparison device) {
        return origins.getOrDefault(device, List.of());
    }

    boolean isMoved(Comparison entry) {
        return foundAt.containsKey(entry);
    }

    /** Paper and survey differ there, and no other event has told it. */
    boolean isOpen(Comparison c) {
        return facts.isOpen(c);
    }

    /** Closed walks of devices that took each other's place. */
    List<Rings.Ring> rings() {
        return Rings.among(origins.keySet(), this::originsOf);
    }
}
