package asfound.drawing.page;

import java.awt.geom.Point2D;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/**
 * A page as displayed, after rotation and crop, in points from its top left corner.
 *
 * @param left edge of what is shown, in the page's own space
 * @param bottom edge of it
 * @param across how much of the page's own space is shown across
 * @param up how much of it is shown upwards
 * @param rotation clockwise, in degrees
 */
record Displayed(double left, double bottom, double across, double up, int rotation) {

    static Displayed of(PDPage page) {
        PDRectangle crop = page.getCropBox();
        return new Displayed(
                crop.getLowerLeftX(),
                crop.getLowerLeftY(),
                crop.getWidth(),
                crop.getHeight(),
                Math.floorMod(page.getRotation(), 360));
    }

    double width() {
        return rotation % 180 == 0 ? across : up;
    }

    double height() {
        return rotation % 180 == 0 ? up : across;
    }

    /** A point of the page's own space. */
    Point2D shown(Point2D p) {
        double x = p.getX(), y = p.getY();
        return new Point2D.Double(shownX(x, y), shownY(x, y));
    }

    /** How far a point of the page's own space lies from the left edge. */
    double shownX(double x, double y) {
        return switch (rotation) {
            case 90 -> y - bottom;
            case 180 -> across - (x - left);
            case 270 -> up - (y - bottom);
            default -> x - left;
        };
    }

    /** How far it lies below the top edge. */
    double shownY(double x, double y) {
        return switch (rotation) {
            case 90 -> x - left;
            case 180 -> y - bottom;
            case 270 -> across - (x - left);
            default -> up - (y - bottom);
        };
    }
}
