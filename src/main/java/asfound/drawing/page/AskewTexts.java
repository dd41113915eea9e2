package asfound.drawing.page;

import asfound.model.Box;
import java.util.ArrayList;
import java.util.List;

/**
 * Texts that run neither across nor along the page, as a stamp does: no table is written so, and they are kept for what they
 * say of the sheet.
 */
final class AskewTexts {

    /** Letters of one text stand no further apart, in sizes of their type; a space between them is left out. */
    private static final double FARTHEST = 2.5;

    private static final double SAME_SIZE = 0.05;
    /** No page has a stamp of more letters. */
    private static final int MOST = 2000;

    private final List<Word> done = new ArrayList<>();
    private final StringBuilder text = new StringBuilder();
    private Glyph last;
    private Box box;
    private int letters;

    /** Takes in the letters in the order in which they are shown. */
    void add(Glyph letter) {
        if (++letters > MOST) return;
        if (last != null && !goesOn(letter)) end();
        if (!letter.isSpace()) box = box == null ? letter.box() : box.union(letter.box());
        text.append(letter.isSpace() ? " " : letter.text());
        last = letter;
    }

    /** Each with the area around it, as the page is displayed. */
    List<Word> words() {
        end();
        return List.copyOf(done);
    }

    private boolean goesOn(Glyph letter) {
        double far = Math.hypot(
                letter.box().centreX() - last.box().centreX(),
                letter.box().centreY() - last.box().centreY());
        return Math.abs(letter.size() - last.size()) < SAME_SIZE * last.size() && far < FARTHEST * last.size();
    }

    private void end() {
        String said = text.toString().strip();
        if (!said.isEmpty() && box != null) done.add(new Word(said, box, last.size(), false));
        text.setLength(0);
        last = null;
        box = null;
    }
}
