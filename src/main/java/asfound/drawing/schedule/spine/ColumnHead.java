package asfound.drawing.schedule.spine;

import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.text.Headings;
import asfound.drawing.schedule.text.Role;
import asfound.drawing.schedule.text.Texts;
import java.util.Comparator;
import java.util.List;

/** What stands over a piece of a column of numbers when the numbers above it are passed over: the column's own heading. */
final class ColumnHead {

    private ColumnHead() {}

    /** It says that the numbers are those of poles, and some stand above: where they begin again, they are no ways. */
    static boolean saysPoles(List<Phrase> phrases, Phrase first) {
        double left = first.left() - 0.5 * first.size(), right = first.right() + 0.5 * first.size();
        List<Phrase> over = phrases.stream()
                .filter(p -> p.centreY() < first.centreY() - 0.5 * first.size())
                .filter(p -> p.left() < right && p.right() > left)
                .sorted(Comparator.comparingDouble(Phrase::centreY).reversed())
                .toList();
        if (over.isEmpty() || !Texts.isFigures(over.get(0).text())) return false;
        return over.stream()
                .filter(p -> p.text().chars().anyMatch(Character::isLetter))
                .findFirst()
                .filter(p -> Headings.weight(p.text(), Role.POLES) > 0.5)
                .isPresent();
    }
}
