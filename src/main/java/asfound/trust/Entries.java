package asfound.trust;

import asfound.model.Directory;
import asfound.model.Observation;
import asfound.names.Descriptions;
import asfound.names.Sameness;
import asfound.network.Connection;
import asfound.network.Device;
import asfound.network.DeviceRecord;
import asfound.network.DeviceRecord.Showing;
import asfound.network.Network;
import asfound.network.Served;
import asfound.network.Standing;
import asfound.recordset.Settings;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which entries are drawn, which of them were traced, and which of those were found to feed something else than drawn. */
final class Entries {

    private final Network network;
    private final Descriptions descriptions;
    private final Map<Device, List<Connection>> through = new HashMap<>();

    Entries(Network network, Settings settings) {
        this.network = network;
        this.descriptions = Descriptions.of(settings);
        for (Connection connection : network.connections())
            for (Device device : connection.devices())
                through.computeIfAbsent(device, d -> new ArrayList<>()).add(connection);
    }

    /** Entries drawn with a device (spares are, spaces are not), in the network's order. */
    List<DeviceRecord> drawn() {
        return network.devices().stream()
                .filter(d -> d.showings().stream().anyMatch(s -> s.use() != Directory.Use.SPACE))
                .toList();
    }

    static boolean isTraced(DeviceRecord entry) {
        return entry.tracing() == DeviceRecord.Tracing.TRACED;
    }

    /** Connections that pass through the device. */
    List<Connection> through(Device device) {
        return through.getOrDefault(device, List.of());
    }

    /** A traced entry of which no drawing says what was found: another load or equipment, nothing, or a spare in use. */
    boolean isWrong(DeviceRecord entry) {
        if (!isTraced(entry)) return false;
        List<Connection> connections = through(entry.device());
        if (connections.stream().anyMatch(c -> c.standing() == Standing.FOUND || c.standing() == Standing.CONTRADICTED))
            return true;
        if (connections.stream().anyMatch(c -> c.standing() == Standing.CONFIRMED)) return false;
        List<Served> found = entry.tracedTo();
        List<Served> drawn = entry.showings().stream()
                .map(Showing::serves)
                .flatMap(Optional::stream)
                .toList();
        if (found.isEmpty()) return !drawn.isEmpty() && sawNothing(entry);
        if (drawn.isEmpty()) return true;
        return found.stream().noneMatch(f -> drawn.stream().anyMatch(d -> mayBeOne(d, f)));
    }

    /** A drawing shows at {@code entry} what was traced to {@code other}. */
    boolean showsWhatWasFound(DeviceRecord entry, DeviceRecord other) {
        return other.tracedTo().stream()
                .anyMatch(found -> entry.showings().stream()
                        .flatMap(s -> s.serves().stream())
                        .anyMatch(drawn -> isOne(drawn, found)));
    }

    private boolean isOne(Served drawn, Served found) {
        if (drawn.equipment().isPresent() && found.equipment().isPresent())
            return drawn.equipment().equals(found.equipment());
        return descriptions.compare(drawn.text(), found.text()) == Sameness.SAME;
    }

    private static boolean sawNothing(DeviceRecord entry) {
        return entry.sightings().stream()
                .filter(DeviceRecord.Sighting::traces)
                .map(s -> s.observation().relation())
                .anyMatch(r -> r == Observation.Relation.NOTHING || r == Observation.Relation.NO_DEVICE);
    }

    private boolean mayBeOne(Served drawn, Served found) {
        if (drawn.equipment().isPresent() && found.equipment().isPresent())
            return drawn.equipment().equals(found.equipment());
        return descriptions.compare(drawn.text(), found.text()) != Sameness.DIFFERENT;
    }
}
