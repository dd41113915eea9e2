package asfound.drawing.schedule.text;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A panel's name with the place where it stands behind it: {@code DA-1 at Dock A head}, {@code 2-N, 2nd floor linen closet},
 * {@code LP-3 (Boiler room)}. Behind a word for being in it any words are a place; behind a mark only a room or a part of a
 * building with a name or number of its own, for {@code DB4 – Workshop distribution} is what it serves.
 *
 * @param name of the panel
 * @param place as written, without the word before it
 */
public record PlacedName(String name, String place) {

    /** With a figure or a hyphen, or so short and in capitals as no word of running text is. */
    private static final String NAME =
            "[\"'“]?((?:(?=[A-Z0-9./#&_-]*[\\d-])[A-Z0-9][A-Z0-9./#&_-]{0,15}|[A-Z]{1,4})(?:\\s(?![AVW]\\b)[A-Z0-9./#-]*\\d[A-Z0-9./#-]*)?)[\"'”]?";

    private static final String SET = "(?i:(?:(?:is|which is)\\s+)?(?:located|situated|installed|mounted|placed)\\s+)";
    private static final String THE = "(?i:(?:the|a)\\s+)?";

    /** {@code HV-2 stands in the fan loft}: words of running text may stand before that for being somewhere. */
    private static final Pattern AT = Pattern.compile("^" + NAME + ",?(?:\\s+[-–—])?\\s+(?:" + SET
            + "?(?:(?!(?:fed|supplied|served|as|for|with)\\b)[a-z]+\\s+){0,2}(?:(?i:in|at|@)\\s+)"
            + "(?!(?i:use|service|operation|accordance|part|progress|case|general)\\b)"
            + THE + "(?=[\\p{L}\\d])|" + SET
            + "?(?=(?i:near|inside|outside|beside|behind|adjacent|next to|opposite)\\s)|" + SET
            + "(?:(?i:on)\\s+)?" + THE + "(?=[\\p{L}\\d]))(.+)$");

    /** {@code LP-2 on level 3}, but {@code LP-2 by others}. */
    private static final Pattern ON =
            Pattern.compile("^" + NAME + "\\s+(?:(?i:on)\\s+" + THE + "|(?=(?i:by|under|above|over|below)\\s))(.+)$");

    private static final Pattern MARKED = Pattern.compile(
            "^" + NAME
                    + "(?:,\\s+|\\s*[-–—]\\s+|\\s+[-–—]\\s*|\\s+[/|·•]\\s+|\\s*:\\s+|\\s+(?=\\(|(?i:RM|ROOM)\\.?\\s+\\S+$))(.+)$");

    /** Four, in quotes and with a mark behind them. */
    private static final int MOST_CAPITALS = 7;

    private static final Pattern BRACKETS = Pattern.compile("\\(([^()]*)\\)?");
    private static final Pattern BY =
            Pattern.compile("^(?:by|under|above|over|below)\\s+(?:the\\s+)?", Pattern.CASE_INSENSITIVE);

    /** Empty where the text names no panel with its place. */
    public static Optional<PlacedName> of(String text) {
        String t = text.strip();
        if (!mayBegin(t)) return Optional.empty();
        Matcher at = AT.matcher(t);
        if (at.matches()) {
            String place = place(at.group(2));
            if (PlaceWords.mayBe(place)) return Optional.of(new PlacedName(at.group(1), place));
        }
        Matcher on = ON.matcher(t);
        if (on.matches()) {
            String place = place(on.group(2));
            if (PlaceWords.isPlace(BY.matcher(place).replaceFirst("")))
                return Optional.of(new PlacedName(on.group(1), place));
        }
        Matcher marked = MARKED.matcher(t);
        return marked.matches() && PlaceWords.isNamed(place(marked.group(2)))
                ? Optional.of(new PlacedName(marked.group(1), place(marked.group(2))))
                : Optional.empty();
    }

    /** Its first word is no longer than four capitals with their marks, or has a figure or a hyphen: most texts begin otherwise. */
    private static boolean mayBegin(String text) {
        int end = text.indexOf(' ');
        for (int i = 0; i < end; i++) if (text.charAt(i) == '-' || Character.isDigit(text.charAt(i))) return true;
        return end > 0 && end <= MOST_CAPITALS;
    }

    private static String place(String text) {
        Matcher brackets = BRACKETS.matcher(text.strip());
        String within = brackets.matches() ? brackets.group(1) : text;
        return Texts.bare(Values.sentence(Texts.bare(within)));
    }
}
