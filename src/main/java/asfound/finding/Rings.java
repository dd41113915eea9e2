package asfound.finding;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.KosarajuStrongConnectivityInspector;
import org.jgrapht.alg.matching.HopcroftKarpMaximumCardinalityBipartiteMatching;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleDirectedGraph;
import org.jgrapht.graph.SimpleGraph;

/**
 * Devices that changed places. Each device points to the devices that are drawn to feed what it was traced to; a ring is a
 * closed walk in which every device takes another's place. Where entries read alike, one choice that closes as many devices
 * as possible into rings is taken (a maximum matching between devices and places).
 */
final class Rings {

    /** A ring in walking order, from its first device on; {@code only}: no other pairing of these entries closes. */
    record Ring(List<Comparison> devices, boolean only) {}

    private Rings() {}

    static List<Ring> among(Collection<Comparison> devices, Function<Comparison, List<Comparison>> origins) {
        Graph<Comparison, DefaultEdge> graph = new SimpleDirectedGraph<>(DefaultEdge.class);
        devices.forEach(graph::addVertex);
        for (Comparison d : devices)
            for (Comparison origin : origins.apply(d)) if (graph.containsVertex(origin)) graph.addEdge(d, origin);
        List<Ring> rings = new ArrayList<>();
        for (Set<Comparison> knot : new KosarajuStrongConnectivityInspector<>(graph).stronglyConnectedSets())
            if (knot.size() > 1) rings.addAll(untie(graph, inOrder(devices, knot)));
        return rings;
    }

    private static List<Comparison> inOrder(Collection<Comparison> devices, Set<Comparison> knot) {
        return devices.stream().filter(knot::contains).toList();
    }

    private static List<Ring> untie(Graph<Comparison, DefaultEdge> graph, List<Comparison> knot) {
        Set<Comparison> members = new HashSet<>(knot);
        boolean only = true;
        Map<Comparison, List<Comparison>> next = new LinkedHashMap<>();
        for (Comparison d : knot) {
            List<Comparison> to =
                    knot.stream().filter(o -> graph.containsEdge(d, o)).toList();
            only &= to.size() == 1;
            next.put(d, to);
        }
        Map<Comparison, Comparison> place = only ? firsts(next) : matched(next);
        return closed(knot, place, members, only);
    }

    private static Map<Comparison, Comparison> firsts(Map<Comparison, List<Comparison>> next) {
        Map<Comparison, Comparison> place = new LinkedHashMap<>();
        next.forEach((d, to) -> place.put(d, to.get(0)));
        return place;
    }

    /** A device as one that took a place, or as the place that was taken. */
    private record Side(Comparison device, boolean place) {}

    private static Map<Comparison, Comparison> matched(Map<Comparison, List<Comparison>> next) {
        Graph<Side, DefaultEdge> pairs = new SimpleGraph<>(DefaultEdge.class);
        Set<Side> takers = new LinkedHashSet<>(), places = new LinkedHashSet<>();
        for (Comparison d : next.keySet()) {
            takers.add(new Side(d, false));
            places.add(new Side(d, true));
        }
        takers.forEach(pairs::addVertex);
        places.forEach(pairs::addVertex);
        next.forEach((d, to) -> to.forEach(o -> pairs.addEdge(new Side(d, false), new Side(o, true))));
        Set<DefaultEdge> chosen = new HopcroftKarpMaximumCardinalityBipartiteMatching<>(pairs, takers, places)
                .getMatching()
                .getEdges();
        Map<Comparison, Comparison> place = new LinkedHashMap<>();
        for (DefaultEdge e : chosen) {
            Side one = pairs.getEdgeSource(e), other = pairs.getEdgeTarget(e);
            if (one.place()) place.put(other.device(), one.device());
            else place.put(one.device(), other.device());
        }
        return place;
    }

    private static List<Ring> closed(
            List<Comparison> knot, Map<Comparison, Comparison> place, Set<Comparison> left, boolean only) {
        List<Ring> rings = new ArrayList<>();
        for (Comparison start : knot) {
            List<Comparison> walk = new ArrayList<>();
            for (Comparison d = start; d != null && left.contains(d) && !walk.contains(d); d = place.get(d))
                walk.add(d);
            boolean closes = walk.size() > 1 && start.equals(place.get(walk.get(walk.size() - 1)));
            if (closes) rings.add(new Ring(List.copyOf(walk), only));
            if (closes) left.removeAll(walk);
        }
        return rings;
    }
}
