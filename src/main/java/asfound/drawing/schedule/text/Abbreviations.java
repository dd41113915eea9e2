package asfound.drawing.schedule.text;

import java.util.Arrays;
import java.util.Locale;

/** Lines of a key to abbreviations, {@code MLO  MAIN LUGS ONLY}: they explain a word of the sheet, and say nothing of a panel. */
public final class Abbreviations {

    private static final int FEWEST = 2;
    /** No abbreviation has more letters and stops. */
    private static final int MOST = 10;

    private Abbreviations() {}

    /** Behind its first word stand the words of which it has the initials. */
    public static boolean isExplained(String text) {
        int end = text.indexOf(' ');
        if (end < FEWEST || end > MOST || !isUpper(text, end)) return false;
        String[] words = text.strip().toUpperCase(Locale.ROOT).split("[\\s=–—-]+");
        if (words.length <= FEWEST) return false;
        StringBuilder initials = new StringBuilder();
        for (String word : Arrays.copyOfRange(words, 1, words.length)) initials.append(word.charAt(0));
        return words[0].replace(".", "").contentEquals(initials);
    }

    private static boolean isUpper(String text, int end) {
        for (int i = 0; i < end; i++) if (text.charAt(i) != '.' && !Character.isUpperCase(text.charAt(i))) return false;
        return true;
    }
}
