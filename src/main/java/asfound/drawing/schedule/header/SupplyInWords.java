package asfound.drawing.schedule.header;

import asfound.drawing.schedule.phrase.HeaderWords;
import asfound.drawing.schedule.phrase.Meanings;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.text.Field;
import asfound.drawing.schedule.text.Labels;
import asfound.drawing.schedule.text.RatingText;
import java.util.Optional;
import java.util.regex.Pattern;

/** What feeds a panel, in words that are as well a label of the panel's own main: {@code Fed from   Main switchgear}. */
final class SupplyInWords {

    private static final Pattern RATED = Pattern.compile("\\b\\d{2,4}\\s?A(?:MPS?|T)?\\b", Pattern.CASE_INSENSITIVE);

    private SupplyInWords() {}

    /** A text that announces the panel's main, and nothing besides. */
    static boolean isOne(Phrase text, Meanings meanings) {
        Optional<Labels.Label> own = meanings.label(text);
        return own.isPresent()
                && own.get().field() == Field.MAIN
                && !own.get().marked()
                && own.get().end() == HeaderWords.of(text).size();
    }

    /** {@code Main breaker 400 A} beside a label whose value was left blank: the panel's own main with its rating. */
    static boolean isOwnMain(Field announced, Phrase text, Meanings meanings) {
        if (announced != Field.FED_FROM) return false;
        return meanings.label(text).filter(l -> l.field() == Field.MAIN).isPresent()
                && RatingText.isMainWord(text.text())
                && RATED.matcher(text.text()).find();
    }
}
