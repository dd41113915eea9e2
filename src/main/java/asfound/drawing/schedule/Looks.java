package asfound.drawing.schedule;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What the entries of one sheet look like. Many stand in several cells, and every way to cut the sheet into columns asks
 * for them once more: each is looked at once.
 */
final class Looks {

    private final Map<String, Look> known = new HashMap<>();

    /** Of those entries that say something. */
    List<Look> of(List<String> entries) {
        return entries.stream()
                .map(t -> known.computeIfAbsent(t, Look::of))
                .filter(Look::says)
                .toList();
    }
}
