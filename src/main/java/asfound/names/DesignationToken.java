package asfound.names;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A run of letters, of digits, or a sign of a designation.
 *
 * @param text the run, upper case
 * @param before what stands between it and the token before: blanks and joining signs
 */
record DesignationToken(String text, String before) {

    private static final Pattern RUN = Pattern.compile("([\\s\\-._:*#]*)([0-9]+(?:ST|ND|RD|TH)\\b|[0-9]+|\\p{L}+|\\S)");

    private static final Pattern ORDINAL = Pattern.compile("[0-9]+(ST|ND|RD|TH)");

    static List<DesignationToken> all(String plain) {
        List<DesignationToken> all = new ArrayList<>();
        Matcher m = RUN.matcher(plain);
        while (m.find()) if (isWorth(m.group(2))) all.add(new DesignationToken(m.group(2), m.group(1)));
        return all;
    }

    private static boolean isWorth(String run) {
        return run.length() > 1 || "-._:*#".indexOf(run.charAt(0)) < 0;
    }

    boolean isDigits() {
        return text.chars().allMatch(c -> c >= '0' && c <= '9');
    }

    boolean isOrdinal() {
        return text.length() > 2
                && Character.isDigit(text.charAt(0))
                && ORDINAL.matcher(text).matches();
    }

    boolean isLetters() {
        return Character.isLetter(text.codePointAt(0));
    }

    boolean isWordOrNumber() {
        return isLetters() || isDigits() || isOrdinal();
    }

    /** Stands apart as a word does, not joined by a hyphen or nothing. */
    boolean standsApart() {
        return before.chars().anyMatch(Character::isWhitespace);
    }
}
