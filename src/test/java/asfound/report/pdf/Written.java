package asfound.report.pdf;

import asfound.audit.Audit;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
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
        Optional<String> trouble = RedlineWriter.write(redline, out);
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

    /** Where on the page (from 1) a phrase begins, in user space: nothing of the program's own geometry is used. */
    static List<Spot> spots(PDDocument document, int page, String phrase) throws IOException {
        List<Spot> found = new ArrayList<>();
        var crop = document.getPage(page - 1).getCropBox();
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> positions) {
                int at = text.indexOf(phrase);
                if (at < 0) return;
                var matrix = positions.get(at).getTextMatrix();
                // the stripper counts from the crop box's corner
                found.add(new Spot(
                        matrix.getTranslateX() + crop.getLowerLeftX(), matrix.getTranslateY() + crop.getLowerLeftY()));
            }
        };
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        stripper.getText(document);
        return found;
    }
}
