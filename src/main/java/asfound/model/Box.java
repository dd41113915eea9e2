package asfound.model;

/**
 * A rectangle on a page as displayed, after rotation and crop, in points (1/72 inch) from the top left corner.
 *
 * @param x left edge
 * @param y top edge, growing downwards
 * @param w width, not negative
 * @param h height, not negative
 */
public record Box(double x, double y, double w, double h) {

    public Box {
        if (!(w >= 0 && h >= 0)) throw new IllegalArgumentException("a box of negative size: " + w + " x " + h);
    }

    public double right() {
        return x + w;
    }

    public double bottom() {
        return y + h;
    }

    public double centreX() {
        return x + w / 2;
    }

    public double centreY() {
        return y + h / 2;
    }

    /** The smallest box that holds both. */
    public Box union(Box other) {
        double left = Math.min(x, other.x), top = Math.min(y, other.y);
        return new Box(left, top, Math.max(right(), other.right()) - left, Math.max(bottom(), other.bottom()) - top);
    }

    public boolean contains(double px, double py) {
        return px >= x && px <= right() && py >= y && py <= bottom();
    }

    public boolean overlaps(Box other) {
        return x < other.right() && other.x < right() && y < other.bottom() && other.y < bottom();
    }
}
