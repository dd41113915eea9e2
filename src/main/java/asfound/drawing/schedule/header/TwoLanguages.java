package asfound.drawing.schedule.header;

import asfound.drawing.schedule.phrase.HeaderWords;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.text.Field;
import asfound.drawing.schedule.text.Labels;
import asfound.drawing.schedule.text.Texts;
import java.util.List;
import java.util.Optional;

/** Labels in two languages, of which one is known: {@code Einspeisung / Fed from}, {@code Voltage / Spannung: 400 V}. */
final class TwoLanguages {

    /** So many words of the other language at the most. */
    private static final int WORDS = 3;

    private TwoLanguages() {}

    /** The label that begins at a word, with its other half; empty where none does. */
    static Optional<Labels.Label> at(List<String> words, int start) {
        Optional<Labels.Label> known = Labels.at(words, start);
        if (known.isEmpty()) return start == 0 ? second(words) : known;
        // a stroke says nothing as a part of a label, and may have been taken for one
        int end = known.get().end() - (isStroke(words.get(known.get().end() - 1)) ? 1 : 0);
        if (known.get().marked() || end >= words.size() || !isStroke(words.get(end))) return known;
        for (int i = end + 1; i < words.size() && i <= end + WORDS; i++) {
            if (Texts.hasFigure(words.get(i))) return known;
            boolean marked = words.get(i).endsWith(":");
            if (marked || i == words.size() - 1)
                return Optional.of(new Labels.Label(known.get().field(), i + 1, marked));
        }
        return known;
    }

    /** The label behind the stroke, where the words before it are none. */
    private static Optional<Labels.Label> second(List<String> words) {
        for (int i = 1; i <= WORDS && i < words.size() - 1; i++)
            if (isStroke(words.get(i)) && words.subList(0, i).stream().noneMatch(Texts::hasFigure))
                return Labels.at(words, i + 1).filter(l -> l.field().isKept());
        return Optional.empty();
    }

    /**
     * Nothing but a label in two languages, and so no value of another. What mains there are is told in the words of labels as
     * well: only two known halves are one of those.
     */
    static boolean isLabel(Phrase p) {
        if (p.text().indexOf('/') < 0) return false;
        List<String> words = HeaderWords.of(p);
        int stroke = words.indexOf("/");
        if (stroke < 1 || stroke == words.size() - 1) return false;
        boolean first = isWhole(words.subList(0, stroke)), second = isWhole(words.subList(stroke + 1, words.size()));
        return first && second
                || at(words, 0)
                        .filter(l -> l.field().isKept() && l.field() != Field.MAIN && l.end() == words.size())
                        .isPresent();
    }

    private static boolean isWhole(List<String> words) {
        return Labels.at(words, 0).filter(l -> l.end() == words.size()).isPresent();
    }

    private static boolean isStroke(String word) {
        return word.equals("/");
    }
}
