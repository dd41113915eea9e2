package asfound.drawing.schedule.doubt;

import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.spine.Spine;
import asfound.drawing.schedule.table.Side;
import asfound.drawing.schedule.table.Table;
import java.util.Comparator;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What the numbers of a list count, where a heading above them says so: relays of a lighting control panel, ports of a patch
 * panel, zones of a fire alarm. Such lists have two sides and places of use as a directory has, and are none.
 */
final class CountedThings {

    private static final Pattern OTHER = Pattern.compile(
            "(?:RELAYS?|PORTS?|PAIRS?|ZONES?|DOORS?|ROOMS?|RM|WINDOWS?|FIXTURES?|LUMINAIRES?|CAMERAS?|VALVES?|DAMPERS?|SENSORS?"
                    + "|POINTS?|CHANNELS?|DIMMERS?|TERMINALS?|JACKS?|OUTLETS?|CABLES?|KEYNOTES?|SHEETS?|STATIONS?|EXTENSIONS?)"
                    + "(?:\\s*(?:NO\\.?|NOS\\.?|NUMBER|#|ID))?",
            Pattern.CASE_INSENSITIVE);

    private CountedThings() {}

    /** A heading says that such a thing stands below it. */
    static boolean isOne(String heading) {
        return OTHER.matcher(heading.strip()).matches();
    }

    /** The heading over the numbers of a table, where all its columns of numbers count another thing than circuits. */
    static Optional<Phrase> heading(Phrases phrases, Table table) {
        Optional<Phrase> first = Optional.empty();
        for (Side side : table.sides()) {
            Optional<Phrase> over = over(phrases, table, side.spine());
            if (over.filter(p -> OTHER.matcher(p.text()).matches()).isEmpty()) return Optional.empty();
            if (first.isEmpty()) first = over;
        }
        return first;
    }

    private static Optional<Phrase> over(Phrases phrases, Table table, Spine spine) {
        return phrases.between(table.box().y() - spine.size(), spine.firstY()).stream()
                .filter(p -> p.centreY() < spine.firstY() - 0.6 * spine.size())
                .filter(p -> p.left() < spine.right() && p.right() > spine.left())
                .max(Comparator.comparingDouble(Phrase::centreY).thenComparingDouble(Phrase::left));
    }
}
