package asfound.drawing.schedule.device;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * Whether loads by phase stand under the phases that their positions are on. Phases go round from position to position,
 * whatever the order on the sheet: in pairs across two sides, or one by one. Where nearly all entries follow one such order,
 * one that does not was put into the wrong column or row. Common practice; no office need follow it, so that without a clear
 * order nothing is said.
 */
public final class Rotation {

    private static final int FEW = 3;

    private final List<Draft> loaded = new ArrayList<>();
    private final int phases;

    private Rotation(List<Draft> drafts, int phases) {
        this.phases = phases;
        for (Draft d : drafts)
            if (d.loads().size() > 1 && d.loads().stream().anyMatch(l -> l.or(0.0) > 0)) loaded.add(d);
    }

    /**
     * The entries whose loads stand under other phases than their positions'.
     *
     * @param phases the number of columns of loads
     */
    public static List<Draft> breaking(List<Draft> drafts, int phases) {
        return phases < 2 ? List.of() : new Rotation(drafts, phases).breaking();
    }

    private List<Draft> breaking() {
        List<Draft> fewest = loaded;
        for (int step = 1; step <= 2; step++)
            for (int shift = 0; shift < phases; shift++) {
                List<Draft> not = new ArrayList<>();
                for (Draft d : loaded) if (!follows(d, step, shift)) not.add(d);
                if (not.size() < fewest.size()) fewest = not;
            }
        return loaded.size() < FEW || fewest.size() * 3 > loaded.size() ? List.of() : fewest;
    }

    private boolean follows(Draft d, int step, int shift) {
        Map<Integer, Integer> own = new HashMap<>();
        for (int p : d.positions()) own.merge(((p - 1) / step + shift) % phases, 1, Integer::sum);
        TreeSet<Integer> under = new TreeSet<>();
        for (int i = 0; i < d.loads().size(); i++) if (d.loads().get(i).or(0.0) > 0) under.add(i);
        return under.equals(new TreeSet<>(own.keySet()));
    }
}
