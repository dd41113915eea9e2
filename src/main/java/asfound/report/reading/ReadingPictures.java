package asfound.report.reading;

import asfound.model.Box;
import asfound.model.Directory;
import asfound.model.Directory.Circuit;
import asfound.model.Place;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/**
 * Draws what was read over the pages that it was read from, so that a person can check a reading at a glance: a frame
 * around each circuit with its positions, poles and rating, and around each directory with its name.
 */
public final class ReadingPictures {

    private static final double MOST_PIXELS = 2_600;
    private static final Color READ = new Color(0x0B5CAD);
    private static final Color DOUBTFUL = new Color(0xB3261E);
    private static final Color FRAME = new Color(0x5B3A8C);

    private ReadingPictures() {}

    /**
     * Writes one PNG for each page on which something was read.
     *
     * @param name what the pictures' names begin with
     * @return the files, in the order of the pages
     */
    public static List<Path> write(Path pdf, String name, List<Directory> directories, Path folder) throws IOException {
        Files.createDirectories(folder);
        List<Path> out = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            PDFRenderer renderer = new PDFRenderer(document);
            for (int page : pages(directories)) {
                PDRectangle crop = document.getPage(page - 1).getCropBox();
                double longest = Math.max(crop.getWidth(), crop.getHeight());
                float scale = (float) Math.max(0.3, Math.min(2.5, MOST_PIXELS / longest));
                BufferedImage image = renderer.renderImage(page - 1, scale, ImageType.RGB);
                drawOver(image, page, directories, scale);
                Path file = folder.resolve(name + "-page-" + page + ".png");
                ImageIO.write(image, "png", file.toFile());
                out.add(file);
            }
        }
        return out;
    }

    private static SortedSet<Integer> pages(List<Directory> directories) {
        SortedSet<Integer> pages = new TreeSet<>();
        for (Directory d : directories) {
            if (d.place() instanceof Place.OnPage p) pages.add(p.page());
            for (Circuit c : d.circuits()) if (c.place() instanceof Place.OnPage p) pages.add(p.page());
        }
        return pages;
    }

    private static void drawOver(BufferedImage image, int page, List<Directory> directories, double scale) {
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        for (Directory d : directories) {
            if (d.place() instanceof Place.OnPage p
                    && p.page() == page
                    && p.area().isPresent()) {
                String label = d.panel() + "  " + Math.round(100 * d.confidence()) + "%"
                        + (d.isDoubtful() ? "  doubtful: check" : "");
                frame(g, p.area().get(), scale, label, d.isDoubtful() ? DOUBTFUL : FRAME, 2.4f, 15);
            }
            for (Circuit c : d.circuits())
                if (c.place() instanceof Place.OnPage p
                        && p.page() == page
                        && p.area().isPresent())
                    frame(g, p.area().get(), scale, label(c), isDoubtful(d, c) ? DOUBTFUL : READ, 1.2f, 10);
        }
        g.dispose();
    }

    private static boolean isDoubtful(Directory d, Circuit c) {
        return c.ratingA().isUnreadable() || d.unread().contains(c.position());
    }

    private static String label(Circuit c) {
        String positions = c.positions().stream().map(String::valueOf).collect(Collectors.joining("-"));
        String rating =
                c.ratingA().value().map(a -> " " + a + "A").orElse(c.ratingA().isUnreadable() ? " ?A" : "");
        return positions + " " + c.poles() + "P" + rating;
    }

    private static void frame(
            Graphics2D g, Box box, double scale, String label, Color colour, float width, int letters) {
        double x = box.x() * scale, y = box.y() * scale, w = box.w() * scale, h = box.h() * scale;
        g.setStroke(new BasicStroke(width));
        g.setColor(colour);
        g.draw(new Rectangle2D.Double(x - 1, y - 1, w + 2, h + 2));
        g.setFont(new Font(Font.SANS_SERIF, Font.BOLD, letters));
        FontMetrics metrics = g.getFontMetrics();
        int textWidth = metrics.stringWidth(label);
        double tx = Math.min(
                x + w - textWidth, g.getDeviceConfiguration().getBounds().getWidth() - textWidth);
        boolean above = letters > 10;
        double ty = above ? y - 4 : y + h - 2;
        g.setColor(new Color(255, 255, 255, 205));
        g.fill(new Rectangle2D.Double(tx - 1, ty - metrics.getAscent() + 1, textWidth + 2, metrics.getAscent()));
        g.setColor(colour);
        g.drawString(label, (float) tx, (float) ty);
    }
}
