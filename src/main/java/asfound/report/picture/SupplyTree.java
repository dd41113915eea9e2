package asfound.report.picture;

import asfound.model.Natural;
import asfound.network.Connection;
import asfound.network.Equipment;
import asfound.network.Network;
import asfound.network.Standing;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * A tree of supply over the whole network, for dividing it into sheets and for nothing else: each equipment hangs below
 * the one that it is first reached from, sources on top. Connections that evidence speaks against are followed last, so
 * that equipment stands beside its real supply where that is known.
 */
final class SupplyTree {

    private final Map<String, List<String>> children = new HashMap<>();
    private final List<String> roots = new ArrayList<>();
    private final List<String> reached = new ArrayList<>();
    private final Set<String> seen = new HashSet<>();

    SupplyTree(Network network) {
        Map<String, List<Connection>> leaving = new HashMap<>();
        Set<String> supplied = new HashSet<>();
        for (Connection c : network.connections()) {
            leaving.computeIfAbsent(c.from(), k -> new ArrayList<>()).add(c);
            supplied.add(c.to());
            if (c.flow() == Connection.Flow.TIE)
                leaving.computeIfAbsent(c.to(), k -> new ArrayList<>()).add(c);
        }
        List<String> sources = names(network, e -> e.kind().isPureSource());
        sources.forEach(this::root);
        walk(sources, leaving, c -> c.standing() != Standing.CONTRADICTED);
        walk(new ArrayList<>(reached), leaving, c -> true);
        // What no source reaches still has to stand somewhere: the tops of such islands first.
        for (String island : names(network, e -> !supplied.contains(e.name()))) startAt(island, leaving);
        for (String ring : names(network, e -> true)) startAt(ring, leaving);
    }

    private static List<String> names(Network network, Predicate<Equipment> which) {
        return network.equipment().stream()
                .filter(which)
                .map(Equipment::name)
                .sorted(Natural.ORDER)
                .toList();
    }

    private void startAt(String name, Map<String, List<Connection>> leaving) {
        if (seen.contains(name)) return;
        root(name);
        walk(List.of(name), leaving, c -> true);
    }

    private void root(String name) {
        if (!seen.add(name)) return;
        roots.add(name);
        reached.add(name);
    }

    private void walk(List<String> starts, Map<String, List<Connection>> leaving, Predicate<Connection> follow) {
        Deque<String> next = new ArrayDeque<>(starts);
        while (!next.isEmpty()) {
            String at = next.remove();
            for (Connection c : leaving.getOrDefault(at, List.of())) {
                String other = c.from().equals(at) ? c.to() : c.from();
                if (!follow.test(c) || !seen.add(other)) continue;
                children.computeIfAbsent(at, k -> new ArrayList<>()).add(other);
                reached.add(other);
                next.add(other);
            }
        }
    }

    /** The tops of the forest, sources first. */
    List<String> roots() {
        return Collections.unmodifiableList(roots);
    }

    List<String> children(String name) {
        return children.getOrDefault(name, List.of()).stream()
                .sorted(Natural.ORDER)
                .toList();
    }

    /** Every equipment as a reader meets it from the sources on: each above those below it, branches in natural order. */
    List<String> fromTheTop() {
        List<String> order = new ArrayList<>();
        Deque<String> open = new ArrayDeque<>(roots);
        while (!open.isEmpty()) {
            String at = open.pop();
            order.add(at);
            List<String> below = children(at);
            for (int i = below.size() - 1; i >= 0; i--) open.push(below.get(i));
        }
        return order;
    }

    List<String> fromTheLeaves() {
        List<String> order = fromTheTop();
        Collections.reverse(order);
        return order;
    }
}
