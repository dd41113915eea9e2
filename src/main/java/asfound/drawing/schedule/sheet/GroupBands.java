package asfound.drawing.schedule.sheet;

import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.table.Table;
import asfound.model.Box;

/**
 * A line between the headings of columns and the first row that says of which panel the rows below are, as in a list of
 * several panels whose headings stand once at the head of each page: {@code PANEL 1PA - 120/208V 3PH 4W}.
 */
final class GroupBands {

    private GroupBands() {}

    /** The table from below such a line, so that the line is a header above it; the table's box where there is none. */
    static Box without(Phrases phrases, Table table) {
        Box box = table.box();
        double top = phrases.between(box.y(), table.bodyTop()).stream()
                .filter(p -> p.centreY() > box.y() && p.centreY() < table.bodyTop())
                .filter(p -> p.centreX() > box.x() && p.centreX() < box.right())
                .filter(p -> phrases.meanings().name(p).isPresent()
                        && phrases.meanings().saysOfPanel(p))
                .mapToDouble(p -> Math.min(p.box().bottom(), table.bodyTop()))
                .max()
                .orElse(box.y());
        return new Box(box.x(), top, box.w(), box.bottom() - top);
    }
}
