package asfound.drawing.schedule.header;

import asfound.drawing.page.Word;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Titles;
import asfound.model.Box;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A panel's name that runs up or down the side of its directory, turned from all other text: {@code PANEL LP-2}. */
final class TurnedTitles {

    /** So far beside the table it may stand, in points. */
    private static final double BESIDE = 60;

    private TurnedTitles() {}

    /** The title beside a table, its words in the order in which they are read; empty where there is none. */
    static Optional<Phrase> of(List<Word> turned, Box table) {
        List<Word> own = new ArrayList<>(turned.stream()
                .filter(w -> w.centreX() > table.x() - BESIDE && w.centreX() < table.right() + BESIDE)
                .filter(w -> w.centreY() > table.y() - BESIDE && w.centreY() < table.bottom() + BESIDE)
                .sorted(Comparator.comparingDouble(Word::centreX)
                        .thenComparing(Comparator.comparingDouble(Word::bottom).reversed()))
                .toList());
        while (!own.isEmpty()) {
            List<Word> line = line(own);
            own.removeAll(line);
            Optional<Phrase> upwards = title(line);
            if (upwards.isPresent()) return upwards;
            Collections.reverse(line);
            Optional<Phrase> downwards = title(line);
            if (downwards.isPresent()) return downwards;
        }
        return Optional.empty();
    }

    /** The first word with those above it, each close over the one before. */
    private static List<Word> line(List<Word> words) {
        Word first = words.get(0);
        List<Word> line = new ArrayList<>(List.of(first));
        for (Word w : words.subList(1, words.size())) {
            Word last = line.get(line.size() - 1);
            boolean beside = Math.abs(w.centreX() - first.centreX()) < 0.5 * first.size();
            if (beside && last.top() - w.bottom() < 1.2 * first.size() && w.bottom() < last.bottom()) line.add(w);
        }
        return line;
    }

    private static Optional<Phrase> title(List<Word> line) {
        return Optional.of(Phrase.of(line)).filter(p -> Titles.nameIn(p.text()).isPresent());
    }
}
