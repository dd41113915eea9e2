package asfound.drawing.schedule.phrase;

import asfound.drawing.schedule.text.Looks;
import asfound.drawing.schedule.text.Remembered;

/**
 * What texts mean by themselves, on whatever sheet they stand: the sheets of one file say the same things again and again. For
 * one thread at a time.
 */
public final class KnownTexts {

    /** When so many letters are known, all are forgotten: a file of many sheets must not fill the memory. */
    private static final long MOST_LETTERS = 500_000;

    private Looks looks;
    private Remembered<KnownText> texts;

    public KnownTexts() {
        forget();
    }

    private void forget() {
        looks = new Looks();
        texts = new Remembered<>(KnownText::new);
    }

    /** Called before each sheet: within one nothing is forgotten. */
    void makeRoom() {
        if (looks.letters() + texts.letters() > MOST_LETTERS) forget();
    }

    /** As entries. */
    Looks looks() {
        return looks;
    }

    KnownText of(String text) {
        return texts.of(text);
    }
}
