package asfound.drawing.schedule.column;

import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.text.Texts;
import java.util.List;
import java.util.Set;

/**
 * Marks in the middle of a wide column, below entries that begin at its left: {@code –} under {@code AIR COMPRESSOR AC-1}. They
 * are no column of their own, though a blank runs down between them and most entries: the few that reach so far would lose their
 * last words.
 */
final class MarkColumns {

    private MarkColumns() {}

    /**
     * Takes out the cuts that part such marks from the entries of their column.
     *
     * @param cuts from left to right, the edges of the table among them
     * @param ruled those along upright rules, which stay
     */
    static void drop(List<Double> cuts, List<Phrase> entries, Set<Double> ruled) {
        for (int i = cuts.size() - 2; i > 0; i--) {
            double left = cuts.get(i - 1), cut = cuts.get(i), right = cuts.get(i + 1);
            if (ruled.contains(cut)) continue;
            if (isCrossed(entries, cut) && (areMarks(entries, cut, right) || areMarks(entries, left, cut)))
                cuts.remove(i);
        }
    }

    private static boolean isCrossed(List<Phrase> entries, double cut) {
        for (Phrase p : entries) if (p.left() < cut && p.right() > cut) return true;
        return false;
    }

    /** All that stands between them alone is marks, and some do. */
    private static boolean areMarks(List<Phrase> entries, double left, double right) {
        boolean any = false;
        for (Phrase p : entries) {
            if (p.left() < left - 0.5 || p.right() > right + 0.5) continue;
            if (!Texts.isMark(p.text())) return false;
            any = true;
        }
        return any;
    }
}
