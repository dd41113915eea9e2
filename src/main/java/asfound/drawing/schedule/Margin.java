package asfound.drawing.schedule;

import asfound.drawing.page.Rule;
import asfound.drawing.page.Sheet;
import asfound.recordset.Patience;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What stands beside the rows of a table and is no column of it: a header's block of labels and values, or what lies
 * outside the rules across the rows.
 */
final class Margin {

    /** Fewer labels below each other make no block. */
    private static final int BLOCK = 3;

    private final Sheet sheet;
    private final Phrases phrases;
    private final List<Spine> spines;
    private final List<Phrase> entries;
    private final double size;

    /** @param entries what stands on the level of the rows */
    Margin(Sheet sheet, Phrases phrases, List<Spine> spines, List<Phrase> entries) {
        this.sheet = sheet;
        this.phrases = phrases;
        this.spines = spines;
        this.entries = entries;
        size = spines.get(0).size();
    }

    boolean holds(Column column) {
        if (spines.stream().anyMatch(s -> column.holds(s.centreX()))) return false;
        List<Phrase> own =
                entries.stream().filter(p -> column.holds(p.centreX())).toList();
        List<String> said =
                own.stream().map(this::label).flatMap(Optional::stream).toList();
        long labels = said.size();
        // one word in row after row is no header: what devices are of that kind
        boolean block = said.stream().distinct().count() >= BLOCK;
        if (block && labels * 10 >= own.size() * 6) return true;
        double x = (column.left() + column.right()) / 2;
        List<Optional<Span>> ruled = spines.stream().map(s -> ruled(sheet, s)).toList();
        if (ruled.stream().allMatch(Optional::isPresent))
            return ruled.stream().flatMap(Optional::stream).noneMatch(r -> x > r.left() && x < r.right());
        return block && labels * 10 >= own.size() * 3;
    }

    /** The label of a header that the text is, or that it stands to the right of. */
    private Optional<String> label(Phrase p) {
        Patience.check();
        if (isLabel(p.text())) return Optional.of(p.text());
        return phrases.near(p.centreY(), 0.3 * size).stream()
                .filter(o -> o.right() <= p.left() && p.left() - o.right() < 20 * size)
                .filter(o -> Math.abs(o.centreY() - p.centreY()) < 0.3 * size)
                .max(Comparator.comparingDouble(Phrase::right))
                .map(Phrase::text)
                .filter(Margin::isLabel);
    }

    private static boolean isLabel(String text) {
        if (!Labels.mayBegin(text)) return false;
        List<String> words = List.of(text.split(" "));
        return Labels.at(words, 0)
                .filter(l ->
                        l.field() != Field.OTHER && !l.field().isTotal() && (l.marked() || l.end() == words.size()))
                .isPresent();
    }

    /** How far the rules across a spine reach; nothing where they are not those of a whole table. */
    static Optional<Span> ruled(Sheet sheet, Spine spine) {
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
