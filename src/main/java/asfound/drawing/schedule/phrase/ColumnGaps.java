package asfound.drawing.schedule.phrase;

import asfound.drawing.page.Rules;
import asfound.drawing.page.Word;
import asfound.drawing.schedule.text.LoadText;
import asfound.recordset.Patience;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Tells a narrow gap between two columns from a wide space between two words: figures set to the right beside a
 * description set to the left leave little more than a space, but the same one in row after row.
 */
final class ColumnGaps {

    private static final double USUAL_SPACE = 0.28;
    private static final double WIDER = 1.25;
    /** Lines this many type sizes up and down are looked at. */
    private static final double WINDOW = 24;

    /** In so many rows a column shows. */
    static final int ROWS = 3;
    /** A wider blank parts columns by itself, in units of the type's size. */
    static final double BLANK = 1.1;
    /** So many lines on both sides of one belong to its block of type of one width. */
    private static final int BLOCK = 14;

    private static final int BLOCK_LEAST = 8;

    private final List<List<Word>> lines;
    private final Rules down;
    private final double widerThan;
    private final boolean typed;
    private final boolean[] headings;
    private final List<Stripe> stripes = new ArrayList<>();

    /** A gap that was found to part two columns. */
    private record Stripe(double left, double right, double top, double bottom) {}

    /**
     * @param lines from top to bottom, each from left to right
     * @param spaces between their words, in units of the type's size, narrow ones first
     */
    ColumnGaps(List<List<Word>> lines, double[] spaces, Rules down) {
        this.down = down;
        this.lines = lines;
        widerThan = WIDER * (spaces.length < 6 ? USUAL_SPACE : Math.max(0.2, spaces[spaces.length / 8]));
        typed = isTyped(lines);
        headings = new boolean[lines.size()];
        for (int l = 0; typed && l < headings.length; l++) headings[l] = isHeading(lines.get(l));
        for (int l = 0; l < lines.size(); l++) {
            Word b = null;
            for (Word w : lines.get(l)) {
                Word a = b;
                b = w;
                if (a == null) continue;
                double gap = b.left() - a.right();
                if (gap <= 0.1 * a.size() || gap >= BLANK * a.size()) continue;
                if (GapTally.isFigure(a) && LoadText.isUnit(b.text())) continue;
                double reach = WINDOW * a.size();
                if (isColumn(l, a, b))
                    stripes.add(new Stripe(a.right(), b.left(), a.centreY() - reach, a.centreY() + reach));
                else if (typed) blankColumn(l, a, b).ifPresent(stripes::add);
            }
        }
    }

    /** Whether a column ends between two neighbours on a line: here, or at the same place in a row near by. */
    boolean parts(Word a, Word b) {
        double slack = 0.1 * Math.min(a.size(), b.size());
        return stripes.stream()
                .anyMatch(s -> a.centreY() > s.top()
                        && a.centreY() < s.bottom()
                        && Math.abs(s.left() - a.right()) < slack
                        && Math.abs(s.right() - b.left()) < slack);
    }

    private boolean isColumn(int line, Word a, Word b) {
        Patience.check();
        boolean wide = b.left() - a.right() > widerThan * Math.min(a.size(), b.size());
        if (!wide && !GapTally.isFigure(a) && !GapTally.isPosition(a)) return false;
        GapTally tally = new GapTally(a, b);
        for (int i = line - 1; i >= 0 && near(lines.get(i), a); i--) tally.add(lines.get(i));
        tally.up();
        for (int i = line + 1; i < lines.size() && near(lines.get(i), a); i++) tally.add(lines.get(i));
        tally.down();
        return GapTally.isPosition(a) && tally.isBeginningOfColumn()
                || wide && tally.isColumn()
                || !wide && GapTally.isFigure(a) && tally.isColumnOfFigures();
    }

    /** All letters are of one width, as a typewriter or a printer of lists sets them. */
    private static boolean isTyped(List<List<Word>> lines) {
        int all = 0, n = 0;
        for (List<Word> line : lines) all += line.size();
        double[] widths = new double[all];
        for (List<Word> line : lines)
            for (Word w : line)
                if (w.text().length() > 3) widths[n++] = w.box().w() / w.text().length() / w.size();
        if (n < 12) return false;
        Arrays.sort(widths, 0, n);
        double usual = widths[n / 2];
        int alike = 0;
        for (int i = 0; i < n; i++) if (Math.abs(widths[i] - usual) < 0.02 * usual) alike++;
        return alike * 10 >= 9 * n;
    }

    /**
     * In type of one width a single blank parts columns as well as words. It parts columns where no row of the block runs across
     * it, not every row has a word that ends and one that begins there, one of the two is a figure, what stands behind it lines
     * up with other rows and has a heading.
     */
    private Optional<Stripe> blankColumn(int line, Word a, Word b) {
        if (!GapTally.isFigure(a) && !GapTally.isFigure(b)) return Optional.empty();
        double left = a.right(), right = b.left(), slack = 0.1 * a.size();
        int from = line, to = line, apart = 0, begin = 0, end = 0;
        while (from > 0 && line - from < BLOCK && isNext(lines.get(from - 1), lines.get(from))) from--;
        while (to < lines.size() - 1 && to - line < BLOCK && isNext(lines.get(to), lines.get(to + 1))) to++;
        for (int i = from; i <= to; i++) {
            // headings need not stand over the letters of their columns
            if (headings[i]) continue;
            boolean ends = false, begins = false, ended = false;
            for (Word w : lines.get(i)) {
                if (w.left() < right - slack && w.right() > left + slack) return Optional.empty();
                ends |= Math.abs(w.right() - left) < slack;
                begins |= Math.abs(w.left() - right) < slack;
                ended |= Math.abs(w.right() - b.right()) < slack;
            }
            if (!ends || !begins) apart++;
            if (begins) begin++;
            if (ended) end++;
        }
        double top = lines.get(from).get(0).top(), bottom = lines.get(to).get(0).bottom();
        boolean parts = to - from + 1 >= BLOCK_LEAST
                && apart * 6 >= to - from + 1
                && Math.max(begin, end) >= ROWS
                && isHeaded(line, b)
                && !isRuled(from, to, top, bottom);
        return parts ? Optional.of(new Stripe(left, right, top, bottom)) : Optional.empty();
    }

    private static boolean isHeading(List<Word> line) {
        return line.stream().noneMatch(w -> w.text().chars().anyMatch(Character::isDigit));
    }

    /** The nearest line of headings above has a word over it. */
    private boolean isHeaded(int line, Word b) {
        for (int i = line - 1; i >= 0; i--)
            if (headings[i])
                return lines.get(i).stream()
                        .anyMatch(w -> w.left() < b.right() + 0.5 * b.size() && w.right() > b.left() - 0.5 * b.size());
        return false;
    }

    /** Rules part its columns already. */
    private boolean isRuled(int from, int to, double top, double bottom) {
        double left = Double.POSITIVE_INFINITY, right = Double.NEGATIVE_INFINITY;
        for (List<Word> line : lines.subList(from, to + 1)) {
            left = Math.min(left, line.get(0).left());
            right = Math.max(right, line.get(line.size() - 1).right());
        }
        return down.between(left, right).stream().anyMatch(r -> r.covers(top, bottom) > 0);
    }

    private static boolean isNext(List<Word> above, List<Word> below) {
        return below.get(0).centreY() - above.get(0).centreY()
                < 1.9 * below.get(0).size();
    }

    private static boolean near(List<Word> line, Word a) {
        return Math.abs(line.get(0).centreY() - a.centreY()) < WINDOW * a.size();
    }
}
