package asfound.isolation;

import asfound.model.EquipmentKind;
import asfound.network.Connection;
import asfound.network.Equipment;
import asfound.network.Network;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Opens the drawn points of every equipment and looks what is left. Equipment with the same points is looked at together.
 */
final class Judge {

    private final Network network;
    private final Terrain terrain;
    private final Records records;
    private final SupplyGraph drawn;
    private final Ways possible;
    private final Remaining remaining;
    private final List<Case> cases = new ArrayList<>();
    private final Outcome outcome;

    Judge(Network network) {
        this.network = network;
        terrain = new Terrain(network);
        records = new Records(network, terrain);
        OwnMains mains = new OwnMains(terrain);
        drawn = new SupplyGraph(terrain, View.DRAWN);
        Ways asDrawn = new Ways(drawn);
        possible = new Ways(new SupplyGraph(terrain, View.POSSIBLE));
        Ways asFound = new Ways(new SupplyGraph(terrain, View.FOUND));
        remaining = new Remaining(possible);
        LeastCut drawnCut = new LeastCut(asDrawn, mains);
        for (Equipment e : network.equipment())
            if (!e.kind().isPureSource())
                cases.add(new Case(terrain.bus(e.name()), drawnCut.of(terrain.bus(e.name()))));
        outcome = new Outcome(
                terrain,
                records,
                drawn,
                possible.graph(),
                new PathWords(possible.graph()),
                new LeastCut(asFound, mains),
                new AlsoDark(terrain, asDrawn, asFound),
                new NamedElsewhere(network));
    }

    List<Verdict> verdicts() {
        Map<List<Object>, List<Case>> together = new LinkedHashMap<>();
        for (Case c : cases) {
            // equipment that may itself be live must not count as its own source, so it is looked at alone
            Object alone = possible.graph().hangsOnSources(c.bus) ? c.bus : "";
            together.computeIfAbsent(List.of(c.points.devices(), c.points.parted(), alone), k -> new ArrayList<>(1))
                    .add(c);
        }
        together.values().forEach(this::open);
        return cases.stream().map(outcome::of).toList();
    }

    private void open(List<Case> same) {
        Points points = same.get(0).points;
        remaining.ask(same.stream().map(c -> c.bus).toList(), points.devices());
        List<Integer> origins = remaining.origins();
        if (!origins.isEmpty()) {
            findWays(same, origins, 0);
            findWays(same, origins, points.parted() ? View.STRONG : View.TRACED);
        }
        same.forEach(this::describePoints);
        traceBeyondPoints(same);
    }

    /** The way shown is from a utility where one reaches it, else from another source, else from unknown supply. */
    private void findWays(List<Case> same, List<Integer> origins, int mark) {
        Set<Case> shown = new HashSet<>();
        for (int rank = 0; rank <= 2; rank++) {
            int wanted = rank;
            List<Integer> starts =
                    origins.stream().filter(o -> rank(o) == wanted).toList();
            if (starts.isEmpty()) continue;
            Remaining.Spread spread = remaining.spreadFrom(starts, mark);
            for (Case c : same) {
                if (!spread.reaches(c.bus) || !shown.add(c)) continue;
                c.path = spread.arcsTo(c.bus);
                if (mark == 0) c.liveFrom = remaining.originsReaching(c.bus, origins);
                else c.provenLive = true;
            }
        }
    }

    private int rank(int origin) {
        return terrain.kind(origin) == EquipmentKind.UTILITY
                ? 0
                : possible.graph().isSource(origin) ? 1 : 2;
    }

    private void describePoints(Case c) {
        c.drawnPoints =
                c.points.devices().stream().map(terrain::device).sorted().toList();
        c.pointWays = c.points.ways().stream()
                .map(w -> terrain.connection(w.connection()))
                .toList();
        for (int d : c.points.devices()) if (!endsOfTraces(c.points, d).contains(c.bus)) c.untraced.add(d);
    }

    /** The ends, towards the equipment, of every connection through the point that a person traced at it. */
    private Set<Integer> endsOfTraces(Points points, int device) {
        Set<Integer> ends = new TreeSet<>();
        for (Points.Way w : points.ways())
            if (w.device() == device && isTraced(device, terrain.connection(w.connection()))) ends.add(w.end());
        for (int number : terrain.connectionsOf(device)) {
            Connection c = terrain.connection(number);
            if (!c.drawn() && isTraced(device, c)) ends.add(terrain.bus(c.to()));
        }
        return ends;
    }

    private boolean isTraced(int device, Connection c) {
        return records.tracedAt(terrain.device(device), c);
    }

    /** A point further up is traced to the equipment where traced connections lead on from it. */
    private void traceBeyondPoints(List<Case> same) {
        Map<List<Object>, List<Case>> byStart = new LinkedHashMap<>();
        for (Case c : same)
            for (int d : c.untraced) {
                Set<Integer> ends = endsOfTraces(c.points, d);
                if (!ends.isEmpty())
                    byStart.computeIfAbsent(List.of(d, ends), k -> new ArrayList<>(1))
                            .add(c);
            }
        byStart.forEach((key, cases) -> {
            Integer device = (Integer) key.get(0);
            Remaining.Spread spread = remaining.traceFrom(endsOfTraces(cases.get(0).points, device));
            for (Case c : cases) if (spread.reaches(c.bus)) c.untraced.remove(device);
        });
    }

    static boolean isUps(Terrain terrain, int bus) {
        return terrain.kind(bus) == EquipmentKind.UPS;
    }
}
