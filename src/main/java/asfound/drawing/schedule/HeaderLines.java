package asfound.drawing.schedule;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Tells a line of a panel's header from a heading of columns, where the one stands close over the other. */
final class HeaderLines {

    private static final Set<Field> OF_FIGURES = EnumSet.of(
            Field.VOLTAGE, Field.PHASES, Field.WIRES, Field.PHASE_WIRE, Field.BUS, Field.MAIN, Field.INTERRUPTING);

    /** What a sheet calls itself is no heading of a column. */
    private static final Pattern TITLE = Pattern.compile(
            "(?:(?:electrical )?panel(?:board)? |circuit )?(?:schedule|directory)(?: of circuits)?:?",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern FED =
            Pattern.compile("(?:fed|supplied|served) (?:from|by)\\s+\\S", Pattern.CASE_INSENSITIVE);

    private HeaderLines() {}

    /** It names the panel, gives a value of it behind its label, or the panel's voltage with its phases or wires. */
    static boolean saysOfPanel(Phrase p) {
        if (isMarked(p) || TITLE.matcher(p.text()).matches()) return true;
        if (saysItself(p.text())) return true;
        if (p.words().size() < 2) return false;
        boolean supply = SystemText.voltageOf(p.text()).isPresent()
                && (SystemText.phases(p.text(), false).isPresent()
                        || SystemText.wires(p.text(), false).isPresent());
        return supply || Titles.nameIn(p.text()).isPresent() || labelled(HeaderWords.of(p));
    }

    /** On its line a label stands alone with its figure in the cell beside it: a header's line, and no headings. */
    static boolean isOnLineOfValues(Phrase p, Phrases phrases, Span table) {
        List<Phrase> line = phrases.near(p.centreY(), 0.3 * p.size()).stream()
                .filter(o -> Math.abs(o.centreY() - p.centreY()) < 0.3 * p.size())
                .filter(table::meets)
                .toList();
        for (Phrase label : line) {
            List<String> words = HeaderWords.of(label);
            Optional<Field> field = Labels.at(words, 0)
                    .filter(l -> l.end() == words.size())
                    .map(Labels.Label::field)
                    .filter(OF_FIGURES::contains);
            if (field.isEmpty()) continue;
            boolean valued = line.stream()
                    .filter(v -> v.left() >= label.right() && v.left() - label.right() < 14 * p.size())
                    .min(Comparator.comparingDouble(Phrase::left))
                    .filter(v -> v.text().chars().anyMatch(Character::isDigit)
                            && Values.fits(field.get(), LabelReader.strip(v.text())))
                    .isPresent();
            if (valued) return true;
        }
        return false;
    }

    /** What is fed from where, how much the bus or the mains carry, or both phases and wires: no heading says so. */
    private static boolean saysItself(String text) {
        if (!Texts.hasFigure(text) && text.length() < 8) return false;
        return RatingText.busOf(text).isPresent()
                || RatingText.mainOf(text).isPresent()
                || RatingText.lugsOf(text).isPresent()
                || FED.matcher(text).lookingAt()
                || SystemText.phases(text, false).isPresent()
                        && SystemText.wires(text, false).isPresent();
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
