package asfound.drawing.schedule.sample;

import asfound.drawing.schedule.sample.SampleLayout.PageTurn;
import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.apache.pdfbox.util.Matrix;

/** Draws random panels in random layouts, one PDF for each seed. */
final class SampleSheets {

    private SampleSheets() {}

    /** What was drawn. */
    record Drawn(SampleLayout layout, List<SamplePanel> panels) {}

    static Drawn draw(long seed, Path file) throws IOException {
        return draw(seed, file, true);
    }

    /** @param lockable whether a layout that is encrypted is drawn so */
    static Drawn draw(long seed, Path file, boolean lockable) throws IOException {
        Random random = new Random(seed * 0x9E3779B97F4A7C15L + 0x632BE59BD9B4E019L);
        SampleLayout layout = SampleLayout.random(random);
        List<SamplePanel> panels = new ArrayList<>();
        SamplePanels source = new SamplePanels(random);
        boolean iec = layout.sides() == SampleLayout.Sides.WAYS;
        int step = iec || layout.sides() == SampleLayout.Sides.HALVES ? 1 : 2;
        for (int i = 0; i < layout.panelsOnSheet(); i++) {
            SamplePanel p = source.panel(10 * i, step, iec, layout.upper());
            panels.add(p);
        }
        try (PDDocument document = new PDDocument()) {
            draw(document, layout, panels, random);
            if (layout.encrypted() && lockable) {
                StandardProtectionPolicy policy = new StandardProtectionPolicy("owner", "", new AccessPermission());
                policy.setEncryptionKeyLength(128);
                document.protect(policy);
            }
            document.save(file.toFile());
        }
        return new Drawn(layout, panels);
    }

    private static PDFont font(String name) {
        return new PDType1Font(Standard14Fonts.getMappedFontName(name));
    }

    private static PDFont bold(String name) {
        String heavy = name.startsWith("Times") ? "Times-Bold" : name + "-Bold";
        return new PDType1Font(Standard14Fonts.getMappedFontName(heavy));
    }

    private static void draw(PDDocument document, SampleLayout layout, List<SamplePanel> panels, Random random)
            throws IOException {
        boolean large = layout.turn() == PageTurn.LARGE_SHEET;
        if (large) {
            sheet(document, layout, panels, random);
            return;
        }
        for (SamplePanel panel : panels) {
            // the paper is as large as the schedule needs: what is tried is the reading, not the fitting
            double[] need = measure(layout, panel, random);
            double w = Math.max(612, need[0] + 80), h = Math.max(612, need[1] + (layout.titleBlock() ? 180 : 80));
            int rows = need.length > 2 ? (int) need[2] : 0;
            if (layout.continued()) {
                int half = rows / 2;
                page(document, layout, w, h, random, (pen, p) -> p.draw(40, 40, 0, half, true), panel);
                page(document, layout, w, h, random, (pen, p) -> p.draw(40, 40, half, rows, false), panel);
            } else
                page(
                        document,
                        layout,
                        w,
                        h,
                        random,
                        (pen, p) -> {
                            double below = p.draw(40, 40, 0, rows, true);
                            if (layout.notes()) notes(pen, layout, 40, below + 2 * layout.size());
                            return below;
                        },
                        panel);
        }
    }

    private interface Draw {
        double on(Pen pen, SchedulePainter painter) throws IOException;
    }

    private static double[] measure(SampleLayout layout, SamplePanel panel, Random random) throws IOException {
        try (PDDocument scratch = new PDDocument()) {
            PDPage page = new PDPage(new PDRectangle(3000, 6000));
            scratch.addPage(page);
            try (PDPageContentStream out = new PDPageContentStream(scratch, page)) {
                // spaced text is wider and so wraps into more lines; the other styles take no more room
                SampleLayout.TextStyle style =
                        layout.text() == SampleLayout.TextStyle.SPACED ? layout.text() : SampleLayout.TextStyle.WHOLE;
                Pen pen = new Pen(out, 6000, font(layout.font()), bold(layout.font()), style, random);
                SchedulePainter painter = new SchedulePainter(pen, layout, panel);
                double below = painter.draw(40, 40, 0, painter.rowCount(), true);
                double beside = layout.headerPlace() == SampleLayout.HeaderPlace.RIGHT ? 45 * layout.size() : 0;
                return new double[] {
                    painter.tableWidth() + beside, below + (layout.notes() ? 12 * layout.size() : 0), painter.rowCount()
                };
            }
        }
    }

    private static void page(
            PDDocument document, SampleLayout layout, double w, double h, Random random, Draw draw, SamplePanel panel)
            throws IOException {
        int quarter = switch (layout.turn()) {
            case ROTATE_90, CONTENT_UP -> 1;
            case ROTATE_180 -> 2;
            case ROTATE_270 -> 3;
            default -> 0;
        };
        boolean side = quarter % 2 == 1;
        double off = layout.cropped() ? 37 : 0;
        double pw = side ? h : w, ph = side ? w : h;
        PDPage page = new PDPage(new PDRectangle((float) (pw + 2 * off), (float) (ph + 2 * off)));
        if (layout.cropped()) page.setCropBox(new PDRectangle((float) off, (float) off, (float) pw, (float) ph));
        if (layout.turn() != PageTurn.CONTENT_UP) page.setRotation(quarter * 90);
        document.addPage(page);
        try (PDPageContentStream out = new PDPageContentStream(document, page)) {
            AffineTransform t = new AffineTransform();
            t.translate(off, off);
            // the content is turned against the page's rotation, so that it shows upright; for CONTENT_UP it stays
            // turned
            if (quarter == 1) {
                t.translate(pw, 0);
                t.rotate(Math.PI / 2);
            } else if (quarter == 2) {
                t.translate(pw, ph);
                t.rotate(Math.PI);
            } else if (quarter == 3) {
                t.translate(0, ph);
                t.rotate(-Math.PI / 2);
            }
            out.transform(new Matrix(t));
            Pen pen = new Pen(out, h, font(layout.font()), bold(layout.font()), layout.text(), random);
            if (layout.titleBlock()) titleBlock(pen, w, h);
            draw.on(pen, new SchedulePainter(pen, layout, panel));
        }
    }

    /** Several panels on one large sheet, in columns. */
    private static void sheet(PDDocument document, SampleLayout layout, List<SamplePanel> panels, Random random)
            throws IOException {
        double widest = 0, tallest = 0;
        List<double[]> needs = new ArrayList<>();
        for (SamplePanel p : panels) {
            double[] need = measure(layout, p, random);
            needs.add(need);
            widest = Math.max(widest, need[0]);
            tallest = Math.max(tallest, need[1]);
        }
        int across = 1 + random.nextInt(3);
        double gap = 30 + 20 * random.nextDouble();
        int down = (panels.size() + across - 1) / across;
        double w = across * (widest + gap) + 260, h = down * (tallest + gap) + 120;
        PDPage page = new PDPage(new PDRectangle((float) w, (float) h));
        document.addPage(page);
        try (PDPageContentStream out = new PDPageContentStream(document, page)) {
            Pen pen = new Pen(out, h, font(layout.font()), bold(layout.font()), layout.text(), random);
            titleBlock(pen, w, h);
            for (int i = 0; i < panels.size(); i++)
                new SchedulePainter(pen, layout, panels.get(i))
                        .draw(
                                60 + (i % across) * (widest + gap),
                                60 + (i / across) * (tallest + gap),
                                0,
                                (int) needs.get(i)[2],
                                true);
            if (layout.notes()) notes(pen, layout, w - 185, 200);
        }
    }

    private static void titleBlock(Pen pen, double w, double h) throws IOException {
        pen.line(12, 12, w - 12, 12);
        pen.line(12, h - 12, w - 12, h - 12);
        pen.line(12, 12, 12, h - 12);
        pen.line(w - 12, 12, w - 12, h - 12);
        for (int i = 1; i <= 6; i++) pen.text(Integer.toString(i), w * i / 7, 9, 6, false);
        for (int i = 0; i < 4; i++) pen.text("ABCD".substring(i, i + 1), 4, h * (i + 1) / 5, 6, false);
        pen.text("HARTWELL CLINIC, EAST WING", w - 190, h - 40, 6, true);
        pen.text("ELECTRICAL PANEL SCHEDULES", w - 190, h - 30, 6, false);
        pen.text("SHEET E7.3   DATE 12 MAY 2021", w - 190, h - 20, 6, false);
        pen.text("REV", w - 190, h - 84, 5, true);
        pen.text("DESCRIPTION", w - 170, h - 84, 5, true);
        for (int i = 1; i <= 3; i++) {
            pen.text(Integer.toString(i), w - 188, h - 84 + 8 * i, 5, false);
            pen.text("Issued " + i, w - 170, h - 84 + 8 * i, 5, false);
        }
    }

    private static void notes(Pen pen, SampleLayout layout, double x, double y) throws IOException {
        String[] notes = {
            "NOTES:",
            "1. All breakers 10 kAIC minimum unless noted.",
            "2. Provide lock-on device for fire alarm circuits.",
            "3. Spare breakers shall be left off.",
            "4. Balance phases to within 10%."
        };
        for (int i = 0; i < notes.length; i++)
            pen.text(notes[i], x, y + (i + 1) * 1.4 * layout.size(), layout.size(), false);
    }
}
