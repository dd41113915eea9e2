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

    private static final Pattern NUMBER = Pattern.compile("\\d+[A-Z]?(?![\\p{L}\\d])", Pattern.CASE_INSENSITIVE);

    private static final Pattern PLACE_WORDS =
            Pattern.compile("(?i)\\b(recept\\w*|rcpts?|recs?|plugs?|outlets?|lights?|lighting|ltg|ltng|lts)\\b");

    private Tags() {}

    /** The number by which a thing can be found again in other words: 1 of {@code UH-1}. */
    static Optional<String> number(String text) {
        Matcher m = NUMBER.matcher(text);
        return m.find() ? Optional.of(m.group().toUpperCase(Locale.ROOT)) : Optional.empty();
    }

    /** The text names one thing, and not the receptacles or lights of a place that may have several circuits. */
    static boolean isOne(String text) {
        return TAG.matcher(text).find() && !isOfPlace(text);
    }

    /** The receptacles or lights of a place: it may have several circuits of them. */
    static boolean isOfPlace(String text) {
        return PLACE_WORDS.matcher(text).find();
    }
}
