package asfound.drawing.schedule.column;

import asfound.drawing.page.Rule;
import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.phrase.Span;
import asfound.drawing.schedule.spine.Spine;
import asfound.recordset.Patience;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What stands beside the rows of a table and is no column of it: a header's block of labels and values, or what lies
 * outside the rules across the rows.
 */
public final class Margin {

    /** Fewer labels below each other make no block. */
    private static final int BLOCK = 3;

    private final Sheet sheet;
    private final Phrases phrases;
    private final List<Spine> spines;
    private final List<Phrase> entries;
    private final double size;
    /** In all of the table; fewer than a block has are of no account. */
    private final boolean labelled;

    /** How far the rules across each spine reach; empty where those of one are not the table's. */
    private final List<Span> ruled;

    /** @param entries what stands on the level of the rows */
    Margin(Sheet sheet, Phrases phrases, List<Spine> spines, List<Phrase> entries) {
        this.sheet = sheet;
        this.phrases = phrases;
        this.spines = spines;
        this.entries = entries;
        size = spines.get(0).size();
        labelled = hasLabels();
        List<Span> spans = new ArrayList<>();
        for (Spine s : spines) ruled(sheet, s).ifPresent(spans::add);
        ruled = spans.size() == spines.size() ? spans : List.of();
    }

    /** So many different labels stand in the rows and beside them that they may make a block. */
    private boolean hasLabels() {
        if (entries.isEmpty()) return false;
        double first = entries.get(0).centreY(),
                last = entries.get(entries.size() - 1).centreY();
        Set<String> labels = new HashSet<>();
        for (Phrase p : phrases.between(first - 0.3 * size, last + 0.3 * size)) if (isLabel(p)) labels.add(p.text());
        return labels.size() >= BLOCK;
    }

    boolean holds(Column column) {
        if (spines.stream().anyMatch(s -> column.holds(s.centreX()))) return false;
        double share = labelled ? labels(column) : 0;
        if (share >= 0.6) return true;
        double x = (column.left() + column.right()) / 2;
        if (!ruled.isEmpty()) return ruled.stream().noneMatch(r -> x > r.left() && x < r.right());
        return share >= 0.3;
    }

    /** The share of the texts in a column that are a header's labels or stand behind one; 0 where they make no block. */
    private double labels(Column column) {
        List<Phrase> own =
                entries.stream().filter(p -> column.holds(p.centreX())).toList();
        List<String> said =
                own.stream().map(this::label).flatMap(Optional::stream).toList();
        // one word in row after row is no header: what devices are of that kind
        boolean block = said.stream().distinct().count() >= BLOCK;
        return block ? said.size() / (double) own.size() : 0;
    }

    /** The label of a header that the text is, or that it stands to the right of. */
    private Optional<String> label(Phrase p) {
        Patience.check();
        if (isLabel(p)) return Optional.of(p.text());
        return phrases.near(p.centreY(), 0.3 * size).stream()
                .filter(o -> o.right() <= p.left() && p.left() - o.right() < 20 * size)
                .filter(o -> Math.abs(o.centreY() - p.centreY()) < 0.3 * size)
                .max(Comparator.comparingDouble(Phrase::right))
                .filter(this::isLabel)
                .map(Phrase::text);
    }

    private boolean isLabel(Phrase p) {
        return phrases.meanings().isLabelOfValue(p);
    }

    /** How far the rules across a spine reach; nothing where they are not those of a whole table. */
    public static Optional<Span> ruled(Sheet sheet, Spine spine) {
        double size = spine.size();
        double left = spine.left(), right = spine.right();
        for (Rule r : sheet.across().between(spine.firstY() - 2 * size, spine.lastY() + 2 * size))
            if (r.passes(spine.centreX())) {
                left = Math.min(left, r.from());
                right = Math.max(right, r.to());
            }
        return right - left > 14 * size ? Optional.of(new Span(left, right)) : Optional.empty();
    }
}
