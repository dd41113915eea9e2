package asfound.report.terminal;

import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Text as a terminal of some character set shows it. Names come from drawings of anyone: what would move the cursor, turn
 * the direction of writing or show nothing at all is written as {@code <U+202E>}, and so is what the character set lacks, so
 * that no name is ever shown as another.
 */
public final class Shown {

    /** Columns that every terminal has. */
    public static final int WIDTH = 80;

    private final CharsetEncoder encoder;

    private Shown(Charset charset) {
        this.encoder = charset.newEncoder();
    }

    public static Shown in(Charset charset) {
        return new Shown(charset);
    }

    /** What standard output can show, as far as the system tells; UTF-8 where it does not. */
    public static Charset ofStandardOutput() {
        return Optional.ofNullable(System.getProperty("stdout.encoding"))
                .filter(Charset::isSupported)
                .map(Charset::forName)
                .orElse(StandardCharsets.UTF_8);
    }

    /** The text in one line, harmless. */
    public String line(String text) {
        StringBuilder line = new StringBuilder();
        text.codePoints().forEach(c -> {
            if (c == '\t' || c == '\n' || c == '\r') line.append(' ');
            else if (isPlain(c)) line.appendCodePoint(c);
            else line.append(String.format(Locale.ROOT, "<U+%04X>", c));
        });
        return line.toString();
    }

    private boolean isPlain(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> false;
            default -> c < 0x80 || encoder.canEncode(Character.toString(c));
        };
    }

    /** The text in as many lines as it takes, each at most {@code width} columns; parted at spaces where there are any. */
    public List<String> wrapped(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : line(text).strip().split(" +")) {
            for (String piece : pieces(word, width)) {
                int gap = line.isEmpty() ? 0 : 1;
                if (columns(line) + gap + columns(piece) > width) {
                    lines.add(line.toString());
                    line.setLength(0);
                    gap = 0;
                }
                line.append(gap == 0 ? "" : " ").append(piece);
            }
        }
        lines.add(line.toString());
        return lines;
    }

    /** The text in one line of at most {@code width} columns; three dots at its end say that there is more. */
    public String cut(String text, int width) {
        String line = line(text).strip();
        return columns(line) <= width ? line : pieces(line, width - 3).get(0).stripTrailing() + "...";
    }

    private static List<String> pieces(String word, int width) {
        List<String> pieces = new ArrayList<>();
        int start = 0, columns = 0;
        for (int i = 0; i < word.length(); ) {
            int c = word.codePointAt(i), wide = columns(c);
            if (columns + wide > width) {
                pieces.add(word.substring(start, i));
                start = i;
                columns = 0;
            }
            columns += wide;
            i += Character.charCount(c);
        }
        pieces.add(word.substring(start));
        return pieces;
    }

    /** How many columns the text takes. */
    public static int columns(CharSequence text) {
        return text.codePoints().map(Shown::columns).sum();
    }

    /** Combining marks take none, the wide letters and signs of East Asia two (Unicode's annex 11, the main blocks). */
    private static int columns(int c) {
        int type = Character.getType(c);
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK) return 0;
        boolean wide = c >= 0x1100
                && (c <= 0x115F
                        || (c >= 0x2E80 && c <= 0xA4CF)
                        || (c >= 0xAC00 && c <= 0xD7A3)
                        || (c >= 0xF900 && c <= 0xFAFF)
                        || (c >= 0xFE30 && c <= 0xFE6F)
                        || (c >= 0xFF00 && c <= 0xFF60)
                        || (c >= 0xFFE0 && c <= 0xFFE6)
                        || (c >= 0x1F300 && c <= 0x1FAFF)
                        || (c >= 0x20000 && c <= 0x3FFFD));
        return wide ? 2 : 1;
    }
}
