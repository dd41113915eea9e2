package asfound.drawing.schedule.sheet;

import asfound.model.Directory;

/**
 * A directory as one page shows it, before what goes on on the next page is put to it.
 *
 * @param rowEach every position has a row of its own, so that a number that is missing is missed
 * @param paired odd positions stand on one side and even ones on the other
 * @param stated how many positions the header says there are; 0 where it does not
 * @param listed it is the rows of one panel in a list of several
 */
public record Part(Directory directory, boolean rowEach, boolean paired, int stated, boolean listed) {

    public Part with(Directory other) {
        return new Part(other, rowEach, paired, stated, listed);
    }

    /** Both together; a page alone may show one side only. */
    Part joined(Directory whole, Part next) {
        return new Part(
                whole,
                rowEach && next.rowEach,
                paired && next.paired,
                Math.max(stated, next.stated),
                listed || next.listed);
    }
}
