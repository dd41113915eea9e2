package asfound.drawing.schedule;

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

    Column {
        texts = List.copyOf(texts);
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

    /** How many of its entries say something. */
    long said() {
        return texts.stream().filter(t -> !Texts.saysNothing(t)).count();
    }

    boolean isBlank() {
        return texts.stream().allMatch(Texts::saysNothing);
    }
}
