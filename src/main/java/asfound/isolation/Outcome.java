package asfound.isolation;

import asfound.model.Place;
import asfound.network.Connection;
import asfound.network.Device;
import asfound.network.Equipment;
import asfound.network.Standing;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** Turns a case into its verdict: what makes it fail, what leaves it unproven, and why in words. */
final class Outcome {

    private final Terrain terrain;
    private final Records records;
    private final SupplyGraph drawn;
    private final SupplyGraph possible;
    private final PathWords paths;
    private final LeastCut foundCut;
    private final AlsoDark alsoDark;
    private final NamedElsewhere elsewhere;

    Outcome(
            Terrain terrain,
            Records records,
            SupplyGraph drawn,
            SupplyGraph possible,
            PathWords paths,
            LeastCut foundCut,
            AlsoDark alsoDark,
            NamedElsewhere elsewhere) {
        this.terrain = terrain;
        this.records = records;
        this.drawn = drawn;
        this.possible = possible;
        this.paths = paths;
        this.foundCut = foundCut;
        this.alsoDark = alsoDark;
        this.elsewhere = elsewhere;
    }

    Verdict of(Case c) {
        Reasons why = new Reasons(terrain.name(c.bus));
        fail(c, why);
        boolean fails = !why.isEmpty();
        doubt(c, why);
        Verdict.Standing standing =
                fails ? Verdict.Standing.FAILS : why.isEmpty() ? Verdict.Standing.AGREES : Verdict.Standing.UNPROVEN;
        if (why.isEmpty()) why.agree(c.drawnPoints);
        Optional<List<Integer>> found = foundPoints(c.bus);
        return new Verdict(
                terrain.name(c.bus),
                standing,
                c.drawnPoints,
                found.map(f -> f.stream().map(terrain::device).sorted().toList()),
                c.points.others(),
                c.liveFrom,
                paths.of(c.path),
                why.inWords(),
                alsoDark.with(c.points.devices(), c.bus),
                found.map(f -> alsoDark.with(f, c.bus)).orElse(List.of()),
                evidence(c));
    }

    private Optional<List<Integer>> foundPoints(int bus) {
        if (!records.supplyTraced(bus)) return Optional.empty();
        Points points = foundCut.of(bus);
        return points.supplied() && points.parted() ? Optional.of(points.devices()) : Optional.empty();
    }

    private void fail(Case c, Reasons why) {
        Optional<Equipment> e = terrain.equipment(c.bus);
        boolean isDrawn = e.map(Equipment::drawn).orElse(true);
        if (!isDrawn) why.notDrawn();
        else if (!c.points.supplied() || !drawn.isFed(c.bus)) why.noSupplyDrawn();
        for (Device d : c.drawnPoints) failAtPoint(c, d, why);
        if (why.speaksOfNone(c.drawnPoints) && records.allDrawnContradicted(c.bus)) why.allSuppliesContradicted();
        for (Connection found : records.into(c.bus))
            if (found.standing() == Standing.FOUND
                    && !found.devices().isEmpty()
                    && Collections.disjoint(found.devices(), c.drawnPoints)) why.tracedOutside(found, c.drawnPoints);
        if (c.provenLive) why.live(c, paths);
    }

    private void failAtPoint(Case c, Device point, Reasons why) {
        List<Connection> through =
                c.pointWays.stream().filter(w -> w.devices().contains(point)).toList();
        boolean contradicted = !through.isEmpty()
                && through.stream().anyMatch(w -> w.standing() == Standing.CONTRADICTED)
                && through.stream().noneMatch(w -> w.standing().isTraced());
        if (contradicted) why.pointContradicted(point, records.tracedTo(point));
        else if (records.seenNotToFeed(point, terrain.name(c.bus))) why.seenNotToFeed(point);
    }

    private void doubt(Case c, Reasons why) {
        if (c.points.supplied() && !c.points.parted()) why.nothingParts(c.liveFrom);
        if (Judge.isUps(terrain, c.bus)) why.storesEnergy();
        for (Device d : c.drawnPoints) {
            boolean untraced = c.untraced.contains(terrain.node(d));
            if (untraced && !why.speaksOf(d)) why.notTraced(d, standingAt(c, d));
        }
        if (c.isLive() && !c.provenLive) why.couldBeLive(c, paths);
        if (possible.isFedInARingOnly(c.bus)) why.ringOnly();
        if (isDisputed(c)) why.disputed(records.into(c.bus));
        for (String doubtful : doubtful(c)) why.doubtful(doubtful);
        for (NamedElsewhere.Circuit circuit : elsewhere.of(terrain.name(c.bus), c.drawnPoints))
            if (circuit.isOfControls()) why.controlled(circuit);
    }

    private static Standing standingAt(Case c, Device point) {
        return c.pointWays.stream()
                .filter(w -> w.devices().contains(point))
                .map(Connection::standing)
                .findFirst()
                .orElse(Standing.UNTRACED);
    }

    private boolean isDisputed(Case c) {
        return c.pointWays.stream().anyMatch(Connection::disputed)
                || records.into(c.bus).stream().anyMatch(Connection::disputed);
    }

    private List<String> doubtful(Case c) {
        List<String> names = new ArrayList<>();
        if (isDoubtful(c.bus)) names.add(terrain.name(c.bus));
        c.drawnPoints.stream()
                .map(Device::in)
                .distinct()
                .filter(n -> !names.contains(n) && isDoubtful(terrain.bus(n)))
                .forEach(names::add);
        return names;
    }

    private boolean isDoubtful(int bus) {
        return terrain.equipment(bus).map(Equipment::doubtful).orElse(false);
    }

    private List<Place> evidence(Case c) {
        TreeSet<Place> places = new TreeSet<>(Place.ORDER);
        List<Connection> bearing = new ArrayList<>(c.pointWays);
        bearing.addAll(records.into(c.bus));
        bearing.addAll(paths.connections(c.path));
        for (Connection b : bearing) {
            places.addAll(b.drawings());
            b.evidence().forEach(o -> places.add(o.place()));
        }
        return List.copyOf(places);
    }
}
