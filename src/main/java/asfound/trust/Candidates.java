package asfound.trust;

import asfound.network.Connection;
import asfound.network.Device;
import asfound.network.DeviceRecord;
import asfound.network.DeviceRecord.Tracing;
import asfound.network.Network;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Every device that is still worth tracing: what nobody traced, what is in conflict and what is stale. */
final class Candidates {

    private final Map<Device, Candidate> byDevice = new TreeMap<>();
    private final Map<Device, DeviceRecord> records = new HashMap<>();

    Candidates(Network network) {
        DeviceWords words = new DeviceWords(network);
        for (DeviceRecord record : network.devices()) {
            Device device = record.device();
            records.put(device, record);
            if (record.tracing() == Tracing.TRACED) continue;
            byDevice.put(
                    device,
                    new Candidate(
                            device,
                            DeviceWords.circuit(record),
                            words.location(device.in()),
                            DeviceWords.expect(record)));
        }
        for (Connection c : network.connections())
            if (c.devices().isEmpty() && c.drawn() && Blocking.isUnsettled(c))
                byDevice.putIfAbsent(
                        withoutDevice(c), new Candidate(withoutDevice(c), "", words.location(c.from()), c.to()));
    }

    /** In natural order of their devices. */
    Collection<Candidate> all() {
        return byDevice.values();
    }

    Optional<Candidate> at(Device device) {
        return Optional.ofNullable(byDevice.get(device));
    }

    Optional<DeviceRecord> record(Device device) {
        return Optional.ofNullable(records.get(device));
    }

    /** What to trace to learn about a connection: the first device on it that is not traced yet. */
    Device toTrace(Connection c) {
        if (c.devices().isEmpty()) return withoutDevice(c);
        return c.devices().stream()
                .filter(byDevice::containsKey)
                .findFirst()
                .orElse(c.devices().get(0));
    }

    /** A survey row with a blank circuit traces a connection that has no device. */
    private static Device withoutDevice(Connection c) {
        return new Device(c.from(), "");
    }
}
