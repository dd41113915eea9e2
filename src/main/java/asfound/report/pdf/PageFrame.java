package asfound.report.pdf;

import asfound.model.Box;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.util.Matrix;

/**
 * How a page is displayed: its crop box, turned clockwise. Converts between boxes as displayed (points from the top left
 * corner) and the page's own user space (ISO 32000-1, 8.3.2.3 and 14.11.2), whose origin may lie anywhere.
 *
 * @param left lower left corner of the crop box in user space
 * @param turn clockwise: 0, 90, 180 or 270 degrees
 */
record PageFrame(double left, double bottom, double right, double top, int turn) {

    static PageFrame of(PDPage page) {
        PDRectangle crop = page.getCropBox();
        int turn = ((page.getRotation() % 360) + 360) % 360;
        return new PageFrame(
                crop.getLowerLeftX(),
                crop.getLowerLeftY(),
                crop.getUpperRightX(),
                crop.getUpperRightY(),
                turn % 90 == 0 ? turn : 0);
    }

    private boolean isSideways() {
        return turn == 90 || turn == 270;
    }

    /** Width as displayed. */
    double width() {
        return isSideways() ? top - bottom : right - left;
    }

    /** Height as displayed. */
    double height() {
        return isSideways() ? right - left : top - bottom;
    }

    /** A displayed point in user space. */
    double[] toUser(double x, double y) {
        return switch (turn) {
            case 90 -> new double[] {left + y, bottom + x};
            case 180 -> new double[] {right - x, bottom + y};
            case 270 -> new double[] {right - y, top - x};
            default -> new double[] {left + x, top - y};
        };
    }

    /** A point of user space as displayed. */
    double[] toDisplay(double ux, double uy) {
        return switch (turn) {
            case 90 -> new double[] {uy - bottom, ux - left};
            case 180 -> new double[] {right - ux, uy - bottom};
            case 270 -> new double[] {top - uy, right - ux};
            default -> new double[] {ux - left, top - uy};
        };
    }

    PDRectangle toUser(Box box) {
        double[] a = toUser(box.x(), box.y()), b = toUser(box.right(), box.bottom());
        double x = Math.min(a[0], b[0]), y = Math.min(a[1], b[1]);
        return new PDRectangle((float) x, (float) y, (float) Math.abs(a[0] - b[0]), (float) Math.abs(a[1] - b[1]));
    }

    Box toDisplay(PDRectangle r) {
        double[] a = toDisplay(r.getLowerLeftX(), r.getLowerLeftY()),
                b = toDisplay(r.getUpperRightX(), r.getUpperRightY());
        return new Box(Math.min(a[0], b[0]), Math.min(a[1], b[1]), Math.abs(a[0] - b[0]), Math.abs(a[1] - b[1]));
    }

    /** Turns an appearance that was drawn upright so that it reads upright on the page as displayed. */
    Matrix upright() {
        return switch (turn) {
            case 90 -> new Matrix(0, 1, -1, 0, 0, 0);
            case 180 -> new Matrix(-1, 0, 0, -1, 0, 0);
            case 270 -> new Matrix(0, -1, 1, 0, 0, 0);
            default -> new Matrix();
        };
    }

    /** The part of the box that lies on the page as displayed; a sliver at the edge where none does. */
    Box within(Box box) {
        double x = Math.max(0, Math.min(box.x(), width() - 1)), y = Math.max(0, Math.min(box.y(), height() - 1));
        double r = Math.max(x + 1, Math.min(box.right(), width())),
                b = Math.max(y + 1, Math.min(box.bottom(), height()));
        return new Box(x, y, r - x, b - y);
    }
}
