package asfound.drawing.schedule.text;

import java.util.ArrayList;
import java.util.List;

/**
 * What entries look like. Many stand in several cells, and every way to cut the sheet into columns asks for them once more:
 * each is looked at once.
 */
public final class Looks {

    private final Remembered<Look> known = new Remembered<>(Look::of);

    public Look of(String entry) {
        return known.of(entry);
    }

    /** Of those entries that say something. */
    public List<Look> of(List<String> entries) {
        List<Look> out = new ArrayList<>(entries.size());
        for (String text : entries) {
            Look look = of(text);
            if (look.says()) out.add(look);
        }
        return out;
    }

    /** Of all entries together. */
    public long letters() {
        return known.letters();
    }
}
