package asfound.drawing.page;

import asfound.model.Box;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What is drawn with letters and says nothing: bars one below the other that part columns, rows of dashes that part rows, and
 * rows of dots that lead from one text to the next. Bars and dashes become rules; in the place of each stands a space.
 */
final class TypedRules {

    private static final String BARS = "|│┃║¦";
    private static final String DASHES = "-=_+─━═┼├┤┬┴┌┐└┘╪╞╡";
    private static final String DOTS = ".·";
    private static final int FEWEST_BARS = 5;
    private static final int FEWEST_DASHES = 12;
    private static final int FEWEST_DOTS = 4;
    /** Lines of a print follow each other so closely, in sizes of its type; a line of dashes may stand between two. */
    private static final double STEP = 3.4;
    /** The widest gap between the letters of one drawn line, in sizes of its type. */
    private static final double GAP = 2.5;

    private final List<Glyph> letters;
    /** Of each letter. */
    private final Kind[] kinds;

    private final Set<Integer> gone = new HashSet<>();
    private final List<Rule> across = new ArrayList<>();
    private final List<Rule> down = new ArrayList<>();

    private TypedRules(List<Glyph> letters) {
        this.letters = letters;
        kinds = letters.stream().map(Kind::of).toArray(Kind[]::new);
    }

    /** What a letter can be part of. */
    private enum Kind {
        TEXT,
        SPACE,
        BAR,
        DASH,
        DOT;

        static Kind of(Glyph g) {
            if (g.text().length() != 1) return g.isSpace() ? SPACE : TEXT;
            char c = g.text().charAt(0);
            if (BARS.indexOf(c) >= 0) return BAR;
            if (DASHES.indexOf(c) >= 0) return DASH;
            if (DOTS.indexOf(c) >= 0) return DOT;
            return g.isSpace() ? SPACE : TEXT;
        }
    }

    /** @param letters of one direction, in their frame */
    static TypedRules of(List<Glyph> letters) {
        TypedRules typed = new TypedRules(letters);
        boolean dashed = typed.count(Kind.DASH) >= FEWEST_DASHES, dotted = typed.count(Kind.DOT) >= FEWEST_DOTS;
        List<Integer> byLine = dashed || dotted ? typed.inLines() : List.of();
        if (dashed) typed.dashes(byLine);
        if (dotted) typed.dots(byLine);
        if (typed.count(Kind.BAR) >= FEWEST_BARS) typed.bars();
        return typed;
    }

    /** With spaces for what was drawn. */
    List<Glyph> letters() {
        if (gone.isEmpty()) return letters;
        List<Glyph> out = new ArrayList<>(letters.size());
        for (int i = 0; i < letters.size(); i++) {
            Glyph g = letters.get(i);
            out.add(gone.contains(i) ? new Glyph(" ", g.box(), g.size(), g.quarters(), g.piece()) : g);
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

    /** All letters but spaces, line by line and from left to right. */
    private List<Integer> inLines() {
        List<Integer> out = new ArrayList<>();
        long[] lines = new long[letters.size()];
        for (int i = 0; i < letters.size(); i++) {
            lines[i] = Math.round(letters.get(i).box().bottom() * 2);
            if (!is(i, Kind.SPACE)) out.add(i);
        }
        out.sort((a, b) -> lines[a] != lines[b]
                ? Long.compare(lines[a], lines[b])
                : Double.compare(letters.get(a).box().x(), letters.get(b).box().x()));
        return out;
    }

    private boolean follows(int a, int b, double gap) {
        Glyph x = letters.get(a), y = letters.get(b);
        return Math.abs(x.box().bottom() - y.box().bottom()) < 0.2 * x.size()
                && y.box().x() - x.box().right() < gap * x.size()
                && y.box().x() > x.box().x();
    }

    /** A stretch of a line in which nothing stands but dashes, crosses and bars. */
    private void dashes(List<Integer> line) {
        for (int i = 0; i < line.size(); ) {
            int j = i + 1, dashes = is(line.get(i), Kind.DASH) ? 1 : 0;
            boolean drawn = isDrawing(line.get(i));
            while (j < line.size() && follows(line.get(j - 1), line.get(j), GAP)) {
                drawn &= isDrawing(line.get(j));
                if (is(line.get(j), Kind.DASH)) dashes++;
                j++;
            }
            if (drawn && dashes >= FEWEST_DASHES) {
                List<Integer> own = line.subList(i, j);
                Box box = around(own);
                across.add(new Rule(box.centreY(), box.x(), box.right()));
                own.stream().filter(k -> !is(k, Kind.BAR)).forEach(gone::add);
            }
            i = j;
        }
    }

    private boolean isDrawing(int i) {
        return is(i, Kind.DASH) || is(i, Kind.BAR);
    }

    /** Dots in a row with a text that they begin behind or end before. */
    private void dots(List<Integer> line) {
        for (int i = 0; i < line.size(); ) {
            int j = i;
            while (j < line.size() && is(line.get(j), Kind.DOT) && (j == i || follows(line.get(j - 1), line.get(j), 1)))
                j++;
            if (j - i >= FEWEST_DOTS) {
                boolean behind = i > 0 && follows(line.get(i - 1), line.get(i), 1);
                boolean before = j < line.size() && follows(line.get(j - 1), line.get(j), 1);
                if (behind || before) gone.addAll(line.subList(i, j));
            }
            i = Math.max(j, i + 1);
        }
    }

    private void bars() {
        List<Integer> bars = new ArrayList<>();
        for (int i = 0; i < letters.size(); i++) if (is(i, Kind.BAR)) bars.add(i);
        bars.sort(Comparator.comparingLong(
                        (Integer i) -> Math.round(letters.get(i).box().centreX() * 2))
                .thenComparingDouble(i -> letters.get(i).box().y()));
        for (int i = 0; i < bars.size(); ) {
            int j = i + 1;
            while (j < bars.size() && isBelow(bars.get(j - 1), bars.get(j))) j++;
            if (j - i >= FEWEST_BARS) {
                Box box = around(bars.subList(i, j));
                double more = 0.3 * letters.get(bars.get(i)).size();
                down.add(new Rule(box.centreX(), box.y() - more, box.bottom() + more));
                gone.addAll(bars.subList(i, j));
            }
            i = j;
        }
    }

    private boolean isBelow(int a, int b) {
        Glyph x = letters.get(a), y = letters.get(b);
        double step = y.box().bottom() - x.box().bottom();
        return Math.abs(x.box().centreX() - y.box().centreX()) < 0.15 * x.size()
                && step > 0.5 * x.size()
                && step < STEP * x.size()
                && Math.abs(x.size() - y.size()) < 0.1 * x.size();
    }

    private Box around(List<Integer> own) {
        return own.stream().map(k -> letters.get(k).box()).reduce(Box::union).orElseThrow();
    }
}
