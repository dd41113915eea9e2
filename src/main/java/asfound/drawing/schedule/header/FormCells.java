package asfound.drawing.schedule.header;

import asfound.drawing.page.Rule;
import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import java.util.List;
import java.util.Optional;

/** A form whose cells each hold a small label in a corner and, wherever there is room below it, its value. */
final class FormCells {

    /** A cell is no deeper, in sizes of its label's type. */
    private static final double DEEP = 8;

    private FormCells() {}

    /** The one text below a label within the rules around both; empty where there are several or the cell is open. */
    static Optional<Phrase> value(Sheet sheet, Phrases phrases, Phrase label) {
        double left = Double.NEGATIVE_INFINITY, right = Double.POSITIVE_INFINITY;
        for (Rule r : sheet.down().all()) {
            if (!r.passes(label.centreY())) continue;
            if (r.at() <= label.left() + 0.5) left = Math.max(left, r.at());
            else if (r.at() >= label.right() - 0.5) right = Math.min(right, r.at());
        }
        double foot = label.box().bottom() + DEEP * label.size();
        Optional<Rule> floor = sheet.across().between(label.centreY(), foot).stream()
                .filter(r -> r.passes(label.centreX()))
                .findFirst();
        if (Double.isInfinite(left) || Double.isInfinite(right) || floor.isEmpty()) return Optional.empty();
        double from = left, to = right, bottom = floor.get().at();
        List<Phrase> inside = phrases.between(label.centreY(), bottom).stream()
                .filter(p -> p != label && p.centreY() > label.centreY() && p.centreY() < bottom)
                .filter(p -> p.right() > from && p.left() < to)
                .toList();
        return inside.size() == 1
                        && inside.get(0).left() > from
                        && inside.get(0).right() < to
                        && inside.get(0).centreY() > label.centreY() + 0.6 * label.size()
                ? Optional.of(inside.get(0))
                : Optional.empty();
    }
}
