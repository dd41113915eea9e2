package asfound.trust;

import asfound.model.CircuitRef;
import asfound.model.Directory;
import asfound.network.DeviceRecord;
import asfound.network.Network;
import asfound.network.Served;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What to write on a survey sheet about a device: where it is, how its circuit is written, what to look for. */
final class DeviceWords {

    private final Map<String, String> locations = new HashMap<>();
    private final Map<String, String> firstWritten = new HashMap<>();

    DeviceWords(Network network) {
        for (DeviceRecord record : network.devices()) put(record, drawnLocation(record));
        for (DeviceRecord record : network.devices()) put(record, seenLocation(record));
    }

    /** {@code ELEC RM 106} and {@code Elec rm 106} are one place to walk to. */
    private void put(DeviceRecord record, Optional<String> location) {
        if (location.isEmpty() || locations.containsKey(record.device().in())) return;
        String key = location.get()
                .toUpperCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", " ")
                .strip();
        locations.put(record.device().in(), firstWritten.computeIfAbsent(key, k -> location.get()));
    }

    /** Where the equipment stands, as its directory says or else as a surveyor noted. */
    Optional<String> location(String equipment) {
        return Optional.ofNullable(locations.get(equipment));
    }

    private static Optional<String> drawnLocation(DeviceRecord record) {
        return record.showings().stream()
                .flatMap(s -> s.directory().stream())
                .flatMap(d -> d.header().location().value().stream())
                .findFirst();
    }

    private static Optional<String> seenLocation(DeviceRecord record) {
        return record.sightings().stream()
                .flatMap(s -> s.observation().location().value().stream())
                .findFirst();
    }

    /** {@code 7-9-11} or {@code M1}: as drawn, or else as seen. */
    static String circuit(DeviceRecord record) {
        Stream<CircuitRef> drawn = record.showings().stream()
                .flatMap(s -> Stream.concat(
                        s.circuit().map(Directory.Circuit::ref).stream(),
                        s.feeder().flatMap(f -> f.device().value()).stream()));
        Stream<CircuitRef> seen = record.sightings().stream().flatMap(s -> s.observation().circuit().value().stream());
        return Stream.concat(drawn, seen)
                .findFirst()
                .map(CircuitRef::inWords)
                .orElse(record.device().key());
    }

    /** What the drawings say is there. */
    static String expect(DeviceRecord record) {
        return record.showings().stream()
                .map(s -> s.serves().map(Served::inWords).orElseGet(() -> withoutLoad(s.use())))
                .distinct()
                .reduce((a, b) -> a + ", or " + b)
                .orElse("not drawn");
    }

    private static String withoutLoad(Directory.Use use) {
        return switch (use) {
            case SPARE -> "spare";
            case SPACE -> "space";
            case LOAD -> "no description";
        };
    }
}
