package asfound.drawing.page;

import java.util.IdentityHashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** The letters of a document's fonts, which its pages share. For one thread at a time. */
final class KnownFonts {

    /** When so many are known, all are forgotten: a file of many fonts must not fill the memory. */
    private static final int MOST = 100;

    private final Map<PDFont, FontLetters> letters = new IdentityHashMap<>();

    FontLetters of(PDFont font) {
        FontLetters known = letters.get(font);
        if (known == null) {
            if (letters.size() == MOST) letters.clear();
            known = new FontLetters(font);
            letters.put(font, known);
        }
        return known;
    }
}
