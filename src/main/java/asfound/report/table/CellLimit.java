package asfound.report.table;

import java.util.Locale;

/** What a cell of a workbook can hold: at most 32,767 characters (ECMA-376 applications' limit), and no control characters. */
final class CellLimit {

    private static final int MOST = 32_767;

    private CellLimit() {}

    /** The text, its control characters shown; where it is too long its beginning, saying so with the true length. */
    static String fit(String text) {
        String shown = visible(text);
        if (shown.length() <= MOST) return shown;
        String note = " [cut here: " + shown.length() + " characters in all; the .csv file has them]";
        int end = MOST - note.length();
        if (Character.isHighSurrogate(shown.charAt(end - 1))) end--;
        return shown.substring(0, end) + note;
    }

    private static String visible(String text) {
        StringBuilder shown = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            if (fits(c)) shown.appendCodePoint(c);
            else shown.append(String.format(Locale.ROOT, "<U+%04X>", c));
        });
        return shown.toString();
    }

    /** XML 1.0's characters, of which a carriage return does not survive reading. */
    private static boolean fits(int c) {
        return c == '\t' || c == '\n' || (c >= 0x20 && c < 0xD800) || (c >= 0xE000 && c < 0xFFFE) || c > 0xFFFF;
    }
}
