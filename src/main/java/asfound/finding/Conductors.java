package asfound.finding;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The largest usual protection of a conductor, by NFPA 70-2020: Table 310.16 at 75 degrees Celsius (30 degrees ambient, at
 * most three conductors), 240.4(B) next standard rating up to 800 A, 240.4(D) small conductors, 240.6(A) standard ratings.
 * Taps, motors, temperature and number of conductors change the answer: what exceeds it is worth a look and no verdict.
 */
final class Conductors {

    /** Standard ratings in amperes, 240.6(A). */
    static final List<Integer> STANDARD_RATINGS = List.of(
            15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450,
            500, 600, 700, 800, 1000, 1200, 1600, 2000, 2500, 3000, 4000, 5000, 6000);

    /** Size to amperes at 75 degrees, copper and aluminium (0: not in the table). */
    private static final Map<String, int[]> TABLE_310_16 = Map.ofEntries(
            Map.entry("14", new int[] {20, 0}),
            Map.entry("12", new int[] {25, 20}),
            Map.entry("10", new int[] {35, 30}),
            Map.entry("8", new int[] {50, 40}),
            Map.entry("6", new int[] {65, 50}),
            Map.entry("4", new int[] {85, 65}),
            Map.entry("3", new int[] {100, 75}),
            Map.entry("2", new int[] {115, 90}),
            Map.entry("1", new int[] {130, 100}),
            Map.entry("1/0", new int[] {150, 120}),
            Map.entry("2/0", new int[] {175, 135}),
            Map.entry("3/0", new int[] {200, 155}),
            Map.entry("4/0", new int[] {230, 180}),
            Map.entry("250", new int[] {255, 205}),
            Map.entry("300", new int[] {285, 230}),
            Map.entry("350", new int[] {310, 250}),
            Map.entry("400", new int[] {335, 270}),
            Map.entry("500", new int[] {380, 310}),
            Map.entry("600", new int[] {420, 340}),
            Map.entry("700", new int[] {460, 375}),
            Map.entry("750", new int[] {475, 385}),
            Map.entry("800", new int[] {490, 395}),
            Map.entry("900", new int[] {520, 425}),
            Map.entry("1000", new int[] {545, 445}));

    /** Small conductors, 240.4(D): size to the most amperes of protection, copper and aluminium. */
    private static final Map<String, int[]> SMALL =
            Map.of("14", new int[] {15, 0}, "12", new int[] {20, 15}, "10", new int[] {30, 25});

    private static final Pattern SIZE = Pattern.compile(
            "#\\s*(\\d{1,2}(?:/0)?)(?![\\d/])|(?<![\\d/])([1-4]/0)|(?<!\\d)(\\d{3,4})\\s*(?:KCMIL|MCM|KCM)");
    private static final Pattern SETS =
            Pattern.compile("(\\d)\\s*(?:SETS?|RUNS?)(?![A-Z])|(?:^|\\s)(\\d)\\s*[X\u00d7]\\s*\\(");

    private Conductors() {}

    /** The largest usual protection in amperes; empty where the text does not say plainly which conductor it is. */
    static OptionalInt largestProtection(String wire) {
        String t = wire.toUpperCase(Locale.ROOT);
        Matcher size = SIZE.matcher(t);
        if (!size.find()) return OptionalInt.empty();
        String gauge = size.group(1) != null ? size.group(1) : size.group(2) != null ? size.group(2) : size.group(3);
        int material = t.matches(".*\\b(AL|ALUM|ALUMINUM|ALUMINIUM)\\b.*") ? 1 : 0;
        int[] ampacity = TABLE_310_16.get(gauge);
        if (ampacity == null || ampacity[material] == 0) return OptionalInt.empty();
        Matcher sets = SETS.matcher(t);
        int parallel = sets.find() ? Integer.parseInt(sets.group(1) != null ? sets.group(1) : sets.group(2)) : 1;
        if (parallel < 1 || parallel == 1 && t.matches(".*(PARALLEL|[X\u00d7]).*")) return OptionalInt.empty();
        if (SMALL.containsKey(gauge)) return OptionalInt.of(SMALL.get(gauge)[material] * parallel);
        return OptionalInt.of(nextStandard(ampacity[material] * parallel));
    }

    /** 240.4(B): the next standard rating above an ampacity, up to 800 A; above that the next one below. */
    static int nextStandard(int ampacity) {
        int above =
                STANDARD_RATINGS.stream().filter(r -> r >= ampacity).findFirst().orElse(ampacity);
        if (above <= 800) return above;
        return STANDARD_RATINGS.stream()
                .filter(r -> r <= ampacity)
                .reduce((a, b) -> b)
                .orElse(ampacity);
    }

    /** Loads whose protection follows rules of their own (240.4(G)): motors, and what is driven by them. */
    static boolean hasRulesOfItsOwn(String description) {
        String t = " " + description.toUpperCase(Locale.ROOT).replaceAll("[^A-Z]+", " ") + " ";
        return Arrays.stream(new String[] {
                    "MOTOR",
                    "PUMP",
                    "FAN",
                    "AHU",
                    "RTU",
                    "EF",
                    "CHILLER",
                    "CH",
                    "COMPRESSOR",
                    "ELEVATOR",
                    "ELEV",
                    "CU",
                    "ACCU",
                    "HP",
                    "AC",
                    "WELDER",
                    "FIRE",
                    "MCC",
                    "CRAC",
                    "CT",
                    "XFMR",
                    "TRANSFORMER",
                    "CAPACITOR"
                })
                .anyMatch(w -> t.contains(" " + w + " "));
    }
}
