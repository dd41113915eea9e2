package asfound.drawing.schedule.phrase;

import asfound.drawing.page.Rule;
import asfound.drawing.page.Sheet;
import asfound.model.Box;
import asfound.recordset.Patience;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Where what belongs to one of two tables side by side is parted from what belongs to the other. */
public final class Gutter {

    /** How far above a table its header is looked for. */
    private static final int LINES = 30;

    /** Nearly as wide as another, between cells: a text is set narrower than its cell. */
    private static final double ALIKE = 0.6;

    private Gutter() {}

    /**
     * The middle of the widest strip between the two tables in which nothing stands beside their headers either: a header
     * may begin further left than its table.
     */
    public static double between(Phrases phrases, Box left, Box right) {
        double middle = (left.right() + right.x()) / 2, widest = 0, best = middle;
        List<Span> blanks = blanks(phrases, left, right, Phrase::left, Phrase::right);
        for (Span blank : blanks)
            if (blank.width() > widest) {
                widest = blank.width();
                best = (blank.left() + blank.right()) / 2;
            }
        return best;
    }

    /**
     * The middle of the blank column of cells between two tables. A text fills its cell, however short it is; of several blank
     * columns that next to the right one: what stands apart beside a table, its notes, stands to its right.
     */
    public static double ofCells(Sheet sheet, Phrases phrases, Box left, Box right) {
        List<Span> blanks = blanks(phrases, left, right, p -> edge(sheet, p, -1), p -> edge(sheet, p, 1));
        double widest = blanks.stream().mapToDouble(Span::width).max().orElse(0);
        if (widest < 1) return between(phrases, left, right);
        return blanks.stream()
                .filter(b -> b.width() > ALIKE * widest)
                .reduce((a, b) -> b)
                .map(b -> (b.left() + b.right()) / 2)
                .orElseThrow();
    }

    /** The left or the right edge of the cell that a text stands in. */
    private static double edge(Sheet sheet, Phrase p, int side) {
        Patience.check();
        double own = side < 0 ? p.left() : p.right(), reach = own + side * sheet.width();
        return sheet.down().between(Math.min(own, reach), Math.max(own, reach)).stream()
                .filter(r -> r.passes(p.centreY()))
                .mapToDouble(Rule::at)
                .reduce(side < 0 ? Math::max : Math::min)
                .orElse(own);
    }

    /** The strips from the one to the other in which nothing stands, from left to right. */
    private static List<Span> blanks(
            Phrases phrases, Box left, Box right, ToDoubleFunction<Phrase> start, ToDoubleFunction<Phrase> end) {
        double from = left.right(), to = right.x();
        double foot = Math.max(left.bottom(), right.bottom()), top = Math.min(left.y(), right.y());
        List<Span> within = phrases.between(top - LINES * phrases.largest(), foot).stream()
                .filter(p ->
                        p.right() > from && p.left() < to && p.centreY() < foot && p.centreY() > top - LINES * p.size())
                .map(p -> new Span(start.applyAsDouble(p), end.applyAsDouble(p)))
                .sorted(Comparator.comparingDouble(Span::left))
                .toList();
        List<Span> out = new ArrayList<>();
        double free = from;
        for (Span s : within) {
            if (s.left() > free) out.add(new Span(free, s.left()));
            free = Math.max(free, s.right());
        }
        if (to > free) out.add(new Span(free, to));
        return out;
    }
}
