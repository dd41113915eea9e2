package asfound.names;

import java.util.Collection;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/**
 * Tells in passing which texts cannot mean any of the known names, so that the hundreds of thousands of loads of a campus
 * are not each taken apart. A text may mean a name only if it shares a word or letter mark with one, says a kind of
 * equipment, or holds a character that may be taken for another.
 */
public final class NameHints {

    private static final Set<String> KIND_WORDS = Set.of(
            "SERVICE",
            "SWITCH",
            "SW",
            "CENTER",
            "CENTRE",
            "UNINTERRUPTIBLE",
            "TRANSFER",
            "XFER",
            "MOTOR",
            "LOAD",
            "SUB",
            "ENGINE",
            "SAFETY",
            "MAIN",
            "AUTOMATIC",
            "AUTO",
            "MANUAL",
            "STATIC");

    private final Set<String> words = new HashSet<>(KIND_WORDS);

    /** @param names every text that names something */
    public NameHints(Collection<String> names) {
        for (Family f : Family.values()) {
            words.addAll(f.words());
            words.addAll(f.marks());
        }
        names.forEach(n -> scan(n, words, true));
    }

    /** The text might mean a known name; false only where it cannot. */
    public boolean mayName(String text) {
        return scan(text, words, false);
    }

    /** Goes over the runs of letters; collects them, or says whether one is known. */
    private static boolean scan(String written, Set<String> words, boolean collect) {
        String text = Initials.joined(written);
        int start = -1;
        for (int i = 0; i <= text.length(); i++) {
            char c = i < text.length() ? text.charAt(i) : ' ';
            boolean letter = (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
            if (c > 126 && !collect) return true;
            if (letter && start < 0) start = i;
            if (letter || start < 0) continue;
            String word = text.substring(start, i).toUpperCase(Locale.ROOT);
            if (collect) words.add(word);
            else if (words.contains(word)) return true;
            start = -1;
        }
        return false;
    }
}
