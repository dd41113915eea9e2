package asfound.sample.kestrel;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Random;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.CCITTFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.rendering.PDFRenderer;

/**
 * The one sheet of which only a scan was left: a page with a picture and no text. The picture is kept as a file, since
 * making it again depends on the fonts of the machine; {@link #main} is how it was made.
 */
final class ScannedSheet {

    private static final String PICTURE = "rp-1-scan.png";

    private ScannedSheet() {}

    static void draw(PDDocument document) {
        try (InputStream picture = ScannedSheet.class.getResourceAsStream(PICTURE)) {
            PDPage page = new PDPage(new PDRectangle(792, 612));
            document.addPage(page);
            PDImageXObject image = CCITTFactory.createFromImage(document, ImageIO.read(picture));
            try (PDPageContentStream content =
                    new PDPageContentStream(document, page, PDPageContentStream.AppendMode.OVERWRITE, false)) {
                content.drawImage(image, 0, 0, 792, 612);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Makes the picture anew in the folder given: a page a little askew, with dust on the glass. */
    public static void main(String[] args) throws IOException {
        BufferedImage page;
        try (PDDocument document = Loader.loadPDF(new KestrelDrawings().beforeTheScanner())) {
            page = new PDFRenderer(document).renderImageWithDPI(0, 130);
        }
        BufferedImage scan = new BufferedImage(page.getWidth(), page.getHeight(), BufferedImage.TYPE_BYTE_BINARY);
        Graphics2D glass = scan.createGraphics();
        glass.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        glass.setColor(Color.WHITE);
        glass.fillRect(0, 0, scan.getWidth(), scan.getHeight());
        glass.rotate(Math.toRadians(0.6), scan.getWidth() / 2.0, scan.getHeight() / 2.0);
        glass.drawImage(page, 0, 0, null);
        Random dust = new Random(401);
        glass.setColor(Color.BLACK);
        for (int i = 0; i < 120; i++)
            glass.fillRect(dust.nextInt(scan.getWidth()), dust.nextInt(scan.getHeight()), 1 + dust.nextInt(2), 1);
        glass.dispose();
        ImageIO.write(scan, "png", Path.of(args[0], PICTURE).toFile());
    }
}
