package asfound.drawing.schedule.text;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The system of a supply as a header writes it: its voltage, phases and wires. */
public final class SystemText {

    private static final Pattern VOLTAGE = Pattern.compile(
            "(?<![\\d.A-Z-])(\\d{3}\\s*Y?\\s*/\\s*\\d{2,3}|\\d{2,3}\\s*/\\s*\\d{3}Y?)\\s*(?:V(?:AC|OLTS?)?)?(?![\\dA])"
                    + "|(?<![\\d.A-Z-])(\\d{3})\\s*V(?:AC|OLTS?)?\\b",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern PAIR =
            Pattern.compile("(\\d{2,3})\\s*Y?\\s*/\\s*(\\d{2,3}).*", Pattern.CASE_INSENSITIVE);
    /** Without its unit only a usual voltage is one: 125 under a label is rather a rating. */
    private static final Pattern BARE_VOLTAGE = Pattern.compile(
            "(?:1(?:00|10|15|20|27|33)|2(?:00|08|20|30|40|77)|3(?:47|80|90)|4(?:00|15|16|40|60|80)|5(?:25|50|75)|6(?:00|60|90))(?:\\.0)?(?:\\s*V)?|\\d{3}\\s*V",
            Pattern.CASE_INSENSITIVE);

    /** {@code SP-2} is a name. */
    private static final Pattern PHASES = Pattern.compile(
            "(?<![\\d/.A-Z-])([13])\\s*-?\\s*(?:PH(?:ASES?|ASEN)?\\b\\.?|FAS(?:E[NS]?|I)\\b|[ØΦφ∅⌀])|\\b(SINGLE|THREE)[- ]PHASE|\\b(TP&?N?|SP&?N?)\\b(?![-.#]\\d+(?!\\d|\\s*A))",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern WIRES = Pattern.compile(
            "(?<![\\d/.A-Z-])([2345])\\s*-?\\s*(?:(?:W(?:IRES?)?|FILS?|HILOS|FILI)\\b)|\\b(THREE|FOUR)[- ]WIRE|\\b(TP&?N)\\b",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern VOLTAGE_PHASES_WIRES = Pattern.compile(
            ".*\\d{3}\\s*V?(?:AC|OLTS?)?\\s*[/,;-]\\s*([13])\\s*(?:PH?|[ØΦφ∅⌀])?\\s*[/,;-]\\s*([2345])\\s*W?",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern BARE_WIRES = Pattern.compile("([2345])(?:\\s*\\+\\s*(?:G|GND|GROUND|E|PE))?");

    /** One of these stands wherever phases are told, and one of those wherever wires are. */
    private static final String OF_PHASES = "PpFfØΦφ∅⌀";

    private static final String OF_WIRES = "WwNnFfHh";

    /** One of these stands where phases or wires are told without a figure. */
    private static final List<String> WORDS_OF_PHASES = List.of("PHASE", "TP", "SP");

    private static final List<String> WORDS_OF_WIRES = List.of("WIRE", "TP");

    private SystemText() {}

    /** As every voltage has, one after the other. */
    private static boolean hasThreeFigures(String text) {
        int figures = 0;
        for (int i = 0; i < text.length() && figures < 3; i++)
            figures = text.charAt(i) >= '0' && text.charAt(i) <= '9' ? figures + 1 : 0;
        return figures == 3;
    }

    private static boolean hasOneOf(String text, List<String> words) {
        String upper = text.toUpperCase(Locale.ROOT);
        return words.stream().anyMatch(upper::contains);
    }

    public static Optional<String> voltageOf(String text) {
        if (!hasThreeFigures(text)) return Optional.empty();
        Matcher m = VOLTAGE.matcher(text);
        if (m.find()) return Optional.of(m.group().strip());
        Matcher bare = BARE_VOLTAGE.matcher(text.strip());
        return bare.matches() ? Optional.of(text.strip()) : Optional.empty();
    }

    /**
     * Two figures with a slash are the voltages of a system only where one is twice the other or as many times as line to
     * line is line to neutral: {@code 180/23} is two rooms.
     */
    public static boolean isSystem(String voltage) {
        Matcher m = PAIR.matcher(voltage.strip());
        if (!m.matches()) return true;
        double a = Double.parseDouble(m.group(1)), b = Double.parseDouble(m.group(2));
        double ratio = Math.max(a, b) / Math.max(1, Math.min(a, b));
        return ratio > 1.65 && ratio < 2.15;
    }

    /** Behind a voltage with nothing but the figures of phases and wires, {@code 277/480V/3/4}: the one or the other. */
    public static Optional<Integer> behindVoltage(String text, boolean wires) {
        Matcher m = VOLTAGE_PHASES_WIRES.matcher(text.strip());
        return m.matches() ? Optional.of(Integer.valueOf(m.group(wires ? 2 : 1))) : Optional.empty();
    }

    public static Optional<Integer> phases(String text, boolean labelled) {
        String t = text.strip();
        if (labelled && (t.equals("1") || t.equals("3"))) return Optional.of(Integer.valueOf(t));
        if (labelled && (t.equalsIgnoreCase("single") || t.equalsIgnoreCase("one"))) return Optional.of(1);
        if (labelled && t.equalsIgnoreCase("three")) return Optional.of(3);
        if (!Texts.hasOne(text, OF_PHASES) || !Texts.hasFigure(text) && !hasOneOf(text, WORDS_OF_PHASES))
            return Optional.empty();
        Matcher m = PHASES.matcher(text);
        if (!m.find()) return Optional.empty();
        if (m.group(1) != null) return Optional.of(Integer.valueOf(m.group(1)));
        String word = (m.group(2) != null ? m.group(2) : m.group(3)).toUpperCase(Locale.ROOT);
        return Optional.of(word.startsWith("T") ? 3 : 1);
    }

    public static Optional<Integer> wires(String text, boolean labelled) {
        if (labelled) {
            Matcher bare = BARE_WIRES.matcher(text.strip());
            if (bare.matches()) return Optional.of(Integer.valueOf(bare.group(1)));
        }
        if (!Texts.hasOne(text, OF_WIRES) || !Texts.hasFigure(text) && !hasOneOf(text, WORDS_OF_WIRES))
            return Optional.empty();
        Matcher m = WIRES.matcher(text);
        if (!m.find()) return Optional.empty();
        if (m.group(1) != null) return Optional.of(Integer.valueOf(m.group(1)));
        if (m.group(2) != null) return Optional.of(m.group(2).equalsIgnoreCase("four") ? 4 : 3);
        return Optional.of(4);
    }
}
