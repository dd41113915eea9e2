package asfound.drawing.schedule.device;

import asfound.drawing.page.Word;
import asfound.drawing.schedule.row.Leftover;
import asfound.model.Box;
import java.util.List;
import java.util.Set;

/**
 * The circuits of a table.
 *
 * @param name the panel that the rows of a combined list name; empty elsewhere
 * @param drafts in order of their lowest position
 * @param strays texts in a column of the rows that no row took
 * @param taken the words that stand in the rows that were read, positions too
 * @param cost what speaks against the reading, in rows
 * @param box from the first row to the last
 * @param scattered the list goes from panel to panel and back, and names few of any panel's positions: not a list of circuits
 */
public record Circuits(
        String name,
        List<Draft> drafts,
        List<Leftover> strays,
        Set<Word> taken,
        double cost,
        Box box,
        boolean scattered) {}
