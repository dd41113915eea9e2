package asfound.isolation;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;

/**
 * What still reaches equipment when some devices are open. Equipment with the same points is asked about together, so that
 * a ring with one supply is walked once and not once for each of its members.
 */
final class Remaining {

    private final Ways ways;
    private final SupplyGraph graph;
    private final Terrain terrain;
    private final int[] mark; // by node: the question in which it leads to the equipment asked about
    private final int[] live; // by node: the spread of supply that last reached it
    private final int[] cameBy; // by node: the arc by which the spread came
    private int question;
    private int spread;
    private final Ints leading = new Ints();
    private Set<Integer> asked = Set.of();
    private Set<Integer> opened = Set.of();
    private SupplyGraph.Rows everyWayOut; // of traced arcs, thinned or not

    Remaining(Ways ways) {
        this.ways = ways;
        this.graph = ways.graph();
        this.terrain = graph.terrain();
        mark = new int[terrain.nodes()];
        live = new int[terrain.nodes()];
        cameBy = new int[terrain.nodes()];
    }

    /** Opens the devices and gathers everything that leads to the equipment asked about. */
    void ask(Collection<Integer> buses, Collection<Integer> open) {
        question++;
        leading.clear();
        asked = new HashSet<>(buses);
        opened = new HashSet<>(open);
        buses.forEach(this::lead);
        SupplyGraph.Rows in = ways.in();
        for (int next = 0; next < leading.size(); next++) {
            int node = leading.get(next);
            for (int i = in.start()[node]; i < in.start()[node + 1]; i++) {
                int from = graph.from(in.arc()[i]);
                if (from != Terrain.SOURCES && !opened.contains(from)) lead(from);
            }
        }
    }

    private void lead(int node) {
        if (mark[node] == question) return;
        mark[node] = question;
        leading.add(node);
    }

    /** Buses of sources, and of equipment of unknown supply, that lead to the equipment; not the equipment itself. */
    List<Integer> origins() {
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < leading.size(); i++) {
            int node = leading.get(i);
            if (terrain.isBus(node) && graph.hangsOnSources(node) && !asked.contains(node)) found.add(node);
        }
        found.sort(null);
        return found;
    }

    /** Lets supply spread from the nodes over arcs with the mark (0 for all), within what leads to the equipment. */
    Spread spreadFrom(Collection<Integer> starts, int mark) {
        List<Integer> within =
                starts.stream().filter(s -> this.mark[s] == question).toList();
        return spread(within, ways.out(), mark, to -> this.mark[to] == question);
    }

    /**
     * Where traced connections lead from the nodes, through no open device, and not across the load side of one: that two
     * things hang on one device does not trace the device to one when it was traced to the other.
     */
    Spread traceFrom(Collection<Integer> starts) {
        Set<Integer> barred = new HashSet<>(opened);
        for (int d : opened) barred.add(terrain.terminal(d));
        if (everyWayOut == null) everyWayOut = graph.rows(false, a -> (graph.marks(a) & View.TRACED) != 0);
        return spread(starts, everyWayOut, View.TRACED, to -> !barred.contains(to));
    }

    private Spread spread(Collection<Integer> starts, SupplyGraph.Rows out, int mark, IntPredicate enters) {
        spread++;
        Ints queue = new Ints();
        for (int s : starts) enter(s, -1, queue);
        for (int next = 0; next < queue.size(); next++) {
            int node = queue.get(next);
            for (int i = out.start()[node]; i < out.start()[node + 1]; i++) {
                int arc = out.arc()[i], to = graph.to(arc);
                if ((graph.marks(arc) & mark) == mark && enters.test(to)) enter(to, arc, queue);
            }
        }
        return new Spread(spread);
    }

    private void enter(int node, int arc, Ints queue) {
        if (live[node] == spread) return;
        live[node] = spread;
        cameBy[node] = arc;
        queue.add(node);
    }

    /** The sources and equipment of unknown supply that still reach the equipment, by name. */
    List<String> originsReaching(int bus, List<Integer> origins) {
        if (origins.size() == 1) return List.of(terrain.name(origins.get(0)));
        Set<Integer> reaching = upstream(bus);
        Set<String> names = new TreeSet<>(asfound.model.Natural.ORDER);
        for (int o : origins) if (reaching.contains(o)) names.add(terrain.name(o));
        return List.copyOf(names);
    }

    private Set<Integer> upstream(int bus) {
        Set<Integer> reaching = new HashSet<>(Set.of(bus));
        Ints queue = new Ints();
        queue.add(bus);
        SupplyGraph.Rows in = ways.in();
        for (int next = 0; next < queue.size(); next++)
            for (int i = in.start()[queue.get(next)]; i < in.start()[queue.get(next) + 1]; i++) {
                int from = graph.from(in.arc()[i]);
                if (mark[from] == question && reaching.add(from)) queue.add(from);
            }
        return reaching;
    }

    /** One spread of supply; good until the next one. */
    final class Spread {

        private final int number;

        private Spread(int number) {
            this.number = number;
        }

        boolean reaches(int bus) {
            if (number != spread) throw new IllegalStateException("a later spread has begun");
            return live[bus] == number;
        }

        /** The arcs from where the spread began to the bus. */
        int[] arcsTo(int bus) {
            if (!reaches(bus)) return new int[0];
            Ints back = new Ints();
            for (int node = bus; cameBy[node] >= 0; node = graph.from(cameBy[node])) back.add(cameBy[node]);
            int[] arcs = back.toArray();
            for (int i = 0, j = arcs.length - 1; i < j; i++, j--) {
                int other = arcs[i];
                arcs[i] = arcs[j];
                arcs[j] = other;
            }
            return arcs;
        }
    }
}
