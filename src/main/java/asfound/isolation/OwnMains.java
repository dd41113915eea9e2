package asfound.isolation;

import asfound.model.CircuitRef;
import asfound.model.EquipmentKind;
import asfound.network.Connection;
import asfound.network.Device;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The main devices of each equipment: a device in it through which its supply comes in. It does not count for work inside
 * the equipment, since its line side stays live there. A backfed device of a generator, inverter, battery or UPS is no main.
 */
final class OwnMains {

    private static final Pattern MAIN = Pattern.compile("(52)?M(AIN\\p{Alnum}*|CB\\d*|B\\d*|\\d*)");

    private final Map<Integer, Set<Integer>> mainsOf = new HashMap<>();

    OwnMains(Terrain terrain) {
        for (Connection c : terrain.connections())
            for (Device d : c.devices())
                if (d.in().equals(c.to()) && isMain(d, terrain.kind(terrain.bus(c.from()))))
                    mainsOf.computeIfAbsent(terrain.bus(c.to()), bus -> new HashSet<>())
                            .add(terrain.node(d));
    }

    private static boolean isMain(Device device, EquipmentKind otherEnd) {
        boolean ownSource = otherEnd.isSource() && otherEnd != EquipmentKind.UTILITY;
        return !ownSource || MAIN.matcher(CircuitRef.named(device.key()).key()).matches();
    }

    Set<Integer> of(int bus) {
        return mainsOf.getOrDefault(bus, Set.of());
    }

    boolean any(int bus, List<Integer> devices) {
        return devices.stream().anyMatch(of(bus)::contains);
    }
}
