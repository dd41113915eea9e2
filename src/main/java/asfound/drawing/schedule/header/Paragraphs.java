package asfound.drawing.schedule.header;

import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.phrase.HeaderWords;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.phrase.RunningText;
import asfound.drawing.schedule.text.Labels;
import java.util.Optional;

/**
 * Lines of running text that go on below, as a text program breaks them: the next line begins under the first, and its first
 * word had no room left before the margin.
 */
final class Paragraphs {

    private static final int WORDS = 6;
    /** Lines of running text stand no further apart, in sizes of type; many set them wide. */
    private static final double LINE = 1.9;
    /** So many lines at the most has what is said of a panel in sentences. */
    private static final int LINES = 6;
    /** No margin of a page is wider, in parts of its width. */
    private static final double MARGIN = 0.25;

    private Paragraphs() {}

    /** The line that a line goes on in; empty where it ends by itself. */
    static Optional<Phrase> next(Sheet sheet, Phrases phrases, Phrase p) {
        Optional<Phrase> below = inSentence(phrases, p);
        if (below.isPresent()) return below;
        // both margins of a page are alike
        double margin = sheet.width() - p.left();
        if (p.words().size() < WORDS || p.left() > MARGIN * sheet.width() || p.right() > margin + p.size())
            return Optional.empty();
        return phrases.between(p.centreY(), p.centreY() + LINE * p.size()).stream()
                .filter(q -> q.centreY() - p.centreY() > 0.6 * p.size())
                .filter(q -> Math.abs(q.left() - p.left()) < 0.2 * p.size() && isOfOneType(p, q))
                .filter(q -> Labels.at(HeaderWords.of(q), 0)
                        .filter(Labels.Label::marked)
                        .isEmpty())
                .filter(q ->
                        p.right() + 0.25 * p.size() + q.words().get(0).box().w() > margin)
                .findFirst();
    }

    /**
     * In a column of running text no margin is known: a line with a sentence that ends, and another that does not, goes on where
     * the lines below it end with a full stop.
     */
    private static Optional<Phrase> inSentence(Phrases phrases, Phrase p) {
        if (p.words().size() < WORDS || !p.text().contains(". ") || RunningText.isFullStop(p)) return Optional.empty();
        Optional<Phrase> below = below(phrases, p), last = below;
        for (int line = 1; line < LINES && last.isPresent() && !RunningText.isFullStop(last.get()); line++)
            last = below(phrases, last.get());
        return last.filter(RunningText::isFullStop).isPresent() ? below : Optional.empty();
    }

    private static Optional<Phrase> below(Phrases phrases, Phrase p) {
        return phrases.between(p.centreY() + 0.6 * p.size(), p.centreY() + LINE * p.size()).stream()
                .filter(q -> Math.abs(q.left() - p.left()) < 0.2 * p.size() && isOfOneType(p, q))
                .findFirst();
    }

    /** Words of one line may differ in their measured size: one as large as the other line's will do. */
    private static boolean isOfOneType(Phrase p, Phrase q) {
        return p.words().stream().anyMatch(w -> Math.abs(w.size() - q.size()) < 0.1 * q.size());
    }
}
