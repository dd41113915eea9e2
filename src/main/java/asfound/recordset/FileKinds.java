package asfound.recordset;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Tells what a file is from its content. */
final class FileKinds {

    /** What a file is; for an unknown one why, and what to do. */
    record Told(Source.Kind kind, String message, String remedy) {

        static Told of(Source.Kind kind) {
            return new Told(kind, "", "");
        }

        static Told unknown(String message, String remedy) {
            return new Told(Source.Kind.UNKNOWN, message, remedy);
        }
    }

    private static final int HEAD = 4096;

    private FileKinds() {}

    static boolean isZip(Path path) throws IOException {
        byte[] head = head(path, 4);
        return head.length == 4 && head[0] == 'P' && head[1] == 'K' && head[2] <= 8 && head[3] <= 8;
    }

    static Told tell(Source source, Settings settings, Limits limits) throws IOException {
        if (source.bytes() == 0)
            return Told.unknown("The file is empty (0 bytes).", "Copy it again from where it came from.");
        byte[] head = head(source.path(), HEAD);
        String text = new String(head, StandardCharsets.ISO_8859_1);
        if (text.indexOf("%PDF-") >= 0 && text.indexOf("%PDF-") < 1024) return Told.of(Source.Kind.PDF);
        if (text.startsWith("PK")) return ofArchive(source, settings, limits);
        Optional<String> other = OtherFormats.named(head, source.file());
        if (other.isPresent()) return Told.unknown(other.get(), OtherFormats.REMEDY);
        if (isBinary(head)) return Told.unknown("The file is not a text, PDF or workbook.", OtherFormats.REMEDY);
        return ofTable(Grids.beginning(source, limits, Tables.HEADER_WITHIN), settings);
    }

    private static byte[] head(Path path, int bytes) throws IOException {
        try (InputStream in = Files.newInputStream(path)) {
            return in.readNBytes(bytes);
        }
    }

    private static Told ofArchive(Source source, Settings settings, Limits limits) {
        if (!ArchiveParts.isWorkbook(source.path()))
            return Told.unknown("The file is an archive, not a workbook.", "Unpack it into the record set.");
        GridReading reading = Grids.read(source, limits);
        for (Grid grid : reading.grids()) {
            Told told = ofTable(grid, settings);
            if (told.kind() == Source.Kind.SURVEY
                    || told.kind() == Source.Kind.FEEDERS
                    || told.kind() == Source.Kind.EQUIPMENT) return told;
        }
        return Told.of(Source.Kind.WORKBOOK);
    }

    /** A table is what its header makes it; one that lacks a needed column is what it seems to be, and says so when read. */
    private static Told ofTable(Grid grid, Settings settings) {
        List<GridRow> rows = grid.rows()
                .subList(0, Math.min(Tables.HEADER_WITHIN, grid.rows().size()));
        for (Source.Kind kind :
                List.of(Source.Kind.SURVEY, Source.Kind.FEEDERS, Source.Kind.SCHEDULE_TABLE, Source.Kind.EQUIPMENT))
            for (GridRow row : rows)
                if (Columns.headed(row, settings).filter(k -> k == kind).isPresent()) return Told.of(kind);
        for (GridRow row : rows) {
            Optional<Source.Kind> nearly = Columns.nearlyHeaded(row, settings);
            if (nearly.isPresent()) return Told.of(nearly.get());
        }
        String seen = rows.isEmpty() ? "" : " Its first row reads: " + Tables.seen(rows.get(0)) + ".";
        return Told.unknown(
                "The file was not understood: it is no PDF, no workbook, and no table with known columns." + seen,
                "A survey needs the columns panel, circuit and found; a one-line needs from and to, or name and kind; other"
                        + " names can be given under 'columns' in record.yaml.");
    }

    /** NUL bytes make a file binary, unless it is UTF-16 with its mark or a table with a few of them. */
    private static boolean isBinary(byte[] head) {
        if (head.length >= 2
                && ((head[0] & 0xFF) == 0xFF && (head[1] & 0xFF) == 0xFE
                        || (head[0] & 0xFF) == 0xFE && (head[1] & 0xFF) == 0xFF)) return false;
        int controls = 0;
        for (byte b : head) if (b >= 0 && b < 32 && b != '\t' && b != '\n' && b != '\r' && b != '\f') controls++;
        return controls * 10 > head.length;
    }
}
