package asfound.recordset;

import asfound.model.Place;

/**
 * Characters that must not reach a screen, a page or a table as they are: controls, which steer a terminal, and marks that
 * turn the direction of writing, which make a name read as another (Unicode Standard Annex 9, 2.1 to 2.4).
 */
public final class Unshowable {

    /** What stands in their place, so that a reader sees that something is there, and no name is taken for another. */
    private static final char REPLACEMENT = '\uFFFD';

    private Unshowable() {}

    /** The text itself where it has none of them. */
    static String replaced(String text) {
        for (int i = 0; i < text.length(); i++) if (is(text.charAt(i))) return replacedFrom(text, i);
        return text;
    }

    private static String replacedFrom(String text, int first) {
        char[] all = text.toCharArray();
        for (int i = first; i < all.length; i++) if (is(all[i])) all[i] = REPLACEMENT;
        return new String(all);
    }

    /** The text with each of them replaced, and told as a problem of its row. */
    static String replaced(String text, Place row, ProblemList problems) {
        String showable = replaced(text);
        if (!showable.equals(text))
            problems.add(
                    "rows with characters that cannot be shown",
                    row,
                    "The row holds control characters or marks that turn the direction of writing; they were read as"
                            + " \uFFFD.",
                    "Check the row against its source, and write it anew without them.");
        return showable;
    }

    public static boolean is(int c) {
        if (c >= 0x20 && c < 0x7F) return false;
        boolean control = c < 0x20 && c != '\t' && c != '\n' && c != '\r' || c >= 0x7F && c < 0xA0;
        return control || c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069;
    }
}
