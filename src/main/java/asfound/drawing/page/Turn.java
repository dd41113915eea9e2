package asfound.drawing.page;

import asfound.model.Box;

/**
 * A turn of the page by quarter turns, so that text that runs up, down or upside down runs from left to right.
 *
 * @param quarters the direction of the text as displayed: 0 to the right, 1 upwards, 2 upside down, 3 downwards
 * @param width of the page as displayed, in points
 * @param height of the page as displayed, in points
 */
public record Turn(int quarters, double width, double height) {

    public double frameWidth() {
        return quarters % 2 == 0 ? width : height;
    }

    public double frameHeight() {
        return quarters % 2 == 0 ? height : width;
    }

    /** A box of the page as displayed, in the frame. */
    public Box toFrame(Box b) {
        return switch (quarters) {
            case 1 -> new Box(height - b.bottom(), b.x(), b.h(), b.w());
            case 2 -> new Box(width - b.right(), height - b.bottom(), b.w(), b.h());
            case 3 -> new Box(b.y(), width - b.right(), b.h(), b.w());
            default -> b;
        };
    }

    /** A box of the frame, on the page as displayed. */
    public Box toPage(Box b) {
        return switch (quarters) {
            case 1 -> new Box(b.y(), height - b.right(), b.h(), b.w());
            case 2 -> new Box(width - b.right(), height - b.bottom(), b.w(), b.h());
            case 3 -> new Box(width - b.bottom(), b.x(), b.h(), b.w());
            default -> b;
        };
    }
}
