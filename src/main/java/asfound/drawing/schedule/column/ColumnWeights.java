package asfound.drawing.schedule.column;

import asfound.drawing.schedule.phrase.Meanings;
import asfound.drawing.schedule.text.LoadClasses;
import asfound.drawing.schedule.text.Look;
import asfound.drawing.schedule.text.Role;
import asfound.recordset.Patience;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How much the heading and the entries of a column together speak for each role. Most columns of a sheet are met again, by a
 * table that is looked at more closely: each is weighed once.
 */
public final class ColumnWeights {

    /** A heading over nothing speaks a little less for a role, but still for it: further rows may hold something. */
    private static final double BLANK = 0.95;

    private static final Role[] ROLES = Role.values();

    private final Meanings meanings;
    private final Map<Said, Map<Role, Double>> known = new HashMap<>();

    private record Said(String heading, List<String> texts) {}

    public ColumnWeights(Meanings meanings) {
        this.meanings = meanings;
    }

    /**
     * Up to 2 for each role that anything speaks for.
     *
     * @param heading empty where there is none
     * @param texts what stands in the column, line by line
     */
    Map<Role, Double> of(String heading, List<String> texts) {
        return known.computeIfAbsent(new Said(heading, texts), said -> {
            Map<Role, Double> byHeading = meanings.weigh(heading),
                    weights = weights(byHeading, meanings.looks().of(texts));
            LoadClasses.correct(heading, byHeading, weights);
            return weights;
        });
    }

    private static Map<Role, Double> weights(Map<Role, Double> byHeading, List<Look> entries) {
        Patience.check();
        Map<Role, Double> weights = new EnumMap<>(Role.class);
        boolean said = !entries.isEmpty();
        double loads = said ? Contents.of(Role.LOAD, entries) : 0;
        boolean used = said && Contents.of(Role.USE, entries) == 1;
        // figures under a heading of another kind are no loads: a demand factor, a size of cable; nor are the small
        // numbers of notes that nothing heads
        boolean noLoads = isHeadedOtherwise(byHeading) || Contents.areSmall(entries);
        for (Role role : ROLES) {
            double head = byHeading.getOrDefault(role, 0.0);
            double content = !said ? 0 : role.isPhaseLoad() ? loads : Contents.of(role, entries);
            if (said && role == Role.DESCRIPTION && head >= 0.9) content = Math.max(content, Contents.tags(entries));
            double weight = said ? head + content : BLANK * head;
            boolean loadsToo = role == Role.WIRE && byHeading.keySet().stream().anyMatch(Role::isLoad);
            boolean foreign = role.isPhaseLoad() || role == Role.LOAD;
            if (loadsToo && head == 0) weight = 0.4 * content;
            if (foreign && head == 0 && noLoads) weight = 0.4 * content;
            // the numbers of notes under their heading are neither poles nor ratings
            boolean device = role == Role.POLES || role == Role.RATING;
            if (device && head == 0 && byHeading.getOrDefault(Role.OTHER, 0.0) == 1) weight = 0.4 * content;
            // panels named A and B under a heading that says so
            boolean named = byHeading.getOrDefault(Role.PANEL, 0.0) >= 0.9;
            if (role == Role.PHASE && head == 0 && named) weight = 0.4 * content;
            // whether a position is used is no description of what it feeds
            if (role == Role.DESCRIPTION && used) weight = 0.4 * content;
            if (said && content < 0.25 && Contents.judges(role)) weight = 0.4 * head;
            if (weight > 0) weights.put(role, weight);
        }
        return weights;
    }

    private static boolean isHeadedOtherwise(Map<Role, Double> byHeading) {
        return byHeading.values().stream().anyMatch(w -> w >= 0.6);
    }
}
