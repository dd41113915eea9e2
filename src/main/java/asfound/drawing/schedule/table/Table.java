package asfound.drawing.schedule.table;

import asfound.model.Box;
import java.util.List;

/**
 * The part of a sheet that is explained as the directory of one panel.
 *
 * @param sides from left to right
 * @param bodyTop where the first row begins
 * @param box from the headings to the last row
 */
public record Table(List<Side> sides, double bodyTop, Box box) {

    public Table {
        sides = List.copyOf(sides);
    }
}
