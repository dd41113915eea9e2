package asfound.drawing.schedule.header;

import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.text.NameText;
import asfound.model.Box;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A panel's name as the heading of its directory, in larger type than what stands below, without a word that says what it is:
 * {@code CU-A1}.
 */
final class LoneHeading {

    /** Letters, then a figure or a hyphen and more. */
    private static final Pattern NAME = Pattern.compile("(?=.*[A-Z])(?=.*[\\d-])[A-Z0-9][A-Z0-9./-]{1,9}");

    private static final Pattern FIGURE =
            Pattern.compile("(?i)[\\d.,/Y-]+(?:A|AF|AT|V|W|P|PH|KA|KAIC|KVA|KW|HZ|FT|MM2?)?");
    private static final double LARGER = 1.25;
    /** It stands no higher above the directory, in sizes of its own type. */
    private static final double NEAR = 2.5;

    private LoneHeading() {}

    /** @param table with its headings */
    static Optional<Phrase> over(Phrases phrases, Box table, double rowSize) {
        Phrase found = null;
        for (Phrase p : phrases.between(table.y() - NEAR * phrases.largest(), table.y())) {
            boolean over = p.left() > table.x() - p.size()
                    && p.right() < table.right()
                    && table.y() - p.box().bottom() < NEAR * p.size();
            if (!over || p.size() < LARGER * rowSize) continue;
            if (found != null) return Optional.empty();
            found = p;
        }
        return Optional.ofNullable(found)
                .filter(p -> NAME.matcher(p.text()).matches()
                        && !FIGURE.matcher(p.text()).matches()
                        && NameText.isName(p.text()));
    }
}
