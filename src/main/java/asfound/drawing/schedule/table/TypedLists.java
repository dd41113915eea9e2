package asfound.drawing.schedule.table;

import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.column.ColumnFinder;
import asfound.drawing.schedule.column.ColumnWeights;
import asfound.drawing.schedule.column.Columns;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.phrase.Span;
import asfound.drawing.schedule.spine.Spine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Lists of panels in columns of text as a typist sets them, each from its first position down, the one beginning further down
 * than the other: each is read by itself, up to where the next begins.
 */
final class TypedLists {

    /** What is said of a panel over its list stands no higher, in sizes of type. */
    private static final double OVER = 10;

    private final Sheet sheet;
    private final Phrases phrases;
    private final ColumnWeights weights;
    private final List<Spine> all;

    /** @param all every column of positions of the sheet */
    TypedLists(Sheet sheet, Phrases phrases, ColumnWeights weights, List<Spine> all) {
        this.sheet = sheet;
        this.phrases = phrases;
        this.weights = weights;
        this.all = all;
    }

    /** One list with its columns. */
    record Found(List<Side> sides, Columns columns) {}

    /** One for each column of positions, from left to right; empty where not all of them are such lists. */
    Optional<List<Found>> of(List<Spine> spines, Span limits) {
        if (!spines.stream().allMatch(TypedLists::isWhole)) return Optional.empty();
        List<Found> out = new ArrayList<>();
        for (Spine own : spines) {
            double left = out.isEmpty() ? limits.left() : own.left() - 1;
            double right = Math.min(limits.right(), next(own) - 1);
            Columns columns = ColumnFinder.find(sheet, phrases, weights, List.of(own), new Span(left, right));
            Optional<List<Side>> plain = PlainSides.of(List.of(own), columns, phrases);
            if (plain.isEmpty()) return Optional.empty();
            out.add(new Found(plain.get(), columns));
        }
        return Optional.of(out);
    }

    /** Where another column of positions begins to the right of a list, or of what stands over it. */
    private double next(Spine own) {
        double top = own.firstY() - OVER * own.size(), next = Double.POSITIVE_INFINITY;
        for (Spine s : all)
            if (s.left() > own.right() && s.firstY() < own.lastY() && s.lastY() > top) next = Math.min(next, s.left());
        return next;
    }

    /** It has no heading and begins with the first position, and odd and even ones stand in it. */
    private static boolean isWhole(Spine s) {
        return !s.headed() && s.numbers().get(0) == 1 && Neighbours.isList(s);
    }
}
