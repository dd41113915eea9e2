package asfound.drawing.schedule.header;

import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.phrase.HeaderWords;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
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
    /** No margin of a page is wider, in parts of its width. */
    private static final double MARGIN = 0.25;

    private Paragraphs() {}

    /** The line that a line goes on in; empty where it ends by itself. */
    static Optional<Phrase> next(Sheet sheet, Phrases phrases, Phrase p) {
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

    /** Words of one line may differ in their measured size: one as large as the other line's will do. */
    private static boolean isOfOneType(Phrase p, Phrase q) {
        return p.words().stream().anyMatch(w -> Math.abs(w.size() - q.size()) < 0.1 * q.size());
    }
}
