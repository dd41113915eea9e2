package asfound.drawing.schedule.header;

import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Titles;
import asfound.drawing.schedule.text.Labels;
import asfound.drawing.schedule.text.NameText;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A panel's name that stands in one line with a title without a name, set apart from it: {@code NG-LP     PANELBOARD SCHEDULE}.
 */
final class BesideTitle {

    /** One word of capitals and figures. */
    private static final Pattern NAME = Pattern.compile("[\"“]?[A-Z0-9][A-Z0-9./-]{0,11}[\"”]?");

    private static final Pattern FIGURE = Pattern.compile("[\\d.,/-]+");
    /** Between the two, in sizes of the larger type. */
    private static final double APART = 14;
    /** In larger type than the title, by so much, a name may stand at the other end of the line. */
    private static final double LARGER = 1.1;

    private static final double MUCH_LARGER = 1.5;

    private static final Pattern NAMELESS = Pattern.compile(
            "(?:(?:\\p{L}{4,} ){0,3}(?:panel\\s?board|panel|pnl\\.?|load\\s?cent(?:er|re)|switchboard) )?"
                    + "(?:circuit )?(?:schedule|directory)|panel\\s?board|distribution panel(?:board)?|load\\s?cent(?:er|re)",
            Pattern.CASE_INSENSITIVE);

    private BesideTitle() {}

    /** A title without the name: {@code PANELBOARD SCHEDULE}. */
    private static boolean isNameless(String text) {
        return Titles.mayBeTitle(text) && NAMELESS.matcher(text.strip()).matches();
    }

    static Optional<Phrase> in(List<Phrase> phrases) {
        for (Phrase title : phrases) {
            if (!isNameless(title.text())) continue;
            List<Phrase> names = phrases.stream()
                    .filter(p -> isName(p.text()) && isBeside(p, title))
                    .sorted(Comparator.comparingDouble(p -> gap(p, title)))
                    .toList();
            if (names.size() == 1) return Optional.of(names.get(0));
        }
        return Optional.empty();
    }

    private static boolean isName(String text) {
        return NAME.matcher(text).matches()
                && !FIGURE.matcher(text).matches()
                && NameText.isNameBehindItsWord(text)
                && !isNameless(text)
                && Labels.at(List.of(text), 0).isEmpty();
    }

    private static boolean isBeside(Phrase p, Phrase title) {
        double size = Math.max(p.size(), title.size());
        return p != title
                && (Math.abs(p.centreY() - title.centreY()) < 0.6 * size || isOverTwoLines(p, title))
                && gap(p, title) >= 0
                && (gap(p, title) < APART * size || p.size() > LARGER * title.size());
    }

    /** In much larger type it stands beside the title and a line over or below it. */
    private static boolean isOverTwoLines(Phrase p, Phrase title) {
        return p.size() > MUCH_LARGER * title.size()
                && p.box().y() < title.box().bottom()
                && p.box().bottom() > title.box().y();
    }

    private static double gap(Phrase p, Phrase title) {
        return Math.max(title.left() - p.right(), p.left() - title.right());
    }
}
