package asfound.drawing.schedule.header;

import asfound.drawing.schedule.text.Field;
import asfound.drawing.schedule.text.Labels;
import asfound.drawing.schedule.text.Texts;
import asfound.drawing.schedule.text.Values;
import java.util.ArrayList;
import java.util.List;

/**
 * A running line in which nothing but labels and their values stand in turn, without colons: {@code VOLTS 208Y/120 PHASE 3
 * WIRE 4 BUS 225 MAIN 100}. Read from its end, the same figures would belong to the labels behind them.
 */
final class InTurn {

    private static final int FEWEST = 2;
    private static final int LONGEST = 4;

    private final List<String> words;

    private InTurn(List<String> words) {
        this.words = words;
    }

    /** @param from the first word of the value, {@code to} the word behind its last */
    record Pair(Field field, int from, int to) {}

    /** From the first word to the last; empty where anything else stands in the line. */
    static List<Pair> of(List<String> words) {
        List<Pair> pairs = new InTurn(words).from(0);
        return pairs.size() < FEWEST ? List.of() : pairs;
    }

    private List<Pair> from(int start) {
        if (start >= words.size()) return List.of();
        Labels.Label label = Labels.at(words, start).orElse(null);
        if (label == null || label.marked() || !label.field().isOfFigures()) return List.of();
        for (int to = label.end() + 1; to <= Math.min(words.size(), label.end() + LONGEST); to++) {
            boolean last = to == words.size();
            if (!last && Labels.at(words, to).isEmpty()) continue;
            String value = Texts.bare(String.join(" ", words.subList(label.end(), to)));
            if (!Values.fits(label.field(), value)) continue;
            List<Pair> rest = from(to);
            if (!last && rest.isEmpty()) continue;
            List<Pair> out = new ArrayList<>(List.of(new Pair(label.field(), label.end(), to)));
            out.addAll(rest);
            return out;
        }
        return List.of();
    }
}
