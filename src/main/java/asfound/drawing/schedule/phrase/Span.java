package asfound.drawing.schedule.phrase;

/**
 * A stretch across the page.
 *
 * @param left its left edge, in points from that of the page
 * @param right its right edge
 */
public record Span(double left, double right) {

    /** Bounded on neither side. */
    static final Span OPEN = new Span(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    public double width() {
        return right - left;
    }

    /** Some of the phrase stands in it. */
    public boolean meets(Phrase p) {
        return p.right() > left && p.left() < right;
    }

    public Span wider(double by) {
        return new Span(left - by, right + by);
    }

    /** What of it lies inside another. */
    public Span within(Span other) {
        return new Span(Math.max(left, other.left), Math.min(right, other.right));
    }
}
