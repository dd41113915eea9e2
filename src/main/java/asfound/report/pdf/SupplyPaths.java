package asfound.report.pdf;

import asfound.model.EquipmentKind;
import asfound.model.Natural;
import asfound.network.Connection;
import asfound.network.Connection.Flow;
import asfound.network.Equipment;
import asfound.network.Network;
import asfound.network.Standing;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The part of a network by which supply could come to one equipment: sources, and what lies between. Branches that end in
 * mere loads are left out. Equipment without any drawn or found supply counts as a possible source.
 *
 * @param layers the equipment by its distance in connections, the equipment itself at 0; in natural order within
 * @param connections among the equipment shown
 * @param sources of supply on these paths, the nearest first, also those too far to be shown
 * @param unknown equipment of unknown supply on these paths
 * @param notShown how much further equipment on the paths was too far to be shown
 * @param linesNotShown how many connections stand for themselves no more, beside so many alike between the same two
 */
record SupplyPaths(
        List<List<Equipment>> layers,
        List<Connection> connections,
        List<Equipment> sources,
        List<Equipment> unknown,
        int notShown,
        int linesNotShown) {

    /** More boxes than this cannot be read on one printed sheet. */
    static final int MOST = 14;

    /** More lines of one standing between the same two boxes than this tell nothing more. */
    private static final int MOST_ALIKE = 5;

    private record Alike(String from, String to, Standing standing) {}

    static SupplyPaths of(Network network, String target) {
        return of(network, target, MOST);
    }

    static SupplyPaths of(Network network, String target, int most) {
        Map<String, Equipment> known = new LinkedHashMap<>();
        network.equipment().forEach(e -> known.put(e.name(), e));
        Map<String, Set<String>> ways = new HashMap<>();
        Set<String> fed = new HashSet<>();
        for (Connection c : network.connections()) {
            if (c.from().equals(c.to())) continue;
            ways.computeIfAbsent(c.to(), k -> new TreeSet<>(Natural.ORDER)).add(c.from());
            fed.add(c.to());
            if (c.flow() == Flow.TIE) fed.add(c.from());
            if (c.flow() != Flow.ONE_WAY)
                ways.computeIfAbsent(c.from(), k -> new TreeSet<>(Natural.ORDER))
                        .add(c.to());
        }
        Map<String, Integer> distance = distances(target, ways);
        distance.keySet().retainAll(pruned(target, distance.keySet(), network.connections(), known, fed));
        List<String> nearest = new ArrayList<>(distance.keySet());
        List<Equipment> all =
                nearest.stream().map(known::get).filter(e -> e != null).toList();
        List<Equipment> shown = all.subList(0, Math.min(most, all.size()));
        Set<String> names = new HashSet<>();
        shown.forEach(e -> names.add(e.name()));
        List<List<Equipment>> layers = new ArrayList<>();
        for (Equipment e : shown) {
            while (layers.size() <= distance.get(e.name())) layers.add(new ArrayList<>());
            layers.get(distance.get(e.name())).add(e);
        }
        List<Connection> between = network.connections().stream()
                .filter(c -> names.contains(c.from())
                        && names.contains(c.to())
                        && !c.from().equals(c.to()))
                .toList();
        Map<Alike, Integer> drawn = new HashMap<>();
        List<Connection> lines = between.stream()
                .filter(c -> drawn.merge(new Alike(c.from(), c.to(), c.standing()), 1, Integer::sum) <= MOST_ALIKE)
                .toList();
        List<Equipment> others =
                all.stream().filter(e -> !e.name().equals(target)).toList();
        return new SupplyPaths(
                layers,
                lines,
                others.stream().filter(e -> e.kind().isSource()).toList(),
                others.stream()
                        .filter(e -> !e.kind().isSource() && !fed.contains(e.name()))
                        .toList(),
                all.size() - shown.size(),
                between.size() - lines.size());
    }

    /** Everything from which supply can pass to the target, nearest first. */
    private static Map<String, Integer> distances(String target, Map<String, Set<String>> ways) {
        Map<String, Integer> distance = new LinkedHashMap<>();
        Deque<String> open = new ArrayDeque<>();
        distance.put(target, 0);
        open.add(target);
        while (!open.isEmpty()) {
            String at = open.remove();
            for (String next : ways.getOrDefault(at, Set.of()))
                if (distance.putIfAbsent(next, distance.get(at) + 1) == null) open.add(next);
        }
        return distance;
    }

    /** Takes off, again and again, what hangs on one neighbour alone and is no source. */
    private static Set<String> pruned(
            String target,
            Collection<String> reaching,
            List<Connection> connections,
            Map<String, Equipment> known,
            Set<String> fed) {
        Set<String> left = new LinkedHashSet<>(reaching);
        Map<String, Set<String>> neighbours = new HashMap<>();
        for (Connection c : connections) {
            if (!left.contains(c.from()) || !left.contains(c.to()) || c.from().equals(c.to())) continue;
            neighbours.computeIfAbsent(c.from(), k -> new HashSet<>()).add(c.to());
            neighbours.computeIfAbsent(c.to(), k -> new HashSet<>()).add(c.from());
        }
        Deque<String> open = new ArrayDeque<>(left);
        while (!open.isEmpty()) {
            String name = open.remove();
            Set<String> beside = neighbours.getOrDefault(name, Set.of());
            EquipmentKind kind = known.containsKey(name) ? known.get(name).kind() : EquipmentKind.UNKNOWN;
            boolean ends = beside.size() <= 1 && !kind.isSource() && fed.contains(name);
            if (name.equals(target) || !ends || !left.remove(name)) continue;
            for (String other : beside) {
                neighbours.get(other).remove(name);
                open.add(other);
            }
        }
        return left;
    }
}
