package asfound.drawing.schedule.text;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Loads in columns by what they are for: lighting, receptacles, motors, the rest. They are neither the loads of phases nor, each by
 * itself, the load of a circuit: one such column alone is left out, and told as not understood.
 */
public final class LoadClasses {

    private static final Set<String> CLASSES = Set.of(
            "ltg",
            "lighting",
            "lights",
            "lts",
            "rec",
            "recs",
            "recp",
            "recep",
            "recpt",
            "recept",
            "recepts",
            "receptacle",
            "receptacles",
            "rcpt",
            "misc",
            "miscellaneous",
            "motor",
            "motors",
            "mtr",
            "hvac",
            "kitchen",
            "kit",
            "appl",
            "appliance",
            "heat",
            "heating",
            "cool",
            "cooling",
            "cont",
            "continuous",
            "noncont",
            "other");

    private static final Set<String> UNITS = Set.of("va", "kva", "w", "kw", "watts", "load", "non");

    /** Kinds of load that head one beside others, and by themselves may say something else. */
    private static final Set<String> KINDS =
            Set.of("mot", "oth", "power", "pwr", "equip", "equipment", "eqpt", "general", "gen", "ac", "rcp", "small");

    /** Heating and cooling do not run at once: their sum is no load. */
    private static final Set<String> IN_TURN = Set.of("heat", "heating", "cool", "cooling");

    private LoadClasses() {}

    /** The heading names a kind of load where those beside it do. */
    public static boolean isKind(String heading) {
        if (heading.isEmpty()) return false;
        List<String> words = Arrays.asList(Headings.plain(heading).split(" "));
        return words.stream().anyMatch(w -> CLASSES.contains(w) || KINDS.contains(w))
                && words.stream().allMatch(w -> CLASSES.contains(w) || KINDS.contains(w) || UNITS.contains(w));
    }

    /** The loads under the heading run in turn with those under another. */
    public static boolean isInTurn(String heading) {
        return Arrays.stream(Headings.plain(heading).split(" ")).anyMatch(IN_TURN::contains);
    }

    /** The heading names a class of loads, perhaps with their unit, and nothing else. */
    public static boolean isOne(String heading) {
        List<String> words = Arrays.asList(Headings.plain(heading).split(" "));
        return words.stream().anyMatch(CLASSES::contains)
                && words.stream().allMatch(w -> CLASSES.contains(w) || UNITS.contains(w));
    }

    /** Takes from what speaks for the roles of a column what cannot be where its heading says otherwise. */
    public static void correct(String heading, Map<Role, Double> byHeading, Map<Role, Double> weights) {
        if (heading.isEmpty()) return;
        // nor are they sizes of wire, as which the column would pass for known
        if (isOne(heading)) weights.keySet().removeIf(role -> role.isLoad() || role == Role.WIRE);
        // figures under a heading that nobody knows may be loads, and not those of a phase
        else if (byHeading.isEmpty()) weights.replaceAll((role, w) -> role.isPhaseLoad() ? 0.4 * w : w);
    }
}
