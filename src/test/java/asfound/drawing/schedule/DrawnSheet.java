package asfound.drawing.schedule;

import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.model.Directory;
import asfound.recordset.Source;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.apache.pdfbox.util.Matrix;

/** A sheet drawn for a test: texts at places in points from the top left, in 8 point type. */
final class DrawnSheet implements AutoCloseable {

    static final float SIZE = 8;

    private static final double[] TWO_SIDED = {40, 70, 200, 240, 280, 420};

    private final PDDocument document = new PDDocument();
    private PDPageContentStream out;
    private final PDType1Font font = new PDType1Font(FontName.HELVETICA);
    private final float height;

    DrawnSheet() throws IOException {
        PDPage page = new PDPage(PDRectangle.LETTER);
        document.addPage(page);
        height = PDRectangle.LETTER.getHeight();
        out = new PDPageContentStream(document, page);
    }

    /** What follows stands on a further page. */
    DrawnSheet nextPage() throws IOException {
        out.close();
        PDPage page = new PDPage(PDRectangle.LETTER);
        document.addPage(page);
        out = new PDPageContentStream(document, page);
        return this;
    }

    DrawnSheet text(double x, double y, String text) throws IOException {
        return text(font, x, y, text);
    }

    /** Lines of type of one width, ten points apart, as a printer of lists sets them. */
    DrawnSheet typed(double y, String... lines) throws IOException {
        for (int i = 0; i < lines.length; i++) text(new PDType1Font(FontName.COURIER), 40, y + 10 * i, lines[i]);
        return this;
    }

    private DrawnSheet text(PDType1Font face, double x, double y, String text) throws IOException {
        if (text.isEmpty()) return this;
        out.beginText();
        out.setFont(face, SIZE);
        out.newLineAtOffset((float) x, (float) (height - y));
        out.showText(text);
        out.endText();
        return this;
    }

    /** A text in larger type. */
    DrawnSheet large(double x, double y, double size, String text) throws IOException {
        out.beginText();
        out.setFont(font, (float) size);
        out.newLineAtOffset((float) x, (float) (height - y));
        out.showText(text);
        out.endText();
        return this;
    }

    /** A stamp in large type that runs upwards from its beginning, by an angle in degrees. */
    DrawnSheet stamp(double x, double y, double size, double degrees, String text) throws IOException {
        out.beginText();
        out.setFont(font, (float) size);
        out.setTextMatrix(Matrix.getRotateInstance(Math.toRadians(degrees), (float) x, (float) (height - y)));
        out.showText(text);
        out.endText();
        return this;
    }

    /** A text that ends at {@code x}. */
    DrawnSheet toTheRight(double x, double y, String text) throws IOException {
        return text(x - font.getStringWidth(text) / 1000 * SIZE, y, text);
    }

    /** How wide a text is. */
    static double width(String text) throws IOException {
        return new PDType1Font(FontName.HELVETICA).getStringWidth(text) / 1000 * SIZE;
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

    /** A white area painted over what was drawn before. */
    DrawnSheet paintOver(double x, double y, double width, double deep) throws IOException {
        out.setNonStrokingColor(1f);
        out.addRect((float) x, (float) (height - y - deep), (float) width, (float) deep);
        out.fill();
        out.setNonStrokingColor(0f);
        return this;
    }

    /** From here on nothing is painted outside of this area. */
    DrawnSheet holdTo(double x, double y, double width, double deep) throws IOException {
        out.saveGraphicsState();
        out.addRect((float) x, (float) (height - y - deep), (float) width, (float) deep);
        out.clip();
        return this;
    }

    /** Texts from here on are not drawn, as those that a machine read from a picture and laid over it; and then they are again. */
    DrawnSheet drawing(boolean drawn) throws IOException {
        out.setRenderingMode(drawn ? RenderingMode.FILL : RenderingMode.NEITHER);
        return this;
    }

    /** A text in a form on a layer that is switched off. */
    DrawnSheet onLayerSwitchedOff(double x, double y, String text) throws IOException {
        PDOptionalContentGroup old = new PDOptionalContentGroup("before the works");
        PDOptionalContentProperties layers = new PDOptionalContentProperties();
        layers.addGroup(old);
        layers.setGroupEnabled(old, false);
        document.getDocumentCatalog().setOCProperties(layers);
        PDAppearanceStream form = new PDAppearanceStream(document);
        form.setBBox(document.getPage(0).getMediaBox());
        form.setResources(new PDResources());
        form.getCOSObject().setItem(COSName.OC, old);
        try (PDPageContentStream inner = new PDPageContentStream(document, form)) {
            inner.beginText();
            inner.setFont(font, SIZE);
            inner.newLineAtOffset((float) x, (float) (height - y));
            inner.showText(text);
            inner.endText();
        }
        out.drawForm(form);
        return this;
    }

    DrawnSheet release() throws IOException {
        out.restoreGraphicsState();
        return this;
    }

    /** A text that runs upwards from its foot. */
    DrawnSheet turned(double x, double foot, String text) throws IOException {
        out.beginText();
        out.setFont(font, SIZE);
        out.setTextMatrix(Matrix.getRotateInstance(Math.PI / 2, (float) x, (float) (height - foot)));
        out.showText(text);
        out.endText();
        return this;
    }

    /** A two-sided directory of eight positions. */
    DrawnSheet twoSided(double y) throws IOException {
        line(y, TWO_SIDED, "CKT", "LOAD", "BKR", "CKT", "LOAD", "BKR");
        for (int r = 0; r < 4; r++) {
            String odd = "" + (2 * r + 1), even = "" + (2 * r + 2);
            line(y + 14 + 14 * r, TWO_SIDED, odd, "Lights room " + r, "20/1", even, "Sockets room " + r, "20/1");
        }
        return this;
    }

    Path save(Path file) throws IOException {
        out.close();
        document.save(file.toFile());
        return file;
    }

    /** What is read of it; nothing can be drawn on it any more. */
    ScheduleReading read() throws IOException {
        Path file = Files.createTempFile("sheet", ".pdf");
        try {
            return Readings.of(save(file), Source.Kind.PDF);
        } finally {
            Files.delete(file);
        }
    }

    /** The one directory that is read of it. */
    Directory directory() throws IOException {
        return Readings.only(read());
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}
