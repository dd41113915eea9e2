package asfound.broken;

import static asfound.broken.BrokenFiles.ascii;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Map;
import java.util.TreeMap;

/**
 * A PDF of one page, object by object, so that a test can break one of them: 1 the catalogue, 2 the list of pages, 3 the
 * page, 4 its content (a schedule of panel LP-7), 5 its font.
 */
final class PdfObjects {

    private final Map<Integer, byte[]> objects = new TreeMap<>();

    PdfObjects() {
        with(1, "<</Type/Catalog/Pages 2 0 R>>");
        with(2, "<</Type/Pages/Kids[3 0 R]/Count 1>>");
        page("");
        stream(4, "", schedule());
        with(5, "<</Type/Font/Subtype/Type1/BaseFont/Helvetica>>");
    }

    PdfObjects with(int number, String object) {
        objects.put(number, ascii(object));
        return this;
    }

    PdfObjects without(int number) {
        objects.remove(number);
        return this;
    }

    /** @param more what else the page's dictionary says, resources apart from the font included as {@code /XObject} */
    PdfObjects page(String more) {
        return with(
                3,
                "<</Type/Page/Parent 2 0 R/MediaBox[0 0 612 792]/Contents 4 0 R/Resources<</Font<</F1 5 0 R>>"
                        + "/XObject<</X1 6 0 R>>>>" + more + ">>");
    }

    PdfObjects stream(int number, String dictionary, byte[] content) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(ascii("<<" + dictionary + "/Length " + content.length + ">>\nstream\n"));
        out.writeBytes(content);
        out.writeBytes(ascii("\nendstream"));
        objects.put(number, out.toByteArray());
        return this;
    }

    /** A form that shows {@code content} and may draw the form of the next number as X1. */
    PdfObjects form(int number, String dictionary, byte[] content) {
        return stream(
                number,
                "/Type/XObject/Subtype/Form/BBox[0 0 612 792]/Resources<</Font<</F1 5 0 R>>/XObject<</X1 "
                        + (number + 1) + " 0 R>>>>" + dictionary,
                content);
    }

    byte[] bytes() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(ascii("%PDF-1.5\n"));
        Map<Integer, Integer> starts = new TreeMap<>();
        for (var object : objects.entrySet()) {
            starts.put(object.getKey(), out.size());
            out.write(ascii(object.getKey() + " 0 obj "));
            out.write(object.getValue());
            out.write(ascii(" endobj\n"));
        }
        int table = out.size(), size = ((TreeMap<Integer, byte[]>) objects).lastKey() + 1;
        out.write(ascii("xref\n0 " + size + "\n0000000000 65535 f \n"));
        for (int n = 1; n < size; n++)
            out.write(ascii(
                    starts.containsKey(n) ? "%010d 00000 n \n".formatted(starts.get(n)) : "0000000000 65535 f \n"));
        out.write(ascii("trailer <</Root 1 0 R/Size " + size + ">>\nstartxref\n" + table + "\n%%EOF\n"));
        return out.toByteArray();
    }

    static byte[] schedule() {
        StringBuilder text = new StringBuilder(
                "BT /F1 10 Tf 40 740 Td (PANEL LP-7) Tj ET\n"
                        + "BT /F1 10 Tf 40 700 Td (CKT) Tj 60 0 Td (DESCRIPTION) Tj 200 0 Td (POLES) Tj 60 0 Td (TRIP) Tj ET\n");
        for (int p = 1; p <= 12; p++)
            text.append("BT /F1 10 Tf 40 %d Td (%d) Tj 60 0 Td (RECEPT RM %d) Tj 200 0 Td (1) Tj 60 0 Td (20) Tj ET\n"
                    .formatted(696 - p * 16, p, 200 + p));
        return ascii(text.toString());
    }
}
