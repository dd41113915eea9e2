package asfound.finding;

import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Which descriptions say nothing of a circuit's specific purpose. Common practice; the words are our own list. */
final class Vagueness {

    /** Words that tell no circuit from another when nothing else stands beside them. */
    private static final Set<String> EMPTY_WORDS = Set.of(
            "misc",
            "miscellaneous",
            "load",
            "loads",
            "equipment",
            "equip",
            "eqpt",
            "power",
            "pwr",
            "general",
            "gen",
            "various",
            "other",
            "others",
            "unknown",
            "unk",
            "existing",
            "exist",
            "exst",
            "ex",
            "circuit",
            "ckt",
            "plug",
            "plugs",
            "recept",
            "recepts",
            "receptacle",
            "receptacles",
            "rcpt",
            "rcpts",
            "outlet",
            "outlets",
            "light",
            "lights",
            "lighting",
            "ltg",
            "lts",
            "fixtures",
            "see",
            "plan",
            "plans",
            "drawing",
            "dwg",
            "note",
            "notes",
            "tbd",
            "na",
            "new",
            "old",
            "and",
            "the",
            "as",
            "per",
            "in",
            "use",
            "used",
            "active",
            "live",
            "on",
            "off",
            "breaker",
            "purpose",
            "convenience",
            "house",
            "building",
            "bldg",
            "stuff",
            "things",
            "do",
            "not",
            "turn",
            "feed",
            "feeder",
            "to",
            "field",
            "verify",
            "vif",
            "work");

    /** An occupant by name rather than by room: transient occupancy. Offices of a function are not meant. */
    private static final Pattern OCCUPANT = Pattern.compile("\\b(\\p{L}+)['\u2019]S\\s+(OFFICE|DESK|CUBE|CUBICLE)\\b");

    private static final Set<String> FUNCTIONS = Set.of(
            "MEN",
            "WOMEN",
            "STAFF",
            "DIRECTOR",
            "MANAGER",
            "PRINCIPAL",
            "DOCTOR",
            "NURSE",
            "JANITOR",
            "JUDGE",
            "DEAN",
            "CLERK",
            "GUARD",
            "CHIEF",
            "TEACHER",
            "COACH",
            "ENGINEER",
            "SUPERVISOR",
            "SUPERINTENDENT",
            "PASTOR",
            "PRESIDENT",
            "WARDEN",
            "SHERIFF",
            "REGISTRAR",
            "TREASURER",
            "ASSESSOR",
            "MAYOR",
            "DIETICIAN",
            "PHARMACIST",
            "CUSTODIAN",
            "FOREMAN",
            "DISPATCHER",
            "LIBRARIAN");

    private Vagueness() {}

    static boolean isVague(String description) {
        String[] words = description.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+");
        boolean said = Arrays.stream(words).anyMatch(w -> !w.isBlank());
        return !said || Arrays.stream(words).filter(w -> !w.isBlank()).allMatch(EMPTY_WORDS::contains);
    }

    static boolean namesAnOccupant(String description) {
        var m = OCCUPANT.matcher(description.toUpperCase(Locale.ROOT));
        return m.find() && !FUNCTIONS.contains(m.group(1));
    }

    /** Equal for descriptions that nobody can tell apart. */
    static String key(String description) {
        return description
                .toUpperCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", " ")
                .strip();
    }
}
