package asfound.drawing.schedule.text;

import java.util.regex.Pattern;

/** Texts that say where something stands, told by a word for a place; the words are from memory, as rooms are commonly named. */
public final class PlaceWords {

    private static final String WORD =
            "(?:ROOM|RM\\.?|CORRIDOR|CORR\\.?|LOBBY|BASEMENT|CLOSET|CLO\\.?|PENTHOUSE|ROOF|JANITOR|HALL|HALLWAY|STAIR|FLOOR|LEVEL|GARAGE"
                    + "|(?:WORK)?SHOP|KITCHEN|VESTIBULE|ATTIC|RISER|CUPBOARD|OFFICE|STORAGE|STORE|WAREHOUSE|LAUNDRY|LOUNGE|RECEPTION|GYM(?:NASIUM)?"
                    + "|MECH(?:ANICAL)?\\.?|ELEC(?:TRICAL)?\\.?|BOILER|APT\\.?|APARTMENT|SUITE|LAB(?:ORATORY)?|DOCK|YARD|WING)";

    private static final Pattern PLACE = Pattern.compile(
            "(?:[A-Z0-9][\\w./'&-]*\\s+){0,3}?" + WORD + "(?:\\s+[A-Z0-9][\\w./'&-]*){0,3}", Pattern.CASE_INSENSITIVE);

    private static final Pattern NONE = Pattern.compile(
            "(?:fed|from|see|for|serves?|feeds|panel|panelboard|board|circuits?|load|schedule)\\b.*|.*\\d\\s*(?:A|AMPS?|V|KVA|KA|W|PH)\\b.*"
                    + "|.*\\b(?:panel|switchboard|breaker|contractor|drawing|sheet|schedule|notes?)\\b.*",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern NAMED =
            Pattern.compile(".*\\S\\s+(?:" + WORD + "|\\S*\\d\\S*)", Pattern.CASE_INSENSITIVE);

    private static final Pattern IN = Pattern.compile("^(?:in|at)\\s+(?:the\\s+)?(?=\\S)", Pattern.CASE_INSENSITIVE);

    private PlaceWords() {}

    /** It holds a word for a place, and nothing that a place has not. */
    public static boolean isPlace(String text) {
        String t = within(text);
        return PLACE.matcher(t).matches() && !NONE.matcher(t).matches();
    }

    /** Nothing stands in it that a place has not: no rating, no voltage, no word of the sheet's own. */
    public static boolean mayBe(String text) {
        return !text.isBlank() && !NONE.matcher(text).matches();
    }

    /** A place with a name or number of its own, {@code SPORTS HALL}, {@code ROOM 12}: the word for a place or a figure ends it. */
    public static boolean isNamed(String text) {
        return isPlace(text) && NAMED.matcher(within(text)).matches();
    }

    /** Without the {@code in the} before it. */
    public static String within(String text) {
        return IN.matcher(Texts.bare(text)).replaceFirst("");
    }
}
