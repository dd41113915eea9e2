package asfound.drawing.page;

import asfound.model.Box;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What is drawn with letters and says nothing: bars one below the other that part columns, rows of dashes that part rows, and
 * rows of dots that lead from one text to the next. Bars and dashes become rules; in the place of each stands a space.
 */
final class TypedRules {

    private static final int FEWEST_BARS = 5;
    private static final int FEWEST_DASHES = 12;
    private static final int FEWEST_DOTS = 4;
    /** Lines of a print follow each other so closely, in sizes of its type; a line of dashes may stand between two. */
    private static final double STEP = 3.4;
    /** The widest gap between the letters of one drawn line, in sizes of its type. */
    private static final double GAP = 2.5;

    /** A full stop stands so close to its word, in sizes of its type. */
    private static final double CLOSE = 0.2;
    /** Where a blank stands between two dots, the step is so many times that from one to the next. */
    private static final double BLANK = 1.5;

    /** Letters of one line stand no further above each other, in sizes of type. */
    private static final double LEVEL = 0.2;
    /** Letters may stand so many points above the page. */
    private static final double ABOVE = 10;
    /** No line is drawn with larger letters, in points, nor is one further down than a page can reach. */
    private static final double LARGEST = 500;

    private static final long LAST_LINE = 1 << 17;

    private final List<Glyph> all;
    private final Glyph[] letters;
    /** Of each letter. */
    private final Kind[] kinds;

    private final BitSet gone = new BitSet();
    private final List<Rule> across = new ArrayList<>();
    private final List<Rule> down = new ArrayList<>();

    private TypedRules(List<Glyph> all) {
        this.all = all;
        letters = all.toArray(Glyph[]::new);
        kinds = new Kind[letters.length];
        for (int i = 0; i < letters.length; i++) kinds[i] = Kind.of(letters[i]);
    }

    /** What a letter can be part of. */
    private enum Kind {
        TEXT,
        SPACE,
        BAR,
        DASH,
        DOT;

        static Kind of(Glyph g) {
            if (g.isSpace()) return SPACE;
            if (g.text().length() != 1) return TEXT;
            return switch (g.text().charAt(0)) {
                case '|', '│', '┃', '║', '¦' -> BAR;
                case '-', '=', '_', '+', '─', '━', '═', '┼', '├', '┤', '┬', '┴', '┌', '┐', '└', '┘', '╪', '╞', '╡' ->
                    DASH;
                case '.', '·' -> DOT;
                default -> TEXT;
            };
        }
    }

    /** @param letters of one direction, in their frame */
    static TypedRules of(List<Glyph> letters) {
        TypedRules typed = new TypedRules(letters);
        boolean dashed = typed.count(Kind.DASH) >= FEWEST_DASHES, dotted = typed.count(Kind.DOT) >= FEWEST_DOTS;
        int[] byLine = dashed || dotted ? typed.inLines() : new int[0];
        if (dashed) typed.dashes(byLine);
        if (dotted) typed.dots(byLine);
        if (typed.count(Kind.BAR) >= FEWEST_BARS) typed.bars();
        return typed;
    }

    /** With spaces for what was drawn. */
    List<Glyph> letters() {
        if (gone.isEmpty()) return all;
        List<Glyph> out = new ArrayList<>(letters.length);
        for (int i = 0; i < letters.length; i++) {
            Glyph g = letters[i];
            out.add(gone.get(i) ? new Glyph(" ", g.box(), g.size(), g.quarters(), g.piece()) : g);
        }
        return out;
    }

    List<Rule> across() {
        return across;
    }

    List<Rule> down() {
        return down;
    }

    private int count(Kind kind) {
        int n = 0;
        for (Kind k : kinds) if (k == kind) n++;
        return n;
    }

    private boolean is(int i, Kind kind) {
        return kinds[i] == kind;
    }

    /** All letters but spaces of the lines on which something may be drawn, line by line and from left to right. */
    private int[] inLines() {
        BitSet drawn = drawnLines();
        if (drawn.isEmpty()) return new int[0];
        int[] out = new int[letters.length];
        long[] lines = new long[letters.length];
        double[] lefts = new double[letters.length];
        int n = 0;
        for (int i = 0; i < letters.length; i++) {
            lines[i] = line(i);
            if (is(i, Kind.SPACE) || !drawn.get((int) lines[i])) continue;
            lefts[i] = letters[i].box().x();
            out[n++] = i;
        }
        Ordered.sort(
                out,
                n,
                (a, b) -> lines[a] != lines[b] ? Long.compare(lines[a], lines[b]) : Double.compare(lefts[a], lefts[b]));
        return Arrays.copyOf(out, n);
    }

    /** The line of a letter, counted in half points from a little above the page. */
    private int line(int i) {
        return (int) Math.min(
                LAST_LINE, Math.max(0, Math.round((letters[i].box().bottom() + ABOVE) * 2)));
    }

    /** The lines with dashes or dots enough, and those so near that what stands on them may follow such a one. */
    private BitSet drawnLines() {
        Map<Integer, Integer> marks = new HashMap<>();
        double largest = 0;
        for (int i = 0; i < letters.length; i++) {
            largest = Math.max(largest, Math.min(LARGEST, letters[i].size()));
            if (is(i, Kind.DASH) || is(i, Kind.DOT)) marks.merge(line(i), 1, Integer::sum);
        }
        int near = 1 + (int) Math.ceil(2 * LEVEL * largest);
        BitSet drawn = new BitSet();
        marks.forEach((line, own) -> {
            int all = own + marks.getOrDefault(line - 1, 0) + marks.getOrDefault(line + 1, 0);
            if (all >= FEWEST_DOTS) drawn.set(Math.max(0, line - near), line + near + 1);
        });
        return drawn;
    }

    private boolean follows(int a, int b, double gap) {
        Glyph x = letters[a], y = letters[b];
        return Math.abs(x.box().bottom() - y.box().bottom()) < LEVEL * x.size()
                && y.box().x() - x.box().right() < gap * x.size()
                && y.box().x() > x.box().x();
    }

    /** A stretch of a line in which nothing stands but dashes, crosses and bars. */
    private void dashes(int[] line) {
        for (int i = 0; i < line.length; ) {
            if (!isDrawing(line[i])) {
                i++;
                continue;
            }
            int j = i, dashes = 0;
            do {
                if (is(line[j++], Kind.DASH)) dashes++;
            } while (j < line.length && isDrawing(line[j]) && follows(line[j - 1], line[j], GAP));
            boolean alone = dashes >= FEWEST_DASHES
                    && !(i > 0 && follows(line[i - 1], line[i], GAP))
                    && !(j < line.length && follows(line[j - 1], line[j], GAP));
            if (alone) {
                Box box = around(line, i, j);
                across.add(new Rule(box.centreY(), box.x(), box.right()));
                for (int k = i; k < j; k++) if (!is(line[k], Kind.BAR)) gone.set(line[k]);
            }
            i = j;
        }
    }

    private boolean isDrawing(int i) {
        return is(i, Kind.DASH) || is(i, Kind.BAR);
    }

    /** Dots in a row with a text that they begin behind or end before. */
    private void dots(int[] line) {
        for (int i = 0; i < line.length; ) {
            int j = i;
            while (j < line.length && is(line[j], Kind.DOT) && (j == i || follows(line[j - 1], line[j], 1))) j++;
            if (j - i >= FEWEST_DOTS) {
                boolean behind = i > 0 && follows(line[i - 1], line[i], 1);
                boolean before = j < line.length && follows(line[j - 1], line[j], 1);
                int first = behind && isOfWord(line, i) ? i + 1 : i;
                if (behind || before) for (int k = first; k < j; k++) gone.set(line[k]);
            }
            i = Math.max(j, i + 1);
        }
    }

    /** {@code LTS. .....}: the full stop of an abbreviation, close to its word and with a blank before the dots that follow. */
    private boolean isOfWord(int[] line, int dot) {
        if (!follows(line[dot - 1], line[dot], CLOSE)) return false;
        double own = letters[line[dot]].box().x(),
                second = letters[line[dot + 1]].box().x();
        return second - own > BLANK * (letters[line[dot + 2]].box().x() - second);
    }

    private void bars() {
        int[] bars = new int[letters.length];
        int n = 0;
        for (int i = 0; i < letters.length; i++) if (is(i, Kind.BAR)) bars[n++] = i;
        Ordered.sort(bars, n, this::columnByColumn);
        for (int i = 0; i < n; ) {
            int j = i + 1;
            while (j < n && isBelow(bars[j - 1], bars[j])) j++;
            if (j - i >= FEWEST_BARS) {
                Box box = around(bars, i, j);
                double more = 0.3 * letters[bars[i]].size();
                down.add(new Rule(box.centreX(), box.y() - more, box.bottom() + more));
                for (int k = i; k < j; k++) gone.set(bars[k]);
            }
            i = j;
        }
    }

    private int columnByColumn(int a, int b) {
        Box x = letters[a].box(), y = letters[b].box();
        int column = Long.compare(Math.round(x.centreX() * 2), Math.round(y.centreX() * 2));
        return column != 0 ? column : Double.compare(x.y(), y.y());
    }

    private boolean isBelow(int a, int b) {
        Glyph x = letters[a], y = letters[b];
        double step = y.box().bottom() - x.box().bottom();
        return Math.abs(x.box().centreX() - y.box().centreX()) < 0.15 * x.size()
                && step > 0.5 * x.size()
                && step < STEP * x.size()
                && Math.abs(x.size() - y.size()) < 0.1 * x.size();
    }

    private Box around(int[] some, int from, int to) {
        Box box = letters[some[from]].box();
        for (int i = from + 1; i < to; i++) box = box.union(letters[some[i]].box());
        return box;
    }
}
