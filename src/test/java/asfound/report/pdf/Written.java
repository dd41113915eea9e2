package asfound.report.pdf;

import asfound.audit.Audit;
import asfound.recordset.Limits;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** What the tests read back from a sheet, with the library's text stripper. */
final class Written {

    /** A word or phrase that was found; its start in the page's own user space. */
    record Spot(double x, double y) {}

    private Written() {}

    static byte[] redline(Audit audit) throws IOException {
        return redline(Redlines.of(audit).get(0));
    }

    static byte[] redline(Redline redline) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Optional<String> trouble = RedlineWriter.write(redline, Limits.usual(), out);
        if (trouble.isPresent()) throw new IOException(trouble.get());
        return out.toByteArray();
    }

    static PDDocument open(byte[] pdf) throws IOException {
        return Loader.loadPDF(pdf);
    }

    static String text(byte[] pdf) throws IOException {
        try (PDDocument document = open(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    static String text(byte[] pdf, int page) throws IOException {
        try (PDDocument document = open(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setStartPage(page);
            stripper.setEndPage(page);
            return stripper.getText(document).replaceAll("\\s+", " ");
        }
    }

    /**
     * Where each printed line of a page (from 1) begins, in user space, by its text: nothing of the program's own geometry
     * is used. The first of several lines of one text is kept.
     */
    static Map<String, Spot> spots(PDDocument document, int page) throws IOException {
        Map<String, Spot> found = new LinkedHashMap<>();
        var crop = document.getPage(page - 1).getCropBox();
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> positions) {
                var matrix = positions.get(0).getTextMatrix();
                // the stripper counts from the crop box's corner
                found.putIfAbsent(
                        text.strip(),
                        new Spot(
                                matrix.getTranslateX() + crop.getLowerLeftX(),
                                matrix.getTranslateY() + crop.getLowerLeftY()));
            }
        };
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        stripper.getText(document);
        return found;
    }
}
