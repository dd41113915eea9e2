package asfound.drawing.schedule;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Tells a line of a panel's header from a heading of columns, where the one stands close over the other. */
final class HeaderLines {

    /** What a sheet calls itself is no heading of a column. */
    private static final Pattern TITLE = Pattern.compile(
            "(?:(?:electrical )?panel(?:board)? |circuit )?(?:schedule|directory)(?: of circuits)?:?",
            Pattern.CASE_INSENSITIVE);

    private HeaderLines() {}

    /** It names the panel, gives a value of it behind its label, or the panel's voltage with its phases or wires. */
    static boolean saysOfPanel(Phrase p) {
        if (isMarked(p) || TITLE.matcher(p.text()).matches()) return true;
        if (p.words().size() < 2) return false;
        boolean supply = Values.voltageOf(p.text()).isPresent()
                && (Values.phases(p.text(), false).isPresent()
                        || Values.wires(p.text(), false).isPresent());
        return supply || Titles.nameIn(p.text()).isPresent() || labelled(HeaderWords.of(p));
    }

    /** A colon ends it: a label, and no heading. */
    private static boolean isMarked(Phrase p) {
        return p.text().endsWith(":")
                && Labels.at(HeaderWords.of(p), 0)
                        .filter(l -> l.marked() && l.end() == p.words().size())
                        .isPresent();
    }

    /** The value of a label that stands to its left; a label ends with a colon, and few phrases do. */
    static boolean isBesideLabel(Phrase p, Phrases phrases) {
        return phrases.near(p.centreY(), 0.3 * p.size()).stream()
                .filter(o -> o.right() <= p.left() + 0.5 && p.left() - o.right() < 14 * p.size())
                .filter(o -> Math.abs(o.centreY() - p.centreY()) < 0.3 * p.size())
                .max(Comparator.comparingDouble(Phrase::right))
                .filter(HeaderLines::isMarked)
                .isPresent();
    }

    private static boolean labelled(List<String> words) {
        Optional<Labels.Label> label = Labels.at(words, 0);
        if (label.isEmpty() || !label.get().marked() || label.get().end() >= words.size()) return false;
        Field field = label.get().field();
        if (field == Field.OTHER || field.isTotal()) return false;
        String rest =
                LabelReader.strip(String.join(" ", words.subList(label.get().end(), words.size())));
        return !rest.isEmpty();
    }
}
