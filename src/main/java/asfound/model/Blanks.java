package asfound.model;

import java.util.regex.Pattern;

/** The blanks between words as written, and as they are compared. */
public final class Blanks {

    private static final Pattern SPACES = Pattern.compile("\\s+");

    private Blanks() {}

    /** The text with a single blank wherever there is any space; nearly all texts are as they should be. */
    public static String single(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean alone = c == ' ' && i + 1 < text.length() && text.charAt(i + 1) > ' ';
            if (c <= ' ' && !alone) return SPACES.matcher(text).replaceAll(" ");
        }
        return text;
    }
}
