package asfound.drawing.schedule.header;

import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.text.Field;
import asfound.drawing.schedule.text.Labels;
import asfound.model.Box;
import java.util.ArrayList;
import java.util.List;

/**
 * What stands between two directories one above the other: lines close below the upper one belong to it, where the lower one's
 * title follows after a wider blank and the upper one has its title above it as well.
 */
final class FootLines {

    /** A blank that parts is so many times as wide as the one between a directory and what belongs to it. */
    private static final double WIDER = 1.3;
    /** The upper one's title stands no further over its headings, in sizes of type. */
    private static final double REACH = 8;

    private FootLines() {}

    /** Where the lower one's header begins; the upper edge of the space where all of it is the lower one's. */
    static double of(Phrases phrases, Box between, Box upper) {
        List<Phrase> within = phrases.between(between.y(), between.bottom()).stream()
                .filter(p ->
                        between.contains(p.centreX(), p.centreY()) && p.box().y() > upper.bottom() - p.size())
                .toList();
        if (within.stream().noneMatch(p -> isTitle(p, within, phrases))) return between.y();
        double widest = 0, at = between.y(), foot = between.y(), first = -1;
        for (Phrase p : within) {
            double blank = p.box().y() - foot;
            if (first < 0) first = Math.max(blank, 0.3 * p.size());
            else if (blank > widest) {
                widest = blank;
                at = p.box().y() - Math.min(1, blank / 2);
            }
            if (isTitle(p, within, phrases)) break;
            foot = Math.max(foot, p.box().bottom());
        }
        return widest > WIDER * first && isTitled(upper, phrases) ? at : between.y();
    }

    private static boolean isTitled(Box table, Phrases phrases) {
        double size = phrases.between(table.y(), table.bottom()).stream()
                .mapToDouble(Phrase::size)
                .average()
                .orElse(8);
        List<Phrase> over = new ArrayList<>(phrases.between(table.y() - REACH * size, table.y()));
        return over.stream()
                .anyMatch(p -> p.left() < table.right() && p.right() > table.x() && isTitle(p, over, phrases));
    }

    private static boolean isTitle(Phrase p, List<Phrase> around, Phrases phrases) {
        boolean label = phrases.meanings()
                .label(p)
                .filter(l -> l.field() == Field.DESIGNATION)
                .filter(Labels.Label::marked)
                .isPresent();
        return label || phrases.meanings().name(p).isPresent() || NamedLine.beginsWith(p, around);
    }
}
