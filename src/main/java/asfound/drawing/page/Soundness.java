package asfound.drawing.page;

import asfound.recordset.Limits;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * Whether a PDF's compressed content is whole and bounded, told from the file's bytes before anything else reads them.
 *
 * <p>Each compressed stream ends with a check sum (RFC 1950) that readers of PDF are used to passing over: a page whose
 * content was damaged would still show something. Images and font programs are not looked at: no text comes from them.
 *
 * @param cutOff the end mark of the file is missing
 * @param damaged how many streams fail their check sum or break off
 * @param expanding a stream expands past the limit
 * @param late there was no time to look at all of it
 */
public record Soundness(boolean cutOff, int damaged, boolean expanding, boolean late) {

    private static final int TAIL = 2048;
    private static final int LOOK_BACK = 1500;
    private static final byte[] STREAM = "stream".getBytes(StandardCharsets.US_ASCII);

    /** A stream that holds nothing at all needs no check sum. */
    private static final String END = "endstream";

    /** Looks through a file; stops at the first stream that expands too far. */
    public static Soundness of(Path path, Limits limits, long deadlineNanos) throws IOException {
        try (RandomAccessFile file = new RandomAccessFile(path.toFile(), "r")) {
            String tail = text(file, Math.max(0, file.length() - TAIL), TAIL);
            boolean encrypted = tail.contains("/Encrypt");
            int damaged = 0;
            boolean expanding = false;
            Buffers buffers = new Buffers(new byte[1 << 15], new byte[1 << 16]);
            for (long at : streams(file)) {
                if (encrypted || expanding || System.nanoTime() > deadlineNanos) break;
                String dictionary = dictionary(text(file, Math.max(0, at - LOOK_BACK), (int) Math.min(LOOK_BACK, at)));
                if (dictionary.contains("/Encrypt")) encrypted = true;
                else if (isTextual(dictionary)) {
                    long size = inflated(file, at + STREAM.length, buffers, limits.expandedBytes(), deadlineNanos);
                    if (size > limits.expandedBytes()) expanding = true;
                    else if (size < 0) damaged++;
                }
            }
            boolean late = !encrypted && !expanding && System.nanoTime() > deadlineNanos;
            return new Soundness(!tail.contains("%%EOF"), encrypted ? 0 : damaged, expanding, late);
        }
    }

    /** Where the word 'stream' begins a stream's data, in order. */
    private static List<Long> streams(RandomAccessFile file) throws IOException {
        List<Long> found = new ArrayList<>();
        byte[] buffer = new byte[1 << 16];
        int matched = 0;
        byte before = 0, last = 0;
        long position = 0;
        file.seek(0);
        for (int n = file.read(buffer); n > 0; n = file.read(buffer)) {
            for (int i = 0; i < n; i++, position++) {
                byte b = buffer[i];
                if (b == STREAM[matched]) {
                    if (matched == 0) before = last;
                    matched++;
                } else {
                    matched = b == STREAM[0] ? 1 : 0;
                    if (matched == 1) before = last;
                }
                last = b;
                if (matched == STREAM.length) {
                    if (before != 'd') found.add(position - STREAM.length + 1); // not 'endstream'
                    matched = 0;
                }
            }
        }
        return found;
    }

    private static String text(RandomAccessFile file, long from, int length) throws IOException {
        byte[] bytes = new byte[length];
        file.seek(from);
        int n = 0;
        for (int r = 0; n < length && r >= 0; n += Math.max(0, r)) r = file.read(bytes, n, length - n);
        return new String(bytes, 0, n, StandardCharsets.ISO_8859_1);
    }

    /** The dictionary that stands right before a stream; empty where there is none. */
    private static String dictionary(String before) {
        if (!before.stripTrailing().endsWith(">>")) return "";
        return before.substring(Math.max(0, before.lastIndexOf(" obj")));
    }

    private static boolean isTextual(String dictionary) {
        boolean flate = dictionary.matches("(?s).*/Filter\\s*\\[?\\s*/(FlateDecode|Fl)\\b.*");
        boolean other = dictionary.matches(
                "(?s).*/(Subtype\\s*/Image|Length1|Length3|FontFile|Type\\s*/Metadata|Subtype\\s*/(Type1C|CIDFontType0C|OpenType)).*");
        return flate && !other;
    }

    /** What is read and what it expands to, piece by piece: for all streams of a file the same. */
    private record Buffers(byte[] packed, byte[] whole) {}

    /** How many bytes a stream expands to; -1 where it is damaged; more than {@code most} where it goes past that. */
    private static long inflated(RandomAccessFile file, long from, Buffers buffers, long most, long deadlineNanos)
            throws IOException {
        file.seek(from);
        int first = file.read();
        long start = from + (first == '\r' ? 2 : first == '\n' ? 1 : 0);
        if (text(file, start, END.length() + 2).strip().startsWith(END)) return 0;
        file.seek(start);
        Inflater inflater = new Inflater();
        try {
            long size = 0;
            while (!inflater.finished()) {
                if (inflater.needsInput()) {
                    int n = file.read(buffers.packed());
                    if (n <= 0) return -1;
                    inflater.setInput(buffers.packed(), 0, n);
                }
                int got = inflater.inflate(buffers.whole());
                size += got;
                if (size > most || System.nanoTime() > deadlineNanos) return size > most ? size : 0;
                if (got == 0 && inflater.needsDictionary()) return -1;
            }
            return size;
        } catch (DataFormatException damaged) {
            return -1;
        } finally {
            inflater.end();
        }
    }
}
