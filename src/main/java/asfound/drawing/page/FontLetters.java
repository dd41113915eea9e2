package asfound.drawing.page;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDSimpleFont;
import org.apache.pdfbox.pdmodel.font.PDType3Font;
import org.apache.pdfbox.pdmodel.font.encoding.GlyphList;

/** What each letter of a font says and how far it leads: a page's few fonts show the same ones again and again. */
final class FontLetters {

    /** So many are remembered: a page made to be hostile may show a million different ones. */
    private static final int MOST_KNOWN = 20_000;

    private final PDFont font;
    private final boolean singleBytes;
    private final float height;
    private final Letter[] byByte = new Letter[256];
    private final Map<Integer, Letter> others = new HashMap<>();

    /**
     * One letter of the font.
     *
     * @param text what it says; a space for a space; {@link Glyph#UNKNOWN} where the font does not tell
     * @param isSpace whether it says nothing but a space
     * @param advance to the next letter, in units of the type's size
     */
    record Letter(String text, boolean isSpace, float advance) {}

    FontLetters(PDFont font) {
        this.font = font;
        singleBytes = font instanceof PDSimpleFont;
        height = heightOf(font);
    }

    /** Whether each byte of a shown text is the code of one letter. */
    boolean singleBytes() {
        return singleBytes;
    }

    /** Of a letter, in units of the space in which its advance is given. */
    float height() {
        return height;
    }

    Letter letter(int code) throws IOException {
        boolean isByte = code >= 0 && code < byByte.length;
        Letter known = isByte ? byByte[code] : others.get(code);
        if (known != null) return known;
        String text = textOf(code);
        Letter letter =
                new Letter(text, text.isBlank(), font.getDisplacement(code).getX());
        if (isByte) byByte[code] = letter;
        else if (others.size() < MOST_KNOWN) others.put(code, letter);
        return letter;
    }

    private static float heightOf(PDFont font) {
        if (!(font instanceof PDType3Font type3)) return 1;
        try {
            double units = type3.getFontBBox() == null ? 0 : type3.getFontBBox().getHeight();
            double size = Math.abs(units * type3.getFontMatrix().getScaleY());
            return size > 0.1 && size < 10 ? (float) size : 1;
        } catch (RuntimeException e) {
            return 1;
        }
    }

    private String textOf(int code) {
        String text;
        try {
            text = font.toUnicode(code, GlyphList.getAdobeGlyphList());
        } catch (RuntimeException e) {
            text = null;
        }
        if (text == null && singleBytes && code >= 32 && code < 127) text = String.valueOf((char) code);
        return text == null ? Glyph.UNKNOWN : Letters.tidy(text);
    }
}
