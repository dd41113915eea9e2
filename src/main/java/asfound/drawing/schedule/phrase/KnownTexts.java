package asfound.drawing.schedule.phrase;

import asfound.drawing.schedule.text.Field;
import asfound.drawing.schedule.text.Headings;
import asfound.drawing.schedule.text.Labels;
import asfound.drawing.schedule.text.Looks;
import asfound.drawing.schedule.text.NameText;
import asfound.drawing.schedule.text.Remembered;
import asfound.drawing.schedule.text.Role;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What texts mean by themselves, on whatever sheet they stand: the sheets of one file say the same things again and again. For
 * one thread at a time.
 */
public final class KnownTexts {

    /** When so many letters are known, all are forgotten: a file of many sheets must not fill the memory. */
    private static final long MOST_LETTERS = 500_000;

    private Looks looks;
    private Remembered<Map<Role, Double>> headings;
    private Remembered<Optional<String>> names;
    private Remembered<Boolean> ofValues;
    private Remembered<String> bareNames;
    private Remembered<Boolean> saying;

    public KnownTexts() {
        forget();
    }

    private void forget() {
        looks = new Looks();
        headings = new Remembered<>(Headings::weigh);
        names = new Remembered<>(Titles::nameIn);
        ofValues = new Remembered<>(KnownTexts::isOfValue);
        bareNames = new Remembered<>(NameText::name);
        saying = new Remembered<>(HeaderLines::saysItself);
    }

    /** Called before each sheet: within one nothing is forgotten. */
    void makeRoom() {
        long letters = looks.letters()
                + headings.letters()
                + names.letters()
                + ofValues.letters()
                + bareNames.letters()
                + saying.letters();
        if (letters > MOST_LETTERS) forget();
    }

    Looks looks() {
        return looks;
    }

    Map<Role, Double> weigh(String heading) {
        return headings.of(heading);
    }

    Optional<String> name(String text) {
        return names.of(text);
    }

    String bareName(String text) {
        return bareNames.of(text);
    }

    boolean saysItself(String text) {
        return saying.of(text);
    }

    boolean isLabelOfValue(String text) {
        return ofValues.of(text);
    }

    private static boolean isOfValue(String text) {
        if (!Labels.mayBegin(text)) return false;
        List<String> words = List.of(text.split(" "));
        return Labels.at(words, 0)
                .filter(l ->
                        l.field() != Field.OTHER && !l.field().isTotal() && (l.marked() || l.end() == words.size()))
                .isPresent();
    }
}
