package asfound.drawing.schedule.text;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What the entries of one sheet look like. Many stand in several cells, and every way to cut the sheet into columns asks
 * for them once more: each is looked at once.
 */
public final class Looks {

    private final Map<String, Look> known = new HashMap<>();

    public Look of(String entry) {
        return known.computeIfAbsent(entry, Look::of);
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
}
