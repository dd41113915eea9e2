package asfound.drawing.schedule.header;

import asfound.drawing.page.Rule;
import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.model.Box;
import java.util.Comparator;
import java.util.Optional;

/** What stands to the right of a label, below it and above it, where its value may be. */
final class AroundLabel {

    /** The next line begins no further off, in sizes of type. */
    private static final double LINE = 1.6;
    /** A value beside the middle of its label stands no further off, in sizes of its type. */
    private static final double ZONE = 6;
    /** In other type than its label a value stands no further off. */
    private static final double NEAR = 14;
    /** The next pair of a label and its value stands no further off, in sizes of type. */
    private static final double PAIRS = 4;

    private final Sheet sheet;
    private final Phrases phrases;

    AroundLabel(Sheet sheet, Phrases phrases) {
        this.sheet = sheet;
        this.phrases = phrases;
    }

    /** A single upright rule parts them: however wide its cell is, the value stands in the one beside the label's. */
    boolean isNextCell(Phrase label, Phrase value) {
        double last = Double.NEGATIVE_INFINITY;
        int rules = 0;
        for (Rule r : sheet.down().between(label.right() - 0.5, value.left() + 0.5)) {
            if (!r.passes(label.centreY())) continue;
            if (r.at() - last > 1.2) rules++;
            last = r.at();
        }
        return rules == 1;
    }

    /** The next text on its level, no further off than a value stands. */
    Optional<Phrase> toTheRight(Phrase label) {
        double reach = 0.55 * Math.max(phrases.largest(), label.size());
        return phrases.near(label.centreY(), reach).stream()
                .filter(p -> p != label && p.left() >= label.right() - 0.5)
                .filter(p -> Math.abs(p.centreY() - label.centreY()) < 0.55 * Math.max(p.size(), label.size()))
                .min(Comparator.comparingDouble(Phrase::left))
                .filter(p ->
                        p.left() - label.right() < 40 * label.size() || isNextCell(label, p) || isOfPairs(label, p))
                .filter(p -> p.left() - label.right() < NEAR * label.size() || isOfOneType(p, label));
    }

    /**
     * In a worksheet, however wide its columns, another label below or above has its value under or over this one: pairs spread over
     * the row.
     */
    private boolean isOfPairs(Phrase label, Phrase value) {
        if (!sheet.hasCells()) return false;
        return phrases.near(label.centreY(), PAIRS * label.size()).stream()
                .filter(o -> o != label
                        && o.left() == label.left()
                        && phrases.meanings().label(o).isPresent())
                .anyMatch(o -> phrases.near(o.centreY(), 0.3 * o.size()).stream()
                        .filter(p -> p.left() > o.right())
                        .min(Comparator.comparingDouble(Phrase::left))
                        .filter(p -> p.left() == value.left())
                        .isPresent());
    }

    /** The number of a note in other type far off on the same level belongs to no label. */
    private static boolean isOfOneType(Phrase p, Phrase label) {
        return Math.abs(p.size() - label.size()) < 0.12 * label.size();
    }

    /** On the next line, in its column. */
    Optional<Phrase> below(Phrase label) {
        Box b = label.box();
        return phrases.between(label.centreY(), b.bottom() + reach(label)).stream()
                .filter(p -> p != label && p.centreY() > label.centreY() + 0.6 * label.size())
                .filter(p -> p.box().y() - b.bottom() < LINE * Math.max(label.size(), p.size()))
                .filter(p -> isInColumn(p, label))
                .min(Comparator.comparingDouble((Phrase p) -> p.box().y())
                        .thenComparingDouble(p -> Math.abs(p.left() - label.left())))
                .or(() -> FormCells.value(sheet, phrases, label));
    }

    /** On the line before, in its column. */
    Optional<Phrase> above(Phrase label) {
        Box b = label.box();
        return phrases.between(b.y() - reach(label), label.centreY()).stream()
                .filter(p -> p != label && p.centreY() < label.centreY() - 0.6 * label.size())
                .filter(p -> b.y() - p.box().bottom() < LINE * Math.max(label.size(), p.size()))
                .filter(p -> isInColumn(p, label))
                .min(Comparator.comparingDouble((Phrase p) -> -p.box().bottom())
                        .thenComparingDouble(p -> Math.abs(p.left() - label.left())));
    }

    /** No value's middle stands further above or below its label. */
    private double reach(Phrase label) {
        return LINE * Math.max(phrases.largest(), label.size()) + phrases.tallest();
    }

    private boolean isInColumn(Phrase p, Phrase label) {
        return isAligned(p, label) || isInZone(p, label);
    }

    /** A value at the edge of the cell in whose middle its label stands: no other text of the label's line is nearer. */
    private boolean isInZone(Phrase p, Phrase label) {
        double reach = ZONE * label.size(), left = label.left() - reach, right = label.right() + reach;
        boolean alone = true;
        for (Phrase o : phrases.near(label.centreY(), 0.4 * label.size())) {
            if (o == label || Math.abs(o.centreY() - label.centreY()) > 0.4 * label.size()) continue;
            alone = false;
            if (o.right() <= label.left()) left = Math.max(left, o.right());
            if (o.left() >= label.right()) right = Math.min(right, o.left());
        }
        boolean barred = sheet.down()
                .separates(
                        Math.min(p.centreX(), label.centreX()),
                        Math.max(p.centreX(), label.centreX()),
                        label.centreY());
        return !alone && !barred && p.left() > left && p.right() < right;
    }

    private boolean isAligned(Phrase p, Phrase label) {
        return p.left() < label.right() + label.size()
                && p.right() > label.left() - label.size()
                && (!sheet.down()
                                .separates(
                                        Math.min(p.centreX(), label.centreX()),
                                        Math.max(p.centreX(), label.centreX()),
                                        label.centreY())
                        || Math.abs(p.left() - label.left()) < 2 * label.size());
    }
}
