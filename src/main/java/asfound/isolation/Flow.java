package asfound.isolation;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Sends ways of supply that have no device in common from the sources to one equipment, searching outwards from the
 * equipment, so that the work stays near it. A device carries one way; everything else carries any number.
 *
 * <p>A device has an entering and a leaving side; {@code 2 * node} is the entering side (and the whole of any other node),
 * {@code 2 * node + 1} the leaving side.
 */
final class Flow {

    private static final int SELF = -1; // a step between the two sides of one device

    private final SupplyGraph graph;
    private final Terrain terrain;
    private final SupplyGraph.Rows in;
    private final int[] carried; // by arc
    private final boolean[] used; // by device node
    private final int[] seen; // by side: the search that saw it last
    private final int[] nextSide; // by side: the side that follows towards the equipment
    private final int[] nextArc; // by side: the arc to it, or SELF
    private int search;
    private int nearSearch;

    private final Ints touchedArcs = new Ints();
    private final Ints touchedDevices = new Ints();
    private final Map<Integer, List<Integer>> carryingOut = new HashMap<>();
    private final ArrayDeque<Integer> queue = new ArrayDeque<>();
    private int sink;
    private Set<Integer> uncounted = Set.of();

    Flow(Ways ways) {
        graph = ways.graph();
        terrain = graph.terrain();
        in = ways.in();
        carried = new int[graph.arcs()];
        used = new boolean[terrain.nodes()];
        seen = new int[2 * terrain.nodes()];
        nextSide = new int[2 * terrain.nodes()];
        nextArc = new int[2 * terrain.nodes()];
    }

    /** Begins anew for one equipment; {@code uncounted} are devices that are not to be opened: its own mains. */
    void begin(int bus, Set<Integer> uncounted) {
        for (int i = 0; i < touchedArcs.size(); i++) carried[touchedArcs.get(i)] = 0;
        for (int i = 0; i < touchedDevices.size(); i++) used[touchedDevices.get(i)] = false;
        touchedArcs.clear();
        touchedDevices.clear();
        carryingOut.clear();
        sink = bus;
        this.uncounted = uncounted;
    }

    private boolean counts(int node) {
        return terrain.isDevice(node) && !uncounted.contains(node);
    }

    private int leavingSide(int node) {
        return counts(node) ? 2 * node + 1 : 2 * node;
    }

    /** Some source reaches the equipment by a way without any device. */
    boolean isJoinedWithoutDevice() {
        search++;
        queue.clear();
        see(2 * sink, -1, SELF);
        while (!queue.isEmpty()) {
            int node = queue.poll() / 2;
            for (int i = in.start()[node]; i < in.start()[node + 1]; i++) {
                int from = graph.from(in.arc()[i]);
                if (from == Terrain.SOURCES && node == sink) continue;
                if (from == Terrain.SOURCES) return true;
                if (!counts(from)) see(2 * from, -1, SELF);
            }
        }
        return false;
    }

    /** Sends as many ways as there are and says how many. */
    int maximise() {
        int size = 0;
        while (searchFrom(2 * sink, false)) {
            send();
            size++;
        }
        nearSearch = search;
        return size;
    }

    /** The devices where the last search from the equipment stopped: the least set nearest to it. */
    List<Integer> nearestCut() {
        int[] devices = touchedDevices.toArray();
        return Arrays.stream(devices)
                .filter(d -> used[d] && seen[2 * d + 1] == nearSearch && seen[2 * d] != nearSearch)
                .sorted()
                .distinct()
                .boxed()
                .toList();
    }

    boolean isOnNearSide(int node) {
        return seen[2 * node] == nearSearch;
    }

    /** Another set as small exists beyond: from the far side of some point no further way leads to a source. */
    boolean hasCutBeyond(List<Integer> nearest) {
        List<Integer> near = new ArrayList<>(nearest);
        for (int device : near) if (!searchFrom(2 * device, true)) return true;
        return false;
    }

    /** Searches towards the sources over what is left; the near side of the cut is passed over when asked. */
    private boolean searchFrom(int start, boolean beyond) {
        int near = nearSearch;
        search++;
        queue.clear();
        see(start, -1, SELF);
        while (!queue.isEmpty()) {
            int side = queue.poll();
            if (side == 2 * Terrain.SOURCES) return true;
            int node = side / 2;
            boolean split = counts(node), leaving = split && side % 2 == 1;
            if (leaving && !used[node] && seen[2 * node] != search) step(2 * node, side, SELF, beyond, near);
            if (split && !leaving && used[node]) step(2 * node + 1, side, SELF, beyond, near);
            if (!leaving) enterFrom(node, side, beyond, near);
            if (!split || leaving) turnBack(node, side, beyond, near);
        }
        return false;
    }

    private void enterFrom(int node, int side, boolean beyond, int near) {
        for (int i = in.start()[node]; i < in.start()[node + 1]; i++) {
            int arc = in.arc()[i], from = graph.from(arc);
            if (from == Terrain.SOURCES && node == sink) continue;
            step(leavingSide(from), side, arc, beyond, near);
        }
    }

    private void turnBack(int node, int side, boolean beyond, int near) {
        List<Integer> arcs = carryingOut.get(node);
        if (arcs == null) return;
        for (int arc : arcs) if (carried[arc] > 0) step(2 * graph.to(arc), side, arc, beyond, near);
    }

    private void step(int side, int next, int arc, boolean beyond, int near) {
        if (beyond && seen[side] == near) return;
        see(side, next, arc);
    }

    private void see(int side, int next, int arc) {
        if (seen[side] == search) return;
        seen[side] = search;
        nextSide[side] = next;
        nextArc[side] = arc;
        queue.add(side);
    }

    private void send() {
        int side = 2 * Terrain.SOURCES;
        while (side != 2 * sink) {
            int next = nextSide[side], arc = nextArc[side], node = side / 2;
            if (arc == SELF) {
                used[node] = side % 2 == 0;
                touchedDevices.add(node);
            } else if (graph.from(arc) == node && graph.to(arc) == next / 2) {
                if (carried[arc]++ == 0) {
                    touchedArcs.add(arc);
                    carryingOut.computeIfAbsent(node, n -> new ArrayList<>(2)).add(arc);
                }
            } else carried[arc]--;
            side = next;
        }
    }
}
