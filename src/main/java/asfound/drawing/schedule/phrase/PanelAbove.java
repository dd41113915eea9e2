package asfound.drawing.schedule.phrase;

import asfound.drawing.schedule.text.Field;
import asfound.drawing.schedule.text.Labels;
import asfound.drawing.schedule.text.NameText;
import asfound.model.Box;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The title over a list that has no headings of its own: it says whether these are the circuits of a panel. */
public final class PanelAbove {

    /** A title stands no further above the first row, in sizes of its type. */
    private static final double REACH = 10;

    private PanelAbove() {}

    /**
     * The text that names a panel over a list; empty where none does, or the title of another list stands between.
     *
     * @param list from the first row to the last
     * @param size of the rows' type
     */
    public static Optional<Phrase> of(Phrases phrases, Box list, double size) {
        List<Phrase> above = phrases.between(list.y() - REACH * size, list.y()).stream()
                .filter(p -> p.box().bottom() < list.y() + 0.3 * size)
                .filter(p -> p.right() > list.x() - REACH * size && p.left() < list.right())
                .sorted(Comparator.comparingDouble((Phrase p) -> -p.box().bottom())
                        .thenComparingDouble(Phrase::left))
                .toList();
        for (Phrase p : above) {
            if (ForeignTables.isTitle(p.text())) return Optional.empty();
            if (isOfPanel(p, phrases)) return Optional.of(p);
        }
        return Optional.empty();
    }

    private static boolean isOfPanel(Phrase p, Phrases phrases) {
        if (Titles.nameIn(p.text()).isPresent()) return true;
        List<String> words = HeaderWords.of(p);
        Optional<Labels.Label> label = Labels.at(words, 0).filter(l -> l.field() == Field.DESIGNATION);
        if (label.isEmpty()) return false;
        // the word alone, and the name in the cell beside it
        boolean alone = label.get().end() == words.size();
        return label.get().marked() && !alone || alone && isNameBeside(p, phrases);
    }

    private static boolean isNameBeside(Phrase label, Phrases phrases) {
        return phrases.near(label.centreY(), 0.3 * label.size()).stream()
                .filter(p -> p.left() >= label.right())
                .min(Comparator.comparingDouble(Phrase::left))
                .filter(p -> NameText.isNameBehindItsWord(p.text()))
                .isPresent();
    }
}
