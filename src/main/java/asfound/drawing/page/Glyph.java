package asfound.drawing.page;

import asfound.model.Box;

/**
 * One letter as placed on the page as displayed.
 *
 * @param text what it says; a space for a space; {@link #UNKNOWN} where the font does not tell
 * @param isSpace whether it says nothing but a space
 * @param box from ascender to descender and over its advance, in points from the top left
 * @param size of its type in points
 * @param quarters the direction in which it runs, as in {@link Turn}
 * @param piece which piece of shown text it belongs to: pieces are numbered as they are shown
 */
record Glyph(String text, boolean isSpace, Box box, double size, int quarters, int piece) {

    /** What a letter says whose font does not tell. */
    static final String UNKNOWN = "\uFFFD";

    Glyph(String text, Box box, double size, int quarters, int piece) {
        this(text, text.isBlank(), box, size, quarters, piece);
    }

    /** The same letter in another frame. */
    Glyph in(Turn frame) {
        return frame.quarters() == 0 ? this : new Glyph(text, isSpace, frame.toFrame(box), size, quarters, piece);
    }
}
