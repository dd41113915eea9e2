package asfound.drawing.schedule.header;

import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.text.NameText;
import asfound.model.Box;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A panel's name of letters alone, that stands over its directory where the name of another panel stands over the directory of
 * that one, in the same type: {@code IP-CATH} beside {@code IP-OR1}.
 */
final class NameAlike {

    private static final Pattern NAME = Pattern.compile("[A-Z]{2,10}(?:[./-][A-Z0-9]{1,10})*");
    /** In sizes of the type. */
    private static final double SAME_PLACE = 0.6;

    private static final double SAME_SIZE = 0.04;

    private final Phrases phrases;

    NameAlike(Phrases phrases) {
        this.phrases = phrases;
    }

    /**
     * The name over a directory.
     *
     * @param name of another panel, over the directory {@code other}
     */
    Optional<Phrase> over(Box table, Phrase name, Box other) {
        double x = table.x() + name.left() - other.x(),
                foot = table.y() + name.box().bottom() - other.y();
        double off = SAME_PLACE * name.size();
        List<Phrase> there = phrases.between(foot - 2 * name.size(), foot + off).stream()
                .filter(p -> Math.abs(p.left() - x) < off && Math.abs(p.box().bottom() - foot) < off)
                .filter(p -> Math.abs(p.size() - name.size()) < SAME_SIZE * name.size())
                .toList();
        return there.size() == 1
                ? Optional.of(there.get(0)).filter(p -> NAME.matcher(p.text()).matches() && NameText.isName(p.text()))
                : Optional.empty();
    }
}
