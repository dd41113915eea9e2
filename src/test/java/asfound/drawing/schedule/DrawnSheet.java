package asfound.drawing.schedule;

import java.io.IOException;
import java.nio.file.Path;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;

/** A sheet drawn for a test: texts at places in points from the top left, in 8 point type. */
final class DrawnSheet implements AutoCloseable {

    static final float SIZE = 8;

    private final PDDocument document = new PDDocument();
    private final PDPageContentStream out;
    private final PDType1Font font = new PDType1Font(FontName.HELVETICA);
    private final float height;

    DrawnSheet() throws IOException {
        PDPage page = new PDPage(PDRectangle.LETTER);
        document.addPage(page);
        height = PDRectangle.LETTER.getHeight();
        out = new PDPageContentStream(document, page);
    }

    DrawnSheet text(double x, double y, String text) throws IOException {
        if (text.isEmpty()) return this;
        out.beginText();
        out.setFont(font, SIZE);
        out.newLineAtOffset((float) x, (float) (height - y));
        out.showText(text);
        out.endText();
        return this;
    }

    /** A text that ends at {@code x}. */
    DrawnSheet toTheRight(double x, double y, String text) throws IOException {
        return text(x - font.getStringWidth(text) / 1000 * SIZE, y, text);
    }

    /** Texts on one line, each at its place. */
    DrawnSheet line(double y, double[] at, String... texts) throws IOException {
        for (int i = 0; i < texts.length; i++) text(at[i], y, texts[i]);
        return this;
    }

    DrawnSheet rule(double x1, double y1, double x2, double y2) throws IOException {
        out.moveTo((float) x1, (float) (height - y1));
        out.lineTo((float) x2, (float) (height - y2));
        out.stroke();
        return this;
    }

    Path save(Path file) throws IOException {
        out.close();
        document.save(file.toFile());
        return file;
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}
