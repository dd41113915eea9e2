package asfound.drawing.schedule.text;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/** What the words above a column say that it holds: the usual headings of the trade, and what their words have in common. */
public final class Headings {

    private static final Pattern PHASE = Pattern.compile("ø\\s*([abc]|l[123])\\b");
    private static final Pattern KVA = Pattern.compile("\\bk\\.?\\s?v[-.]?\\s?a\\b\\.?");
    private static final Pattern VA = Pattern.compile("\\bv[-.]?\\s?a\\b\\.?");
    /** Which side of the panel a column in the middle serves is told by its place. */
    private static final Pattern SIDE = Pattern.compile("(?<=\\S )(?:left|right)(?: side)?\\s*$");

    private static final Pattern NUMBER = Pattern.compile("(?<=[a-z])#|#(?=[a-z])");
    private static final Pattern BREAKER = Pattern.compile("\\bc b\\b");
    private static final Pattern SPACES = Pattern.compile("\\s+");
    private static final int LONGEST = 60;
    private static final Map<String, Role> USUAL = Vocabulary.read("headings.txt", Role::valueOf);

    private Headings() {}

    /** A heading in lower case with its punctuation gone, {@code #} kept. */
    public static String plain(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        if (isPlain(lower)) return lower;
        String t = lower.replace("mm²", "mm2")
                .replace("n°", "no")
                .replace("nº", "no")
                .replace("№", "no")
                .replace("φ", "ø")
                .replace("∅", "ø")
                .replace("⌀", "ø")
                .strip();
        t = Texts.withoutAccents(t);
        if (t.indexOf('ø') >= 0) t = PHASE.matcher(t).replaceAll("ph $1");
        if (mayBeVoltAmperes(t))
            t = VA.matcher(KVA.matcher(t).replaceAll("kva")).replaceAll("va");
        t = withoutMarks(t);
        if (t.contains("left") || t.contains("right")) t = SIDE.matcher(t).replaceAll("");
        // but for those around a number's sign all blanks are single by now
        if (t.indexOf('#') >= 0)
            t = SPACES.matcher(NUMBER.matcher(t).replaceAll(" # ")).replaceAll(" ");
        return t.strip();
    }

    /** A {@code v} stands in it with an {@code a} close behind that ends a word. */
    private static boolean mayBeVoltAmperes(String text) {
        for (int v = text.indexOf('v'); v >= 0; v = text.indexOf('v', v + 1)) {
            int a = v + 1;
            while (a < text.length() && a < v + 3 && !isLetterOrFigure(text.charAt(a))) a++;
            boolean close = a < text.length() && text.charAt(a) == 'a';
            if (close && (a + 1 == text.length() || !isLetterOrFigure(text.charAt(a + 1)))) return true;
        }
        return false;
    }

    /** With a blank for all that is neither a letter nor a number nor one of the few signs that headings are told by. */
    private static String withoutMarks(String text) {
        StringBuilder out = new StringBuilder(text.length());
        boolean marked = false;
        for (int i = 0, c; i < text.length(); i += Character.charCount(c)) {
            c = text.codePointAt(i);
            if (!isKept(c)) {
                marked = true;
                continue;
            }
            if (marked) out.append(' ');
            marked = false;
            out.appendCodePoint(c);
        }
        return out.toString();
    }

    private static boolean isKept(int c) {
        if (c < 0x80) return isLetterOrFigure((char) c) || c >= 'A' && c <= 'Z' || c == '#' || c == '&' || c == '%';
        int type = Character.getType(c);
        return Character.isLetterOrDigit(c) || type == Character.LETTER_NUMBER || type == Character.OTHER_NUMBER;
    }

    /** A plain letter in lower case or a figure. */
    private static boolean isLetterOrFigure(char c) {
        return c >= 'a' && c <= 'z' || c >= '0' && c <= '9';
    }

    /** One word of nothing but letters and figures. */
    private static boolean isPlain(String lower) {
        for (int i = 0; i < lower.length(); i++) if (!isLetterOrFigure(lower.charAt(i))) return false;
        return true;
    }

    /** How much a heading speaks for each role, from 0 to 1. */
    public static Map<Role, Double> weigh(String heading) {
        Map<Role, Double> out = new EnumMap<>(Role.class);
        if (heading.length() > LONGEST) return out;
        String plain = plain(heading);
        if (plain.isEmpty()) return out;
        Role usual = USUAL.get(plain);
        if (usual != null) {
            out.put(usual, 1.0);
            ambiguous(plain, out);
            return out;
        }
        String words = plain.contains("c b") ? BREAKER.matcher(plain).replaceAll("cb") : plain;
        HeadingByWords.weigh(new HashSet<>(Arrays.asList(words.split(" "))), out);
        return out;
    }

    /** Headings that mean different things in different offices: the column's content decides. */
    private static void ambiguous(String plain, Map<Role, Double> out) {
        switch (plain) {
            case "a" -> {
                out.put(Role.LOAD_A, 0.9);
                out.put(Role.PHASE, 0.3);
            }
            case "r", "y" -> out.put(Role.PHASE, 0.2);
            // the third phase beside R and Y, which are claimed first
            case "b",
                    "b kw",
                    "b kva",
                    "b va",
                    "b w",
                    "b watts",
                    "watts b",
                    "kw b",
                    "kva b",
                    "va b",
                    "ph b",
                    "phase b" -> out.put(Role.LOAD_C, 0.7);
            case "c" -> out.put(Role.WIRE, 0.5);
            case "load", "loads", "charge", "carga", "carico" -> out.put(Role.LOAD, 0.9);
            case "amps", "amp", "amperes" -> out.put(Role.LOAD, 0.3);
            case "disj", "disjoncteur", "interruptor", "sicherung", "automaat", "interruttore" ->
                out.put(Role.DEVICE, 0.9);
            case "bkr", "breaker", "brkr", "cb" -> {
                out.put(Role.DEVICE, 0.9);
                out.put(Role.POSITION, 0.3);
            }
            case "c b", "ocpd", "mcb", "circuit breaker", "trip", "rating", "fuse" -> out.put(Role.DEVICE, 0.9);
            case "device", "protection", "protective device" -> out.put(Role.RATING, 0.8);
            case "no", "#", "number", "pos", "pole no" -> out.put(Role.POLES, 0.2);
            // the numbers beside it are known by themselves
            case "circuit" -> out.put(Role.DESCRIPTION, 0.8);
            case "ph", "phase", "phases", "ø" -> out.put(Role.POLES, 0.3);
            case "pole", "poles" -> out.put(Role.POSITION, 0.3);
            case "equipment", "name", "room", "location", "type", "remarks", "notes", "area" ->
                out.put(Role.DESCRIPTION, 0.4);
            case "designation" -> out.put(Role.POSITION, 0.3);
            case "size" -> out.put(Role.RATING, 0.6);
            case "l1", "l2", "l3" -> out.put(Role.PHASE, 0.2);
            case "w" -> out.put(Role.WIRE, 0.2);
            default -> {}
        }
    }

    public static double weight(String heading, Role role) {
        return weigh(heading).getOrDefault(role, 0.0);
    }
}
