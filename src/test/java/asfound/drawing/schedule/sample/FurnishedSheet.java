package asfound.drawing.schedule.sample;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.multipdf.LayerUtility;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.util.Matrix;

/** Sets sheets of panels on larger ones, with what else offices put on a sheet: zones, notes, legends, lists, a title block. */
final class FurnishedSheet {

    private static final double COLUMN = 420;
    private static final double MARGIN = 90;

    private static final List<List<String>> NOTES = List.of(
            List.of(
                    "All branch circuits 20A shall be #12 AWG min.",
                    "Provide lock-on device for fire alarm circuits.",
                    "Verify existing circuits in field.",
                    "Panel schedules shall be typed and placed in door.",
                    "See riser diagram on sheet E6.1.",
                    "Provide 20% spare capacity.",
                    "Balance phases to within 10%."),
            List.of(
                    "EXISTING TO REMAIN",
                    "NEW BREAKER IN EXISTING SPACE",
                    "GFCI BREAKER",
                    "VIA CONTACTOR C-1 IN ROOM 114"));
    private static final String[][] LISTS = {
        {
            "REVISIONS",
            "NO.|DATE|DESCRIPTION",
            "1|2021-03-04|Issued for permit",
            "2|2021-05-12|Addendum 1",
            "3|2022-01-20|As built"
        },
        {"ABBREVIATIONS", "AFF|ABOVE FINISHED FLOOR", "C|CONDUIT", "EX|EXISTING", "GND|GROUND", "WP|WEATHERPROOF"},
        {
            "LUMINAIRE SCHEDULE",
            "TYPE|DESCRIPTION|LAMP|VOLTS|MOUNTING",
            "A1|2x4 troffer|LED 38W|277|Recessed",
            "B2|Downlight|LED 12W|120|Recessed",
            "X|Exit sign|LED 3W|277|Wall"
        },
        {
            "FEEDER SCHEDULE",
            "NO.|AMPS|CONDUCTORS|CONDUIT",
            "1|100|4#1, 1#8G|1-1/2\"",
            "2|225|4#4/0, 1#4G|2-1/2\"",
            "3|400|4#500, 1#3G|4\""
        },
        {"PROJECT", "HARTWELL CLINIC", "DRAWN BY|R. Moss", "CHECKED|T. Vane", "SCALE|NONE", "SHEET|E7.3"}
    };

    private final Random random;
    private final Pen pen;
    private final double size;

    private FurnishedSheet(Random random, Pen pen, double size) {
        this.random = random;
        this.pen = pen;
        this.size = size;
    }

    /** Draws the seed's sheet, each of its pages on a furnished one. */
    static SampleSheets.Drawn draw(long seed, Path file) throws IOException {
        Path bare = file.resolveSibling("bare.pdf");
        Files.deleteIfExists(bare);
        SampleSheets.Drawn drawn = SampleSheets.draw(seed, bare, false);
        Random random = new Random(seed * 0x632BE59BD9B4E019L + 7);
        try (PDDocument plain = Loader.loadPDF(bare.toFile());
                PDDocument furnished = new PDDocument()) {
            LayerUtility layers = new LayerUtility(furnished);
            for (int i = 0; i < plain.getNumberOfPages(); i++) {
                int quarters = plain.getPage(i).getRotation() / 90;
                // the library's own way of turning a page squeezes it
                plain.getPage(i).setRotation(0);
                page(
                        furnished,
                        layers.importPageAsForm(plain, i),
                        quarters,
                        drawn.layout().size(),
                        random);
            }
            Files.deleteIfExists(file);
            furnished.save(file.toFile());
        }
        return drawn;
    }

    private static void page(PDDocument document, PDFormXObject form, int quarters, double size, Random random)
            throws IOException {
        AffineTransform turn = AffineTransform.getQuadrantRotateInstance(-quarters);
        Rectangle2D shown = new Path2D.Double(form.getBBox().toGeneralPath(), turn).getBounds2D();
        boolean left = random.nextInt(4) == 0;
        double w = shown.getWidth() + COLUMN + 2 * MARGIN, h = Math.max(900, shown.getHeight() + 2 * MARGIN);
        PDPage page = new PDPage(new PDRectangle((float) w, (float) h));
        document.addPage(page);
        try (PDPageContentStream out = new PDPageContentStream(document, page)) {
            double x = left ? COLUMN + MARGIN : MARGIN;
            out.saveGraphicsState();
            out.transform(Matrix.getTranslateInstance(
                    (float) (x - shown.getMinX()), (float) (h - MARGIN - shown.getHeight() - shown.getMinY())));
            out.transform(new Matrix(turn));
            out.drawForm(form);
            out.restoreGraphicsState();
            PDFont plain = new PDType1Font(FontName.HELVETICA), bold = new PDType1Font(FontName.HELVETICA_BOLD);
            Pen pen = new Pen(out, h, plain, bold, SampleLayout.TextStyle.WHOLE, random);
            FurnishedSheet sheet = new FurnishedSheet(random, pen, size);
            if (random.nextBoolean()) sheet.zones(w, h);
            sheet.column(left ? MARGIN : MARGIN + shown.getWidth() + 20, MARGIN + random.nextInt(200), h - MARGIN);
        }
    }

    /** Numbers down and letters across, or the other way round, along two or all four edges. */
    private void zones(double w, double h) throws IOException {
        int down = 4 + random.nextInt(9), across = 4 + random.nextInt(9);
        boolean figures = random.nextBoolean(), both = random.nextBoolean(), rising = random.nextBoolean();
        for (int i = 0; i < down; i++) {
            String mark = mark(figures, rising ? down - 1 - i : i);
            pen.text(mark, 6, h * (i + 0.5) / down, 9, false);
            if (both) pen.text(mark, w - 14, h * (i + 0.5) / down, 9, false);
        }
        for (int i = 0; i < across; i++) {
            String mark = mark(!figures, i);
            pen.text(mark, w * (i + 0.5) / across, 12, 9, false);
            if (both) pen.text(mark, w * (i + 0.5) / across, h - 5, 9, false);
        }
        pen.line(20, 20, w - 20, 20);
        pen.line(20, h - 20, w - 20, h - 20);
    }

    private static String mark(boolean figure, int i) {
        return figure ? Integer.toString(i + 1) : "ABCDEFGHJKLMNPQ".substring(i, i + 1);
    }

    /** Notes and lists, one below the other, as many as there is room for. */
    private void column(double x, double top, double bottom) throws IOException {
        List<Integer> kinds = new ArrayList<>();
        for (int i = 0; i < LISTS.length + 2; i++) kinds.add(i);
        Collections.shuffle(kinds, random);
        double y = top;
        for (int kind : kinds) {
            if (y > bottom - 16 * size) break;
            y = kind < LISTS.length ? list(LISTS[kind], x, y) : notes(kind - LISTS.length, x, y);
            y += (3 + random.nextInt(6)) * size;
        }
    }

    private double notes(int which, double x, double top) throws IOException {
        String title = which == 0 ? "GENERAL NOTES" : random.nextBoolean() ? "KEYED NOTES" : "SHEET NOTES:";
        String after = random.nextBoolean() ? "." : "";
        double y = top;
        pen.text(title, x, y, 1.2 * size, true);
        List<String> texts = NOTES.get(which);
        for (int i = 0; i < texts.size(); i++) {
            y += 1.6 * size;
            pen.text(i + 1 + after, x, y, size, false);
            pen.text(texts.get(i), x + 2.5 * size, y, size, false);
        }
        return y;
    }

    private double list(String[] lines, double x, double top) throws IOException {
        double y = top;
        pen.text(lines[0], x, y, 1.2 * size, true);
        for (int i = 1; i < lines.length; i++) {
            y += 1.6 * size;
            String[] cells = lines[i].split("\\|");
            double at = x;
            for (int c = 0; c < cells.length; c++) {
                pen.text(cells[c], at, y, 0.9 * size, false);
                at += c == 1 ? 14 * size : 7 * size;
            }
        }
        return y;
    }
}
