package asfound.sample;

import asfound.model.Box;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.apache.pdfbox.util.Matrix;

/**
 * Prints a two-sided panel schedule the way office programs do, on a page that may be turned and cropped, and remembers
 * where each entry stands as displayed. Written with the library's own content stream and standard fonts: it shares
 * nothing with the program's sheets.
 */
public final class PrintedSchedule {

    public static final double WIDE = 612, HIGH = 792, TOP = 150, ROW = 13, LEFT = 45, MIDDLE = 306;

    private final PDDocument document = new PDDocument();
    private final PDType1Font plain = new PDType1Font(Standard14Fonts.FontName.HELVETICA);
    private final PDType1Font bold = new PDType1Font(Standard14Fonts.FontName.HELVETICA_BOLD);

    /** One printed entry. */
    public record Entry(int position, String rating, String description) {}

    public PDDocument document() {
        return document;
    }

    /** Adds a page; gives the box of each entry by its position, as displayed. */
    public Map<Integer, Box> page(
            String panel, String fedFrom, List<Entry> entries, int turn, double cropX, double cropY)
            throws IOException {
        boolean sideways = turn == 90 || turn == 270;
        double w = sideways ? HIGH : WIDE, h = sideways ? WIDE : HIGH;
        PDPage page = new PDPage(
                new PDRectangle((float) -20, (float) -30, (float) (w + cropX * 2 + 40), (float) (h + cropY * 2 + 60)));
        page.setCropBox(new PDRectangle((float) cropX, (float) cropY, (float) w, (float) h));
        page.setRotation(turn);
        document.addPage(page);
        Map<Integer, Box> boxes = new LinkedHashMap<>();
        try (PDPageContentStream out = new PDPageContentStream(document, page)) {
            out.transform(Matrix.getTranslateInstance((float) cropX, (float) cropY));
            // from the page as displayed, measured from its bottom left, to the turned page
            if (turn == 90) out.transform(new Matrix(0, 1, -1, 0, (float) w, 0));
            if (turn == 180) out.transform(new Matrix(-1, 0, 0, -1, (float) w, (float) h));
            if (turn == 270) out.transform(new Matrix(0, -1, 1, 0, 0, (float) h));
            text(out, bold, 15, LEFT, 70, "PANEL " + panel);
            text(out, plain, 9, LEFT, 92, "FED FROM: " + fedFrom);
            text(out, plain, 9, LEFT, 106, "VOLTAGE: 208Y/120 3PH 4W      BUS: 225A      MAINS: MLO");
            int last = entries.stream().mapToInt(Entry::position).max().orElse(0);
            for (int row = 0; row <= (last + 1) / 2; row++)
                line(out, LEFT, TOP + row * ROW, WIDE - LEFT, TOP + row * ROW);
            for (double x : new double[] {LEFT, LEFT + 26, LEFT + 56, MIDDLE, MIDDLE + 26, MIDDLE + 56, WIDE - LEFT})
                line(out, x, TOP, x, TOP + (last + 1) / 2 * ROW);
            for (Entry entry : entries) {
                double x = entry.position() % 2 == 1 ? LEFT : MIDDLE, y = TOP + (entry.position() - 1) / 2 * ROW;
                text(out, plain, 8, x + 4, y + 9.5, Integer.toString(entry.position()));
                text(out, plain, 8, x + 32, y + 9.5, entry.rating());
                text(out, plain, 8, x + 60, y + 9.5, entry.description());
                boxes.put(entry.position(), new Box(x, y, MIDDLE - LEFT, ROW));
            }
        }
        return boxes;
    }

    public void save(Path file) throws IOException {
        document.save(file.toFile());
    }

    private static void text(PDPageContentStream out, PDType1Font font, float size, double x, double y, String text)
            throws IOException {
        out.beginText();
        out.setFont(font, size);
        out.newLineAtOffset((float) x, (float) (HIGH - y));
        out.showText(text);
        out.endText();
    }

    private static void line(PDPageContentStream out, double x1, double y1, double x2, double y2) throws IOException {
        out.setLineWidth(0.5f);
        out.moveTo((float) x1, (float) (HIGH - y1));
        out.lineTo((float) x2, (float) (HIGH - y2));
        out.stroke();
    }
}
