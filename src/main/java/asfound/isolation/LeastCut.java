package asfound.isolation;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;

/**
 * Finds, for each equipment, the fewest devices that part it from every source, nearest to the equipment.
 *
 * <p>Where one device does, it is the nearest device that dominates the equipment, and the dominator tree answers at once.
 * Only where no single device does (double-ended, meshed) is flow sent, over the thinned ways and outwards from the
 * equipment: as many ways as have no device in common, and the set of least size nearest to the equipment is where the
 * last search stops (Menger 1927; Ford and Fulkerson 1956). Among all least sets that one is unique.
 */
final class LeastCut {

    private final Ways ways;
    private final SupplyGraph graph;
    private final Terrain terrain;
    private final OwnMains mains;
    private final Flow flow;

    LeastCut(Ways ways, OwnMains mains) {
        this.ways = ways;
        this.graph = ways.graph();
        this.terrain = graph.terrain();
        this.mains = mains;
        this.flow = new Flow(ways);
    }

    /** The points of the equipment whose bus is given. */
    Points of(int bus) {
        if (graph.isFedInARingOnly(bus)) return Points.none(false);
        Set<Integer> own = mains.of(bus);
        if (!graph.hangsOnSources(bus)) {
            if (!ways.dominators().reaches(bus)) return Points.none(false);
            int device = dominatingDevice(bus, own);
            if (device >= 0) {
                boolean others = dominatingDevice(device, own) >= 0;
                return new Points(
                        List.of(device),
                        true,
                        true,
                        others,
                        passing(bus, device, List.of(device), node -> isBelow(node, device)));
            }
        }
        return byFlow(bus, own);
    }

    private boolean isBelow(int node, int device) {
        return ways.dominators().dominates(device, node);
    }

    private int dominatingDevice(int node, Set<Integer> own) {
        int d = ways.dominators().nearest(node);
        while (d > Terrain.SOURCES && !(terrain.isDevice(d) && !own.contains(d)))
            d = ways.dominators().nearest(d);
        return d > Terrain.SOURCES ? d : -1;
    }

    private Points byFlow(int bus, Set<Integer> own) {
        flow.begin(bus, own);
        if (flow.isJoinedWithoutDevice()) return Points.none(true);
        int size = flow.maximise();
        if (size == 0) return Points.none(false);
        List<Integer> devices = flow.nearestCut();
        List<Points.Way> passing = new ArrayList<>();
        for (int d : devices) passing.addAll(passing(bus, d, devices, flow::isOnNearSide));
        return new Points(devices, true, true, flow.hasCutBeyond(devices), passing);
    }

    /** The connections by which supply passes the device towards the equipment: those that end there, if there are any. */
    private List<Points.Way> passing(int bus, int device, List<Integer> open, IntPredicate nearSide) {
        List<Points.Way> direct = new ArrayList<>(1), all = new ArrayList<>(1);
        for (int c : terrain.connectionsOf(device)) {
            if (!graph.has(c)) continue;
            int to = terrain.bus(terrain.connection(c).to()),
                    from = terrain.bus(terrain.connection(c).from());
            if (to == bus) direct.add(new Points.Way(device, c, bus));
            else if (nearSide.test(to)) all.add(new Points.Way(device, c, to));
            else if (nearSide.test(from) && suppliesBack(c, to, terrain.terminal(device)))
                all.add(new Points.Way(device, c, from));
        }
        if (!direct.isEmpty() || all.size() < 2) return direct.isEmpty() ? all : direct;
        Set<Integer> leading = leadingTo(bus, open, terrain.terminal(device));
        List<Points.Way> ownWay =
                all.stream().filter(w -> leading.contains(w.end())).toList();
        return ownWay.isEmpty() ? all : ownWay;
    }

    /** The connection's far end is supplied otherwise than from the device's own load side, and supply can pass back. */
    private boolean suppliesBack(int connection, int farEnd, int loadSide) {
        return graph.view().passesBack(terrain.connection(connection))
                && !ways.dominators().dominates(loadSide, farEnd);
    }

    /** What leads to the equipment, neither through an open device nor across the load side of the one in question. */
    private Set<Integer> leadingTo(int bus, List<Integer> open, int loadSide) {
        Set<Integer> leading = new HashSet<>(Set.of(bus)), barred = new HashSet<>(open);
        barred.add(loadSide);
        barred.add(Terrain.SOURCES);
        Ints queue = new Ints();
        queue.add(bus);
        for (int next = 0; next < queue.size(); next++)
            for (int i = ways.in().start()[queue.get(next)]; i < ways.in().start()[queue.get(next) + 1]; i++) {
                int from = graph.from(ways.in().arc()[i]);
                if (!barred.contains(from) && leading.add(from)) queue.add(from);
            }
        return leading;
    }
}
