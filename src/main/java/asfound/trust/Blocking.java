package asfound.trust;

import asfound.network.Connection;
import asfound.network.Device;
import asfound.network.Equipment;
import asfound.network.Network;
import asfound.network.Standing;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What stands between an equipment and a settled verdict: with its drawn points open, every connection that nobody has
 * traced (or on which observations conflict or are stale) and over which supply could still come.
 */
final class Blocking {

    private final Map<String, List<Connection>> touching = new HashMap<>();
    private final Set<String> sources = new HashSet<>();

    Blocking(Network network) {
        for (Connection c : network.connections()) {
            touching.computeIfAbsent(c.from(), e -> new ArrayList<>()).add(c);
            if (!c.to().equals(c.from()))
                touching.computeIfAbsent(c.to(), e -> new ArrayList<>()).add(c);
        }
        for (Equipment e : network.equipment()) if (e.kind().isSource()) sources.add(e.name());
    }

    /** The unsettled connections on the ways from any source to {@code target} that the open points leave. */
    List<Connection> of(String target, List<Device> openPoints) {
        Set<String> upstream = spread(Set.of(target), openPoints, null, true);
        Set<String> live = new HashSet<>();
        for (String e : upstream) if (sources.contains(e) && !e.equals(target)) live.add(e);
        if (live.isEmpty()) return List.of();
        Set<String> between = withoutDeadEnds(spread(live, openPoints, upstream, false), live, target, openPoints);
        List<Connection> unsettled = new ArrayList<>();
        for (String e : between)
            for (Connection c : touching.getOrDefault(e, List.of()))
                if (c.from().equals(e) && between.contains(c.to()) && isUnsettled(c) && isClosed(c, openPoints))
                    unsettled.add(c);
        return unsettled;
    }

    /** Everything that supply can come from (backwards) or reach (forwards), kept within a set where one is given. */
    private Set<String> spread(Set<String> start, List<Device> openPoints, Set<String> within, boolean backwards) {
        Set<String> met = new HashSet<>(start);
        Deque<String> next = new ArrayDeque<>(start);
        while (!next.isEmpty()) {
            String here = next.remove();
            for (Connection c : touching.getOrDefault(here, List.of())) {
                if (!isClosed(c, openPoints)) continue;
                boolean downstream = c.from().equals(here);
                if (c.flow() == Connection.Flow.ONE_WAY && downstream == backwards) continue;
                String there = downstream ? c.to() : c.from();
                if ((within == null || within.contains(there)) && met.add(there)) next.add(there);
            }
        }
        return met;
    }

    /** Supply that goes into a dead end comes no further: what hangs by one connection is on no way to the target. */
    private Set<String> withoutDeadEnds(Set<String> between, Set<String> live, String target, List<Device> openPoints) {
        Set<String> left = new HashSet<>(between);
        Deque<String> next = new ArrayDeque<>(between);
        while (!next.isEmpty()) {
            String here = next.remove();
            if (here.equals(target) || live.contains(here) || !left.contains(here)) continue;
            Set<String> neighbours = new HashSet<>();
            for (Connection c : touching.getOrDefault(here, List.of())) {
                String there = c.from().equals(here) ? c.to() : c.from();
                if (isClosed(c, openPoints) && left.contains(there)) neighbours.add(there);
            }
            if (neighbours.size() > 1) continue;
            left.remove(here);
            next.addAll(neighbours);
        }
        return left;
    }

    private static boolean isClosed(Connection c, List<Device> openPoints) {
        return c.standing() != Standing.CONTRADICTED && c.devices().stream().noneMatch(openPoints::contains);
    }

    static boolean isUnsettled(Connection c) {
        return switch (c.standing()) {
            case UNTRACED, IN_CONFLICT, STALE -> true;
            case CONFIRMED, FOUND, CONTRADICTED -> false;
        };
    }
}
