package asfound.trust;

import asfound.isolation.Verdict;
import asfound.model.CircuitRef;
import asfound.model.Directory;
import asfound.model.EquipmentKind;
import asfound.model.Observation;
import asfound.model.Observation.Method;
import asfound.model.Observation.Relation;
import asfound.model.Place;
import asfound.model.Stated;
import asfound.network.Connection;
import asfound.network.Device;
import asfound.network.DeviceRecord;
import asfound.network.DeviceRecord.Showing;
import asfound.network.DeviceRecord.Sighting;
import asfound.network.DeviceRecord.Tracing;
import asfound.network.Equipment;
import asfound.network.Network;
import asfound.network.Served;
import asfound.network.Standing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Small networks put together by hand, a line for each device. */
final class Wiring {

    private final Map<String, EquipmentKind> kinds = new TreeMap<>();
    private final List<String> lifeSafety = new ArrayList<>();
    private final List<Connection> connections = new ArrayList<>();
    private final Map<Device, DeviceRecord> devices = new TreeMap<>();
    private int row = 1;

    Wiring is(EquipmentKind kind, String... names) {
        for (String name : names) kinds.put(name, kind);
        return this;
    }

    Wiring lifeSafety(String name) {
        lifeSafety.add(name);
        return this;
    }

    /** A connection as drawn through {@code MDP/7}, or through nothing that can be opened where that is {@code MDP/}. */
    Wiring feeder(String at, String to, Standing standing) {
        Device device = device(at);
        boolean bare = device.key().isEmpty();
        connections.add(new Connection(
                device.in(),
                bare ? List.of() : List.of(device),
                to,
                Connection.Flow.FEEDER,
                standing != Standing.FOUND,
                false,
                false,
                standing,
                List.of(),
                List.of()));
        if (bare) return this;
        Optional<Served> serves = Optional.of(new Served(to, Optional.of(to)));
        List<Showing> drawn = standing == Standing.FOUND ? List.of() : List.of(showing(serves, Directory.Use.LOAD));
        List<Sighting> seen =
                standing.isTraced() ? List.of(sighting(device, Relation.FEEDS, serves, Method.OPENED)) : List.of();
        put(new DeviceRecord(device, drawn, seen, tracing(standing)));
        return this;
    }

    /** A branch circuit: what is drawn ({@code SPARE} and {@code SPACE} as such) and, if traced, what was found. */
    Wiring circuit(String at, String drawn, Method method, String found) {
        Device device = device(at);
        Directory.Use use = drawn.equals("SPARE")
                ? Directory.Use.SPARE
                : drawn.equals("SPACE") ? Directory.Use.SPACE : Directory.Use.LOAD;
        Relation relation = found.isEmpty() ? Relation.NOTHING : Relation.FEEDS;
        put(new DeviceRecord(
                device,
                List.of(showing(use == Directory.Use.LOAD ? load(drawn) : Optional.empty(), use)),
                List.of(sighting(device, relation, found.isEmpty() ? Optional.empty() : load(found), method)),
                method.traces() ? Tracing.TRACED : Tracing.NOT_TRACED));
        return this;
    }

    Wiring untraced(String at, String drawn) {
        Directory.Use use = drawn.equals("SPARE") ? Directory.Use.SPARE : Directory.Use.LOAD;
        put(new DeviceRecord(
                device(at),
                List.of(showing(use == Directory.Use.LOAD ? load(drawn) : Optional.empty(), use)),
                List.of(),
                Tracing.NOT_SEEN));
        return this;
    }

    /** Traced to one equipment where another is drawn. */
    Wiring feedsOther(String at, String drawn, String found) {
        Device device = device(at);
        feeder(at, drawn, Standing.CONTRADICTED);
        feeder(at, found, Standing.FOUND);
        put(new DeviceRecord(
                device,
                List.of(showing(Optional.of(new Served(drawn, Optional.of(drawn))), Directory.Use.LOAD)),
                List.of(sighting(
                        device, Relation.FEEDS, Optional.of(new Served(found, Optional.of(found))), Method.TONE)),
                Tracing.TRACED));
        return this;
    }

    Network network() {
        List<Equipment> equipment = kinds.entrySet().stream()
                .map(e -> new Equipment(
                        e.getKey(),
                        e.getValue(),
                        true,
                        true,
                        List.of(),
                        List.of(),
                        List.of(),
                        lifeSafety.contains(e.getKey()),
                        false))
                .toList();
        return new Network(equipment, connections, List.copyOf(devices.values()), List.of());
    }

    static Verdict verdict(String equipment, Verdict.Standing standing, String... drawnPoints) {
        List<Device> points = Arrays.stream(drawnPoints).map(Wiring::device).toList();
        boolean known = standing == Verdict.Standing.AGREES;
        return new Verdict(
                equipment,
                standing,
                points,
                known ? Optional.of(points) : Optional.empty(),
                false,
                List.of(),
                List.of(),
                "",
                List.of(),
                List.of());
    }

    private void put(DeviceRecord record) {
        devices.put(record.device(), record);
    }

    private static Device device(String at) {
        int slash = at.indexOf('/');
        return new Device(at.substring(0, slash), at.substring(slash + 1));
    }

    private static Optional<Served> load(String text) {
        return Optional.of(new Served(text, Optional.empty()));
    }

    private Showing showing(Optional<Served> serves, Directory.Use use) {
        return new Showing(
                serves, use, Optional.empty(), Optional.empty(), Optional.empty(), Place.page("drawings/x.pdf", 1));
    }

    private static Tracing tracing(Standing standing) {
        return switch (standing) {
            case CONFIRMED, FOUND, CONTRADICTED -> Tracing.TRACED;
            case IN_CONFLICT -> Tracing.CONFLICT;
            case STALE -> Tracing.STALE;
            case UNTRACED -> Tracing.NOT_SEEN;
        };
    }

    private Sighting sighting(Device device, Relation relation, Optional<Served> serves, Method method) {
        Place.InRow place = new Place.InRow("survey/x.csv", "", ++row);
        Observation seen = new Observation(
                Stated.of(device.in(), device.in(), place),
                Stated.of(CircuitRef.named(device.key()), device.key(), place),
                relation,
                serves.map(s -> Stated.of(s.text(), s.text(), place)).orElseGet(() -> Stated.blank(place)),
                EquipmentKind.UNKNOWN,
                method,
                Stated.blank(),
                Stated.blank(),
                Stated.blank(),
                Stated.blank(),
                Stated.blank(),
                Stated.of("Closet " + device.in(), "", place),
                "A. Surveyor",
                Stated.of(LocalDate.of(2025, 5, 1), "2025-05-01", place),
                "",
                "",
                place);
        return new Sighting(seen, serves, false);
    }
}
