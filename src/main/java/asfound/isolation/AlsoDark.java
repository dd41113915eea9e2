package asfound.isolation;

import asfound.model.Natural;
import asfound.network.Equipment;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What loses supply when devices are open, and by the drawings should not: life-safety equipment first. */
final class AlsoDark {

    private final Terrain terrain;
    private final Ways drawnWays;
    private final Ways foundWays;
    private final Darkness asDrawn;
    private final Darkness asFound;
    private final Map<List<Integer>, List<Integer>> known = new HashMap<>();

    AlsoDark(Terrain terrain, Ways drawnWays, Ways foundWays) {
        this.terrain = terrain;
        this.drawnWays = drawnWays;
        this.foundWays = foundWays;
        asDrawn = new Darkness(drawnWays);
        asFound = new Darkness(foundWays);
    }

    List<String> with(List<Integer> devices, int self) {
        return known.computeIfAbsent(devices, this::unexpected).stream()
                .filter(b -> b != self)
                .map(terrain::name)
                .toList();
    }

    /** One device darkens what it dominates; mostly that is the same by drawing and survey, and need not be listed. */
    private boolean isAsDrawn(int device) {
        return drawnWays.dominators().fingerprint(device)
                == foundWays.dominators().fingerprint(device);
    }

    private List<Integer> unexpected(List<Integer> devices) {
        if (devices.isEmpty() || (devices.size() == 1 && isAsDrawn(devices.get(0)))) return List.of();
        Set<Integer> said = asDrawn.with(devices);
        Comparator<Integer> vitalFirst = Comparator.comparing(
                b -> !terrain.equipment(b).map(Equipment::lifeSafety).orElse(false));
        return asFound.with(devices).stream()
                .filter(b -> !said.contains(b))
                .sorted(vitalFirst.thenComparing(terrain::name, Natural.ORDER))
                .toList();
    }
}
