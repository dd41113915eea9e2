package asfound.drawing.schedule.phrase;

import asfound.drawing.page.Word;
import asfound.drawing.schedule.text.Texts;
import java.util.List;
import java.util.regex.Pattern;

/** How the lines around lie to a narrow gap between two words. */
final class GapTally {

    /** So many texts that begin one below the other, each after a wide blank, show where a column begins. */
    private static final int ROWS_THAT_BEGIN = 6;

    private static final int ROWS_OF_FIGURES = 4;
    private static final int LONG_TABLE = 8;
    private static final Pattern POSITIONS = Pattern.compile("\\d+(?:[-,/&]\\d+)*");
    private static final Pattern FIGURE = Pattern.compile("\\d[\\d.,]*");

    private final double start;
    private final double left;
    private final double right;
    private final double slack;
    private final double blank;
    private int endThere;
    private int beginThere;
    private int beginAfterBlank;
    private int across;
    /** Lines that run across the gap beyond the last row that shows it: a heading above a table, a note below it. */
    private int beyond;

    private int above;
    private int figures;
    private double shortest;
    private double longest;

    GapTally(Word a, Word b) {
        start = a.left();
        left = a.right();
        right = b.left();
        slack = 0.1 * Math.min(a.size(), b.size());
        blank = ColumnGaps.BLANK * b.size();
        shortest = longest = a.right() - a.left();
    }

    void add(List<Word> line) {
        boolean ends = false, begins = false, over = false, after = false;
        double last = Double.POSITIVE_INFINITY;
        for (Word w : line) {
            double from = w.left(), to = w.right();
            // what follows begins behind the gap
            if (from - right >= slack) break;
            if (Math.abs(to - left) < slack) {
                ends = true;
                if (isFigure(w)) figure(w);
            }
            if (Math.abs(from - right) < slack) {
                begins = true;
                after = from - last > blank;
            }
            over |= from < right - slack && to > left + slack;
            last = to;
        }
        if (over) beyond++;
        else {
            if (ends && begins) {
                across += beyond;
                beyond = 0;
            }
            if (ends) endThere++;
            if (begins) beginThere++;
            if (after && line.stream().anyMatch(this::isLikeFirst)) beginAfterBlank++;
        }
    }

    /** All lines above were added; those below follow. */
    void up() {
        above = beyond;
        beyond = 0;
    }

    /** All lines were added; beside so long a table what stands beyond it does not matter. */
    void down() {
        if (Math.min(endThere, beginThere) < LONG_TABLE) across += above + beyond;
    }

    /** Positions stand under the one that ends at the gap. */
    private boolean isLikeFirst(Word w) {
        return (Math.abs(w.left() - start) < slack || Math.abs(w.right() - left) < slack) && isPosition(w);
    }

    private void figure(Word w) {
        figures++;
        shortest = Math.min(shortest, w.right() - w.left());
        longest = Math.max(longest, w.right() - w.left());
    }

    /** Figures of different lengths end at the gap, texts begin at it, nothing runs across: no words of one text. */
    boolean isColumnOfFigures() {
        return figures >= ROWS_OF_FIGURES
                && figures * 5 >= endThere * 4
                && beginThere >= ROWS_OF_FIGURES
                && longest - shortest > 2 * slack
                && across * 6 <= figures;
    }

    /** Texts begin and figures end at the gap in several rows, and hardly a line runs across it. */
    boolean isColumn() {
        return endThere >= ColumnGaps.ROWS
                && beginThere >= ColumnGaps.ROWS
                && across * 4 <= Math.max(endThere, beginThere);
    }

    /** In most rows a text begins here after a blank. */
    boolean isBeginningOfColumn() {
        return beginAfterBlank >= ROWS_THAT_BEGIN && across * 4 <= beginAfterBlank;
    }

    static boolean isFigure(Word w) {
        return beginsWithDigit(w)
                && (Texts.isFigures(w.text()) || FIGURE.matcher(w.text()).matches());
    }

    static boolean isPosition(Word w) {
        return beginsWithDigit(w)
                && (Texts.isFigures(w.text()) || POSITIONS.matcher(w.text()).matches());
    }

    private static boolean beginsWithDigit(Word w) {
        char first = w.text().isEmpty() ? ' ' : w.text().charAt(0);
        return first >= '0' && first <= '9';
    }
}
