package asfound.drawing.schedule.header;

import asfound.drawing.page.Word;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.text.Field;
import asfound.drawing.schedule.text.NameText;
import asfound.drawing.schedule.text.PlaceWords;
import asfound.drawing.schedule.text.RatingText;
import asfound.drawing.schedule.text.SystemText;
import asfound.drawing.schedule.text.Texts;
import asfound.drawing.schedule.text.Value;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;

/**
 * A line that says a panel's name, its place and its supply one after the other, with dots, bars or strokes between and no word
 * for a panel: {@code DB/C/GF · Riser C, ground · fed from MDP/C 3}. That it tells of the supply makes its first part a name.
 */
final class NamedLine {

    private static final Pattern PARTING = Pattern.compile("[|¦•·●▪■◦∙/–—-]");

    /** In one word capitals or figures, with at least one capital. */
    private static final Pattern NAME =
            Pattern.compile("(?=.*[A-Z])[A-Z0-9][A-Z0-9./_-]{0,15}(?: [A-Z0-9./-]*\\d[A-Z0-9./-]*)?");

    private static final Pattern FED =
            Pattern.compile("(?:fed|supplied|served|feed) (?:from|by|via)\\s+\\S.*", Pattern.CASE_INSENSITIVE);

    /** Parts of one line stand no further apart, in sizes of type. */
    private static final double APART = 3;

    private NamedLine() {}

    /** The names and places that lines of a region give so. */
    static List<Value> in(List<Phrase> phrases) {
        List<Value> out = new ArrayList<>();
        if (phrases.stream().noneMatch(NamedLine::tellsOfSupply)) return out;
        for (Phrase p : phrases)
            if (isName(p) || hasParting(p)) {
                List<Phrase> parts = parts(p, phrases);
                if (isNamed(parts)) values(parts, out);
            }
        return out;
    }

    private static boolean tellsOfSupply(Phrase p) {
        return p.words().size() > 2 && FED.matcher(p.text()).find();
    }

    /** Whether such a line begins with a phrase. */
    static boolean beginsWith(Phrase p, List<Phrase> phrases) {
        return (isName(p) || hasParting(p)) && isNamed(parts(p, phrases));
    }

    private static boolean isName(Phrase p) {
        return isName(p.text());
    }

    private static boolean isName(String text) {
        return NAME.matcher(text).matches() && NameText.isNameBehindItsWord(text);
    }

    private static boolean hasParting(Phrase p) {
        return p.words().size() > 2
                && p.words().stream().skip(1).anyMatch(NamedLine::isParting)
                && Character.isLetterOrDigit(p.text().charAt(0));
    }

    private static boolean isParting(Word w) {
        return w.text().length() == 1 && PARTING.matcher(w.text()).matches();
    }

    private static boolean isNamed(List<Phrase> parts) {
        return parts.size() > 1
                && isName(parts.get(0))
                && parts.stream().skip(1).anyMatch(p -> FED.matcher(p.text()).matches());
    }

    /** What stands between the signs from a phrase on to the right. */
    private static List<Phrase> parts(Phrase first, List<Phrase> phrases) {
        List<Word> words = new ArrayList<>(first.words());
        List<Phrase> line = phrases.stream()
                .filter(p -> p.left() >= first.right() && Math.abs(p.centreY() - first.centreY()) < 0.3 * first.size())
                .sorted(Comparator.comparingDouble(Phrase::left))
                .toList();
        for (Phrase p : line) {
            Word last = words.get(words.size() - 1);
            boolean goesOn = isParting(last) || isParting(p.words().get(0));
            if (!goesOn || p.left() - last.right() > APART * first.size()) break;
            words.addAll(p.words());
        }
        List<Phrase> out = new ArrayList<>();
        List<Word> open = new ArrayList<>();
        for (Word w : words) {
            if (!isParting(w)) open.add(w);
            else if (!open.isEmpty()) {
                out.add(Phrase.of(open));
                open = new ArrayList<>();
            }
        }
        if (!open.isEmpty()) out.add(Phrase.of(open));
        return out;
    }

    private static void values(List<Phrase> parts, List<Value> out) {
        Phrase name = parts.get(0);
        out.add(new Value(Field.DESIGNATION, name.text(), name.box(), 2));
        parts.stream()
                .skip(1)
                .filter(NamedLine::isPlace)
                .findFirst()
                .ifPresent(p -> out.add(new Value(Field.LOCATION, PlaceWords.within(p.text()), p.box(), 1)));
        parts.stream()
                .filter(p -> FED.matcher(p.text()).matches())
                .findFirst()
                .ifPresent(p ->
                        out.add(new Value(Field.FED_FROM, Texts.bare(p.text().split("\\s+", 3)[2]), p.box(), 2)));
    }

    /** It tells neither of the supply nor of ratings. */
    private static boolean isPlace(Phrase p) {
        String text = p.text();
        return !FED.matcher(text).matches()
                && PlaceWords.mayBe(text)
                && !text.contains(":")
                && SystemText.voltageOf(text).isEmpty()
                && SystemText.phases(text, false).isEmpty()
                && RatingText.mains(text).isEmpty();
    }
}
