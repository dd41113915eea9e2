package asfound.recordset;

import asfound.model.Place;
import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * The lines of a text file, whatever its encoding: UTF-8 with or without a byte order mark, UTF-16 with one, or
 * Windows-1252. A line ends with LF, CR LF or CR.
 *
 * <p>Without a mark each line is UTF-8 where it can be, else Windows-1252; a file in which both occur is reported.
 */
final class TextLines implements Closeable {

    private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");

    private final BufferedInputStream in;
    private final String file;
    private final long longest;
    private final ProblemList problems;
    /** Bytes of one character of UTF-16, else 1. */
    private final Charset wide;

    private int number;
    /** The last line that was too long. */
    private int cutLine;

    private boolean afterReturn;
    private boolean ended;
    private int utf8Line;
    private int windowsLine;
    private boolean mixedSaid;

    TextLines(InputStream stream, String file, Limits limits, ProblemList problems) throws IOException {
        this.in = new BufferedInputStream(stream, 1 << 16);
        this.file = file;
        this.longest = Math.min(limits.amount(Limit.LINE_MB), Integer.MAX_VALUE - 64);
        this.problems = problems;
        this.wide = wideCharset();
    }

    /** The number of the line last given, from 1. */
    int number() {
        return number;
    }

    /** The next line without its end; empty at the end of the file. */
    Optional<String> next() throws IOException {
        if (ended) return Optional.empty();
        Optional<byte[]> bytes = wide == null ? bytesOfLine() : bytesOfWideLine();
        if (bytes.isEmpty()) return Optional.empty();
        number++;
        String line = wide == null ? decode(bytes.get()) : decodeWide(bytes.get());
        return Optional.of(clean(line));
    }

    private Charset wideCharset() throws IOException {
        in.mark(8);
        byte[] head = in.readNBytes(4);
        in.reset();
        int a = at(head, 0), b = at(head, 1), c = at(head, 2);
        if (a == 0xEF && b == 0xBB && c == 0xBF) in.skipNBytes(3);
        else if (a == 0xFF && b == 0xFE) return skipMark(StandardCharsets.UTF_16LE);
        else if (a == 0xFE && b == 0xFF) return skipMark(StandardCharsets.UTF_16BE);
        return null;
    }

    private Charset skipMark(Charset charset) throws IOException {
        in.skipNBytes(2);
        return charset;
    }

    private static int at(byte[] bytes, int i) {
        return i < bytes.length ? bytes[i] & 0xFF : -1;
    }

    private Optional<byte[]> bytesOfLine() throws IOException {
        ByteArrayOutputStream line = new ByteArrayOutputStream(128);
        boolean any = false;
        for (int c = in.read(); ; c = in.read()) {
            if (c < 0) {
                ended = true;
                return any ? Optional.of(line.toByteArray()) : Optional.empty();
            }
            if (c == '\n' && afterReturn) {
                afterReturn = false;
                continue;
            }
            any = true;
            afterReturn = c == '\r';
            if (c == '\n' || c == '\r') return Optional.of(line.toByteArray());
            keep(line, c);
        }
    }

    private Optional<byte[]> bytesOfWideLine() throws IOException {
        ByteArrayOutputStream line = new ByteArrayOutputStream(256);
        boolean any = false;
        boolean little = wide == StandardCharsets.UTF_16LE;
        while (true) {
            int first = in.read(), second = in.read();
            if (second < 0) {
                ended = true;
                if (first >= 0) problems.add("The text ends in the middle of a character.", "Save the file again.");
                return any ? Optional.of(line.toByteArray()) : Optional.empty();
            }
            int c = little ? first | second << 8 : first << 8 | second;
            if (c == '\n' && afterReturn) {
                afterReturn = false;
                continue;
            }
            any = true;
            afterReturn = c == '\r';
            if (c == '\n' || c == '\r') return Optional.of(line.toByteArray());
            keep(line, first);
            keep(line, second);
        }
    }

    /** What goes past the longest line is told once for each line, however much it is. */
    private void keep(ByteArrayOutputStream line, int c) {
        if (line.size() < longest) line.write(c);
        else if (cutLine <= number) {
            cutLine = number + 1;
            problems.add(
                    "lines that are too long",
                    Place.row(file, number + 1),
                    "The line is longer than " + longest + " bytes; the rest of it was not read.",
                    "Look for a missing line end, or " + Limit.LINE_MB.raise() + ".");
        }
    }

    private String decode(byte[] bytes) {
        if (isAscii(bytes)) return new String(bytes, StandardCharsets.US_ASCII);
        Optional<String> utf8 = strictly(bytes, StandardCharsets.UTF_8);
        if (utf8.isPresent()) utf8Line = number;
        else windowsLine = number;
        if (utf8Line > 0 && windowsLine > 0 && !mixedSaid) {
            mixedSaid = true;
            problems.add(
                    "rows of mixed encodings",
                    Place.row(file, number),
                    "The file mixes encodings: row " + utf8Line + " is UTF-8, row " + windowsLine
                            + " is not and was read as Windows-1252.",
                    "Save the file again as UTF-8 and check the accented letters.");
        }
        return utf8.orElseGet(() -> windows(bytes));
    }

    private static boolean isAscii(byte[] bytes) {
        for (byte b : bytes) if (b < 0) return false;
        return true;
    }

    private String windows(byte[] bytes) {
        return strictly(bytes, WINDOWS_1252).orElseGet(() -> {
            unknownCharacters("Windows-1252");
            return new String(bytes, WINDOWS_1252);
        });
    }

    private String decodeWide(byte[] bytes) {
        return strictly(bytes, wide).orElseGet(() -> {
            unknownCharacters("UTF-16");
            return new String(bytes, wide);
        });
    }

    private void unknownCharacters(String encoding) {
        problems.add(
                "rows with unknown characters",
                Place.row(file, number),
                "The row has bytes that are no character in UTF-8 nor in " + encoding + "; they were read as \uFFFD.",
                "Save the file again as UTF-8.");
    }

    private static Optional<String> strictly(byte[] bytes, Charset charset) {
        try {
            return Optional.of(charset.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString());
        } catch (CharacterCodingException notThisOne) {
            return Optional.empty();
        }
    }

    private String clean(String line) {
        if (line.indexOf('\0') < 0) return Unshowable.replaced(line, Place.row(file, number), problems);
        problems.add(
                "rows with NUL bytes",
                Place.row(file, number),
                "The row holds NUL bytes; they were left out.",
                "Check the row against its source: the file may be damaged, or UTF-16 without a byte order mark.");
        return Unshowable.replaced(line.replace("\0", ""), Place.row(file, number), problems);
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
