package asfound.drawing.schedule.doubt;

import asfound.drawing.schedule.phrase.Phrases;
import asfound.model.Box;
import asfound.model.Place;
import asfound.model.Problem;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;

/** Lugs that feed something on without a device: named on a sheet, and yet no position of the directory. */
public final class Lugs {

    private static final Pattern NAMED = Pattern.compile(
            "(?:sub-?\\s?feed|feed[- ]?(?:through|thru)|through[- ]feed|thru[- ]feed)\\b.*", Pattern.CASE_INSENSITIVE);

    /** With what their names begin. */
    private static final String BEGINS = "sftSFT";

    private Lugs() {}

    private static boolean isNamed(String text) {
        return !text.isEmpty()
                && BEGINS.indexOf(text.charAt(0)) >= 0
                && NAMED.matcher(text).matches();
    }

    /** Those named in or just below a directory, each a problem: what hangs on them cannot be opened here. */
    public static List<Problem> problems(Phrases phrases, Box table, Function<Box, Place> places) {
        return phrases.between(table.y(), table.bottom() + 6 * phrases.largest()).stream()
                .filter(p -> p.centreX() > table.x() - 5 && p.centreX() < table.right() + 5)
                .filter(p -> p.centreY() > table.y() && p.centreY() < table.bottom() + 6 * p.size())
                .filter(p -> isNamed(p.text()))
                .map(p -> new Problem(
                        places.apply(p.box()),
                        "Lugs without a position: '" + p.text() + "'. What they feed has no device in this panel.",
                        "Enter it as a feeder without a device in a one-line export."))
                .toList();
    }
}
