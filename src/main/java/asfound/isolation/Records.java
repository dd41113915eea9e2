package asfound.isolation;

import asfound.model.Observation;
import asfound.model.Observation.Relation;
import asfound.network.Connection;
import asfound.network.Connection.Flow;
import asfound.network.Device;
import asfound.network.DeviceRecord;
import asfound.network.DeviceRecord.Sighting;
import asfound.network.Network;
import asfound.network.Served;
import asfound.network.Standing;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Looks up what a network records of single devices and of what leads into each equipment. */
final class Records {

    private final Terrain terrain;
    private final Map<Device, DeviceRecord> devices = new HashMap<>();
    private final Map<Integer, List<Connection>> into = new HashMap<>();

    Records(Network network, Terrain terrain) {
        this.terrain = terrain;
        network.devices().forEach(d -> devices.put(d.device(), d));
        for (Connection c : terrain.connections()) {
            lead(c.to(), c);
            if (c.flow() == Flow.TIE) lead(c.from(), c);
        }
    }

    private void lead(String name, Connection c) {
        into.computeIfAbsent(terrain.bus(name), b -> new ArrayList<>(1)).add(c);
    }

    /** Connections that feed the equipment, ties at either end. */
    List<Connection> into(int bus) {
        return into.getOrDefault(bus, List.of());
    }

    boolean supplyTraced(int bus) {
        return into(bus).stream().anyMatch(c -> c.standing().isTraced());
    }

    /** Every connection that the drawings show into it was traced to be otherwise. */
    boolean allDrawnContradicted(int bus) {
        List<Connection> drawn = into(bus).stream().filter(Connection::drawn).toList();
        return !drawn.isEmpty() && drawn.stream().allMatch(c -> c.standing() == Standing.CONTRADICTED);
    }

    /** A person traced this very device as part of the connection; of two devices in series one trace proves one. */
    boolean tracedAt(Device device, Connection c) {
        if (!c.standing().isTraced()) return false;
        if (c.devices().size() == 1) return true;
        return sightings(device).stream()
                .anyMatch(s -> s.traces()
                        && isConnection(s.observation())
                        && c.evidence().contains(s.observation()));
    }

    private static boolean isConnection(Observation o) {
        return o.relation() == Relation.FEEDS || o.relation() == Relation.FED_BY;
    }

    /** It was seen that the device does not feed the equipment, and nobody saw that it does. */
    boolean seenNotToFeed(Device device, String equipment) {
        boolean not = false;
        for (Sighting s : sightings(device)) {
            if (!s.traces() || !s.serves().flatMap(Served::equipment).equals(Optional.of(equipment))) continue;
            if (isConnection(s.observation())) return false;
            not |= s.observation().relation() == Relation.DOES_NOT_FEED;
        }
        return not;
    }

    List<Sighting> sightings(Device device) {
        DeviceRecord record = devices.get(device);
        return record == null ? List.of() : record.sightings();
    }

    /** What traced rows found at the device instead, in words; empty where they found nothing connected. */
    List<String> tracedTo(Device device) {
        DeviceRecord record = devices.get(device);
        return record == null
                ? List.of()
                : record.tracedTo().stream().map(Served::inWords).distinct().toList();
    }
}
