package asfound.drawing.schedule.phrase;

import asfound.drawing.page.Word;
import asfound.drawing.schedule.text.Labels;
import java.util.ArrayList;
import java.util.List;

/**
 * Headers of panels side by side whose lines run up to each other: {@code LOCATION: CORRIDOR 118 PANEL NAME: 23HLA}. Where further
 * lines begin with their labels below or above a label within a line, that begins there as well.
 */
final class TightHeaders {

    /** So many further lines begin at one edge. */
    private static final int LINES = 2;
    /** So far up and down they are looked for, in sizes of type. */
    private static final double REACH = 14;

    private static final double ALIKE = 0.3;

    private final List<Phrase> phrases;
    private final Meanings meanings;

    private TightHeaders(List<Phrase> phrases, Meanings meanings) {
        this.phrases = phrases;
        this.meanings = meanings;
    }

    /** The phrases, with such lines parted; in any order. */
    static List<Phrase> parted(List<Phrase> phrases, Meanings meanings) {
        TightHeaders headers = new TightHeaders(phrases, meanings);
        List<Phrase> out = new ArrayList<>(phrases.size());
        for (Phrase p : phrases)
            if (hasSeveralMarks(p.text())) headers.part(p, out);
            else out.add(p);
        return out;
    }

    private static boolean hasSeveralMarks(String text) {
        int first = text.indexOf(':');
        return first >= 0 && text.indexOf(':', first + 1) >= 0;
    }

    private void part(Phrase p, List<Phrase> out) {
        List<HeaderWords.Piece> pieces = HeaderWords.pieces(p);
        List<String> texts = HeaderWords.texts(pieces);
        List<Word> open = new ArrayList<>();
        Word last = null;
        for (int i = 0; i < pieces.size(); i++) {
            Word word = pieces.get(i).word();
            if (word == last) continue;
            last = word;
            if (!open.isEmpty() && isLabel(texts, i) && isEdge(word, p)) {
                out.add(Phrase.of(open));
                open = new ArrayList<>();
            }
            open.add(word);
        }
        out.add(open.size() == p.words().size() ? p : Phrase.of(open));
    }

    private static boolean isLabel(List<String> texts, int at) {
        return Labels.at(texts, at).filter(Labels.Label::marked).isPresent();
    }

    /** Other lines begin there with a label. */
    private boolean isEdge(Word word, Phrase own) {
        int n = 0;
        for (Phrase p : phrases)
            if (p != own
                    && Math.abs(p.left() - word.left()) < ALIKE * word.size()
                    && Math.abs(p.centreY() - word.centreY()) < REACH * word.size()
                    && meanings.label(p).filter(Labels.Label::marked).isPresent()) n++;
        return n >= LINES;
    }
}
