package asfound.finding;

import asfound.model.EquipmentKind;
import asfound.network.Connection;
import asfound.network.Equipment;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * What is drawn behind equipment that supply merely passes through: a feeder traced to the panel beyond a transformer or
 * disconnect that is drawn between them is consistent with the drawing.
 */
final class Through {

    private final Map<String, EquipmentKind> kinds = new HashMap<>();
    private final Map<String, List<String>> downstream = new HashMap<>();
    private final Map<String, List<String>> upstream = new HashMap<>();

    Through(List<Equipment> equipment, List<Connection> connections) {
        for (Equipment e : equipment) kinds.put(e.name(), e.kind());
        for (Connection c : connections) {
            if (!c.drawn()) continue;
            downstream.computeIfAbsent(c.from(), k -> new ArrayList<>(2)).add(c.to());
            upstream.computeIfAbsent(c.to(), k -> new ArrayList<>(2)).add(c.from());
        }
    }

    /** One is drawn behind the other, with nothing but transformers and disconnects on the way. */
    boolean joins(String one, String other) {
        return beyond(one, downstream).contains(other)
                || beyond(other, downstream).contains(one);
    }

    /** What the drawings name as supply of an equipment, and what they draw before it through transformers and disconnects. */
    Set<String> suppliesOf(String equipment) {
        Set<String> supplies = new HashSet<>();
        for (String from : upstream.getOrDefault(equipment, List.of())) {
            supplies.add(from);
            supplies.addAll(beyond(from, upstream));
        }
        return supplies;
    }

    /** Transformers and disconnects drawn before an equipment, and what is drawn behind it where it is one. */
    Set<String> relativesOf(String equipment) {
        Set<String> relatives = new TreeSet<>(beyond(equipment, downstream));
        Deque<String> queue = new ArrayDeque<>(List.of(equipment));
        while (!queue.isEmpty())
            for (String from : upstream.getOrDefault(queue.remove(), List.of()))
                if (passes(from) && relatives.add(from)) queue.add(from);
        return relatives;
    }

    private Set<String> beyond(String start, Map<String, List<String>> next) {
        if (!passes(start)) return Set.of();
        Set<String> met = new HashSet<>();
        Deque<String> queue = new ArrayDeque<>(List.of(start));
        while (!queue.isEmpty()) {
            for (String there : next.getOrDefault(queue.remove(), List.of()))
                if (met.add(there) && passes(there)) queue.add(there);
        }
        return met;
    }

    /** Supply merely passes through it: a transformer or a disconnect. */
    boolean passes(String equipment) {
        EquipmentKind kind = kinds.get(equipment);
        return kind == EquipmentKind.TRANSFORMER || kind == EquipmentKind.DISCONNECT;
    }
}
