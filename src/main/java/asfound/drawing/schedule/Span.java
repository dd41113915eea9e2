package asfound.drawing.schedule;

/**
 * A stretch across the page.
 *
 * @param left its left edge, in points from that of the page
 * @param right its right edge
 */
record Span(double left, double right) {

    /** Bounded on neither side. */
    static final Span OPEN = new Span(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    double width() {
        return right - left;
    }

    /** Some of the phrase stands in it. */
    boolean meets(Phrase p) {
        return p.right() > left && p.left() < right;
    }

    Span wider(double by) {
        return new Span(left - by, right + by);
    }

    /** What of it lies inside another. */
    Span within(Span other) {
        return new Span(Math.max(left, other.left), Math.min(right, other.right));
    }
}
