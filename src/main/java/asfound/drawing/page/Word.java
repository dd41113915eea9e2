package asfound.drawing.page;

import asfound.model.Box;

/**
 * A run of letters without a space between them, in the frame in which the page's text runs from left to right.
 *
 * @param text what it says; never blank
 * @param box where it stands, in points from the frame's top left corner
 * @param size the size of its type in points
 * @param upright whether it runs as most of the frame's text; a turned heading does not
 */
public record Word(String text, Box box, double size, boolean upright) {

    /** Words of a sheet stand apart: their texts and places tell them well enough. */
    @Override
    public int hashCode() {
        return 31 * (31 * text.hashCode() + Double.hashCode(box.x())) + Double.hashCode(box.y());
    }

    public double left() {
        return box.x();
    }

    public double right() {
        return box.right();
    }

    public double top() {
        return box.y();
    }

    public double bottom() {
        return box.bottom();
    }

    public double centreX() {
        return box.centreX();
    }

    public double centreY() {
        return box.centreY();
    }
}
