package asfound.report.table;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;

/** A workbook again, without the time at which it was made: the same content gives the same bytes. */
final class SameZip {

    private static final LocalDateTime ANY_TIME = LocalDateTime.of(2000, 1, 1, 0, 0);

    private SameZip() {}

    static void copy(byte[] workbook, OutputStream out) throws IOException {
        ZipOutputStream zip = new ZipOutputStream(out);
        try (ZipFile in = ZipFile.builder()
                .setSeekableByteChannel(new SeekableInMemoryByteChannel(workbook))
                .get()) {
            for (ZipArchiveEntry entry : Collections.list(in.getEntries())) {
                ZipEntry same = new ZipEntry(entry.getName());
                same.setTimeLocal(ANY_TIME);
                zip.putNextEntry(same);
                byte[] content = in.getInputStream(entry).readAllBytes();
                zip.write(entry.getName().equals("docProps/core.xml") ? undated(content) : content);
                zip.closeEntry();
            }
        }
        zip.finish();
    }

    private static byte[] undated(byte[] properties) {
        return new String(properties, StandardCharsets.UTF_8)
                .replaceAll("<dcterms:created.*?</dcterms:created>", "")
                .getBytes(StandardCharsets.UTF_8);
    }
}
