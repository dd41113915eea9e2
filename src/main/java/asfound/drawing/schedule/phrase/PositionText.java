package asfound.drawing.schedule.phrase;

import asfound.drawing.schedule.text.Texts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Positions as written: {@code 7}, {@code 7,9,11}, {@code 7-9-11}; on boards with ways and phases {@code 3L1},
 * {@code 3L1/L2/L3}, {@code R3Y3B3}.
 *
 * @param numbers the numbers written, in their order, at least one: positions, or ways where phases are written
 * @param phases 1 to 3 for each phase written beside the way; empty where none is
 * @param raw as written
 */
public record PositionText(List<Integer> numbers, List<Integer> phases, String raw) {

    static final int HIGHEST = 400;
    /** So many positions follow from the first to the last of {@code 19 to 42}. */
    private static final int LONGEST_RUN = 36;

    private static final Pattern AROUND = Pattern.compile("[*†‡§]+$|[.)\\]}]$|^[(\\[{]");
    private static final Pattern DIGITS = Pattern.compile("\\d+");
    private static final Pattern LEAD =
            Pattern.compile("(?i)^(?:ckts?|circuits?|ccts?|ways?|pos|no|#)[\\s.:#]*(?=\\d)");
    /** With what the words before a position begin. */
    private static final String LEADS = "cCwWpPnN#";

    private static final Pattern LIST = Pattern.compile(
            "\\d{1,3}(?:\\s*(?:[-–—,/&+;|·\\\\]|\\s|and|to|thru|through)\\s*\\d{1,3})*|\\d{1,3}(?:\\.\\d{1,3}){2,}",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern PHASE = Pattern.compile("L[123]|[RYB]");
    private static final String PHASE_LETTERS = "LRYBTlrybt";
    private static final Pattern FIRST_TO_LAST = Pattern.compile(".*L1\\s*[-–]\\s*(\\d{1,2}\\s*)?L3");
    private static final Pattern WAY = Pattern.compile(
            "(\\d{1,2})\\s*[-./ ]?\\s*((?:L[123]|[RYB]|TP&?N?)(?:\\s*[-,/&+ ]?\\s*(?:\\d{1,2}\\s*[-./ ]?\\s*)?(?:L[123]|[RYB]))*)"
                    + "|((?:L[123]|[RYB]))\\s*[-./ ]?\\s*(\\d{1,2})((?:\\s*[-,/&+]?\\s*[RYB]\\s*[-./ ]?\\s*\\4(?!\\d))*)",
            Pattern.CASE_INSENSITIVE);

    public PositionText {
        numbers = List.copyOf(numbers);
        phases = List.copyOf(phases);
    }

    /** As printed where that is more than numbers: ways with their phases, devices with a name. */
    public String label() {
        return isWay() || isNamed() ? raw : "";
    }

    /** A device's own name with its number: {@code CB4}. */
    public boolean isNamed() {
        return phases.isEmpty() && NamedDevices.isName(raw);
    }

    public int first() {
        return numbers.get(0);
    }

    public boolean isWay() {
        return !phases.isEmpty();
    }

    /**
     * The positions of a device with so many poles; 0 where none are printed. {@code 1-5} with three poles names the ends
     * of 1, 3, 5.
     */
    public List<Integer> positions(int poles) {
        if (isWay())
            return phases.stream().map(phase -> (first() - 1) * 3 + phase).toList();
        // its two poles are the ends of what was taken for three
        if (numbers.size() == 3 && poles == 2 && isFirstToLast()) return List.of(numbers.get(0), numbers.get(2));
        if (numbers.size() != 2 || poles <= 2) return numbers;
        int apart = numbers.get(1) - first();
        if (apart % (poles - 1) != 0) return numbers;
        return IntStream.range(0, poles)
                .mapToObj(k -> first() + k * (apart / (poles - 1)))
                .toList();
    }

    /** Two numbers were written, and those between them are meant as well. */
    private boolean isFirstToLast() {
        return DIGITS.matcher(raw).results().count() == 2;
    }

    /** The number by which rows are put in order: ways with phases are counted across, three to a way. */
    public int order() {
        return isWay() ? (first() - 1) * 3 + phases.get(0) : first();
    }

    public static Optional<PositionText> parse(String text) {
        if (text.length() > 32 || !Texts.hasFigure(text)) return Optional.empty();
        // a figure by itself: with more digits than a position has it is none
        if (Texts.isFigures(text)) return text.length() <= 3 ? number(text) : Optional.empty();
        String t = text.strip();
        if (LEADS.indexOf(t.charAt(0)) >= 0) {
            Matcher lead = LEAD.matcher(t);
            if (lead.lookingAt()) t = t.substring(lead.end());
        }
        if (isWord(t)) return Optional.empty();
        if (isMarked(t)) t = AROUND.matcher(t).replaceAll("");
        if (t.isEmpty() || t.length() > 24) return Optional.empty();
        if (isDigit(t.charAt(t.length() - 1)) && LIST.matcher(t).matches()) return list(t, text);
        Matcher way = WAY.matcher(t);
        return hasPhase(t) && way.matches() ? way(way, text) : Optional.empty();
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    /** A letter stands in it with which the phases of ways are written. */
    private static boolean hasPhase(String text) {
        for (int i = 0; i < text.length(); i++) if (PHASE_LETTERS.indexOf(text.charAt(i)) >= 0) return true;
        return false;
    }

    /** A bracket or a mark may stand around it. */
    private static boolean isMarked(String text) {
        return "([{".indexOf(text.charAt(0)) >= 0 || !Character.isLetterOrDigit(text.charAt(text.length() - 1));
    }

    /** It begins with two letters, as no position does. */
    private static boolean isWord(String text) {
        return text.length() > 1 && Character.isLetter(text.charAt(0)) && Character.isLetter(text.charAt(1));
    }

    private static Optional<PositionText> number(String text) {
        int number = Integer.parseInt(text);
        return number < 1 || number > HIGHEST
                ? Optional.empty()
                : Optional.of(new PositionText(List.of(number), List.of(), text));
    }

    private static Optional<PositionText> list(String t, String raw) {
        List<Integer> numbers = new ArrayList<>();
        Matcher m = DIGITS.matcher(t);
        while (m.find()) numbers.add(Integer.valueOf(m.group()));
        int apart = numbers.size() == 2 && (t.indexOf('t') >= 0 || t.indexOf('T') >= 0) ? LONGEST_RUN : 6;
        for (int i = 0; i < numbers.size(); i++) {
            if (numbers.get(i) < 1 || numbers.get(i) > HIGHEST) return Optional.empty();
            if (i > 0 && (numbers.get(i) <= numbers.get(i - 1) || numbers.get(i) - numbers.get(i - 1) > apart))
                return Optional.empty();
        }
        return numbers.size() > 6 ? Optional.empty() : Optional.of(new PositionText(numbers, List.of(), raw));
    }

    private static Optional<PositionText> way(Matcher m, String raw) {
        int way = Integer.parseInt(m.group(1) != null ? m.group(1) : m.group(4));
        String phases = (m.group(2) != null ? m.group(2) : m.group(3) + m.group(5)).toUpperCase(java.util.Locale.ROOT);
        if (way < 1) return Optional.empty();
        if (phases.startsWith("TP")) return Optional.of(new PositionText(List.of(way), List.of(1, 2, 3), raw));
        List<Integer> found = new ArrayList<>();
        Matcher p = PHASE.matcher(phases);
        while (p.find()) found.add(phase(p.group()));
        boolean rising = true;
        for (int i = 1; i < found.size(); i++) rising &= found.get(i) > found.get(i - 1);
        if (found.size() == 2 && FIRST_TO_LAST.matcher(phases).matches()) found.add(1, 2);
        return rising ? Optional.of(new PositionText(List.of(way), found, raw)) : Optional.empty();
    }

    /** 1 to 3 for {@code A B C}, {@code L1 L2 L3}, {@code R Y B} (B is the third where R or Y are used; else the second). */
    public static int phase(String text) {
        return switch (text.toUpperCase(java.util.Locale.ROOT)) {
            case "A", "L1", "R" -> 1;
            case "Y", "L2" -> 2;
            default -> 3;
        };
    }
}
