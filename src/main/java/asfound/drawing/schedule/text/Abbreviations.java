package asfound.drawing.schedule.text;

import java.util.Locale;

/** Lines of a key to abbreviations, {@code MLO  MAIN LUGS ONLY}: they explain a word of the sheet, and say nothing of a panel. */
public final class Abbreviations {

    private static final int FEWEST = 2;
    /** No abbreviation has more letters and stops. */
    private static final int MOST = 10;

    private static final String BETWEEN = " \t\n\u000B\f\r=–—-";

    private Abbreviations() {}

    /** Behind its first word stand the words of which it has the initials. */
    public static boolean isExplained(String text) {
        int end = text.indexOf(' ');
        if (end < FEWEST || end > MOST || !isUpper(text, end)) return false;
        String line = text.strip().toUpperCase(Locale.ROOT);
        int behind = 0;
        while (behind < line.length() && !isBetween(line.charAt(behind))) behind++;
        String shortForm = line.substring(0, behind).replace(".", "");
        int words = 0;
        for (int i = behind; i < line.length(); i++) {
            if (isBetween(line.charAt(i)) || !isBetween(line.charAt(i - 1))) continue;
            if (words == shortForm.length() || shortForm.charAt(words++) != line.charAt(i)) return false;
        }
        return words >= FEWEST && words == shortForm.length();
    }

    /** It parts words from each other. */
    private static boolean isBetween(char c) {
        return BETWEEN.indexOf(c) >= 0;
    }

    private static boolean isUpper(String text, int end) {
        for (int i = 0; i < end; i++) if (text.charAt(i) != '.' && !Character.isUpperCase(text.charAt(i))) return false;
        return true;
    }
}
