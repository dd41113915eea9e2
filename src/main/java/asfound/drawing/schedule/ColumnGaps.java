package asfound.drawing.schedule;

import asfound.drawing.page.Word;
import asfound.recordset.Patience;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Tells a narrow gap between two columns from a wide space between two words: figures set to the right beside a
 * description set to the left leave little more than a space, but the same one in row after row.
 */
final class ColumnGaps {

    private static final double USUAL_SPACE = 0.28;
    private static final double WIDER = 1.25;
    /** Lines this many type sizes up and down are looked at. */
    private static final double WINDOW = 24;

    private static final int ROWS = 3;
    private static final int ROWS_OF_FIGURES = 4;
    private static final Pattern FIGURE = Pattern.compile("\\d[\\d.,]*");

    private final List<List<Word>> lines;
    private final double widerThan;

    /** @param lines from top to bottom, each from left to right */
    ColumnGaps(List<List<Word>> lines) {
        this.lines = lines;
        widerThan = WIDER * usualSpace(lines);
    }

    private static double usualSpace(List<List<Word>> lines) {
        List<Double> gaps = new ArrayList<>();
        for (List<Word> line : lines)
            for (int i = 1; i < line.size(); i++) {
                double gap = (line.get(i).left() - line.get(i - 1).right())
                        / line.get(i).size();
                if (gap > 0.1 && gap < 0.95) gaps.add(gap);
            }
        if (gaps.size() < 6) return USUAL_SPACE;
        gaps.sort(Comparator.naturalOrder());
        return Math.max(0.2, gaps.get(gaps.size() / 3));
    }

    /** Whether a column ends between two neighbours on a line. */
    boolean parts(int line, Word a, Word b) {
        double size = Math.min(a.size(), b.size());
        boolean wide = b.left() - a.right() > widerThan * size;
        if (!wide && !isFigure(a)) return false;
        Patience.check();
        Tally tally = new Tally(a, b);
        for (int i = line - 1; i >= 0 && near(lines.get(i), a); i--) tally.add(lines.get(i));
        for (int i = line + 1; i < lines.size() && near(lines.get(i), a); i++) tally.add(lines.get(i));
        return wide ? tally.isColumn() : tally.isColumnOfFigures();
    }

    private static boolean isFigure(Word w) {
        return FIGURE.matcher(w.text()).matches();
    }

    private static boolean near(List<Word> line, Word a) {
        return Math.abs(line.get(0).centreY() - a.centreY()) < WINDOW * a.size();
    }

    /** How the lines around lie to a gap. */
    private static final class Tally {
        private final double left;
        private final double right;
        private final double slack;
        private int endThere;
        private int beginThere;
        private int across;
        private int figures;
        private double shortest;
        private double longest;

        Tally(Word a, Word b) {
            left = a.right();
            right = b.left();
            slack = 0.1 * Math.min(a.size(), b.size());
            shortest = longest = a.right() - a.left();
        }

        void add(List<Word> line) {
            boolean ends = false, begins = false, over = false;
            for (Word w : line) {
                if (Math.abs(w.right() - left) < slack) {
                    ends = true;
                    if (isFigure(w)) figure(w);
                }
                begins |= Math.abs(w.left() - right) < slack;
                over |= w.left() < right - slack && w.right() > left + slack;
            }
            if (over) across++;
            else {
                if (ends) endThere++;
                if (begins) beginThere++;
            }
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
            return endThere >= ROWS && beginThere >= ROWS && across * 4 <= Math.max(endThere, beginThere);
        }
    }
}
