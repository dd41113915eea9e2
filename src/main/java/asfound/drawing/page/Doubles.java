package asfound.drawing.page;

import java.util.ArrayList;
import java.util.List;

/** Type made bold by printing it twice, a hair apart, is read once. */
final class Doubles {

    /** In units of a letter's size. */
    private static final double HAIR = 0.13;

    /** Letters are put by the square of the page in which they stand, of so many points. */
    private static final double SQUARE = 6;

    /** In points: a letter larger than that is made to be looked for all over the page, and not to be bold. */
    private static final double LARGEST = 1000;

    private final List<Glyph> once;
    /** For each bucket of squares the letter that came last, and for each letter the one before it there; -1 for none. */
    private final int[] last;

    private final int[] before;
    /** Where each letter stands, at hand: most that share a bucket stand well apart. */
    private final double[] lefts;

    private final double[] bottoms;

    private Doubles(int letters) {
        once = new ArrayList<>(letters);
        lefts = new double[letters];
        bottoms = new double[letters];
        last = new int[Integer.highestOneBit(Math.max(16, letters)) << 1];
        java.util.Arrays.fill(last, -1);
        before = new int[letters];
    }

    static List<Glyph> without(List<Glyph> letters) {
        Doubles doubles = new Doubles(letters.size());
        for (Glyph g : letters) if (!doubles.isKnown(g)) doubles.add(g);
        return doubles.once;
    }

    private boolean isKnown(Glyph g) {
        if (g.size() > LARGEST) return false;
        double reach = HAIR * g.size(), x = g.box().x(), y = g.box().bottom();
        long top = square(y - reach), bottom = square(y + reach), left = square(x - reach), right = square(x + reach);
        for (long r = top; r <= bottom; r++)
            for (long c = left; c <= right; c++)
                for (int i = last[bucket(r, c)]; i >= 0; i = before[i])
                    if (Math.abs(lefts[i] - x) < reach && Math.abs(bottoms[i] - y) < reach && isSame(g, once.get(i)))
                        return true;
        return false;
    }

    private void add(Glyph g) {
        int bucket = bucket(square(g.box().bottom()), square(g.box().x()));
        before[once.size()] = last[bucket];
        last[bucket] = once.size();
        lefts[once.size()] = g.box().x();
        bottoms[once.size()] = g.box().bottom();
        once.add(g);
    }

    private int bucket(long row, long column) {
        long mixed = (row * 31 + column) * 0x9E3779B97F4A7C15L;
        return (int) (mixed >>> 40) & last.length - 1;
    }

    private static long square(double at) {
        return (long) Math.floor(at / SQUARE);
    }

    private static boolean isSame(Glyph a, Glyph b) {
        double near = HAIR * Math.min(a.size(), b.size());
        return Math.abs(a.box().x() - b.box().x()) < near
                && Math.abs(a.box().bottom() - b.box().bottom()) < near
                && Math.abs(a.size() - b.size()) < 0.05 * a.size()
                && a.text().equals(b.text());
    }
}
