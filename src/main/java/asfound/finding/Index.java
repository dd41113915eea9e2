package asfound.finding;

import asfound.drawing.Drawings;
import asfound.isolation.Verdict;
import asfound.network.Connection;
import asfound.network.Device;
import asfound.network.Equipment;
import asfound.network.Network;
import asfound.network.Served;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The facts by name: equipment, verdicts, devices of a panel, devices drawn or traced to a thing. */
final class Index {

    private final Map<Device, Comparison> byDevice = new HashMap<>();
    private final Map<String, List<Comparison>> byPanel = new LinkedHashMap<>();
    private final Map<String, List<Comparison>> drawnTo = new HashMap<>();
    private final Map<String, List<Comparison>> tracedTo = new HashMap<>();
    private final Map<String, Equipment> equipment = new HashMap<>();
    private final Map<String, Verdict> verdicts = new HashMap<>();
    private final Map<String, List<Connection>> into = new HashMap<>();
    private final Map<String, List<Connection>> touching = new HashMap<>();
    private final Paper paper;

    Index(Drawings drawings, Network network, List<Verdict> verdicts, List<Comparison> comparisons) {
        for (Equipment e : network.equipment()) equipment.put(e.name(), e);
        paper = new Paper(drawings, network.equipment());
        for (Verdict v : verdicts) this.verdicts.put(v.equipment(), v);
        for (Connection c : network.connections()) {
            add(into, c.to(), c);
            add(touching, c.from(), c);
            add(touching, c.to(), c);
        }
        for (Comparison c : comparisons) {
            byDevice.put(c.device(), c);
            add(byPanel, c.panel(), c);
            for (Served d : c.drawn()) add(drawnTo, key(d), c);
            for (Served s : c.seen()) if (!c.backfed()) add(tracedTo, key(s), c);
        }
    }

    private static <K, V> void add(Map<K, List<V>> map, K key, V value) {
        map.computeIfAbsent(key, k -> new ArrayList<>(2)).add(value);
    }

    /** Equal for one equipment, and for texts that are written alike. */
    private static String key(Served thing) {
        return thing.equipment().map(e -> "=" + e).orElse(thing.text());
    }

    Optional<Comparison> at(Device device) {
        return Optional.ofNullable(byDevice.get(device));
    }

    /** The devices of each panel that has any, in the network's order. */
    Map<String, List<Comparison>> panels() {
        return byPanel;
    }

    List<Comparison> devicesOf(String panel) {
        return byPanel.getOrDefault(panel, List.of());
    }

    /** Devices drawn to feed a thing; of descriptions, those written alike. */
    List<Comparison> drawnTo(Served thing) {
        return drawnTo.getOrDefault(key(thing), List.of());
    }

    /** Devices traced to feed a thing; of descriptions, those written alike. */
    List<Comparison> tracedTo(Served thing) {
        return tracedTo.getOrDefault(key(thing), List.of());
    }

    Optional<Equipment> equipment(String name) {
        return Optional.ofNullable(equipment.get(name));
    }

    Optional<Verdict> verdict(String name) {
        return Optional.ofNullable(verdicts.get(name));
    }

    /** Every connection that supplies an equipment, drawn or found. */
    List<Connection> into(String name) {
        return into.getOrDefault(name, List.of());
    }

    /** Every connection at either end of an equipment. */
    List<Connection> touching(String name) {
        return touching.getOrDefault(name, List.of());
    }

    Paper paper() {
        return paper;
    }
}
