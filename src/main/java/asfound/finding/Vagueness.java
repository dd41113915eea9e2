package asfound.finding;

import java.util.Locale;
import java.util.Set;
import java.util.StringTokenizer;
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
        StringTokenizer words = new StringTokenizer(key(description).toLowerCase(Locale.ROOT), " ");
        while (words.hasMoreTokens()) if (!EMPTY_WORDS.contains(words.nextToken())) return false;
        return true;
    }

    static boolean namesAnOccupant(String description) {
        if (description.indexOf('\'') < 0 && description.indexOf('\u2019') < 0) return false;
        var m = OCCUPANT.matcher(description.toUpperCase(Locale.ROOT));
        return m.find() && !FUNCTIONS.contains(m.group(1));
    }

    /** Letters and digits of a description, with one blank for whatever stands between; equal where nobody can tell apart. */
    static String key(String description) {
        StringBuilder key = new StringBuilder(description.length());
        boolean gap = false;
        for (int i = 0; i < description.length(); ) {
            int c = description.codePointAt(i);
            i += Character.charCount(c);
            boolean counts = Character.isLetter(c) || isNumber(c);
            if (counts && gap && key.length() > 0) key.append(' ');
            if (counts) key.appendCodePoint(c);
            gap = !counts;
        }
        return key.toString().toUpperCase(Locale.ROOT);
    }

    private static boolean isNumber(int c) {
        int type = Character.getType(c);
        return type == Character.DECIMAL_DIGIT_NUMBER
                || type == Character.LETTER_NUMBER
                || type == Character.OTHER_NUMBER;
    }
}
