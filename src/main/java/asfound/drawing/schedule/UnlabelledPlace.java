package asfound.drawing.schedule;

import asfound.model.Box;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Where a panel stands, said without a label: behind its name ({@code Panel PP-2, Janitor 118}), or among its ratings on one line.
 * Only a text that holds a word for a place is one; the words are from memory, as rooms are commonly named.
 */
final class UnlabelledPlace {

    private static final String WORD =
            "(?:ROOM|RM\\.?|CORRIDOR|CORR\\.?|LOBBY|BASEMENT|CLOSET|CLO\\.?|PENTHOUSE|ROOF|JANITOR|HALL|HALLWAY|STAIR|FLOOR|LEVEL|GARAGE"
                    + "|(?:WORK)?SHOP|KITCHEN|VESTIBULE|ATTIC|RISER|CUPBOARD|OFFICE|STORAGE|STORE|WAREHOUSE|LAUNDRY|LOUNGE|RECEPTION|GYM(?:NASIUM)?"
                    + "|MECH(?:ANICAL)?\\.?|ELEC(?:TRICAL)?\\.?|BOILER|LAB(?:ORATORY)?|DOCK|YARD|WING)";

    private static final Pattern PLACE = Pattern.compile(
            "(?:[A-Z0-9][\\w./'&-]*\\s+){0,3}?" + WORD + "(?:\\s+[A-Z0-9][\\w./'&-]*){0,3}", Pattern.CASE_INSENSITIVE);

    private static final Pattern NONE = Pattern.compile(
            "(?:fed|from|see|for|serves?|feeds|panel|panelboard|board|circuits?|load|schedule)\\b.*|.*\\d\\s*(?:A|AMPS?|V|KVA|KA|W|PH)\\b.*"
                    + "|.*\\b(?:panel|switchboard|breaker|contractor|drawing|sheet|schedule|notes?)\\b.*",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern IN = Pattern.compile("^(?:in|at)\\s+(?:the\\s+)?(?=\\S)", Pattern.CASE_INSENSITIVE);

    private static final Pattern PIECES = Pattern.compile("[,;]\\s+|\\.\\s+(?=\\S)|\\s+[-–—]\\s+");

    private UnlabelledPlace() {}

    /** What a region of a header says of the place without a label; empty where nothing does. */
    static Optional<Value> in(LabelReader.Labelled region) {
        for (Value v : region.values()) {
            if (v.field() != Field.DESIGNATION) continue;
            String[] pieces = PIECES.split(v.text());
            if (pieces.length > 1 && isPlace(pieces[1])) return Optional.of(value(pieces[1], v.box()));
        }
        return region.loose().stream()
                .filter(p -> isPlace(p.text()) && isAmongRatings(p, region.loose()))
                .findFirst()
                .map(p -> value(p.text(), p.box()));
    }

    private static Value value(String text, Box box) {
        return new Value(Field.LOCATION, IN.matcher(LabelReader.strip(text)).replaceFirst(""), box, 1);
    }

    /** It holds a word for a place, and nothing that a place has not. */
    static boolean isPlace(String text) {
        String t = IN.matcher(LabelReader.strip(text)).replaceFirst("");
        return !NONE.matcher(t).matches() && PLACE.matcher(t).matches();
    }

    /** On its line the panel's voltage or rating is said as well. */
    private static boolean isAmongRatings(Phrase place, List<Phrase> loose) {
        return loose.stream()
                .filter(p -> p != place && Math.abs(p.centreY() - place.centreY()) < 0.3 * place.size())
                .anyMatch(p -> SystemText.voltageOf(p.text()).isPresent()
                        || RatingText.mainOf(p.text()).isPresent()
                        || RatingText.busOf(p.text()).isPresent());
    }
}
