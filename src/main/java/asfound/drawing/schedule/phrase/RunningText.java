package asfound.drawing.schedule.phrase;

import java.util.regex.Pattern;

/**
 * Sentences that tell of a panel over its list: {@code 225 amp bus, 150 amp / main breaker.} Their last line heads no column,
 * though its words be those of a heading.
 */
public final class RunningText {

    private static final int WORDS = 6;
    /** A shorter word with a full stop is an abbreviation. */
    private static final int LETTERS = 4;

    private static final double LINE = 1.9;

    private static final Pattern NOTES = Pattern.compile("notes?:", Pattern.CASE_INSENSITIVE);

    private RunningText() {}

    /** Whether the line in which a text stands ends a sentence that is long or began in the line above. */
    public static boolean ends(Phrase p, Phrases phrases) {
        for (Phrase line : phrases.near(p.centreY(), 0.1 * p.size()))
            if (line.left() <= p.left() && line.right() >= p.right() && isFullStop(line))
                return line.words().size() >= WORDS || goesOnFrom(line, phrases);
        return false;
    }

    /** Whether it is a long sentence, or {@code Notes:} and what they say, however many columns it stands over. */
    public static boolean isNote(Phrase p) {
        if (p.words().size() < 2) return false;
        char first = p.text().charAt(0);
        return (first == 'N' || first == 'n') && NOTES.matcher(p.text()).lookingAt()
                || p.words().size() >= WORDS && isFullStop(p);
    }

    /** Whether a line ends with a word and a full stop. */
    public static boolean isFullStop(Phrase line) {
        String text = line.text();
        int stop = text.length() - 1;
        if (text.charAt(stop) != '.') return false;
        int letters = 0;
        while (letters < stop && Character.isLetter(text.charAt(stop - 1 - letters))) letters++;
        return letters >= LETTERS;
    }

    private static boolean goesOnFrom(Phrase line, Phrases phrases) {
        for (Phrase above : phrases.between(line.centreY() - LINE * line.size(), line.centreY() - 0.6 * line.size()))
            if (above.words().size() >= WORDS && Math.abs(above.left() - line.left()) < 0.3 * line.size()) return true;
        return false;
    }
}
