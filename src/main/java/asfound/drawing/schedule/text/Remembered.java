package asfound.drawing.schedule.text;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * What was found of texts that were looked at, so that each is looked at once. What is found of a text must hang on nothing but
 * the text. For one thread at a time.
 */
public final class Remembered<T> {

    private final Function<String, T> finding;
    private final Map<String, T> known = new HashMap<>();
    private long letters;

    public Remembered(Function<String, T> finding) {
        this.finding = finding;
    }

    public T of(String text) {
        T found = known.get(text);
        if (found == null) {
            found = finding.apply(text);
            known.put(text, found);
            letters += text.length();
        }
        return found;
    }

    /** Of all texts together. */
    public long letters() {
        return letters;
    }
}
