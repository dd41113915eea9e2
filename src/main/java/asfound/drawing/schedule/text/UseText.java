package asfound.drawing.schedule.text;

import asfound.model.Directory.Use;
import java.util.regex.Pattern;

/** What an entry is there for, told from its description. Anything that names a load is a load. */
public final class UseText {

    private static final Pattern LOAD =
            Pattern.compile("loads?|(?:in )?use|used|active|feeder|branch|circuit", Pattern.CASE_INSENSITIVE);

    /** The longest word for a load, {@code circuit}. */
    private static final int LONGEST = 7;

    private UseText() {}

    /** A word that says that a position has a load, and nothing of what it is. */
    public static boolean isWordForLoad(String text) {
        String word = text.strip();
        return word.length() <= LONGEST && LOAD.matcher(word).matches();
    }

    /** The use of an entry; {@code rated} where a device's rating stands beside it. */
    public static Use of(String description, boolean rated) {
        String text = Texts.spaced(Texts.upper(description));
        if (text.isEmpty() || Texts.saysNothing(text)) return rated ? Use.LOAD : Use.SPACE;
        // what an open breaker feeds would be written beside it, and what a rated one feeds is not known
        if (!rated && (text.equals("OPEN") || text.equals("NONE") || text.equals("N/A"))) return Use.SPACE;
        return FreePosition.of(text, rated);
    }
}
