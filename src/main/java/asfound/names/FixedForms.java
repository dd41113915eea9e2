package asfound.names;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What a description in capitals says in fixed forms, whatever words stand around them: floors and quantities are taken
 * out, ratings and a drafter's remarks dropped, and ranges of rooms written out.
 *
 * @param rest the description without them
 */
record FixedForms(String rest, Set<String> floors, Set<String> quantities) {

    /** {@code (E)}, {@code (NEW)}. */
    private static final Pattern REMARK = Pattern.compile("\\((?:E|N|R|X|EX|ETR|NEW|EXIST|EXISTING)\\)");

    static final Pattern QUANTITY = Pattern.compile(
            "\\(\\s*([0-9]{1,2})\\s*\\)|\\bQTY[ .:]*([0-9]{1,2})\\b|\\b([0-9]{1,2})\\s*EA\\b|\\bX\\s?([0-9]{1,2})\\b");
    static final Pattern RATING = Pattern.compile(
            "\\b(?:[0-9]{2,3}Y/)?[0-9]{2,3}(?:/[0-9]{3})?\\s?(?:V|VAC|VOLTS?)\\b|\\b[0-9]{1,3}(?:[.,/][0-9]+)?\\s?-?(?:KVA|KW|VA|WATTS?|AMPS?|PHASE|PH|POLE|HZ|BTU|GAL)\\b"
                    + "|(?<!\\b(?:RM|RMS|ROOM|ROOMS|PANEL|PNL|[A-Z]P|[LPRH])\\s)(?<![-/\\p{L}0-9])[0-9]{2}\\s?A\\b(?!-)|\\b[123]P\\b|\\b[0-9]{1,2}(?:[./][0-9]+)?\\s?HP\\b(?!-)|\\b[0-9]{2,4}W\\b");
    /** {@code 101-105}, {@code 101 THRU 105}: these rooms and all between. */
    static final Pattern ROOMS_THROUGH =
            Pattern.compile("(?<![-\\p{L}0-9])([0-9]{3,4})\\s?(?:-|THRU|THROUGH|TO)\\s?([0-9]{3,4})(?![-\\p{L}0-9])");

    static final Pattern FLOOR = Pattern.compile(
            "\\b(?:([0-9]{1,2})(?:ST|ND|RD|TH)(?:[ -]?(?:FLOOR|FLR|FL|LEVEL|LVL))?|(FIRST|SECOND|THIRD|FOURTH|FIFTH|SIXTH|SEVENTH|EIGHTH|NINTH|TENTH|GROUND)[ -](?:FLOOR|FLR|FL|LEVEL|LVL)"
                    + "|(?:FLOOR|FLR|LEVEL|LVL|FL)[ .#-]{0,2}([0-9]{1,2}|[BG]))\\b(?! BOX)");
    private static final List<String> ORDINALS =
            List.of("FIRST", "SECOND", "THIRD", "FOURTH", "FIFTH", "SIXTH", "SEVENTH", "EIGHTH", "NINTH", "TENTH");

    /** A range of more is no range of rooms. */
    private static final int MOST_ROOMS = 40;

    static FixedForms of(String description) {
        Set<String> floors = new LinkedHashSet<>(), quantities = new LinkedHashSet<>();
        String text = description.indexOf('(') < 0
                ? description
                : REMARK.matcher(description).replaceAll(" ");
        if (MayHold.floor(text)) text = take(text, FLOOR, found -> floors.add(floor(found)));
        if (MayHold.digit(text)) {
            if (MayHold.quantity(text)) text = take(text, QUANTITY, quantities::add);
            if (MayHold.rating(text)) text = RATING.matcher(text).replaceAll(" ");
            if (MayHold.range(text)) text = ROOMS_THROUGH.matcher(text).replaceAll(FixedForms::each);
        }
        return new FixedForms(text, floors, quantities);
    }

    /** The text without what matches; of each match the group that it has is given on. */
    private static String take(String text, Pattern pattern, Consumer<String> what) {
        Matcher m = pattern.matcher(text);
        StringBuilder rest = new StringBuilder();
        while (m.find()) {
            what.accept(group(m));
            m.appendReplacement(rest, " , ");
        }
        return m.appendTail(rest).toString();
    }

    private static String group(Matcher m) {
        for (int g = 1; g <= m.groupCount(); g++) if (m.group(g) != null) return m.group(g);
        return "";
    }

    private static String floor(String written) {
        int at = ORDINALS.indexOf(written);
        if (at >= 0) return Integer.toString(at + 1);
        return written.equals("GROUND") ? "G" : written;
    }

    private static String each(MatchResult range) {
        int from = Integer.parseInt(range.group(1)), to = Integer.parseInt(range.group(2));
        boolean rooms = to > from && to - from <= MOST_ROOMS;
        if (!rooms) return range.group();
        return IntStream.rangeClosed(from, to).mapToObj(Integer::toString).collect(Collectors.joining(","));
    }
}
