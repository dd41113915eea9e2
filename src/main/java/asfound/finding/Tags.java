package asfound.finding;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Loads that stand for one thing only. */
final class Tags {

    /** A mark and a number of its own ({@code EF-3}, {@code AHU 12A}); a room number is none. */
    private static final Pattern TAG = Pattern.compile(
            "(?<![\\p{L}\\d])(?!RM|ROOM|FL|FLR|FLOOR|LVL|LEVEL|BLDG|UNIT|SUITE|STE|CKT|NO|QTY|ROW|BAY)"
                    + "[A-Z]{1,4}[-\\u2010-\\u2015 ]?\\d{1,3}[A-Z]?(?![\\p{L}\\d])",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern PLACE_WORDS =
            Pattern.compile("(?i)\\b(recept\\w*|rcpts?|recs?|plugs?|outlets?|lights?|lighting|ltg|ltng|lts)\\b");

    private Tags() {}

    /** The one tag of a text that names one thing, without hyphen or space: {@code UH1}. */
    static Optional<String> of(String text) {
        if (!isOne(text)) return Optional.empty();
        Matcher m = TAG.matcher(text);
        return m.find()
                ? Optional.of(m.group().replaceAll("[^\\p{L}\\d]", "").toUpperCase(Locale.ROOT))
                : Optional.empty();
    }

    /** The text names one thing, and not the receptacles or lights of a place that may have several circuits. */
    static boolean isOne(String text) {
        return TAG.matcher(text).find() && !PLACE_WORDS.matcher(text).find();
    }
}
