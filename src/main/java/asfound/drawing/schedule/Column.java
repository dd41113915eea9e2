package asfound.drawing.schedule;

import asfound.recordset.Patience;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A column of a schedule.
 *
 * @param left its left edge
 * @param right its right edge
 * @param heading the words above it; empty where there are none
 * @param texts what stands in it, line by line
 * @param weights how much heading and content together speak for each role, up to 2
 */
record Column(double left, double right, String heading, List<String> texts, Map<Role, Double> weights) {

    /** Less than this is no reason to give a column a role. */
    static final double ENOUGH = 0.75;

    /** A heading over nothing speaks a little less for a role, but still for it: further rows may hold something. */
    private static final double BLANK = 0.95;

    static Column of(double left, double right, String heading, List<String> texts, Looks looks) {
        Patience.check();
        Map<Role, Double> weights = new EnumMap<>(Role.class);
        Map<Role, Double> byHeading = Headings.weigh(heading);
        List<Look> entries = looks.of(texts);
        boolean said = !entries.isEmpty();
        double loads = said ? Contents.of(Role.LOAD, entries) : 0;
        for (Role role : Role.values()) {
            double head = byHeading.getOrDefault(role, 0.0);
            double content = !said ? 0 : role.isPhaseLoad() ? loads : Contents.of(role, entries);
            if (said && role == Role.DESCRIPTION && head >= 0.9) content = Math.max(content, Contents.tags(entries));
            double weight = said ? head + content : BLANK * head;
            // figures under a heading of another kind are no loads: a demand factor, a size of cable; nor are the
            // numbers of notes that nothing heads
            boolean loadsToo = role == Role.WIRE && byHeading.keySet().stream().anyMatch(Role::isLoad);
            boolean foreign = role.isPhaseLoad() || role == Role.LOAD;
            if (loadsToo && head == 0) weight = 0.4 * content;
            if (foreign && head == 0 && (isHeadedOtherwise(byHeading) || Contents.areSmall(entries)))
                weight = 0.4 * content;
            // the numbers of notes under their heading are neither poles nor ratings
            boolean device = role == Role.POLES || role == Role.RATING;
            if (device && head == 0 && byHeading.getOrDefault(Role.OTHER, 0.0) == 1) weight = 0.4 * content;
            // panels named A and B under a heading that says so
            boolean named = byHeading.getOrDefault(Role.PANEL, 0.0) >= 0.9;
            if (role == Role.PHASE && head == 0 && named) weight = 0.4 * content;
            if (said && content < 0.25 && Contents.judges(role)) weight = 0.4 * head;
            if (weight > 0) weights.put(role, weight);
        }
        return new Column(left, right, heading, List.copyOf(texts), weights);
    }

    private static boolean isHeadedOtherwise(Map<Role, Double> byHeading) {
        return byHeading.values().stream().anyMatch(w -> w >= 0.6);
    }

    double weight(Role role) {
        return weights.getOrDefault(role, 0.0);
    }

    double width() {
        return right - left;
    }

    boolean holds(double x) {
        return left <= x && x <= right;
    }

    boolean isBlank() {
        return texts.stream().allMatch(Texts::saysNothing);
    }
}
