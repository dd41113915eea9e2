package asfound.drawing.page;

/**
 * A straight ruled line, or the edge of a shaded area, along one of the page's axes.
 *
 * @param at where it lies across its own direction: y for a horizontal, x for a vertical rule, in points
 * @param from where it begins
 * @param to where it ends, not before {@code from}
 */
public record Rule(double at, double from, double to) {

    public double length() {
        return to - from;
    }

    /** How much of the stretch from {@code a} to {@code b} the rule covers, in points. */
    public double covers(double a, double b) {
        return Math.max(0, Math.min(to, b) - Math.max(from, a));
    }

    public boolean passes(double point) {
        return from <= point && point <= to;
    }
}
