package asfound.drawing.schedule.header;

import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Headings of a list that stands beside a directory or over it, of fixtures or motors: {@code VOLTS} over {@code 120, 120, 277} is
 * no label of the panel's voltage. Labels in a row with their values below have one row of them; below the headings of a list
 * several columns go on, row by row.
 */
final class ListHeadings {

    /** So many columns go on below the headings of a list. */
    private static final int COLUMNS = 3;
    /** Rows stand no further apart, in sizes of type. */
    private static final double FARTHEST = 4;

    /** Between two headings of one list. */
    private static final double WIDEST = 30;
    /** A list's title stands no further above its first heading. */
    private static final double TITLE = 5;

    private static final double UNEVEN = 0.3;
    /** No entry stands further aside of its heading, in sizes of type. */
    private static final double ASIDE = 6;

    private final Phrases phrases;
    private final Map<Phrase, Boolean> goesOn = new IdentityHashMap<>();

    ListHeadings(Phrases phrases) {
        this.phrases = phrases;
    }

    boolean isOne(Phrase label) {
        if (isUnderTitleOfList(label)) return true;
        List<Phrase> others = new ArrayList<>();
        for (Phrase p : phrases.near(label.centreY(), 0.4 * label.size())) if (p != label) others.add(p);
        long columns = others.stream().filter(this::goesOn).count();
        if (goesOn(label)) return columns + 1 >= COLUMNS;
        return columns >= COLUMNS && hasRows(label, besideColumn(label, others));
    }

    /** Two rows below it, as far apart as the first is from the heading, have an entry in its column, and neither is a label. */
    private boolean goesOn(Phrase heading) {
        return goesOn.computeIfAbsent(heading, this::hasRowsBelow);
    }

    private boolean hasRowsBelow(Phrase heading) {
        return hasRows(heading, below(heading));
    }

    private boolean hasRows(Phrase heading, Optional<Phrase> next) {
        Optional<Phrase> first = next.filter(this::isEntry);
        Optional<Phrase> second = first.flatMap(this::below).filter(this::isEntry);
        if (second.isEmpty()) return false;
        double a = first.get().centreY() - heading.centreY(),
                b = second.get().centreY() - first.get().centreY();
        return Math.abs(a - b) < UNEVEN * Math.max(a, b);
    }

    /** What stands under the blank at a side of a heading that is set in the middle of its column: {@code PH} over {@code 3}. */
    private Optional<Phrase> besideColumn(Phrase heading, List<Phrase> others) {
        double reach = ASIDE * heading.size(), left = heading.left() - reach, right = heading.right() + reach;
        for (Phrase o : others) {
            if (o.right() <= heading.left()) left = Math.max(left, o.right());
            if (o.left() >= heading.right()) right = Math.min(right, o.left());
        }
        Phrase next = null;
        for (Phrase p : lines(heading))
            if (p.left() >= left && p.right() <= right && (next == null || p.centreY() < next.centreY())) next = p;
        return Optional.ofNullable(next);
    }

    private boolean isEntry(Phrase p) {
        return phrases.meanings().label(p).isEmpty();
    }

    /** {@code FEEDER SCHEDULE} stands over the first heading of its line, with nothing between. */
    private boolean isUnderTitleOfList(Phrase heading) {
        if (below(heading).filter(this::isEntry).isEmpty()) return false;
        double size = heading.size();
        Phrase first = heading;
        List<Phrase> line = new ArrayList<>(phrases.near(heading.centreY(), 0.4 * size));
        if (line.size() < COLUMNS) return false;
        line.sort(Phrase.ACROSS.reversed());
        for (Phrase p : line) if (p.right() <= first.left() && first.left() - p.right() < WIDEST * size) first = p;
        Phrase nearest = null;
        for (Phrase p : phrases.between(first.centreY() - TITLE * size, first.centreY() - 0.6 * size))
            if (p.left() < first.right() + size && p.right() > first.left() - size) nearest = p;
        return nearest != null && phrases.meanings().isForeignTitle(nearest);
    }

    private Optional<Phrase> below(Phrase p) {
        Phrase next = null;
        for (Phrase o : lines(p))
            if (o.left() < p.right() && o.right() > p.left() && (next == null || o.centreY() < next.centreY()))
                next = o;
        return Optional.ofNullable(next);
    }

    private List<Phrase> lines(Phrase above) {
        return phrases.between(above.centreY() + 0.6 * above.size(), above.centreY() + FARTHEST * above.size());
    }
}
