package asfound.sample.kestrel;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;

/** A page to draw on, measured in points from the top left corner. Nothing on it is compressed, so its bytes are the same everywhere. */
final class Sheet implements AutoCloseable {

    static final PDFont PLAIN = new PDType1Font(FontName.HELVETICA);
    static final PDFont BOLD = new PDType1Font(FontName.HELVETICA_BOLD);

    private final double height;
    private final PDPageContentStream content;

    Sheet(PDDocument document, double width, double height) {
        this.height = height;
        PDPage page = new PDPage(new PDRectangle((float) width, (float) height));
        document.addPage(page);
        try {
            content = new PDPageContentStream(document, page, PDPageContentStream.AppendMode.OVERWRITE, false);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void line(double x1, double y1, double x2, double y2, double width) {
        draw(() -> {
            content.setLineWidth((float) width);
            content.moveTo((float) x1, (float) (height - y1));
            content.lineTo((float) x2, (float) (height - y2));
            content.stroke();
        });
    }

    void box(double x, double y, double w, double h, double width) {
        draw(() -> {
            content.setLineWidth((float) width);
            content.addRect((float) x, (float) (height - y - h), (float) w, (float) h);
            content.stroke();
        });
    }

    /** A filled rectangle; 0 is black, 1 is white. */
    void shade(double x, double y, double w, double h, double grey) {
        draw(() -> {
            content.setNonStrokingColor((float) grey);
            content.addRect((float) x, (float) (height - y - h), (float) w, (float) h);
            content.fill();
            content.setNonStrokingColor(0f);
        });
    }

    /** Text whose baseline stands at {@code y}. */
    void text(PDFont font, double size, double x, double y, String text) {
        if (text.isEmpty()) return;
        draw(() -> {
            content.beginText();
            content.setFont(font, (float) size);
            content.newLineAtOffset((float) x, (float) (height - y));
            content.showText(text);
            content.endText();
        });
    }

    void centred(PDFont font, double size, double x, double y, String text) {
        text(font, size, x - width(font, size, text) / 2, y, text);
    }

    void toTheLeftOf(PDFont font, double size, double x, double y, String text) {
        text(font, size, x - width(font, size, text), y, text);
    }

    static double width(PDFont font, double size, String text) {
        try {
            return font.getStringWidth(text) / 1000 * size;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private interface Drawing {
        void draw() throws IOException;
    }

    private static void draw(Drawing drawing) {
        try {
            drawing.draw();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        draw(content::close);
    }
}
