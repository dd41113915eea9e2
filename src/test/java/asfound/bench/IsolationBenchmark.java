package asfound.bench;

import asfound.isolation.Isolation;
import asfound.isolation.Verdict;
import asfound.network.Connection;
import asfound.network.Device;
import asfound.network.Network;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jgrapht.Graph;
import org.jgrapht.alg.flow.PushRelabelMFImpl;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;

/**
 * Time and memory of all verdicts of a campus, against JGraphT's maximum flow run once for each target (points only, on a
 * sample of targets, and reckoned up to all of them). Run: {@code java -Xmx3g -cp ... asfound.bench.IsolationBenchmark}.
 */
public final class IsolationBenchmark {

    private static final int SAMPLE = 20;

    private IsolationBenchmark() {}

    public static void main(String[] args) {
        System.out.println(
                "shape          devices   targets   verdicts   memory   agree/unproven/fail   max-flow per target, all");
        for (Campus.Shape shape : Campus.Shape.values()) {
            Isolation.verdicts(Campus.of(shape, 20_000)); // warm up
            for (int devices : new int[] {1_000, 10_000, 100_000}) measure(shape, devices);
        }
    }

    private static void measure(Campus.Shape shape, int devices) {
        Network network = Campus.of(shape, devices);
        System.gc();
        long before = used(), start = System.nanoTime();
        List<Verdict> verdicts = Isolation.verdicts(network);
        double seconds = (System.nanoTime() - start) / 1e9;
        long memory = (used() - before) >> 20;
        Map<Verdict.Standing, Integer> count = new HashMap<>();
        verdicts.forEach(v -> count.merge(v.standing(), 1, Integer::sum));
        System.out.printf(
                Locale.ROOT,
                "%-12s %9d %9d %8.2f s %5d MB   %6d/%6d/%6d    %10.1f s%n",
                shape.name().toLowerCase(Locale.ROOT).replace('_', '-'),
                network.connections().stream()
                        .flatMap(c -> c.devices().stream())
                        .distinct()
                        .count(),
                verdicts.size(),
                seconds,
                memory,
                count.getOrDefault(Verdict.Standing.AGREES, 0),
                count.getOrDefault(Verdict.Standing.UNPROVEN, 0),
                count.getOrDefault(Verdict.Standing.FAILS, 0),
                maxFlows(network, verdicts));
    }

    private static long used() {
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    /** Seconds for a maximum flow to every target, from a sample of them. */
    private static double maxFlows(Network network, List<Verdict> verdicts) {
        Graph<String, DefaultWeightedEdge> graph = new SimpleDirectedWeightedGraph<>(DefaultWeightedEdge.class);
        double unlimited = 1e6;
        graph.addVertex("all sources");
        network.equipment().forEach(e -> {
            graph.addVertex(e.name());
            if (e.kind().isSource()) arc(graph, "all sources", e.name(), unlimited);
        });
        for (Connection c : network.connections()) {
            if (!c.drawn()) continue;
            String from = c.from();
            for (Device d : c.devices()) {
                graph.addVertex(d.label());
                arc(graph, from, d.label(), 1);
                if (c.flow() != Connection.Flow.ONE_WAY) arc(graph, d.label(), from, 1);
                from = d.label();
            }
            arc(graph, from, c.to(), unlimited);
            if (c.flow() != Connection.Flow.ONE_WAY) arc(graph, c.to(), from, unlimited);
        }
        int step = Math.max(1, verdicts.size() / SAMPLE), runs = 0;
        long start = System.nanoTime();
        for (int i = 0; i < verdicts.size(); i += step, runs++) {
            int flow = (int) new PushRelabelMFImpl<>(graph)
                    .calculateMaximumFlow("all sources", verdicts.get(i).equipment());
            if (flow != verdicts.get(i).drawnPoints().size())
                throw new IllegalStateException(verdicts.get(i) + " but the maximum flow is " + flow);
        }
        return (System.nanoTime() - start) / 1e9 / runs * verdicts.size();
    }

    private static void arc(Graph<String, DefaultWeightedEdge> graph, String a, String b, double capacity) {
        DefaultWeightedEdge edge = graph.addEdge(a, b);
        if (edge != null) graph.setEdgeWeight(edge, capacity);
    }
}
