package asfound.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which device of a piece of equipment is meant: numbered pole positions ({@code 7-9-11}) or a device's own name
 * ({@code M1}, {@code 52-3}).
 *
 * @param positions the numbered positions in rising order; empty for a named device
 * @param name the device's name as written, spaces tidied; empty for numbered positions
 */
public record CircuitRef(List<Integer> positions, String name) {

    private static final Pattern LEAD = Pattern.compile(
            "^(?:circuits?|ckts?|cct|breakers?|bkr|brkr|poles?|pos(?:itions?)?|no|nr|spaces?|#)[.:#\\s]*(?=\\d)",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern DIGITS = Pattern.compile("\\d+");
    private static final Pattern JOINED = Pattern.compile("\\d+(?:\\s*[-/]\\s*\\d+)+");
    private static final Pattern NUMBERS = Pattern.compile("\\d{1,3}(?:\\s*(?:[-,/&+;\\s]|and)\\s*\\d{1,3})*");

    public CircuitRef {
        positions = List.copyOf(positions);
    }

    public static CircuitRef of(int... positions) {
        List<Integer> all = new ArrayList<>();
        for (int p : positions) all.add(p);
        return new CircuitRef(all.stream().sorted().toList(), "");
    }

    public static CircuitRef of(List<Integer> positions) {
        return new CircuitRef(positions.stream().sorted().distinct().toList(), "");
    }

    public static CircuitRef named(String name) {
        return new CircuitRef(List.of(), name.strip().replaceAll("\\s+", " "));
    }

    /** Reads {@code 7}, {@code 7-9-11}, {@code 7/9/11}, {@code CKT 7}, {@code M1}; empty where nothing is written. */
    public static Optional<CircuitRef> parse(String text) {
        String t = text.strip().replace('–', '-').replace('—', '-');
        if (t.isEmpty()) return Optional.empty();
        String bare = LEAD.matcher(t).replaceFirst("").strip();
        if (NUMBERS.matcher(bare).matches()) {
            List<Integer> positions = new ArrayList<>();
            Matcher m = DIGITS.matcher(bare);
            while (m.find()) positions.add(Integer.parseInt(m.group()));
            if (!positions.contains(0) && !isName(bare, positions)) return Optional.of(of(positions));
        }
        return Optional.of(named(t));
    }

    /**
     * {@code 52-3} is breaker 3 by its device number (52 is an AC circuit breaker in IEEE C37.2), {@code 4-1} the first
     * of section 4: joined numbers that fall, other than from pole to pole, are no positions of one device.
     */
    private static boolean isName(String bare, List<Integer> numbers) {
        if (!JOINED.matcher(bare).matches()) return false;
        boolean falls = false, poleToPole = true;
        for (int i = 1; i < numbers.size(); i++) {
            int step = numbers.get(i) - numbers.get(i - 1);
            falls |= step < 0;
            poleToPole &= step == -1 || step == -2;
        }
        return falls && !poleToPole;
    }

    public boolean isNumbered() {
        return !positions.isEmpty();
    }

    /**
     * The device's key in its equipment: its lowest position, or its name in upper case without spaces and punctuation,
     * but for what stands between two numbers ({@code F1-1} is not {@code F11}). Two references with one key mean one
     * device.
     */
    public String key() {
        return isNumbered()
                ? Integer.toString(positions.get(0))
                : name.toUpperCase(Locale.ROOT)
                        .replaceAll("(?<=\\p{N})[^\\p{L}\\p{N}]+(?=\\p{N})", "-")
                        .replaceAll("[^\\p{L}\\p{N}-]+|(?<!\\p{N})-|-(?!\\p{N})", "");
    }

    /** As a person writes it: {@code 7-9-11} or {@code M1}. */
    public String inWords() {
        return isNumbered()
                ? String.join("-", positions.stream().map(String::valueOf).toList())
                : name;
    }
}
