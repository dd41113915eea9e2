package asfound.isolation;

import asfound.network.Connection;
import asfound.network.Device;
import asfound.network.Equipment;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.KosarajuStrongConnectivityInspector;
import org.jgrapht.graph.DefaultDirectedGraph;
import org.jgrapht.graph.DefaultEdge;

/**
 * One view of a network as a directed graph: an arc for each way in which supply can pass. Sources, and equipment that
 * nothing feeds in this view (its supply is unknown, so it may be live), hang on the node {@link Terrain#SOURCES}.
 */
final class SupplyGraph {

    /** The connection number of an arc that belongs to no connection: from a bus to a device in it, or from the sources. */
    static final int NO_CONNECTION = -1;

    private static final int ALWAYS = View.TRACED | View.STRONG;

    private final Terrain terrain;
    private final View view;
    private final boolean[] has;
    private final Ints from = new Ints();
    private final Ints to = new Ints();
    private final Ints connection = new Ints();
    private final Ints marks = new Ints();
    private final boolean[] fed;
    private final boolean[] source;
    private final boolean[] unknownSupply;
    private final boolean[] unsourced;
    /** Devices already made fast to their bus, and terminals to their device. */
    private final boolean[] onBus;

    SupplyGraph(Terrain terrain, View view) {
        this.terrain = terrain;
        this.view = view;
        fed = new boolean[terrain.nodes()];
        source = new boolean[terrain.nodes()];
        unknownSupply = new boolean[terrain.nodes()];
        unsourced = new boolean[terrain.nodes()];
        onBus = new boolean[terrain.nodes()];
        List<Connection> all = terrain.connections();
        has = terrain.seenBy(view);
        for (int c = 0; c < all.size(); c++) if (has[c]) add(c, all.get(c));
        for (int bus = 1; bus <= terrain.equipmentCount(); bus++) {
            Optional<Equipment> e = terrain.equipment(bus);
            if (e.isPresent() && !view.has(e.get())) continue;
            source[bus] = terrain.kind(bus).isSource();
            unknownSupply[bus] = !source[bus] && !fed[bus];
            if (source[bus] || unknownSupply[bus]) arc(Terrain.SOURCES, bus, NO_CONNECTION, ALWAYS);
        }
        hangUpRings(view);
    }

    /** Supply that leads round in a ring and to no source comes from somewhere unknown: each member may be live. */
    private void hangUpRings(View view) {
        boolean[] reached = reached();
        Graph<Integer, DefaultEdge> feeds = new DefaultDirectedGraph<>(DefaultEdge.class);
        for (int bus = 1; bus <= terrain.equipmentCount(); bus++)
            if (!reached[bus] && terrain.equipment(bus).map(view::has).orElse(true)) feeds.addVertex(bus);
        if (feeds.vertexSet().isEmpty()) return;
        for (int c = 0; c < has.length; c++) {
            if (!has[c]) continue;
            int from = terrain.bus(terrain.connection(c).from()),
                    to = terrain.bus(terrain.connection(c).to());
            if (!feeds.containsVertex(from) || !feeds.containsVertex(to)) continue;
            feeds.addEdge(from, to);
            if (terrain.connection(c).flow() == Connection.Flow.TIE) feeds.addEdge(to, from);
        }
        for (Set<Integer> ring : new KosarajuStrongConnectivityInspector<>(feeds).stronglyConnectedSets())
            if (ring.stream()
                    .allMatch(bus ->
                            feeds.incomingEdgesOf(bus).stream().allMatch(e -> ring.contains(feeds.getEdgeSource(e)))))
                ring.forEach(this::hangUp);
    }

    private void hangUp(int bus) {
        unsourced[bus] = true;
        arc(Terrain.SOURCES, bus, NO_CONNECTION, ALWAYS);
    }

    private boolean[] reached() {
        Rows out = rows(false, a -> true);
        boolean[] reached = new boolean[terrain.nodes()];
        Ints queue = new Ints();
        queue.add(Terrain.SOURCES);
        reached[Terrain.SOURCES] = true;
        for (int next = 0; next < queue.size(); next++)
            for (int i = out.start()[queue.get(next)]; i < out.start()[queue.get(next) + 1]; i++) {
                int node = to(out.arc()[i]);
                if (!reached[node]) queue.add(node);
                reached[node] = true;
            }
        return reached;
    }

    /** Devices of the supplying end follow its bus, those of the supplied end precede its bus, others stand between. */
    private void add(int number, Connection c) {
        int left = terrain.bus(c.from()), right = terrain.bus(c.to());
        fed[right] = true;
        if (c.flow() == Connection.Flow.TIE) fed[left] = true;
        for (Device d : c.devices()) {
            if (d.in().equals(c.to())) continue;
            int node = terrain.node(d);
            if (terrain.isBus(left)) tap(left, node);
            else join(left, node, number, c);
            left = loadSide(node);
        }
        for (int i = c.devices().size() - 1; i >= 0; i--) {
            Device d = c.devices().get(i);
            if (!d.in().equals(c.to())) continue;
            int node = terrain.node(d);
            if (terrain.isBus(right)) tap(right, node);
            else join(node, right, number, c);
            right = loadSide(node);
        }
        join(left, right, number, c);
    }

    private void tap(int bus, int device) {
        if (onBus[device]) return;
        onBus[device] = true;
        both(bus, device);
    }

    private int loadSide(int device) {
        int terminal = terrain.terminal(device);
        if (terminal != device && !onBus[terminal]) {
            onBus[terminal] = true;
            both(device, terminal);
        }
        return terminal;
    }

    private void both(int a, int b) {
        arc(a, b, NO_CONNECTION, ALWAYS);
        arc(b, a, NO_CONNECTION, ALWAYS);
    }

    private void join(int a, int b, int number, Connection c) {
        arc(a, b, number, View.marksForward(c));
        if (view.passesBack(c)) arc(b, a, number, View.marksBack(c));
    }

    private void arc(int a, int b, int number, int mark) {
        from.add(a);
        to.add(b);
        connection.add(number);
        marks.add(mark);
    }

    Terrain terrain() {
        return terrain;
    }

    View view() {
        return view;
    }

    /** The view has the connection of that number. */
    boolean has(int number) {
        return has[number];
    }

    int arcs() {
        return from.size();
    }

    int from(int arc) {
        return from.get(arc);
    }

    int to(int arc) {
        return to.get(arc);
    }

    int connection(int arc) {
        return connection.get(arc);
    }

    int marks(int arc) {
        return marks.get(arc);
    }

    /** Something in this view feeds the equipment, or a tie leads to it. */
    boolean isFed(int bus) {
        return fed[bus];
    }

    boolean isSource(int bus) {
        return source[bus];
    }

    /** Something feeds it, and that leads back to no source and to nothing of unknown supply: only round in a ring. */
    boolean isFedInARingOnly(int bus) {
        return unsourced[bus];
    }

    /** It is a source, or its own supply is not known, so that it may be live from anywhere. */
    boolean hangsOnSources(int bus) {
        return source[bus] || unknownSupply[bus] || unsourced[bus];
    }

    /** The arcs that a test keeps, sorted by the node at one end: offsets by node, then arc numbers. */
    Rows rows(boolean incoming, java.util.function.IntPredicate keep) {
        int[] start = new int[terrain.nodes() + 1];
        for (int a = 0; a < arcs(); a++) if (keep.test(a)) start[(incoming ? to(a) : from(a)) + 1]++;
        for (int n = 0; n < terrain.nodes(); n++) start[n + 1] += start[n];
        int[] fill = Arrays.copyOf(start, terrain.nodes());
        int[] arc = new int[start[terrain.nodes()]];
        for (int a = 0; a < arcs(); a++) if (keep.test(a)) arc[fill[incoming ? to(a) : from(a)]++] = a;
        return new Rows(start, arc);
    }

    /** Arcs by node: those of node n stand in {@code arc} from {@code start[n]} to before {@code start[n + 1]}. */
    record Rows(int[] start, int[] arc) {}
}
