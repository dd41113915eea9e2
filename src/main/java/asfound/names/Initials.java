package asfound.names;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** {@code A.H.U. 4} and {@code W.H.}: letters with a stop after each are one abbreviation. */
final class Initials {

    private static final Pattern DOTTED =
            Pattern.compile("(?<![\\p{L}\\d.])(?:\\p{L}\\.){2,5}(?:\\p{L}(?![\\p{L}.]))?");

    private Initials() {}

    /** The text with such letters joined: {@code AHU 4}, {@code E.F.-3} as {@code EF-3}. */
    static String joined(String text) {
        int stop = text.indexOf('.');
        if (stop < 0 || text.indexOf('.', stop + 1) < 0) return text;
        Matcher m = DOTTED.matcher(text);
        return m.find() ? m.replaceAll(r -> r.group().replace(".", "")) : text;
    }
}
