package asfound.drawing.schedule.header;

import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.model.Box;
import java.util.Comparator;
import java.util.Optional;

/** A header in a column beside its directory, which goes on below the last row of a short one. */
final class ColumnBeside {

    /** The next line of such a column begins no further down, in sizes of its type. */
    private static final double NEXT = 1.6;
    /** So many words are a note's. */
    private static final int LONGEST = 6;
    /** Nor does it begin further to the left or right: values stand in from their labels. */
    private static final double IN = 3;

    private ColumnBeside() {}

    /**
     * How far down the text beside a directory goes on without a blank line.
     *
     * @param beside the space beside the directory's rows
     * @param limit where another directory begins below
     */
    static double foot(Phrases phrases, Box beside, double limit) {
        Optional<Phrase> last = phrases.between(beside.y(), beside.bottom()).stream()
                .filter(p -> beside.contains(p.centreX(), p.centreY()))
                .max(Comparator.comparingDouble(p -> p.box().bottom()));
        double foot = beside.bottom();
        while (last.isPresent()) {
            Phrase above = last.get();
            last = phrases.between(above.centreY(), above.box().bottom() + 2 * NEXT * above.size()).stream()
                    .filter(p -> p.centreY() > above.centreY() + 0.5 * above.size())
                    .filter(p -> p.box().y() - above.box().bottom() < NEXT * p.size()
                            && p.box().bottom() < limit)
                    .filter(p -> p.centreX() > beside.x() && p.right() <= beside.right())
                    .filter(p -> Math.abs(p.left() - above.left()) < IN * above.size())
                    .min(Comparator.comparingDouble(Phrase::centreY).thenComparingDouble(Phrase::left));
            if (last.filter(p -> p.words().size() > LONGEST).isPresent()) break;
            if (last.isPresent()) foot = Math.max(foot, last.get().box().bottom());
        }
        return foot;
    }
}
