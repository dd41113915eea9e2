package asfound.recordset;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/**
 * Looks through a workbook before it is read: how far its content expands, whether its parts are whole (each has a check
 * sum), and whether any part declares entities. Workbooks never need a document type; one that has it is refused.
 */
final class WorkbookGuard {

    private static final byte[] DOCTYPE = "<!DOCTYPE".getBytes(StandardCharsets.US_ASCII);

    private static final int MOST_LISTED = 4 << 20;

    /** Parts as [Content_Types].xml lists them (ECMA-376-2, 10.1.2.2). */
    private static final Pattern PART = Pattern.compile("<Override\\b[^>]*>");

    private static final Pattern NAME = Pattern.compile("PartName\\s*=\\s*[\"']/?([^\"']+)");
    private static final Pattern CELLS = Pattern.compile("(?i)sharedStrings\\+xml|worksheet\\+xml|styles\\+xml");

    private WorkbookGuard() {}

    /** A reason against reading the file, as message and remedy. */
    record Refusal(String message, String remedy) {}

    static Optional<Refusal> check(Path path, Limits limits, Instant deadline) throws IOException {
        try (ZipFile zip = new ZipFile(path.toFile())) {
            List<? extends ZipEntry> parts = Collections.list(zip.entries());
            long most = limits.amount(Limit.PARTS);
            if (parts.size() > most) return Optional.of(tooMany(parts.size(), most));
            long expanded = 0;
            byte[] buffer = new byte[1 << 16];
            for (ZipEntry part : parts) {
                DoctypeSearch search = new DoctypeSearch();
                CRC32 sum = new CRC32();
                try (InputStream in = zip.getInputStream(part)) {
                    for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
                        expanded += n;
                        sum.update(buffer, 0, n);
                        if (expanded > limits.expandedBytes()) return Optional.of(tooLarge(limits));
                        if (Instant.now().isAfter(deadline)) return Optional.of(tooLong(limits));
                        if (search.finds(buffer, n)) return Optional.of(entities(part.getName()));
                    }
                }
                if (part.getCrc() >= 0 && part.getCrc() != sum.getValue()) return Optional.of(damaged(part.getName()));
            }
            return missing(zip).map(WorkbookGuard::incomplete);
        } catch (ZipException | IllegalArgumentException damaged) {
            return Optional.of(new Refusal(
                    "The workbook is damaged: " + tidy(damaged.getMessage()) + ".",
                    "Open it in a spreadsheet program, save it again as .xlsx, or export its sheets as CSV."));
        }
    }

    /** A part with cells, their texts or formats that the list of parts names and the archive lacks: cells would seem other. */
    private static Optional<String> missing(ZipFile zip) throws IOException {
        ZipEntry list = zip.getEntry("[Content_Types].xml");
        if (list == null) return Optional.empty();
        Set<String> parts = new HashSet<>();
        for (ZipEntry part : Collections.list(zip.entries()))
            parts.add(part.getName().toLowerCase(Locale.ROOT));
        String listed = new String(zip.getInputStream(list).readNBytes(MOST_LISTED), StandardCharsets.UTF_8);
        for (Matcher element = PART.matcher(listed); element.find(); ) {
            Matcher name = NAME.matcher(element.group());
            boolean cells = CELLS.matcher(element.group()).find();
            if (cells && name.find() && !parts.contains(name.group(1).toLowerCase(Locale.ROOT)))
                return Optional.of(name.group(1));
        }
        return Optional.empty();
    }

    private static Refusal incomplete(String part) {
        return new Refusal(
                "The workbook is damaged: its part " + shown(part) + " is missing.",
                "Copy it again from where it came from, or open it in a spreadsheet program and save it again.");
    }

    private static Refusal damaged(String part) {
        return new Refusal(
                "The workbook is damaged: its part " + shown(part) + " fails its check sum.",
                "Copy it again from where it came from.");
    }

    private static String shown(String part) {
        return part.replaceAll("[^\\x20-\\x7e]", "?");
    }

    private static String tidy(String message) {
        return message == null || message.isBlank() ? "its parts cannot be unpacked" : message;
    }

    private static Refusal tooMany(int parts, long most) {
        return new Refusal(
                "The workbook has " + parts + " parts, more than the limit of " + most + "; it was not read.",
                "Export the sheets with the schedules as CSV, or " + Limit.PARTS.raise() + ".");
    }

    private static Refusal tooLarge(Limits limits) {
        return new Refusal(
                "The workbook expands to more than " + limits.expandedBytes()
                        + " bytes, the limit for expanded content.",
                "If it is meant to be so large, " + Limit.EXPANDED_MB.raise()
                        + ", or export the sheets with the schedules as CSV.");
    }

    private static Refusal tooLong(Limits limits) {
        return new Refusal(
                "Unpacking the workbook took longer than " + limits.fileTime().toSeconds()
                        + " s, the limit for one file.",
                "Export the sheets with the schedules as CSV, or " + Limit.FILE_SECONDS.raise() + ".");
    }

    private static Refusal entities(String part) {
        return new Refusal(
                "The workbook's part " + shown(part)
                        + " declares a document type, which could draw in other files; it was not read.",
                "Do not trust the file. Export the sheets with the schedules as CSV.");
    }

    /** Finds the declaration in any of the encodings that XML allows, also across two reads: NUL bytes are passed over. */
    private static final class DoctypeSearch {

        private int matched;

        boolean finds(byte[] buffer, int length) {
            for (int i = 0; i < length; i++) {
                byte b = buffer[i];
                if (b == 0) continue;
                if (b == DOCTYPE[matched]) matched++;
                else matched = b == DOCTYPE[0] ? 1 : 0;
                if (matched == DOCTYPE.length) return true;
            }
            return false;
        }
    }
}
