package asfound.recordset;

import java.io.IOException;
import java.nio.file.Path;
import java.util.zip.ZipFile;

/** Tells a workbook from other archives. A damaged one that ends in .xlsx is taken for a workbook, so that it is reported as one. */
final class ArchiveParts {

    private ArchiveParts() {}

    static boolean isWorkbook(Path path) {
        try (ZipFile zip = new ZipFile(path.toFile())) {
            return zip.stream()
                    .anyMatch(e ->
                            e.getName().endsWith("workbook.xml") || e.getName().startsWith("xl/"));
        } catch (IOException | IllegalArgumentException damaged) {
            return path.getFileName()
                    .toString()
                    .toLowerCase(java.util.Locale.ROOT)
                    .matches(".*\\.xls[xm]");
        }
    }
}
