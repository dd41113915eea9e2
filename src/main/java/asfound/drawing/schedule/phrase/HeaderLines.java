package asfound.drawing.schedule.phrase;

import asfound.drawing.schedule.text.Field;
import asfound.drawing.schedule.text.Headings;
import asfound.drawing.schedule.text.Labels;
import asfound.drawing.schedule.text.RatingText;
import asfound.drawing.schedule.text.Role;
import asfound.drawing.schedule.text.SystemText;
import asfound.drawing.schedule.text.Texts;
import asfound.drawing.schedule.text.Values;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Tells a line of a panel's header from a heading of columns, where the one stands close over the other. */
public final class HeaderLines {

    /** What a sheet calls itself is no heading of a column. */
    private static final Pattern TITLE = Pattern.compile(
            "(?:(?:electrical )?panel(?:board)? |circuit )?(?:schedule|directory)(?: of circuits)?:?"
                    + "|(?:.*\\b)?(?:panel(?:board)?s?|circuits?) (?:schedules|directories)",
            Pattern.CASE_INSENSITIVE);

    private static final String TITLE_ENDS = "eEyYsS:";

    /** What stands no further apart on one line is one statement, in sizes of type. */
    private static final double CLOSE = 4;

    private static final Pattern FED =
            Pattern.compile("(?:fed|supplied|served) (?:from|by)\\s+\\S", Pattern.CASE_INSENSITIVE);

    private HeaderLines() {}

    /** It names the panel, gives a value of it behind its label, or the panel's voltage with its phases or wires. */
    static boolean saysOfPanel(Phrase p, Meanings meanings) {
        if (isMarked(p, meanings) || isTitle(p.text())) return true;
        if (meanings.saysItself(p)) return true;
        if (p.words().size() < 2) return false;
        boolean supply = meanings.voltage(p.text()).isPresent()
                && (meanings.phases(p.text()).isPresent()
                        || meanings.wires(p.text()).isPresent());
        return supply || meanings.name(p).isPresent() || isLabelled(p, meanings);
    }

    /**
     * On its line a label stands alone with its figure in the cell beside it, or close beside it stands what says of the panel
     * by itself: a header's line, and no headings.
     */
    public static boolean isOnLineOfValues(Phrase p, Phrases phrases, Span table) {
        for (Phrase label : phrases.near(p.centreY(), 0.3 * p.size())) {
            if (!isOnLine(label, p, table)) continue;
            if (label != p
                    && gap(label, p) < CLOSE * p.size()
                    && phrases.meanings().saysItself(label)) return true;
            Optional<Field> field = figureOf(label, phrases);
            if (field.isPresent() && hasFigure(label, field.get(), p, phrases, table)) return true;
        }
        return false;
    }

    private static boolean isOnLine(Phrase o, Phrase p, Span table) {
        return Math.abs(o.centreY() - p.centreY()) < 0.3 * p.size() && table.meets(o);
    }

    /** Of what a label that stands alone announces the figure. */
    private static Optional<Field> figureOf(Phrase label, Phrases phrases) {
        return phrases.meanings()
                .label(label)
                .filter(l -> l.field() == Field.DESIGNATION || l.field().isOfFigures())
                .filter(l -> l.end() == HeaderWords.of(label).size())
                .map(Labels.Label::field);
    }

    private static boolean hasFigure(Phrase label, Field field, Phrase p, Phrases phrases, Span table) {
        return phrases.near(p.centreY(), 0.3 * p.size()).stream()
                .filter(v -> isOnLine(v, p, table))
                .filter(v -> v.left() >= label.right() && v.left() - label.right() < 14 * p.size())
                .min(Comparator.comparingDouble(Phrase::left))
                .filter(v -> v.text().chars().anyMatch(Character::isDigit) && Values.fits(field, Texts.bare(v.text())))
                .filter(v -> field != Field.DESIGNATION || !isAmongHeadings(v, phrases))
                .isPresent();
    }

    /**
     * {@code L3} beside {@code L2}: in a list of several panels they are headings of their loads. A header that begins beside the
     * headings of columns leaves them what they are.
     */
    private static boolean isAmongHeadings(Phrase v, Phrases phrases) {
        boolean heading = phrases.meanings().most(v) > 0;
        return phrases.near(v.centreY(), 0.3 * v.size()).stream()
                .filter(o -> o != v)
                .anyMatch(o -> phrases.meanings().weight(o, Role.POSITION) >= 0.8 || heading && isPhase(o.text()));
    }

    private static boolean isPhase(String text) {
        return Headings.weight(text, Role.LOAD_A) > 0
                || Headings.weight(text, Role.LOAD_B) > 0
                || Headings.weight(text, Role.LOAD_C) > 0;
    }

    private static double gap(Phrase a, Phrase b) {
        return Math.max(a.left() - b.right(), b.left() - a.right());
    }

    /** Its last letter is that of a schedule or a directory; most texts end otherwise. */
    private static boolean isTitle(String text) {
        return !text.isEmpty()
                && TITLE_ENDS.indexOf(text.charAt(text.length() - 1)) >= 0
                && TITLE.matcher(text).matches();
    }

    /** What is fed from where, how much the bus or the mains carry, or both phases and wires: no heading says so. */
    static boolean saysItself(String text) {
        if (!Texts.hasFigure(text) && text.length() < 8) return false;
        return RatingText.busOf(text).isPresent()
                || RatingText.mainOf(text).isPresent()
                || RatingText.lugsOf(text).isPresent()
                || FED.matcher(text).lookingAt()
                || SystemText.phases(text, false).isPresent()
                        && SystemText.wires(text, false).isPresent();
    }

    /** A colon ends it: a label, and no heading. */
    private static boolean isMarked(Phrase p, Meanings meanings) {
        return p.text().endsWith(":")
                && meanings.label(p)
                        .filter(l -> l.marked() && l.end() == p.words().size())
                        .isPresent();
    }

    /** The value of a label that stands to its left; a label ends with a colon, and few phrases do. */
    public static boolean isBesideLabel(Phrase p, Phrases phrases) {
        Phrase nearest = null;
        for (Phrase o : phrases.near(p.centreY(), 0.3 * p.size())) {
            boolean before = o.right() <= p.left() + 0.5 && p.left() - o.right() < 14 * p.size();
            if (!before || Math.abs(o.centreY() - p.centreY()) >= 0.3 * p.size()) continue;
            if (nearest == null || o.right() > nearest.right()) nearest = o;
        }
        return nearest != null && isMarked(nearest, phrases.meanings());
    }

    private static boolean isLabelled(Phrase p, Meanings meanings) {
        Optional<Labels.Label> label = meanings.label(p);
        if (label.isEmpty() || !label.get().marked()) return false;
        Field field = label.get().field();
        if (!field.isKept() || field.isTotal()) return false;
        List<String> words = HeaderWords.of(p);
        if (label.get().end() >= words.size()) return false;
        String rest = Texts.bare(String.join(" ", words.subList(label.get().end(), words.size())));
        return !rest.isEmpty();
    }
}
