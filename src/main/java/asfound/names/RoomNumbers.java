package asfound.names;

import java.util.function.Consumer;

/** The room numbers after RM: {@code 204}, {@code A-101}, {@code 204A}, {@code 210/212}. */
final class RoomNumbers {

    private static final String BETWEEN = "#&+/,:";

    private RoomNumbers() {}

    /** Gives on the numbers that begin at a token, and returns the token after them. */
    static int read(DescriptionTokens tokens, int from, Consumer<String> numbers) {
        int at = from;
        while (true) {
            if (tokens.isOneOf(BETWEEN, at) && tokens.isNumber(at + 1)) at++;
            else if (!begins(tokens, at)) return at;
            StringBuilder room = new StringBuilder(tokens.text(at++));
            while (goesOn(tokens, at, room)) room.append(tokens.text(at++));
            numbers.accept(room.toString());
        }
    }

    private static boolean begins(DescriptionTokens tokens, int at) {
        boolean wing = tokens.isWord(at)
                && tokens.text(at).length() <= 2
                && tokens.isNumber(at + 1)
                && tokens.isJoined(at + 1);
        return tokens.isNumber(at) || wing;
    }

    /** A digit or letter more; over a hyphen only after the letters of a wing, or as the letter of a room. */
    private static boolean goesOn(DescriptionTokens tokens, int at, CharSequence room) {
        if (!tokens.isNumber(at) && !tokens.isLetter(at)) return false;
        boolean wing = room.length() <= 2 && Character.isLetter(room.charAt(0));
        return wing || tokens.isSuffix(at) ? tokens.isJoined(at) : tokens.isGlued(at);
    }
}
