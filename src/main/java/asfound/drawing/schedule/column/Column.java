package asfound.drawing.schedule.column;

import asfound.drawing.schedule.text.Role;
import asfound.drawing.schedule.text.Texts;
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
public record Column(double left, double right, String heading, List<String> texts, Map<Role, Double> weights) {

    /** Less than this is no reason to give a column a role. */
    public static final double ENOUGH = 0.75;

    public Column {
        texts = List.copyOf(texts);
    }

    public double weight(Role role) {
        return weights.getOrDefault(role, 0.0);
    }

    public double width() {
        return right - left;
    }

    public boolean holds(double x) {
        return left <= x && x <= right;
    }

    /** How many of its entries say something. */
    public long said() {
        return texts.stream().filter(t -> !Texts.saysNothing(t)).count();
    }

    public boolean isBlank() {
        return texts.stream().allMatch(Texts::saysNothing);
    }
}
