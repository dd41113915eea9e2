package asfound.isolation;

import asfound.model.EquipmentKind;
import asfound.network.Connection;
import asfound.network.Equipment;
import asfound.network.Network;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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
                new AlsoDark(terrain, new Darkness(asDrawn), new Darkness(asFound)));
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

    private void findWays(List<Case> same, List<Integer> origins, int mark) {
        Remaining.Spread spread = remaining.spreadFrom(origins, mark);
        for (Case c : same) {
            if (!spread.reaches(c.bus)) continue;
            c.path = spread.arcsTo(c.bus);
            if (mark == 0) c.liveFrom = remaining.originsReaching(c.bus, origins);
            else c.provenLive = true;
        }
    }

    private void describePoints(Case c) {
        c.drawnPoints =
                c.points.devices().stream().map(terrain::device).sorted().toList();
        c.pointWays = c.points.ways().stream()
                .map(w -> terrain.connection(w.connection()))
                .toList();
        for (int d : c.points.devices()) if (!endsOfTraces(d).contains(c.bus)) c.untraced.add(d);
    }

    /** Both ends of every connection through the device that a person traced at it. */
    private List<Integer> endsOfTraces(int device) {
        List<Integer> ends = new ArrayList<>(2);
        for (int number : terrain.connectionsOf(device)) {
            Connection c = terrain.connection(number);
            if (!records.tracedAt(terrain.device(device), c)) continue;
            ends.add(terrain.bus(c.from()));
            ends.add(terrain.bus(c.to()));
        }
        return ends;
    }

    /** A point further up is traced to the equipment where traced connections lead on from it. */
    private void traceBeyondPoints(List<Case> same) {
        for (int device : same.get(0).points.devices()) {
            if (same.stream().noneMatch(c -> c.untraced.contains(device))) continue;
            Remaining.Spread spread = remaining.traceFrom(endsOfTraces(device));
            for (Case c : same) if (spread.reaches(c.bus)) c.untraced.remove((Integer) device);
        }
    }

    static boolean isUps(Terrain terrain, int bus) {
        return terrain.kind(bus) == EquipmentKind.UPS;
    }
}
