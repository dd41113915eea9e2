package asfound.report.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Bidi;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The fonts of one document, embedded as subsets. Atkinson Hyperlegible Next tells I, l and 1, O and 0 apart, which
 * designations need; a second font stands in for letters that it lacks (Greek, Cyrillic, Hebrew); what neither has is
 * shown as {@link #MISSING}, never dropped.
 */
final class Typeface {

    /** Stands for a character that no font here can show. */
    static final String MISSING = "□";

    private enum Font {
        REGULAR("/asfound/fonts/AtkinsonHyperlegibleNext-Regular.ttf"),
        BOLD("/asfound/fonts/AtkinsonHyperlegibleNext-Bold.ttf"),
        OTHER("/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf");

        final String resource;

        Font(String resource) {
            this.resource = resource;
        }
    }

    private record Loaded(PDType0Font font, TrueTypeFont ttf, CmapLookup glyphs) {}

    /**
     * Neighbouring characters of one font.
     *
     * @param codes as a content stream shows them
     * @param width in thousandths of the size
     * @param thickened to be stroked too, where the font has no bold of its own
     */
    record Run(PDType0Font font, String key, byte[] codes, double width, boolean thickened) {}

    private final PDDocument document;
    private final Map<Font, Loaded> loaded = new EnumMap<>(Font.class);
    private boolean missing;

    Typeface(PDDocument document) {
        this.document = document;
    }

    /** Some character had to be replaced. */
    boolean hasMissing() {
        return missing;
    }

    double width(String text, Type type) {
        double thousandths = 0;
        for (Run run : runs(text, type.bold())) thousandths += run.width();
        return thousandths * type.size() / 1000;
    }

    /** The text in visual order as runs of one font each. */
    List<Run> runs(String text, boolean bold) {
        List<Run> runs = new ArrayList<>();
        StringBuilder pending = new StringBuilder();
        Font current = null;
        int[] points = visual(Visible.of(text)).codePoints().toArray();
        for (int point : points) {
            Font font = fontFor(point, bold);
            if (font == null) {
                missing = true;
                point = MISSING.codePointAt(0);
                font = Font.OTHER;
            }
            if (font != current && current != null) runs.add(run(current, pending, bold));
            current = font;
            pending.appendCodePoint(point);
        }
        if (current != null) runs.add(run(current, pending, bold));
        return runs;
    }

    private Run run(Font which, StringBuilder pending, boolean bold) {
        Loaded font = load(which);
        String text = pending.toString();
        pending.setLength(0);
        int unitsPerEm;
        double width = 0;
        try {
            unitsPerEm = font.ttf().getUnitsPerEm();
            for (int point : text.codePoints().toArray()) {
                font.font().addToSubset(point);
                width += font.ttf().getAdvanceWidth(font.glyphs().getGlyphId(point)) * 1000.0 / unitsPerEm;
            }
            return new Run(
                    font.font(),
                    "F" + (which.ordinal() + 1),
                    font.font().encode(text),
                    width,
                    bold && which == Font.OTHER);
        } catch (IOException e) {
            throw new UncheckedIOException("an embedded font cannot be read", e);
        }
    }

    private Font fontFor(int point, boolean bold) {
        Font own = bold ? Font.BOLD : Font.REGULAR;
        if (has(own, point)) return own;
        return has(Font.OTHER, point) ? Font.OTHER : null;
    }

    private boolean has(Font font, int point) {
        return load(font).glyphs().getGlyphId(point) != 0;
    }

    private Loaded load(Font which) {
        return loaded.computeIfAbsent(which, this::parse);
    }

    private Loaded parse(Font which) {
        try (InputStream in = PDType0Font.class.getResourceAsStream(which.resource)) {
            if (in == null) throw new IllegalStateException("a font is missing from the program: " + which.resource);
            TrueTypeFont ttf = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
            return new Loaded(PDType0Font.load(document, ttf, true), ttf, ttf.getUnicodeCmapLookup());
        } catch (IOException e) {
            throw new UncheckedIOException("an embedded font cannot be read", e);
        }
    }

    /** Writes the used glyphs into the document. To be called once, when all text is set. */
    void embed() throws IOException {
        for (Loaded font : loaded.values()) font.font().subset();
    }

    private static String visual(String text) {
        if (!Bidi.requiresBidi(text.toCharArray(), 0, text.length())) return text;
        Bidi bidi = new Bidi(text, Bidi.DIRECTION_LEFT_TO_RIGHT);
        byte[] levels = new byte[bidi.getRunCount()];
        Object[] pieces = new Object[levels.length];
        for (int i = 0; i < levels.length; i++) {
            levels[i] = (byte) bidi.getRunLevel(i);
            String piece = text.substring(bidi.getRunStart(i), bidi.getRunLimit(i));
            pieces[i] = levels[i] % 2 == 0 ? piece : new StringBuilder(piece).reverse();
        }
        Bidi.reorderVisually(levels, 0, pieces, 0, pieces.length);
        StringBuilder all = new StringBuilder();
        for (Object piece : pieces) all.append(piece);
        return Normalizer.normalize(all, Normalizer.Form.NFC);
    }
}
