package asfound.isolation;

import asfound.model.EquipmentKind;
import asfound.model.Observation;
import asfound.model.Observation.Relation;
import asfound.network.Connection;
import asfound.network.Connection.Flow;
import asfound.network.Device;
import asfound.network.DeviceRecord;
import asfound.network.Equipment;
import asfound.network.Network;
import asfound.network.Served;
import asfound.network.Standing;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Isolation by brute force, for small networks: every set of devices is tried. Written from the record set's format and
 * the physical reading alone; it shares no code with what it checks.
 */
final class Oracle {

    private static final Set<EquipmentKind> BESIDE_THE_SUPPLY =
            EnumSet.of(EquipmentKind.GENERATOR, EquipmentKind.INVERTER, EquipmentKind.BATTERY, EquipmentKind.UPS);

    private final Network network;
    private final Field drawn;
    private final Field possible;

    Oracle(Network network) {
        this.network = network;
        drawn = new Field(network, Connection::drawn, c -> !isDisputed(c));
        possible = new Field(network, Oracle::isPossible, c -> true);
    }

    private static boolean isPossible(Connection c) {
        return c.standing() != Standing.CONTRADICTED;
    }

    /** One of several supplies that drawings name for one thing. */
    private static boolean isDisputed(Connection c) {
        return c.drawn() && c.disputed();
    }

    private static boolean isTraced(Connection c) {
        return c.standing().isTraced();
    }

    /** Passed as drawn, or traced: enough to say that a drawing fails. */
    private static boolean strongForward(Connection c) {
        return isTraced(c) || (c.drawn() && isPossible(c) && !isDisputed(c));
    }

    private static boolean strongBack(Connection c) {
        return isTraced(c) || (c.flow() == Flow.TIE && c.drawn() && isPossible(c) && !isDisputed(c));
    }

    private Equipment equipment(String name) {
        return network.equipment().stream()
                .filter(e -> e.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** Sources, and equipment whose supply is not known: nothing feeds it, or its supply leads only round in a ring. */
    private Set<String> sources(Field field, Predicate<Equipment> has, String not) {
        Set<String> sources = knownOrigins(field, has);
        sources.addAll(ringOnly(field, has));
        sources.remove(not);
        return sources;
    }

    private Set<String> knownOrigins(Field field, Predicate<Equipment> has) {
        Set<String> fed = field.fed(), origins = new HashSet<>();
        for (Equipment e : network.equipment())
            if (has.test(e) && (e.kind().isSource() || !fed.contains(e.name()))) origins.add(e.name());
        return origins;
    }

    /** What no known origin reaches, and only what it feeds itself feeds it: the members of a ring. */
    private Set<String> ringOnly(Field field, Predicate<Equipment> has) {
        Set<String> live = field.live(knownOrigins(field, has), Set.of()), dark = new HashSet<>();
        for (Equipment e : network.equipment()) if (has.test(e) && !live.contains(e.name())) dark.add(e.name());
        Map<String, Set<String>> fedFrom = new HashMap<>();
        dark.forEach(name -> fedFrom.put(name, field.fedBy(name)));
        Set<String> ring = new HashSet<>();
        for (String name : dark)
            if (fedFrom.get(name).stream()
                    .allMatch(up -> fedFrom.containsKey(up) && fedFrom.get(up).contains(name))) ring.add(name);
        return ring;
    }

    /** Devices that may be chosen: not the mains of the equipment itself. */
    private List<Device> choices(Field field, String target) {
        Set<Device> mains = new HashSet<>();
        for (Connection c : network.connections())
            if (c.to().equals(target)
                    && !BESIDE_THE_SUPPLY.contains(equipment(c.from()).kind()))
                c.devices().stream().filter(d -> d.in().equals(target)).forEach(mains::add);
        return field.devices.stream().filter(d -> !mains.contains(d)).toList();
    }

    /** Every least set; the empty set alone where there is no supply, no set at all where nothing parts it. */
    private List<Set<Device>> leastSets(String target, Field field, Predicate<Equipment> has) {
        if (ringOnly(field, has).contains(target)) return List.of(Set.of());
        Set<String> sources = sources(field, has, target);
        List<Device> choices = choices(field, target);
        for (int size = 0; size <= choices.size(); size++) {
            List<Set<Device>> sets = new ArrayList<>();
            choose(choices, 0, size, new ArrayList<>(), set -> {
                if (!field.live(sources, set).contains(target)) sets.add(set);
            });
            if (!sets.isEmpty()) return sets;
        }
        return List.of();
    }

    private static void choose(List<Device> from, int at, int size, List<Device> chosen, Consumer<Set<Device>> then) {
        if (chosen.size() == size) {
            then.accept(new TreeSet<>(chosen));
            return;
        }
        for (int i = at; i <= from.size() - (size - chosen.size()); i++) {
            chosen.add(from.get(i));
            choose(from, i + 1, size, chosen, then);
            chosen.remove(chosen.size() - 1);
        }
    }

    List<Set<Device>> drawnSets(String target) {
        return leastSets(target, drawn, Equipment::drawn);
    }

    List<Set<Device>> foundSets(String target) {
        return leastSets(target, new Field(network, this::isAsFound, c -> isTraced(c) || !isDisputed(c)), e -> true);
    }

    private boolean isAsFound(Connection c) {
        return strongForward(c) && network.connections().stream().noneMatch(fuller -> isLessThan(c, fuller));
    }

    /** Traced, the fuller account of one way between the same ends stands for both. */
    private static boolean isLessThan(Connection c, Connection fuller) {
        return isTraced(fuller)
                && c.from().equals(fuller.from())
                && c.to().equals(fuller.to())
                && c.devices().size() < fuller.devices().size()
                && fuller.devices().containsAll(c.devices())
                && !(c.devices().isEmpty() && isTraced(c));
    }

    /** What would make the equipment live if it were, with the devices open: the equipment's side of the cut, as drawn. */
    Set<String> nearSide(String target, Set<Device> open) {
        Set<String> near = new TreeSet<>();
        for (String p : drawn.places()) if (drawn.live(Set.of(p), open).contains(target)) near.add(p);
        return near;
    }

    /** A source, or equipment of unknown supply, could reach the equipment over what was traced or could be there. */
    boolean couldBeLive(String target, Set<Device> open) {
        return possible.live(sources(possible, e -> true, target), open).contains(target);
    }

    /** What loses supply with the devices open, by what was found and not by the drawings. */
    Set<String> alsoDark(Set<Device> open, String self) {
        Set<String> dark =
                dark(new Field(network, this::isAsFound, c -> isTraced(c) || !isDisputed(c)), e -> true, open);
        dark.removeAll(dark(drawn, Equipment::drawn, open));
        dark.remove(self);
        return dark;
    }

    private Set<String> dark(Field field, Predicate<Equipment> has, Set<Device> open) {
        Set<String> sources = sources(field, has, "");
        Set<String> dark = new TreeSet<>(field.live(sources, Set.of()));
        dark.removeAll(field.live(sources, open));
        dark.removeIf(p -> network.equipment().stream().noneMatch(e -> e.name().equals(p)));
        return dark;
    }

    /** The verdict by the letter of the format and the physical reading, given the drawn points. */
    Verdict.Standing standing(String target, Set<Device> points) {
        boolean parted = !drawnSets(target).isEmpty();
        if (fails(target, points, parted)) return Verdict.Standing.FAILS;
        boolean doubt = !parted
                || equipment(target).doubtful()
                || equipment(target).kind() == EquipmentKind.UPS
                || couldBeLive(target, points)
                || ringOnly(possible, e -> true).contains(target)
                || isDisputed(target, points)
                || points.stream().anyMatch(p -> !isTracedTo(p, target, points));
        return doubt ? Verdict.Standing.UNPROVEN : Verdict.Standing.AGREES;
    }

    private boolean fails(String target, Set<Device> points, boolean parted) {
        Set<String> sources = sources(possible, e -> true, target);
        Set<String> live = parted
                ? possible.live(sources, points, Oracle::strongForward, Oracle::strongBack)
                : possible.live(sources, points, Oracle::isTraced, Oracle::isTraced);
        return live.contains(target)
                || hasNoSupplyDrawn(target)
                || into(target)
                        .anyMatch(c -> c.standing() == Standing.FOUND
                                && !c.devices().isEmpty()
                                && Collections.disjoint(c.devices(), points))
                || allDrawnContradicted(target)
                || points.stream().anyMatch(p -> isSpokenAgainst(p, target, points));
    }

    private boolean hasNoSupplyDrawn(String target) {
        return into(target).noneMatch(Connection::drawn)
                || ringOnly(drawn, Equipment::drawn).contains(target)
                || !drawn.live(sources(drawn, Equipment::drawn, target), Set.of())
                        .contains(target);
    }

    private Stream<Connection> into(String target) {
        return network.connections().stream()
                .filter(c -> c.to().equals(target)
                        || (c.flow() == Flow.TIE && c.from().equals(target)));
    }

    private boolean allDrawnContradicted(String target) {
        List<Connection> all = into(target).filter(Connection::drawn).toList();
        return !all.isEmpty() && all.stream().allMatch(c -> c.standing() == Standing.CONTRADICTED);
    }

    /** Drawn connections through the point that end at the equipment, or else by which supply would pass it. */
    private List<Connection> through(Device point, String target, Set<Device> points) {
        List<Connection> all = network.connections().stream()
                .filter(c -> c.drawn() && c.devices().contains(point))
                .toList();
        List<Connection> direct =
                all.stream().filter(c -> c.to().equals(target)).toList();
        if (!direct.isEmpty()) return direct;
        return all.stream().filter(c -> passes(c, point, target, points)).toList();
    }

    /** With the point closed again, and nothing but this connection at it, supply reaches the equipment. */
    private boolean passes(Connection way, Device point, String target, Set<Device> points) {
        Field alone = new Field(
                network, c -> c.drawn() && (c.equals(way) || !c.devices().contains(point)), c -> !isDisputed(c));
        Set<Device> others = new TreeSet<>(points);
        others.remove(point);
        return alone.live(sources(drawn, Equipment::drawn, target), others).contains(target);
    }

    private boolean isSpokenAgainst(Device point, String target, Set<Device> points) {
        List<Connection> through = through(point, target, points);
        boolean contradicted = through.stream().anyMatch(c -> c.standing() == Standing.CONTRADICTED)
                && through.stream().noneMatch(Oracle::isTraced);
        boolean not = seen(point).anyMatch(s -> says(s, Relation.DOES_NOT_FEED, target));
        boolean does = seen(point).anyMatch(s -> says(s, Relation.FEEDS, target) || says(s, Relation.FED_BY, target));
        return contradicted || (not && !does);
    }

    private static boolean says(DeviceRecord.Sighting s, Relation relation, String target) {
        return s.observation().relation() == relation
                && s.serves().flatMap(Served::equipment).equals(Optional.of(target));
    }

    private Stream<DeviceRecord.Sighting> seen(Device device) {
        return network.devices().stream()
                .filter(d -> d.device().equals(device))
                .flatMap(d -> d.sightings().stream())
                .filter(DeviceRecord.Sighting::traces);
    }

    private boolean isDisputed(String target, Set<Device> points) {
        return into(target).anyMatch(Connection::disputed)
                || points.stream()
                        .anyMatch(p -> through(p, target, points).stream().anyMatch(Connection::disputed));
    }

    /** Someone traced a connection at the point, and from its end traced connections lead on to the equipment. */
    private boolean isTracedTo(Device point, String target, Set<Device> points) {
        List<Connection> ways = through(point, target, points);
        for (Connection c : network.connections()) {
            if (!c.devices().contains(point) || !isTraced(c) || !isTracedAt(point, c)) continue;
            if (c.drawn() && !ways.contains(c)) continue;
            String end = !c.drawn() || nearSide(target, points).contains(c.to()) ? c.to() : c.from();
            if (possible.leadsOn(Set.of(end), points, Oracle::isTraced).contains(target)) return true;
        }
        return false;
    }

    private boolean isTracedAt(Device point, Connection c) {
        if (c.devices().size() == 1) return true;
        Set<Observation> evidence = Set.copyOf(c.evidence());
        return seen(point)
                .anyMatch(s -> evidence.contains(s.observation())
                        && (s.observation().relation() == Relation.FEEDS
                                || s.observation().relation() == Relation.FED_BY));
    }
}
