package asfound.names;

/**
 * Whether a description in capitals may hold a floor, a quantity, a rating or a range of rooms at all: cheap signs without
 * which no pattern of it can match, so that most of a million descriptions are spared the patterns.
 */
final class MayHold {

    private MayHold() {}

    static boolean digit(String text) {
        for (int i = 0; i < text.length(); i++) if (isDigit(text.charAt(i))) return true;
        return false;
    }

    /** {@code 2ND}, {@code FLOOR}, {@code LVL}. */
    static boolean floor(String text) {
        if (text.contains("FL") || text.contains("LEVEL") || text.contains("LVL")) return true;
        for (int i = 1; i + 1 < text.length(); i++)
            if (isDigit(text.charAt(i - 1)) && Character.isLetter(text.charAt(i))) {
                char end = text.charAt(i + 1);
                if (end == 'T' || end == 'D' || end == 'H') return true;
            }
        return false;
    }

    /** {@code (2)}, {@code QTY 2}, {@code 2 EA}, {@code X2}. */
    static boolean quantity(String text) {
        return text.indexOf('(') >= 0 || text.contains("QTY") || text.contains("EA") || text.indexOf('X') >= 0;
    }

    /** A figure with a letter of a unit after it, next to it or after one blank or hyphen. */
    static boolean rating(String text) {
        for (int i = 1; i < text.length(); i++) {
            if (!isDigit(text.charAt(i - 1))) continue;
            int at = i;
            while (at < text.length() && at < i + 2 && " -\t".indexOf(text.charAt(at)) >= 0) at++;
            if (at < text.length() && "VKWAPHBGY".indexOf(text.charAt(at)) >= 0) return true;
        }
        return false;
    }

    /** {@code 101-105}, {@code 101 THRU 105}. */
    static boolean range(String text) {
        return text.indexOf('-') >= 0 || text.indexOf('T') >= 0;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
