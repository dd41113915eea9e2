package asfound.names;

import java.util.Locale;
import java.util.Optional;

/**
 * Text as people compare it: one kind of dash and space, upper case, no quotation marks, no invisible characters.
 *
 * <p>Letters that only look like Latin ones are kept as they are and named, so that they never match by accident.
 */
final class PlainText {

    private PlainText() {}

    /** Upper case, with full-width forms, odd dashes, spaces and quotation marks made plain. Foreign letters stay. */
    static String of(String raw) {
        if (isPlain(raw)) return raw.toUpperCase(Locale.ROOT).strip();
        StringBuilder plain = new StringBuilder(raw.length());
        raw.codePoints().forEach(c -> append(plain, c));
        return plain.toString().toUpperCase(Locale.ROOT).strip();
    }

    /** Printable ASCII without quotation marks: nothing to be made plain. */
    private static boolean isPlain(String raw) {
        for (int i = 0; i < raw.length(); i++) {
            char c = raw.charAt(i);
            if (c < ' ' || c > '~' || c == '"' || c == '\'' || c == '`') return false;
        }
        return true;
    }

    private static void append(StringBuilder plain, int c) {
        if (c >= 0xFF01 && c <= 0xFF5E) c -= 0xFEE0; // full-width forms of ASCII
        if (isDash(c)) plain.append('-');
        else if (isQuote(c) || isInvisible(c)) return;
        else if (Character.isWhitespace(c) || Character.isSpaceChar(c) || isPlainControl(c)) plain.append(' ');
        else plain.appendCodePoint(c);
    }

    private static boolean isDash(int c) {
        return (c >= 0x2010 && c <= 0x2015) || c == 0x2212 || c == 0x2043 || c == 0xFE58 || c == 0xFE63 || c == 0x30FC;
    }

    private static boolean isQuote(int c) {
        return c == '"'
                || c == '\''
                || c == '`'
                || c == 0xB4
                || c == 0xAB
                || c == 0xBB
                || (c >= 0x2018 && c <= 0x201F)
                || (c >= 0x2032 && c <= 0x2037);
    }

    private static boolean isInvisible(int c) {
        return c == 0xAD || (c >= 0x200B && c <= 0x200D) || c == 0x2060 || c == 0xFEFF;
    }

    private static boolean isPlainControl(int c) {
        return Character.getType(c) == Character.CONTROL;
    }

    /**
     * The first character that a reader may take for another one: a letter of another script, a digit that is not 0 to 9
     * (a raised footnote mark among them), or a mark that turns the direction of writing. In words, with its code.
     */
    static Optional<String> lookAlike(String raw) {
        return raw.codePoints()
                .filter(c -> !(c >= 0xFF01 && c <= 0xFF5E))
                .filter(PlainText::isStrange)
                .mapToObj(c -> (isDirection(c) ? "a mark that turns the direction of writing" : name(c))
                        + String.format(Locale.ROOT, " (U+%04X)", c))
                .findFirst();
    }

    private static boolean isStrange(int c) {
        if (c < 0x80) return false;
        if (isDirection(c)) return true;
        int type = Character.getType(c);
        if (type == Character.DECIMAL_DIGIT_NUMBER || type == Character.LETTER_NUMBER || type == Character.OTHER_NUMBER)
            return true;
        if (!Character.isLetter(c)) return false;
        if (type == Character.MODIFIER_LETTER) return true;
        boolean mathematical = c >= 0x1D400 && c <= 0x1D7FF;
        return mathematical || Character.UnicodeScript.of(c) != Character.UnicodeScript.LATIN;
    }

    private static boolean isDirection(int c) {
        return c == 0x200E || c == 0x200F || c == 0x61C || (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
    }

    private static String name(int c) {
        String name = Character.getName(c);
        return name == null ? "an unknown character" : name.toLowerCase(Locale.ROOT);
    }
}
