package asfound.names;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words, numbers and signs of a description in capitals, and how each is joined to the one before. Beyond the last
 * there is nothing: what is asked of it is not so.
 */
final class DescriptionTokens {

    private static final Pattern TOKEN = Pattern.compile("([\\s]*)(-?)([\\s]*)(\\p{L}+|[0-9]+|[&+/,;()#:=x*])");
    private static final String SIGNS = "&+/,;()#:=*";

    private record Token(String text, boolean gap, boolean hyphen) {}

    private final List<Token> tokens = new ArrayList<>();

    DescriptionTokens(String text) {
        Matcher m = TOKEN.matcher(text);
        while (m.find()) {
            boolean gap =
                    tokens.isEmpty() || !m.group(1).isEmpty() || !m.group(3).isEmpty() || isAfterOther(text, m.start());
            tokens.add(new Token(m.group(4), gap, !m.group(2).isEmpty()));
        }
    }

    /** A sign that is no token stands before. */
    private static boolean isAfterOther(String text, int start) {
        if (start == 0) return false;
        char before = text.charAt(start - 1);
        return !Character.isLetter(before) && !isDigit(before) && SIGNS.indexOf(before) < 0;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    int size() {
        return tokens.size();
    }

    String text(int i) {
        return tokens.get(i).text();
    }

    boolean isNumber(int i) {
        return i < tokens.size() && isDigit(text(i).charAt(0));
    }

    boolean isWord(int i) {
        return i < tokens.size() && Character.isLetter(text(i).codePointAt(0));
    }

    boolean isLetter(int i) {
        return isWord(i) && text(i).length() == 1;
    }

    boolean isOneOf(String signs, int i) {
        return i < tokens.size() && signs.contains(text(i));
    }

    /** To the one before by nothing or a hyphen. */
    boolean isJoined(int i) {
        return i < tokens.size() && !tokens.get(i).gap();
    }

    /** To the one before by nothing. */
    boolean isGlued(int i) {
        return isJoined(i) && !tokens.get(i).hyphen();
    }

    /** The letter of {@code 204-A}: after a number as long as a room's, and joined to nothing after it. */
    boolean isSuffix(int i) {
        return isLetter(i) && !isJoined(i + 1) && text(i - 1).length() >= 3;
    }
}
