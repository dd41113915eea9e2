package asfound.isolation;

import asfound.network.Connection;
import asfound.network.Connection.Flow;
import asfound.network.Device;
import asfound.network.Network;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * Conductors and devices of one view of a small network, over which supply spreads until nothing changes. A place is a
 * bus or a device's load side.
 */
final class Field {

    private final List<Connection> connections;
    final List<Device> devices;
    private final Map<String, Integer> places = new HashMap<>();
    private final int[] a; // by conductor: the place at its supplying end
    private final int[] b;
    private final boolean[] back;
    private final int[] bus; // by device: the place of its bus
    private final int[] load;

    Field(Network network, Predicate<Connection> has, Predicate<Connection> passesBack) {
        network.equipment().forEach(e -> place(e.name()));
        connections = network.connections().stream().filter(has).toList();
        Set<Device> all = new TreeSet<>();
        connections.forEach(c -> all.addAll(c.devices()));
        devices = new ArrayList<>(all);
        bus = devices.stream().mapToInt(d -> place(d.in())).toArray();
        load = devices.stream().mapToInt(d -> place(loadSide(d))).toArray();
        a = new int[connections.size()];
        b = new int[connections.size()];
        back = new boolean[connections.size()];
        for (int i = 0; i < a.length; i++) {
            Connection c = connections.get(i);
            a[i] = place(c.from());
            b[i] = place(c.to());
            for (Device d : c.devices()) {
                if (d.in().equals(c.from())) a[i] = place(loadSide(d));
                else b[i] = place(loadSide(d));
            }
            back[i] = c.flow() != Flow.ONE_WAY && passesBack.test(c);
        }
    }

    private static String loadSide(Device d) {
        return "load side of " + d.label();
    }

    private int place(String name) {
        return places.computeIfAbsent(name, n -> places.size());
    }

    /** Every place that is live when the given ones are and the open devices are open. */
    Set<String> live(
            Collection<String> sources,
            Set<Device> open,
            Predicate<Connection> forward,
            Predicate<Connection> backward) {
        boolean[] passes = new boolean[a.length], passesBack = new boolean[a.length], closed = new boolean[bus.length];
        for (int i = 0; i < a.length; i++) {
            passes[i] = forward.test(connections.get(i));
            passesBack[i] = back[i] && backward.test(connections.get(i));
        }
        for (int d = 0; d < closed.length; d++) closed[d] = !open.contains(devices.get(d));
        boolean[] live = new boolean[places.size()];
        sources.forEach(s -> live[places.get(s)] = true);
        for (boolean more = true; more; ) {
            more = false;
            for (int i = 0; i < a.length; i++) {
                if (passes[i] && live[a[i]] && !live[b[i]]) more = live[b[i]] = true;
                if (passesBack[i] && live[b[i]] && !live[a[i]]) more = live[a[i]] = true;
            }
            for (int d = 0; d < closed.length; d++)
                if (closed[d] && live[bus[d]] != live[load[d]]) more = live[bus[d]] = live[load[d]] = true;
        }
        Set<String> names = new HashSet<>();
        places.forEach((name, i) -> {
            if (live[i]) names.add(name);
        });
        return names;
    }

    Set<String> live(Collection<String> sources, Set<Device> open) {
        return live(sources, open, c -> true, c -> true);
    }

    /** Where connections lead that pass a test, crossing neither an open device nor its load side. */
    Set<String> leadsOn(Collection<String> starts, Set<Device> open, Predicate<Connection> passes) {
        Predicate<Connection> led = passes.and(c -> c.devices().stream().noneMatch(open::contains));
        return live(starts, open, led, led);
    }

    Set<String> places() {
        return Set.copyOf(places.keySet());
    }

    /** Everything that feeds the equipment, directly or through others, in the directions drawn or found. */
    Set<String> fedBy(String name) {
        Set<String> up = new HashSet<>();
        for (boolean more = true; more; ) {
            more = false;
            for (Connection c : connections) {
                if (c.to().equals(name) || up.contains(c.to())) more |= up.add(c.from());
                if (c.flow() == Flow.TIE && (c.from().equals(name) || up.contains(c.from()))) more |= up.add(c.to());
            }
        }
        return up;
    }

    /** Equipment that some connection feeds, or a tie leads to. */
    Set<String> fed() {
        Set<String> fed = new HashSet<>();
        for (Connection c : connections) {
            fed.add(c.to());
            if (c.flow() == Flow.TIE) fed.add(c.from());
        }
        return fed;
    }
}
