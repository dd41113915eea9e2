package asfound.report.pdf;

import java.text.Normalizer;

/** Text from drawings and surveys made fit to be set: nothing in it is invisible, nothing in it steers. */
final class Visible {

    private Visible() {}

    /**
     * Composed characters (NFC); white space of every kind as one space; controls, invisible and direction-changing
     * characters, private and broken ones as {@link Typeface#MISSING}, so that a reader sees that something stands there.
     */
    static String of(String text) {
        StringBuilder out = new StringBuilder(text.length());
        Normalizer.normalize(text, Normalizer.Form.NFC).codePoints().forEach(point -> {
            if (isSpace(point)) {
                if (out.length() > 0 && out.charAt(out.length() - 1) != ' ') out.append(' ');
            } else if (steers(point)) {
                out.append(Typeface.MISSING);
            } else {
                out.appendCodePoint(point);
            }
        });
        return out.toString();
    }

    private static boolean isSpace(int point) {
        return Character.isWhitespace(point) || Character.isSpaceChar(point);
    }

    private static boolean steers(int point) {
        return switch (Character.getType(point)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.PRIVATE_USE,
                    Character.UNASSIGNED -> true;
            default -> false;
        };
    }

    /** The same line by line, for comments of several lines. */
    static String lines(String text) {
        return text.lines().map(Visible::of).collect(java.util.stream.Collectors.joining("\n"));
    }
}
