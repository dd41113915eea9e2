package asfound.drawing.schedule.header;

import asfound.drawing.page.Word;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.text.DeviceText;
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
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A line that begins with a name and says from where that is fed: {@code DB/C/GF · Riser C, ground · fed from MDP/C 3} over a board
 * is its title, though no word says so. {@code EF-3 is fed from MCC-1} on the sheet of another panel tells nothing of that panel.
 *
 * @param name of what the line is about
 * @param title it stands as a title does: the name by itself, parted from the rest
 * @param values what the line says of it
 * @param rest what else stands between the signs
 * @param phrases that make the line
 */
record NamedLine(String name, boolean title, List<Value> values, List<Phrase> rest, List<Phrase> phrases) {

    private static final Pattern PARTING = Pattern.compile("[|¦•·●▪■◦∙/–—-]");

    /** In one word capitals or figures, with at least one capital. */
    private static final Pattern NAME =
            Pattern.compile("(?=.*[A-Z])[A-Z0-9][A-Z0-9./_-]{0,15}(?: [A-Z0-9./-]*\\d[A-Z0-9./-]*)?");

    private static final String BY = "(?:fed|supplied|served|feed) (?:from|by|via)\\s+";
    /** One of these is a word of it. */
    private static final Set<String> FROM = Set.of("from", "by", "via");

    private static final Pattern FED = Pattern.compile(BY + "(\\S.*)", Pattern.CASE_INSENSITIVE);

    /** {@code EF-3 is fed from MCC-1}: a tag of letters and figures, in one word. */
    private static final Pattern SENTENCE = Pattern.compile(
            "((?=\\S*[A-Z])(?=\\S*\\d)[A-Z0-9][A-Z0-9./_-]{1,15}),?(?i: (?:is|are))? (?i:" + BY + ")(\\S.*)");

    /** Parts of one line stand no further apart, in sizes of type. */
    private static final double APART = 3;

    /** What stands behind a panel's name in a title or a sentence; the title itself is read as any other. */
    static NamedLine ofTitle(String name, Value value, Phrase p) {
        return new NamedLine(name, false, List.of(value), List.of(), List.of(p));
    }

    /** Such lines of a region. */
    static List<NamedLine> in(List<Phrase> phrases) {
        if (phrases.stream().noneMatch(NamedLine::tellsOfSupply)) return List.of();
        List<NamedLine> out = new ArrayList<>();
        for (Phrase p : phrases) {
            Matcher said = SENTENCE.matcher(p.text());
            if (said.matches() && isTag(said.group(1))) out.add(sentence(said, p));
            else if (mayBegin(p)) {
                List<Phrase> line = line(p, phrases);
                List<Phrase> parts = parts(line);
                if (isNamed(parts)) out.add(of(parts, line));
            }
        }
        return out;
    }

    /** Whether such a line begins with a phrase, as a title does. */
    static boolean beginsWith(Phrase p, List<Phrase> phrases) {
        return mayBegin(p) && isNamed(parts(line(p, phrases)));
    }

    /** It is about what has that name, written with a space or a hyphen. */
    boolean isOf(String other) {
        return bare(name).equals(bare(other));
    }

    private static String bare(String name) {
        return name.replaceAll("[^\\p{L}\\p{N}]", "").toUpperCase(Locale.ROOT);
    }

    private static boolean tellsOfSupply(Phrase p) {
        boolean may = p.words().size() > 2
                && p.words().stream().anyMatch(w -> FROM.contains(w.text().toLowerCase(Locale.ROOT)));
        return may && FED.matcher(p.text()).find();
    }

    private static boolean mayBegin(Phrase p) {
        return isName(p.text()) || hasParting(p);
    }

    private static boolean isName(String text) {
        return NAME.matcher(text).matches() && NameText.isNameBehindItsWord(text);
    }

    /** Neither a device nor a system, which are fed from somewhere as well. */
    private static boolean isTag(String text) {
        return DeviceText.parse(text).isEmpty()
                && SystemText.voltageOf(text).isEmpty()
                && SystemText.phases(text, false).isEmpty()
                && NameText.isNameBehindItsWord(text);
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
                && isName(parts.get(0).text())
                && parts.stream().skip(1).anyMatch(p -> FED.matcher(p.text()).matches());
    }

    /** A phrase and those to its right that the signs join to it. */
    private static List<Phrase> line(Phrase first, List<Phrase> phrases) {
        List<Phrase> line = new ArrayList<>(List.of(first));
        phrases.stream()
                .filter(p -> p.left() >= first.right() && Math.abs(p.centreY() - first.centreY()) < 0.3 * first.size())
                .sorted(Comparator.comparingDouble(Phrase::left))
                .takeWhile(p -> goesOn(line.get(line.size() - 1), p))
                .forEach(line::add);
        return line;
    }

    private static boolean goesOn(Phrase last, Phrase next) {
        Word end = last.words().get(last.words().size() - 1);
        boolean joined = isParting(end) || isParting(next.words().get(0));
        return joined && next.left() - last.right() <= APART * last.size();
    }

    /** What stands between the signs. */
    private static List<Phrase> parts(List<Phrase> line) {
        List<Phrase> out = new ArrayList<>();
        List<Word> open = new ArrayList<>();
        for (Phrase p : line)
            for (Word w : p.words()) {
                if (!isParting(w)) open.add(w);
                else if (!open.isEmpty()) {
                    out.add(Phrase.of(open));
                    open = new ArrayList<>();
                }
            }
        if (!open.isEmpty()) out.add(Phrase.of(open));
        return out;
    }

    private static NamedLine sentence(Matcher said, Phrase p) {
        Value fed = new Value(Field.FED_FROM, Texts.bare(said.group(2)), p.box(), 1);
        return new NamedLine(said.group(1), false, List.of(fed), List.of(), List.of(p));
    }

    private static NamedLine of(List<Phrase> parts, List<Phrase> line) {
        List<Value> values = new ArrayList<>();
        List<Phrase> rest = new ArrayList<>();
        boolean placed = false;
        for (Phrase p : parts.subList(1, parts.size())) {
            Matcher fed = FED.matcher(p.text());
            if (fed.matches()) values.add(new Value(Field.FED_FROM, Texts.bare(fed.group(1)), p.box(), 2));
            else if (!placed && isPlace(p.text())) {
                values.add(new Value(Field.LOCATION, PlaceWords.within(p.text()), p.box(), 1));
                placed = true;
            } else rest.add(p);
        }
        return new NamedLine(NameText.name(parts.get(0).text()), true, values, rest, line);
    }

    /** It tells neither of the supply nor of ratings. */
    private static boolean isPlace(String text) {
        return PlaceWords.mayBe(text)
                && !text.contains(":")
                && SystemText.voltageOf(text).isEmpty()
                && SystemText.phases(text, false).isEmpty()
                && RatingText.mains(text).isEmpty();
    }
}
