package asfound.drawing.page;

import asfound.model.Box;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Joins letters into words. Letters that were placed one after the other are tried first, so that two texts that overlap
 * on paper stay apart; then what stands side by side is joined, so that text placed letter by letter in any order comes
 * together.
 */
final class WordBuilder {

    private static final double WORD_GAP = 0.16;
    private static final double OVERLAP = 0.22;
    /** No gap that anybody sees, in units of a letter's size. */
    private static final double TOUCHING = 1e-9;

    private final Rules down;
    private final double tracking;

    private WordBuilder(Rules down, double tracking) {
        this.down = down;
        this.tracking = tracking;
    }

    /** A word as it grows. */
    private static final class Run {
        private final StringBuilder text;
        private double x;
        private double y;
        private double w;
        private double h;
        private final double size;
        private final int piece;
        private int letters = 1;

        Run(Glyph g) {
            piece = g.piece();
            text = new StringBuilder(g.text());
            x = g.box().x();
            y = g.box().y();
            w = g.box().w();
            h = g.box().h();
            size = g.size();
        }

        void add(Glyph g) {
            text.append(g.text());
            letters++;
            widen(g.box().x(), g.box().y(), g.box().right(), g.box().bottom());
        }

        void add(Run r) {
            text.append(r.text);
            letters += r.letters;
            widen(r.x, r.y, r.right(), r.baseline());
        }

        private void widen(double left, double top, double right, double bottom) {
            double x1 = Math.max(right(), right), y1 = Math.max(baseline(), bottom);
            x = Math.min(x, left);
            y = Math.min(y, top);
            w = x1 - x;
            h = y1 - y;
        }

        double right() {
            return x + w;
        }

        double baseline() {
            return y + h;
        }

        double middle() {
            return WordBuilder.middle(y, h);
        }

        static int byLine(Run a, Run b) {
            int line = Double.compare(a.baseline(), b.baseline());
            return line != 0 ? line : byPlace(a, b);
        }

        static int byPlace(Run a, Run b) {
            int place = Double.compare(a.x, b.x);
            return place != 0 ? place : a.text.compareTo(b.text);
        }
    }

    /** The words of letters that all run from left to right in their frame. */
    static List<Word> build(List<Glyph> letters, Rules down, boolean upright) {
        List<Glyph> once = Doubles.without(letters);
        WordBuilder builder = new WordBuilder(down, tracking(once));
        List<Run> runs = builder.inOrderOfContent(once);
        List<Word> words = new ArrayList<>();
        for (Run r : builder.sideBySide(runs, new Blanks(once)))
            words.add(new Word(r.text.toString(), new Box(r.x, r.y, r.w, r.h), r.size, upright));
        return words;
    }

    /** How far letters of a word stand apart as a rule, in units of their size: more than nothing for spaced type. */
    private static double tracking(List<Glyph> letters) {
        double[] gaps = new double[letters.size()];
        int n = 0, touching = 0;
        for (int i = 1; i < letters.size(); i++) {
            Glyph a = letters.get(i - 1), b = letters.get(i);
            if (a.isSpace()
                    || b.isSpace()
                    || !sameLine(a.box().bottom(), b.box().bottom(), a.size(), b.size())) continue;
            double gap = (b.box().x() - a.box().right()) / a.size();
            if (gap <= -0.3 || gap >= 0.7) continue;
            gaps[n++] = gap;
            if (gap <= TOUCHING) touching++;
        }
        // where so many touch, the one asked for is among them
        if (n < 8 || touching > n / 3) return 0;
        Arrays.sort(gaps, 0, n);
        return Math.max(0, gaps[n / 3]);
    }

    private static boolean sameLine(double a, double b, double sizeA, double sizeB) {
        double size = Math.min(sizeA, sizeB);
        return Math.abs(a - b) < 0.18 * size && Math.max(sizeA, sizeB) < 1.5 * size;
    }

    private List<Run> inOrderOfContent(List<Glyph> letters) {
        List<Run> runs = new ArrayList<>(letters.size() / 4);
        Run open = null;
        for (Glyph g : letters) {
            if (g.isSpace()) {
                open = null;
                continue;
            }
            if (open != null && continues(open, g)) open.add(g);
            else runs.add(open = new Run(g));
        }
        return runs;
    }

    private boolean continues(Run run, Glyph g) {
        if (run.piece != g.piece() || !sameLine(run.baseline(), g.box().bottom(), run.size, g.size())) return false;
        double gap = (g.box().x() - run.right()) / run.size;
        return gap > -OVERLAP - 0.1
                && gap < tracking + WORD_GAP
                && (gap < 0.08
                        || !down.separates(
                                run.right() - 0.5,
                                g.box().x() + 0.5,
                                middle(g.box().y(), g.box().h())));
    }

    private List<Run> sideBySide(List<Run> runs, Blanks blanks) {
        List<Run> sorted = new ArrayList<>(runs);
        sorted.sort(Run::byLine);
        List<Run> out = new ArrayList<>();
        for (int i = 0; i < sorted.size(); ) {
            int j = i + 1;
            while (j < sorted.size()
                    && sorted.get(j).baseline() - sorted.get(j - 1).baseline() < 0.06 * sorted.get(j).size) j++;
            joinLine(sorted.subList(i, j), blanks, out);
            i = j;
        }
        return out;
    }

    private void joinLine(List<Run> line, Blanks blanks, List<Run> out) {
        List<Run> byX = new ArrayList<>(line);
        byX.sort(Run::byPlace);
        Run open = null;
        for (Run r : byX) {
            if (open != null && touches(open, r) && !blankBetween(open, r, blanks)) open.add(r);
            else {
                if (open != null) out.add(open);
                open = r;
            }
        }
        if (open != null) out.add(open);
    }

    private boolean touches(Run a, Run b) {
        if (!sameLine(a.baseline(), b.baseline(), a.size, b.size)) return false;
        double gap = (b.x - a.right()) / a.size;
        return gap > -OVERLAP
                && gap < tracking + WORD_GAP
                && !down.separates(a.right() - reach(a), b.x + reach(b), b.middle());
    }

    /** Whole texts that run over the rule between their columns stay apart; single letters are joined up to the rule. */
    private static double reach(Run run) {
        return run.letters > 1 ? Math.min(0.9 * run.size, 0.45 * run.w) : 0.5;
    }

    private static boolean blankBetween(Run a, Run b, Blanks blanks) {
        return blanks.between(
                a.right() - 0.1 * a.size, b.x + 0.1 * b.size, a.baseline() - 0.2 * a.size, a.baseline() + 0.2 * a.size);
    }

    private static double middle(double y, double h) {
        return y + 0.45 * h;
    }
}
