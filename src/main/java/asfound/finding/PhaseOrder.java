package asfound.finding;

import asfound.finding.Correction.Field;
import asfound.model.Directory;
import asfound.model.Directory.Circuit;
import asfound.network.DeviceRecord.Showing;
import asfound.recordset.Settings;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Panels that follow the convention of phases by position, as far as the phases seen in them show: at least two devices
 * where it holds, and more than where it does not. In other panels a phase seen says nothing against the drawing.
 */
final class PhaseOrder {

    private static final int ENOUGH = 2;

    private final Settings settings;
    /** Devices where the convention held less those where it did not, by panel. */
    private final Map<String, Integer> held = new HashMap<>();

    private final Map<String, Integer> holds = new HashMap<>();

    PhaseOrder(List<Comparison> comparisons, Settings settings) {
        this.settings = settings;
        for (Comparison c : comparisons) {
            if (!Seen.anything(c)) continue;
            Seen seen = Seen.of(c, Field.PHASE, o -> Seen.phases(o.phase()));
            Optional<String> byPosition = byPosition(c);
            if (seen.values().size() != 1 || byPosition.isEmpty()) continue;
            boolean as = byPosition.get().equals(seen.values().get(0));
            held.merge(c.panel(), as ? 1 : -1, Integer::sum);
            if (as) holds.merge(c.panel(), 1, Integer::sum);
        }
    }

    Optional<String> expected(Comparison c) {
        boolean follows = held.getOrDefault(c.panel(), 0) > 0 && holds.getOrDefault(c.panel(), 0) >= ENOUGH;
        return follows ? byPosition(c) : Optional.empty();
    }

    static Optional<Circuit> entry(Comparison c) {
        return c.at().showings().stream().flatMap(s -> s.circuit().stream()).findFirst();
    }

    private Optional<String> byPosition(Comparison c) {
        for (Showing s : c.at().showings())
            if (s.circuit().isPresent() && s.directory().isPresent()) {
                Directory d = s.directory().get();
                return Phases.byPosition(d, s.circuit().get(), Positions.runDown(d, settings));
            }
        return Optional.empty();
    }
}
