package asfound.names;

/**
 * A tag as it is written: digits and letters joined, and further parts after hyphens, {@code EF-1}, {@code AHU2-3A},
 * {@code 2LP}.
 *
 * @param text without hyphens; a point between two numbers
 * @param end the token after it
 */
record TagText(String text, int end) {

    /** The tag whose first letters or digits are a token; the next token belongs to it however it is joined. */
    static TagText from(DescriptionTokens tokens, int first) {
        StringBuilder text = new StringBuilder(tokens.text(first));
        int at = first + 1;
        while (goesOn(tokens, first, at)) {
            if (tokens.isNumber(at) && tokens.isNumber(at - 1)) text.append('.');
            text.append(tokens.text(at++));
        }
        return new TagText(text.toString(), at);
    }

    private static boolean goesOn(DescriptionTokens tokens, int first, int at) {
        boolean second = at == first + 1;
        if (tokens.isNumber(at)) return second || tokens.isJoined(at);
        if (!tokens.isWord(at)) return false;
        boolean brief = tokens.text(at).length() <= 2 || second && tokens.isNumber(first);
        boolean ends = tokens.isJoined(at) && tokens.isLetter(at) && !isNumberApart(tokens, at + 1);
        return brief && (tokens.isGlued(at) || ends);
    }

    private static boolean isNumberApart(DescriptionTokens tokens, int at) {
        return tokens.isNumber(at) && !tokens.isJoined(at);
    }
}
