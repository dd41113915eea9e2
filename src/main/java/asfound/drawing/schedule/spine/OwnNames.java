package asfound.drawing.schedule.spine;

import asfound.drawing.schedule.phrase.HeaderWords;
import asfound.drawing.schedule.phrase.Meanings;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.phrase.PositionText;
import asfound.drawing.schedule.text.Field;
import asfound.drawing.schedule.text.Role;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The names of panels that stand on a sheet, taken from before the positions of their own circuits: {@code LP1-7,9} on the
 * sheet of LP1 is 7 and 9. A tag of equipment looks the same, and no panel of the sheet has its name.
 */
final class OwnNames {

    private static final int LONGEST = 40;
    private static final double HEADED = 0.9;
    /** So many type sizes below each other stand the names of one column. */
    private static final double GAP = 8;
    /** So many type sizes to the right of its label a name may begin. */
    private static final double BESIDE = 14;

    /** Figures of a position. */
    private static final int MOST_FIGURES = 3;

    private static final String BETWEEN = " \t\n\u000B\f\r,/&-";
    private static final Pattern AFTER_NAME = Pattern.compile("\\s*[-–/:. ]\\s*$");

    private final Meanings meanings;
    private final Set<String> names = new HashSet<>();

    OwnNames(Phrases phrases) {
        meanings = phrases.meanings();
        for (Phrase p : phrases) {
            // whatever names a panel or heads a column of them has such a word
            if (meanings.mayBeTitle(p)) {
                if (meanings.weight(p, Role.PANEL) >= HEADED) below(phrases, p);
                meanings.name(p).map(this::key).ifPresent(names::add);
            }
            meanings.label(p).filter(l -> l.field() == Field.DESIGNATION).ifPresent(l -> behind(phrases, p, l.end()));
        }
    }

    /** The names in a column of panels, down to where it ends. */
    private void below(Phrases phrases, Phrase heading) {
        Phrase last = heading;
        for (Phrase p : phrases.between(heading.centreY() + 0.5 * heading.size(), Double.MAX_VALUE)) {
            if (Math.abs(p.left() - heading.left()) > 0.6 * heading.size()) continue;
            if (p.centreY() - last.centreY() > GAP * heading.size()) return;
            names.add(key(p.text()));
            last = p;
        }
    }

    /** The word behind the label, or what stands to its right. */
    private void behind(Phrases phrases, Phrase label, int end) {
        List<String> words = HeaderWords.of(label);
        if (end < words.size()) names.add(key(words.get(end)));
        else
            phrases.near(label.centreY(), 0.3 * label.size()).stream()
                    .filter(p -> p.left() > label.right() && p.left() - label.right() < BESIDE * label.size())
                    .min(Comparator.comparingDouble(Phrase::left))
                    .ifPresent(p -> names.add(key(p.text())));
    }

    /** One of the names stands in it, as it does wherever it is looked at further; a bracket may be missing at its end. */
    private boolean mayEndWithName(String text) {
        String upper = text.toUpperCase(Locale.ROOT);
        for (String name : names)
            if (upper.contains(name.endsWith(")") ? name.substring(0, name.length() - 1) : name)) return true;
        return false;
    }

    private String key(String name) {
        return meanings.bareName(name).toUpperCase(Locale.ROOT);
    }

    /** It may stand among the positions behind a name. */
    private static boolean isOfPositions(char c) {
        return isFigure(c) || BETWEEN.indexOf(c) >= 0;
    }

    private static boolean isFigure(char c) {
        return c >= '0' && c <= '9';
    }

    /** The positions alone; empty where no name of a panel of this sheet stands before them. */
    Optional<PositionText> positions(String text) {
        int length = text.length();
        if (names.isEmpty() || length > LONGEST || length == 0 || !isFigure(text.charAt(length - 1)))
            return Optional.empty();
        int figures = 0;
        // 'RP-3-12' is 12 of RP-3, and where no panel is named so 3 and 12 of RP
        for (int at = length - 1; at > 0 && isOfPositions(text.charAt(at)); at--) {
            figures = isFigure(text.charAt(at)) ? figures + 1 : 0;
            if (figures > MOST_FIGURES) break;
            // without a mark between them they are one word
            if (figures == 0 || Character.isLetterOrDigit(text.charAt(at - 1))) continue;
            if (!mayEndWithName(text.substring(0, at))) continue;
            String before = AFTER_NAME.matcher(text.substring(0, at)).replaceFirst("");
            if (before.length() < at && names.contains(key(before))) return PositionText.parse(text.substring(at));
        }
        return Optional.empty();
    }
}
