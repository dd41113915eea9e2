package asfound.finding;

import asfound.finding.Comparison.Answer;
import asfound.model.EquipmentKind;
import asfound.network.Connection;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.KosarajuStrongConnectivityInspector;
import org.jgrapht.alg.shortestpath.BFSShortestPath;
import org.jgrapht.graph.AsSubgraph;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleDirectedGraph;

/**
 * Devices were traced into a ring with no tie or transfer switch in it.
 */
public record FeedLoop(Event event) implements Finding {

    static final Guide GUIDE = new Guide(
            "feed-loop",
            "Devices were traced into a ring with no tie or transfer switch in it.",
            "Each equipment of the ring has two ways to be live; opening the drawn one leaves the other.",
            "Isolate by every device of the ring; trace it again by opening each, and have an engineer look at it.",
            List.of("29 CFR 1910.333(b)(2)(ii) and 1910.147(d): isolate from every source"),
            new Guide.Example(
                    List.of("MDP/7 PANEL LP-1", "LP-1/2 PANEL LP-2", "LP-2/4 SPARE"),
                    List.of("LP-1/2 feeds LP-2", "LP-2/4 feeds LP-1")),
            new Guide.NearMiss(
                    "A chain of panels is no ring.",
                    new Guide.Example(
                            List.of("MDP/7 PANEL LP-1", "LP-1/2 PANEL LP-2", "LP-2/4 PANEL LP-3"),
                            List.of("MDP/7 feeds LP-1", "LP-1/2 feeds LP-2", "LP-2/4 feeds LP-3"))));

    static final Rule RULE = new Rule(GUIDE, FeedLoop::find);

    @Override
    public Guide guide() {
        return GUIDE;
    }

    private static List<FeedLoop> find(Facts facts) {
        Graph<String, DefaultEdge> feeds = new SimpleDirectedGraph<>(DefaultEdge.class);
        List<Comparison> devices = facts.comparisons().stream()
                .filter(c -> c.answer() == Answer.AGREES || facts.isOpen(c))
                .filter(c -> ends(facts, c).findAny().isPresent())
                .toList();
        List<FeedLoop> found = new ArrayList<>();
        for (Comparison c : devices) {
            if (facts.isOpen(c) && ends(facts, c).anyMatch(e -> e[0].equals(e[1]))) found.add(of(facts, List.of(c)));
            ends(facts, c).filter(e -> !e[0].equals(e[1])).forEach(e -> {
                feeds.addVertex(e[0]);
                feeds.addVertex(e[1]);
                feeds.addEdge(e[0], e[1]);
            });
        }
        for (Set<String> ring : shortestRings(facts, devices, feeds)) {
            List<Comparison> inside = devices.stream()
                    .filter(c -> ends(facts, c).anyMatch(e -> follows(ring, e)))
                    .toList();
            found.add(of(facts, inside));
        }
        return found;
    }

    /**
     * One ring for each undrawn feed that closes one, by the shortest way back; rings that share a board are events of
     * their own. Each ring as its equipment in walking order.
     */
    private static Set<Set<String>> shortestRings(
            Facts facts, List<Comparison> devices, Graph<String, DefaultEdge> feeds) {
        Set<Set<String>> rings = new LinkedHashSet<>();
        for (Set<String> knot : new KosarajuStrongConnectivityInspector<>(feeds).stronglyConnectedSets()) {
            if (knot.size() < 2) continue;
            var ways = new BFSShortestPath<>(new AsSubgraph<>(feeds, knot));
            for (Comparison c : devices)
                if (facts.isOpen(c))
                    ends(facts, c)
                            .filter(e -> !e[0].equals(e[1]) && knot.contains(e[0]) && knot.contains(e[1]))
                            .forEach(e -> rings.add(
                                    new LinkedHashSet<>(ways.getPath(e[1], e[0]).getVertexList())));
        }
        return rings;
    }

    /** From one equipment of the ring to the next of it. */
    private static boolean follows(Set<String> ring, String[] feed) {
        List<String> walk = List.copyOf(ring);
        int from = walk.indexOf(feed[0]);
        return from >= 0 && walk.get((from + 1) % walk.size()).equals(feed[1]);
    }

    /** From and to of each feed that a device was traced to make; none where a tie, transfer switch or source explains it. */
    private static Stream<String[]> ends(Facts facts, Comparison c) {
        return c.seen().stream()
                .flatMap(s -> s.equipment().stream())
                .map(far -> c.backfed() ? new String[] {far, c.panel()} : new String[] {c.panel(), far})
                .filter(e -> !mayJoin(facts, e[0]) && !mayJoin(facts, e[1]))
                .filter(e -> facts.index().touching(e[1]).stream()
                        .noneMatch(t ->
                                t.flow() == Connection.Flow.TIE && t.devices().contains(c.device())));
    }

    private static boolean mayJoin(Facts facts, String equipment) {
        EquipmentKind kind = facts.kindOf(equipment);
        return kind == EquipmentKind.TRANSFER_SWITCH || kind.isSource();
    }

    private static FeedLoop of(Facts facts, List<Comparison> inside) {
        List<Comparison> openFirst = Stream.concat(
                        inside.stream().filter(facts::isOpen), inside.stream().filter(c -> !facts.isOpen(c)))
                .toList();
        String labels = Words.list(inside.stream().map(c -> c.device().label()).toList());
        String message = labels + " were traced into a ring with no tie or transfer switch in it: "
                + inside.stream()
                        .map(c -> c.device().label() + " " + c.seenInWords())
                        .collect(Collectors.joining("; "))
                + ".";
        String correction = "Draw the ring as traced at "
                + Words.list(inside.stream()
                        .filter(facts::isOpen)
                        .map(c -> c.device().label())
                        .toList())
                + " until it is opened for good.";
        return new FeedLoop(Events.at(facts, openFirst)
                .severity(Severity.DANGER)
                .says(message, correction)
                .corrections(Redraw.corrections(
                        facts, inside.stream().filter(facts::isOpen).toList(), correction))
                .build());
    }
}
