package asfound.broken;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.Collections;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/** Files that are broken, huge or hostile. */
final class BrokenFiles {

    private BrokenFiles() {}

    static byte[] encrypted() throws IOException {
        try (PDDocument document = new PDDocument()) {
            document.addPage(new PDPage());
            StandardProtectionPolicy policy = new StandardProtectionPolicy("owner", "user", new AccessPermission());
            policy.setEncryptionKeyLength(128);
            document.protect(policy);
            return saved(document);
        }
    }

    static byte[] pages(int count) throws IOException {
        try (PDDocument document = new PDDocument()) {
            for (int i = 0; i < count; i++) document.addPage(new PDPage());
            return saved(document);
        }
    }

    private static byte[] saved(PDDocument document) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        document.save(out);
        return out.toByteArray();
    }

    /** One page whose content is a stream; {@code dictionary} is what its dictionary says. */
    static byte[] pdf(String dictionary, byte[] content) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(ascii("""
                %PDF-1.4
                1 0 obj <</Type/Catalog/Pages 2 0 R>> endobj
                2 0 obj <</Type/Pages/Kids[3 0 R]/Count 1>> endobj
                3 0 obj <</Type/Page/Parent 2 0 R/MediaBox[0 0 2200 2000]/Contents 4 0 R/Resources<</Font<</F1 5 0 R>>>>>> endobj
                4 0 obj <<""" + dictionary + ">>\nstream\n"));
        out.write(content);
        out.write(
                ascii(
                        "\nendstream endobj\n5 0 obj <</Type/Font/Subtype/Type1/BaseFont/Helvetica>> endobj\ntrailer <</Root 1 0 R/Size 6>>\n%%EOF\n"));
        return out.toByteArray();
    }

    static byte[] cyclicPages() {
        return ascii("""
                %PDF-1.4
                1 0 obj <</Type/Catalog/Pages 2 0 R>> endobj
                2 0 obj <</Type/Pages/Kids[3 0 R]/Count 1>> endobj
                3 0 obj <</Type/Pages/Parent 2 0 R/Kids[2 0 R 3 0 R]/Count 1000000>> endobj
                trailer <</Root 1 0 R/Size 4>>
                %%EOF
                """);
    }

    static byte[] deflatedZeros(int bytes) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (OutputStream deflate = new DeflaterOutputStream(out, new Deflater(9))) {
            byte[] block = new byte[1 << 16];
            Arrays.fill(block, (byte) ' ');
            for (int n = 0; n < bytes; n += block.length) deflate.write(block);
        }
        return out.toByteArray();
    }

    static byte[] workbook() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook book = new Workbook(out, "asfound", "1.0")) {
            Worksheet sheet = book.newWorksheet("LP-9");
            String[][] rows = {
                {"PANEL LP-9"},
                {"FED FROM", "MDP-9"},
                {},
                {"CKT", "DESCRIPTION", "POLES", "TRIP"},
                {"1", "RECEPT RM 204", "1", "20"},
                {"2", "LIGHTING RM 204", "1", "20"},
                {"3", "EF-1", "1", "20"},
                {"4", "SPARE", "1", "20"},
                {"5", "WATER HEATER WH-1", "1", "30"},
                {"6", "COPIER RM 231", "1", "20"},
            };
            for (int r = 0; r < rows.length; r++)
                for (int c = 0; c < rows[r].length; c++) sheet.value(r, c, rows[r][c]);
        }
        return undated(out.toByteArray());
    }

    /** Without the day on which it is made: a seed means one file, whenever it runs. */
    private static byte[] undated(byte[] workbook) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipFile in = ZipFile.builder()
                        .setSeekableByteChannel(new SeekableInMemoryByteChannel(workbook))
                        .get();
                ZipOutputStream zip = new ZipOutputStream(out)) {
            for (ZipArchiveEntry part : Collections.list(in.getEntries())) {
                ZipEntry same = new ZipEntry(part.getName());
                same.setTimeLocal(LocalDateTime.of(2026, 1, 1, 0, 0));
                zip.putNextEntry(same);
                String content = new String(in.getInputStream(part).readAllBytes(), StandardCharsets.UTF_8);
                zip.write(content.replaceAll("<dcterms:created.*?</dcterms:created>", "")
                        .getBytes(StandardCharsets.UTF_8));
            }
        }
        return out.toByteArray();
    }

    /** The archive's list of parts (at its end) names a part otherwise; its content and check sum stay as they are. */
    static byte[] renamed(byte[] archive, String part) {
        String bytes = new String(archive, StandardCharsets.ISO_8859_1);
        int at = bytes.lastIndexOf(part);
        return ascii(bytes.substring(0, at) + "y" + bytes.substring(at + 1));
    }

    static byte[] zip(String part, byte[] content) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.putNextEntry(new ZipEntry("xl/workbook.xml"));
            zip.putNextEntry(new ZipEntry(part));
            zip.write(content);
        }
        return out.toByteArray();
    }

    static byte[] flipped(byte[] bytes, int at) {
        byte[] changed = bytes.clone();
        changed[at] ^= 0x10;
        return changed;
    }

    static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }
}
