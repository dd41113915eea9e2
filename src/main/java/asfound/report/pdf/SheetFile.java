package asfound.report.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/** A PDF of printed pages in the making. The same pages give the same bytes: it holds no clock time and a fixed id. */
final class SheetFile implements AutoCloseable {

    private final PDDocument document = new PDDocument();
    private final Typeface typeface = new Typeface(document);
    private final List<Canvas> pages = new ArrayList<>();
    private final String title;

    SheetFile(String title) {
        this.title = Visible.of(title);
    }

    Typeface typeface() {
        return typeface;
    }

    List<Canvas> pages() {
        return pages;
    }

    Canvas page(Paper paper) {
        Canvas canvas = new Canvas(typeface, paper.width(), paper.height());
        pages.add(canvas);
        return canvas;
    }

    /** A page with the paper's long side across. */
    Canvas lengthwise(Paper paper) {
        Canvas canvas = new Canvas(typeface, paper.height(), paper.width());
        pages.add(canvas);
        return canvas;
    }

    void write(OutputStream out) throws IOException {
        for (Canvas canvas : pages) document.addPage(page(document, canvas));
        typeface.embed();
        seal(document, title);
        document.save(out);
    }

    /** The canvas as a page of the document. */
    static PDPage page(PDDocument document, Canvas canvas) throws IOException {
        PDPage page = new PDPage(new PDRectangle((float) canvas.width(), (float) canvas.height()));
        PDStream content = new PDStream(document);
        try (OutputStream bytes = content.createOutputStream(COSName.FLATE_DECODE)) {
            bytes.write(canvas.content());
        }
        page.setContents(content);
        page.setResources(canvas.resources());
        return page;
    }

    /** Title, no dates, and an id that depends on nothing but the content's title. */
    static void seal(PDDocument document, String title) {
        PDDocumentInformation information = new PDDocumentInformation();
        information.setTitle(title);
        information.setProducer("asfound");
        document.setDocumentInformation(information);
        document.setDocumentId(1L);
        document.getDocument().getTrailer().removeItem(COSName.ID);
        document.getDocumentCatalog().setLanguage("en");
        PDViewerPreferences preferences = new PDViewerPreferences(new org.apache.pdfbox.cos.COSDictionary());
        preferences.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(preferences);
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}
