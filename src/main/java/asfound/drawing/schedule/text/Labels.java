package asfound.drawing.schedule.text;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The usual labels of a schedule's header and sums. */
public final class Labels {

    private static final Map<String, Field> USUAL = Vocabulary.read("labels.txt", Field::valueOf);
    private static final Set<String> UNITS = Set.of("a", "ka", "amp", "amps", "amperes", "v", "volts", "vac");
    /** How a current that a device interrupts is meant: {@code A.I.C. SYM}, {@code Int. rating (RMS sym. A)}. */
    private static final Set<String> SYMMETRICAL = Set.of("sym", "symm", "symmetrical", "rms", "min", "minimum");

    private static final Set<Field> NAMING = EnumSet.of(Field.DESIGNATION, Field.FED_FROM, Field.LOCATION);
    private static final Set<String> BEGINNINGS =
            USUAL.keySet().stream().map(l -> l.split(" ")[0]).collect(Collectors.toUnmodifiableSet());
    /** Words of the longest label. */
    private static final int LONGEST =
            USUAL.keySet().stream().mapToInt(l -> l.split(" ").length).max().orElse(0);

    /** So many words of a label stand in brackets at the most. */
    private static final int IN_BRACKETS = 4;

    private Labels() {}

    public static String plain(String text) {
        if (isPlain(text)) return text.toLowerCase(Locale.ROOT);
        String lower = Texts.withoutAccents(
                text.toLowerCase(Locale.ROOT).replace('φ', 'ø').replace('∅', 'ø'));
        StringBuilder out = new StringBuilder(lower.length());
        for (int i = 0; i < lower.length(); i++) {
            char c = lower.charAt(i);
            boolean kept = Character.isLetterOrDigit(c) || c == '#' || c == '&';
            if (kept) out.append(c);
            else if (!out.isEmpty() && out.charAt(out.length() - 1) != ' ') out.append(' ');
        }
        return out.toString().strip();
    }

    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) if (!isLetter(text.charAt(i))) return false;
        return true;
    }

    /** A plain letter or a figure. */
    private static boolean isLetter(char c) {
        return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9';
    }

    /**
     * A label found in a row of words.
     *
     * @param field what it announces
     * @param end the index after its last word
     * @param marked whether a colon or the like ends it
     */
    public record Label(Field field, int end, boolean marked) {}

    /** A label with its unit behind it, {@code AIC Rating (kA)}, is the same label; {@code PANEL A} is a name and no label. */
    private static Field field(String plain) {
        Field usual = USUAL.get(plain);
        int unit = plain.lastIndexOf(' ');
        boolean measured = unit > 0 && UNITS.contains(plain.substring(unit + 1)) && isLetter(plain.charAt(unit - 1));
        if (usual != null || !measured) return usual;
        Field bare = USUAL.get(plain.substring(0, unit));
        return bare == null || NAMING.contains(bare) ? null : bare;
    }

    private static boolean isOfCurrent(String word) {
        return SYMMETRICAL.contains(word) || UNITS.contains(word);
    }

    /** An interrupting rating's label with the kind of current behind it. */
    private static Field symmetrical(String plain) {
        String label = plain;
        int space = label.lastIndexOf(' ');
        while (space > 0 && isOfCurrent(label.substring(space + 1))) {
            label = label.substring(0, space);
            if (USUAL.get(label) == Field.INTERRUPTING) return Field.INTERRUPTING;
            space = label.lastIndexOf(' ');
        }
        return null;
    }

    private static boolean isBeginning(String plain) {
        int space = plain.indexOf(' ');
        return BEGINNINGS.contains(space < 0 ? plain : plain.substring(0, space));
    }

    /** Whether a label can begin with a word. */
    public static boolean isFirstWord(String word) {
        return isBeginning(plain(word));
    }

    /** Whether a label can begin with the first of the text's words. */
    public static boolean mayBegin(String text) {
        int space = text.indexOf(' ');
        return isFirstWord(space < 0 ? text : text.substring(0, space));
    }

    private static boolean isMarked(String word) {
        return word.endsWith(":") || word.endsWith("=");
    }

    /** {@code A.I.C. (sym.):}: what stands in brackets before the colon tells more of the label. */
    private static int behindBrackets(List<String> words, int from) {
        if (from >= words.size() || !words.get(from).startsWith("(")) return from;
        for (int i = from; i < Math.min(words.size(), from + IN_BRACKETS); i++)
            if (words.get(i).endsWith("):")) return i + 1;
        return from;
    }

    /** The longest label that begins at a word; empty where none does. */
    public static Optional<Label> at(List<String> words, int start) {
        String first = plain(words.get(start));
        if (!isBeginning(first)) return Optional.empty();
        List<String> plain = new ArrayList<>(List.of(first));
        int most = Math.min(LONGEST + 1, words.size() - start);
        // a mark ends a label
        for (int n = 1; n < most && !isMarked(words.get(start + n - 1)); n++)
            plain.add((plain.get(n - 1) + " " + plain(words.get(start + n))).strip());
        for (int n = plain.size(); n > 0; n--) {
            String last = words.get(start + n - 1);
            boolean own = last.equals(":") || last.equals("=");
            Field field = field(plain.get(n - 1));
            // '22,000 AIC SYM' is a value
            if (field == null && n > 1 && (start == 0 || isMarked(last))) field = symmetrical(plain.get(n - 1));
            if (field == null || own && n == 1) continue;
            boolean marked = isMarked(last);
            int end = start + n;
            if (!marked
                    && end < words.size()
                    && (words.get(end).equals(":") || words.get(end).equals("="))) {
                marked = true;
                end++;
            }
            int closed = marked || field == Field.DESIGNATION ? end : behindBrackets(words, end);
            return Optional.of(new Label(field, closed, marked || closed > end));
        }
        return Optional.empty();
    }

    /** What a list of several panels says of each of them in a column under that heading; empty for any other column. */
    public static Optional<Field> ofPanel(String heading) {
        List<String> words = List.of(heading.split(" "));
        return at(words, 0)
                .filter(l -> l.end() == words.size())
                .map(Label::field)
                .filter(field -> field != Field.DESIGNATION && field.isKept() && !field.isTotal());
    }
}
