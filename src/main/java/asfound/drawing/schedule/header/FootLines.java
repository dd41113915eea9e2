package asfound.drawing.schedule.header;

import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.text.Field;
import asfound.drawing.schedule.text.Labels;
import asfound.model.Box;
import java.util.List;

/**
 * What stands between two directories one above the other: running text close below the upper one belongs to it, where the lower one's
 * title follows after a wider blank, and all of the sheet have their titles above them.
 */
final class FootLines {

    /** A blank that parts is so many times as wide as the one between a directory and what belongs to it. */
    private static final double WIDER = 1.3;
    /** The upper one's title stands no further over its headings, in sizes of type. */
    private static final double REACH = 8;

    /** Words of the shortest running text. */
    private static final int SENTENCE = 5;

    private FootLines() {}

    /** Of directories one above the other the first has its title over it, and the last has none below. */
    static boolean areTitledAbove(Phrases phrases, List<Box> tables) {
        for (Box b : tables) {
            boolean first = tables.stream().noneMatch(o -> isOver(o, b));
            boolean last = tables.stream().noneMatch(o -> isOver(b, o));
            double reach = REACH * size(phrases, b);
            if (first && !isTitled(phrases, b, b.y() - reach, b.y())) return false;
            if (last && isTitled(phrases, b, b.bottom(), b.bottom() + reach)) return false;
        }
        return true;
    }

    private static boolean isOver(Box upper, Box lower) {
        return upper != lower && upper.x() < lower.right() && lower.x() < upper.right() && upper.y() < lower.y();
    }

    /** Where the lower one's header begins; the upper edge of the space where all of it is the lower one's. */
    static double foot(Phrases phrases, Box between) {
        List<Phrase> within = phrases.between(between.y(), between.bottom()).stream()
                .filter(p -> between.contains(p.centreX(), p.centreY()))
                .toList();
        // only a sentence under a table is plainly said of it: labels with their values may as well head the next one
        if (within.isEmpty() || !isSentence(within.get(0))) return between.y();
        // of several titles the first may be the upper one's, with its header below
        if (within.stream().filter(p -> isTitle(p, within, phrases)).count() != 1) return between.y();
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
        return widest > WIDER * first ? at : between.y();
    }

    private static boolean isSentence(Phrase p) {
        return p.words().size() >= SENTENCE
                && (p.text().contains(". ") || p.text().endsWith("."));
    }

    private static double size(Phrases phrases, Box table) {
        return phrases.between(table.y(), table.bottom()).stream()
                .mapToDouble(Phrase::size)
                .average()
                .orElse(8);
    }

    private static boolean isTitled(Phrases phrases, Box table, double from, double to) {
        List<Phrase> near = phrases.between(from, to);
        return near.stream()
                .anyMatch(p -> p.left() < table.right() && p.right() > table.x() && isTitle(p, near, phrases));
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
