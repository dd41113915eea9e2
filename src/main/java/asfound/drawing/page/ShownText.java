package asfound.drawing.page;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.state.PDGraphicsState;
import org.apache.pdfbox.pdmodel.graphics.state.PDTextState;
import org.apache.pdfbox.util.Matrix;

/**
 * Places the letters of shown texts (ISO 32000-1, 9.4.3 and 9.4.4) step by step as the library does, to the last bit, but
 * without three matrices and a search for the width for each letter: pages consist of little else.
 */
final class ShownText {

    private final PlacedLetters letters;
    private final Step step;
    private final KnownFonts fonts;
    private PDFont last;
    private FontLetters lastLetters;

    /** To be taken for each letter. */
    interface Step {
        void taken() throws IOException;
    }

    ShownText(PlacedLetters letters, KnownFonts fonts, Step step) {
        this.letters = letters;
        this.fonts = fonts;
        this.step = step;
    }

    FontLetters of(PDFont font) {
        if (font != last) {
            lastLetters = fonts.of(font);
            last = font;
        }
        return lastLetters;
    }

    /** Shows a text in a font that runs across, and moves the state's text matrix behind it. */
    void show(byte[] text, PDFont font, PDGraphicsState state, boolean hidden, int piece) throws IOException {
        if (text.length == 0) return;
        FontLetters own = of(font);
        PDTextState set = state.getTextState();
        float size = set.getFontSize(), across = set.getHorizontalScaling() / 100f, rise = set.getRise();
        Matrix line = state.getTextMatrix(), page = state.getCurrentTransformationMatrix();
        // along a text only the last row of the matrix changes
        Matrix first =
                new Matrix(size * across, 0, 0, size, 0, rise).multiply(line).multiply(page);
        float a = first.getScaleX(), b = first.getShearY(), c = first.getShearX(), d = first.getScaleY();
        ByteArrayInputStream codes = own.singleBytes() ? null : new ByteArrayInputStream(text);
        float x = line.getTranslateX(), y = line.getTranslateY();
        for (int at = 0; at < text.length; ) {
            int code = codes == null ? text[at] & 0xFF : font.readCode(codes);
            int next = codes == null ? at + 1 : text.length - codes.available();
            FontLetters.Letter letter = own.letter(code);
            float lineX = rise * line.getShearX() + x, lineY = rise * line.getScaleY() + y;
            float e = lineX * page.getScaleX() + lineY * page.getShearX() + page.getTranslateX();
            float f = lineX * page.getShearY() + lineY * page.getScaleY() + page.getTranslateY();
            if (!Float.isFinite(e) || !Float.isFinite(f)) throw new IllegalArgumentException("no place on any page");
            step.taken();
            if (!hidden) letters.add(letter, letter.advance(), own.height(), a, b, c, d, e, f, piece);
            float space = next == at + 1 && code == ' ' ? set.getWordSpacing() : 0;
            float far = (letter.advance() * size + set.getCharacterSpacing() + space) * across;
            x += far * line.getScaleX();
            y += far * line.getShearY();
            line.setValue(2, 0, x);
            line.setValue(2, 1, y);
            at = next;
        }
        if (!Float.isFinite(x) || !Float.isFinite(y)) throw new IllegalArgumentException("no place on any page");
    }
}
