package asfound.drawing.schedule.text;

import asfound.model.Directory.Use;
import java.util.regex.Pattern;

/** What an entry is there for, told from its description. Anything that names a load is a load. */
public final class UseText {

    private static final String AROUND = "[\\s*()\\[\\]<>\"'.,:;#/-]*";
    private static final String DEVICE = "(?:\\s*[-,/(]?\\s*\\d+\\s*(?:A|AMP|P|/\\s*\\d)?\\b)*";
    /** {@code SP-4} is the tag of a pump: beside the short form a figure must say that it is a rating. */
    private static final String RATED = "(?:\\s*[-,/(]?\\s*\\d+\\s*(?:AMP|A|P|/\\s*\\d)\\b)*";

    private static final Pattern SPARE = Pattern.compile(AROUND
            + "(?:(?:SPARES?|SPARE (?:BREAKER|BKR|CB|DEVICE|MCB|WAY|CIRCUIT|CKT)|FUTURE SPARE|UNUSED(?: BREAKER)?|R[EÉ]SERVES?|RESERVIERT|RESERVAS?|RISERVA)"
            + DEVICE + "|SPR?" + RATED + ")" + AROUND);
    private static final Pattern SPACE = Pattern.compile(AROUND
            + "(?:SPACES?|ESPACES?|ESPACIOS?|SPAZIO|SPC|SPACE ONLY|(?:BUSSED|BUSED|PREPARED|FUTURE|EMPTY|OPEN|BLANK|UNUSED) SPACES?|SPACE (?:AVAILABLE|AVAIL|BLANK)|SPACE (?:W/|WITH) ?(?:BUS|BUSS|BUSSING|HARDWARE|HDWE)"
            + "|PROV(?:ISION|\\.)?(?: ONLY)?|PROVISION FOR (?:FUTURE|BREAKER)|BLANK(?: WAY| PLATE)?|BLANKED(?: OFF)?|SPARE WAY|SPACE ?/ ?BLANK|EMPTY|VACANTE?S?|VAC[IÍ]O|VIDE|LEEG|LIVRE|LIBRES?|LIBERO|DISPONIBLE|FREI|LEER(?:PLATZ)?|RESERVEPLATZ|VRIJ|NOT USED|UNUSED WAY|(?:POLE )?FILLERS?(?: PLATE)?)"
            + DEVICE + AROUND);

    private static final Pattern LOAD =
            Pattern.compile("loads?|(?:in )?use|used|active|feeder|branch|circuit", Pattern.CASE_INSENSITIVE);

    /** What stands around a word for a spare or a space, and with what these words begin. */
    private static final String MARKS = " *()[]<>\"'.,:;#/-";

    private static final String[] BEGINNINGS = {
        "SP", "ESP", "FUT", "FREI", "FIL", "FOR", "UNU", "RES", "RÉS", "RIS", "BUS", "BLANK", "BR", "BK", "PREP",
        "PROV", "POLE", "POSIT", "SLOT", "PADL", "EMP", "OPEN", "OFF", "OC", "VAC", "VID", "VR", "LEE", "LES", "LEF",
        "LIV", "LIB", "LOCK", "DISP", "DEV", "NO", "SW"
    };

    /** Parts one word for a spare or a space from its fellow: {@code RESERVA / SPARE}, {@code SPARE (RÉSERVE)}. */
    private static final Pattern BETWEEN = Pattern.compile("\\s*[-–—/|,;()\\[\\]]+\\s*");

    /** Words that say no more than that it is free: of a spare or of a space, their fellow tells. */
    private static final Pattern FREE = Pattern.compile(
            "EMPTY|UNUSED|NOT USED|VACANTE?S?|VAC[IÍ]O|VIDE|LEEG|LIVRE|LIBRES?|LIBERO|DISPONIBLE|FREI|VRIJ");

    /** The longest word for a load, {@code circuit}. */
    private static final int LONGEST = 7;

    private UseText() {}

    private static boolean mayBeFree(String text) {
        int first = 0;
        while (first < text.length() && MARKS.indexOf(text.charAt(first)) >= 0) first++;
        for (String begin : BEGINNINGS) if (text.startsWith(begin, first)) return true;
        return false;
    }

    /** A word that says that a position has a load, and nothing of what it is. */
    public static boolean isWordForLoad(String text) {
        String word = text.strip();
        return word.length() <= LONGEST && LOAD.matcher(word).matches();
    }

    /** The use of an entry; {@code rated} where a device's rating stands beside it. */
    public static Use of(String description, boolean rated) {
        String text = Texts.spaced(Texts.upper(description));
        if (text.isEmpty() || Texts.saysNothing(text)) return rated ? Use.LOAD : Use.SPACE;
        boolean spareWay = text.contains("SPARE WAY");
        if (spareWay && rated) return Use.SPARE;
        if (!mayBeFree(text)) return Use.LOAD;
        // what an open breaker feeds would be written beside it
        if (text.equals("OPEN") && !rated) return Use.SPACE;
        if (SPACE.matcher(text).matches())
            return rated && (text.startsWith("UNUSED") || text.startsWith("NOT USED")) ? Use.SPARE : Use.SPACE;
        if (SPARE.matcher(text).matches()) return Use.SPARE;
        Use fellows = ofFellows(text, rated);
        return fellows == Use.LOAD ? FreePosition.of(text, rated) : fellows;
    }

    /** A text of nothing but words for a spare or a space, as a sheet in two languages has them. */
    private static Use ofFellows(String text, boolean rated) {
        Use between = ofParts(BETWEEN.split(text), rated);
        if (between != Use.LOAD || text.indexOf(' ') < 0) return between;
        // one below the other; two of one language are two entries
        String[] words = text.split(" ");
        boolean alike = words.length != 2 || words[0].startsWith("SPA") && words[1].startsWith("SPA");
        return alike ? Use.LOAD : ofParts(words, rated);
    }

    private static Use ofParts(String[] parts, boolean rated) {
        boolean spare = false, space = false, several = false;
        for (String part : parts) {
            if (part.isEmpty()) continue;
            boolean free = FREE.matcher(part).matches();
            boolean isSpace = SPACE.matcher(part).matches();
            if (!free && !isSpace && !SPARE.matcher(part).matches()) return Use.LOAD;
            several |= spare || space || free;
            spare |= !free && !isSpace;
            space |= !free && isSpace;
        }
        if (!several) return Use.LOAD;
        return spare && (rated || !space) ? Use.SPARE : Use.SPACE;
    }
}
