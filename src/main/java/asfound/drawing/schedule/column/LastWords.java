package asfound.drawing.schedule.column;

import asfound.drawing.schedule.phrase.Phrase;
import java.util.List;
import java.util.Set;

/**
 * The last words of entries that happen to be of one length, {@code #185} behind {@code Spare parts store lights} and {@code 125}
 * behind {@code Sprinkler compressor no.} in type of one width: a blank runs down before them, and they are no column.
 */
final class LastWords {

    /** Words of one entry stand no further apart, in sizes of type. */
    private static final double NEAR = 0.75;
    /** So many letters have the words before them at least: they are no device or load. */
    private static final int LETTERS = 4;

    private LastWords() {}

    /**
     * Takes out the cuts that part such words from their entries.
     *
     * @param cuts from left to right, the edges of the table among them
     * @param ruled those along upright rules, which stay
     */
    static void drop(List<Double> cuts, List<Phrase> entries, Set<Double> ruled, ColumnHeadings headings) {
        for (int i = cuts.size() - 2; i > 0; i--) {
            double left = cuts.get(i - 1), cut = cuts.get(i), right = cuts.get(i + 1);
            if (!ruled.contains(cut)
                    && areLastWords(entries, left, cut, right)
                    && headings.of(cut, right).text().isEmpty()) cuts.remove(i);
        }
    }

    /** Each of several texts follows a text before the cut, where most texts have none behind them. */
    private static boolean areLastWords(List<Phrase> entries, double left, double cut, double right) {
        int behind = 0, before = 0;
        for (Phrase p : entries) {
            double x = p.centreX();
            if (x > left && x < cut) before++;
            if (x <= cut || x >= right) continue;
            if (!follows(p, entries, left, cut)) return false;
            behind++;
        }
        return behind > 0 && before > 2 * behind;
    }

    private static boolean follows(Phrase p, List<Phrase> entries, double left, double cut) {
        for (Phrase o : entries) {
            double gap = p.left() - o.right();
            if (gap > 0
                    && gap < NEAR * p.size()
                    && o.centreX() > left
                    && o.centreX() < cut
                    && Math.abs(o.centreY() - p.centreY()) < 0.2 * p.size()
                    && o.text().chars().filter(Character::isLetter).count() >= LETTERS) return true;
        }
        return false;
    }
}
