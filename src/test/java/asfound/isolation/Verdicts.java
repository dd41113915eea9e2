package asfound.isolation;

import asfound.network.Building;
import asfound.network.Device;
import java.util.List;

/** Verdicts of small buildings, for tests. */
final class Verdicts {

    private Verdicts() {}

    static Verdict of(Building building, String equipment) {
        return Isolation.verdicts(building.network()).stream()
                .filter(v -> v.equipment().equals(equipment))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no verdict for " + equipment));
    }

    static List<String> drawnPoints(Building building, String equipment) {
        return labels(of(building, equipment).drawnPoints());
    }

    /** The found points; {@code [not known]} where there are none. */
    static List<String> foundPoints(Building building, String equipment) {
        return of(building, equipment).foundPoints().map(Verdicts::labels).orElse(List.of("not known"));
    }

    private static List<String> labels(List<Device> devices) {
        return devices.stream().map(Device::label).toList();
    }
}
