package asfound.network;

import asfound.model.CircuitRef;
import asfound.model.EquipmentKind;
import asfound.model.Natural;
import asfound.model.Observation.Relation;
import asfound.network.DeviceRecord.Sighting;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Lays what was seen at each device beside the connections drawn, and adds the connections that only the survey knows. */
final class Tracer {

    private final Kinds kinds;
    private final DeviceKeys keys;
    private final List<Draft> all;
    private final Map<Device, List<Draft>> byDevice = new HashMap<>();
    private final Map<String, List<Draft>> byEnds = new HashMap<>();
    private final Map<String, List<Draft>> onwards = new HashMap<>();
    private final Map<List<Object>, Draft> found = new LinkedHashMap<>();

    Tracer(List<Draft> drawn, Kinds kinds, DeviceKeys keys) {
        this.kinds = kinds;
        this.keys = keys;
        this.all = new ArrayList<>(drawn);
        drawn.forEach(this::index);
    }

    private void index(Draft d) {
        d.devices.forEach(
                x -> byDevice.computeIfAbsent(x, k -> new ArrayList<>(1)).add(d));
        byEnds.computeIfAbsent(d.from + "\n" + d.to, k -> new ArrayList<>(1)).add(d);
        onwards.computeIfAbsent(d.from, k -> new ArrayList<>(1)).add(d);
    }

    List<Draft> drafts() {
        return all;
    }

    /** Everything that was seen at one device, or at one equipment without naming a device. */
    private static final class Spot {
        final String panel;
        final Optional<Device> device;
        final List<Sighting> sightings;
        /** For each sighting the connections that it speaks for. */
        final List<Set<Draft>> meant;

        Spot(String panel, Optional<Device> device, List<Sighting> sightings) {
            this.panel = panel;
            this.device = device;
            this.sightings = sightings;
            meant = new ArrayList<>(Collections.nCopies(sightings.size(), Set.of()));
        }
    }

    /**
     * Lays everything that was seen, in three rounds, so that neither names nor the order of rows make a difference: what
     * devices feed; what feeds them, since a backfed device looks for its supply's own one; then what speaks against.
     */
    void lay(Sightings seen) {
        List<Spot> spots = new ArrayList<>();
        seen.byDevice.keySet().stream()
                .sorted()
                .forEach(d -> spots.add(new Spot(d.in(), Optional.of(d), seen.byDevice.get(d))));
        seen.withoutDevice.keySet().stream()
                .sorted(Natural.ORDER)
                .forEach(p -> spots.add(new Spot(p, Optional.empty(), seen.withoutDevice.get(p))));
        for (boolean outgoing : new boolean[] {true, false}) spots.forEach(spot -> speakFor(spot, outgoing));
        spots.forEach(this::speakAgainst);
    }

    private void speakFor(Spot spot, boolean outgoing) {
        for (int i = 0; i < spot.sightings.size(); i++) {
            Sighting s = spot.sightings.get(i);
            if (isConnection(s) && isOutgoing(s) == outgoing) spot.meant.set(i, meantBy(spot.panel, spot.device, s));
        }
    }

    private static boolean isConnection(Sighting s) {
        Relation r = s.observation().relation();
        return r == Relation.FEEDS || r == Relation.FED_BY;
    }

    /** A source is never fed: a device traced towards one is a backfed device. */
    private boolean isOutgoing(Sighting s) {
        return s.observation().relation() == Relation.FEEDS
                && s.serves()
                        .flatMap(Served::equipment)
                        .filter(n -> kinds.of(n).isPureSource())
                        .isEmpty();
    }

    private void speakAgainst(Spot spot) {
        if (spot.device.isEmpty()) return;
        List<Draft> here = byDevice.getOrDefault(spot.device.get(), List.of());
        for (int i = 0; i < spot.sightings.size(); i++) {
            Set<Draft> meant = spot.meant.get(i);
            boolean asDrawn = meant.stream().anyMatch(m -> m.drawn && here.contains(m));
            for (Draft d : here) {
                // a device that is drawn to feed two things was not seen to feed another when one of them was traced
                if (meant.contains(d) || (asDrawn && !d.disputed) || isOnlyInferred(spot.device.get(), d)) continue;
                speakAgainst(d, spot.sightings.get(i), spot.panel);
            }
        }
    }

    /** The supply's own device stands in a found series by inference: what is seen at it does not undo the panel's trace. */
    private static boolean isOnlyInferred(Device device, Draft d) {
        return !d.drawn && d.devices.size() > 1 && device.in().equals(d.from);
    }

    private void speakAgainst(Draft d, Sighting s, String panel) {
        switch (s.observation().relation()) {
            case NOTHING, NO_DEVICE -> d.deny(s);
            case DOES_NOT_FEED -> {
                Optional<String> other = s.serves().flatMap(Served::equipment);
                if (other.filter(o -> d.joins(panel, o)
                                || d.joins(o, panel)
                                || !beyond(d, o).isEmpty())
                        .isPresent()) d.deny(s);
            }
            case FEEDS, FED_BY -> {
                if (s.serves().isPresent()) d.speakOfAnother(s);
            }
        }
    }

    private Set<Draft> meantBy(String panel, Optional<Device> device, Sighting s) {
        Optional<String> named = s.serves().flatMap(Served::equipment).filter(n -> !n.equals(panel));
        if (named.isEmpty()) return Set.of();
        String other = named.get();
        boolean outgoing =
                s.observation().relation() == Relation.FEEDS && !kinds.of(other).isPureSource();
        Set<Draft> meant = outgoing ? outgoing(panel, device, other, s) : incoming(panel, device, other, s);
        if (!meant.isEmpty() || !s.observation().method().traces()) return meant;
        List<Device> devices = outgoing ? device.map(List::of).orElse(List.of()) : inSeries(panel, device, other);
        Draft draft = outgoing ? found(panel, devices, other) : found(other, devices, panel);
        draft.speakFor(s);
        return Set.of(draft);
    }

    private Draft found(String from, List<Device> devices, String to) {
        return found.computeIfAbsent(List.of(from, devices, to), k -> {
            Draft d = new Draft(from, devices, to, DrawnConnections.flowInto(kinds.of(to)), false);
            all.add(d);
            index(d);
            return d;
        });
    }

    private Set<Draft> outgoing(String panel, Optional<Device> device, String other, Sighting s) {
        Set<Draft> meant = new HashSet<>();
        List<Draft> candidates = device.isPresent()
                ? byDevice.getOrDefault(device.get(), List.of())
                : byEnds.getOrDefault(panel + "\n" + other, List.of()).stream()
                        .filter(d -> d.devices.isEmpty())
                        .toList();
        for (Draft d : candidates) {
            boolean own = d.drawn || d.devices.size() == 1;
            if ((own && d.joins(panel, other)) || (d.drawn && d.joins(other, panel))) meant.add(d);
            else if (d.from.equals(panel) && d.drawn) {
                List<Draft> way = beyond(d, other);
                if (!way.isEmpty()) meant.add(d);
                way.stream().filter(w -> w.devices.isEmpty()).forEach(meant::add);
            }
        }
        if (meant.isEmpty() && device.isPresent()) meant.addAll(tiesHeldAtTheOtherEnd(panel, device.get(), other));
        meant.forEach(d -> d.speakFor(s));
        return meant;
    }

    /** A tie has one device; whichever board a surveyor counts it to, it is that one. */
    private List<Draft> tiesHeldAtTheOtherEnd(String panel, Device device, String other) {
        Device there = keys.device(other, CircuitRef.parse(device.key()).orElseThrow());
        return byDevice.getOrDefault(there, List.of()).stream()
                .filter(d -> d.flow == Connection.Flow.TIE && d.joins(panel, other))
                .toList();
    }

    private Set<Draft> incoming(String panel, Optional<Device> device, String other, Sighting s) {
        List<Draft> between = new ArrayList<>(byEnds.getOrDefault(other + "\n" + panel, List.of()));
        byEnds.getOrDefault(panel + "\n" + other, List.of()).stream()
                .filter(d -> d.flow == Connection.Flow.TIE)
                .forEach(between::add);
        Set<Draft> meant = new HashSet<>();
        for (Draft d : between) if (device.map(d.devices::contains).orElse(d.devices.isEmpty())) meant.add(d);
        meant.forEach(d -> d.speakFor(s));
        if (!meant.isEmpty()) return meant;
        // which of the supply's devices it is, was not seen: this bears on the drawn connection and traces none of them
        between.stream().filter(d -> d.drawn).forEach(d -> d.note(s));
        if (device.isEmpty()) meant.addAll(between);
        for (Draft last : beyondTransformer(other, panel)) {
            if (last.devices.isEmpty()) last.speakFor(s);
            else last.note(s);
            meant.add(last);
        }
        return meant;
    }

    private List<Draft> beyondTransformer(String supply, String panel) {
        return onwards.getOrDefault(supply, List.of()).stream()
                .filter(d -> d.drawn)
                .flatMap(d -> beyond(d, panel).stream())
                .filter(d -> d.to.equals(panel))
                .distinct()
                .toList();
    }

    /** The supply's own device is in series with the panel's, where there is just one of it. */
    private List<Device> inSeries(String panel, Optional<Device> device, String other) {
        if (device.isEmpty()) return List.of();
        List<Device> own = byEnds.getOrDefault(other + "\n" + panel, List.of()).stream()
                .flatMap(d -> d.devices.stream())
                .filter(d -> d.in().equals(other))
                .distinct()
                .toList();
        return own.size() == 1 ? List.of(own.get(0), device.get()) : List.of(device.get());
    }

    /**
     * The drawn connections that lead on from a feeder's transformer to what was seen beyond it; a disconnect without a
     * device of its own is passed in the same way. Empty where none lead there.
     */
    private List<Draft> beyond(Draft feeder, String seen) {
        return beyond(feeder.to, seen, 3);
    }

    private List<Draft> beyond(String through, String seen, int steps) {
        EquipmentKind kind = kinds.of(through);
        if (steps == 0 || (kind != EquipmentKind.TRANSFORMER && kind != EquipmentKind.DISCONNECT)) return List.of();
        for (Draft next : onwards.getOrDefault(through, List.of())) {
            if (!next.drawn || (kind == EquipmentKind.DISCONNECT && !next.devices.isEmpty())) continue;
            if (next.to.equals(seen)) return List.of(next);
            List<Draft> rest = beyond(next.to, seen, steps - 1);
            if (!rest.isEmpty()) {
                List<Draft> way = new ArrayList<>(rest);
                way.add(0, next);
                return way;
            }
        }
        return List.of();
    }
}
