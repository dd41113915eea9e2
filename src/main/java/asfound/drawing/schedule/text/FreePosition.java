package asfound.drawing.schedule.text;

import asfound.model.Directory.Use;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A position that feeds nothing, in words for spares and spaces and with what is said around them: {@code SPACE (NO BREAKER)},
 * {@code (E) SPARE 20A}, {@code SPARE - LOCKED OFF}, {@code RESERVA / SPARE}. A single word that belongs to none of these makes
 * it a load.
 */
final class FreePosition {

    private static final String DEVICE = "(?:BREAKER|BKR|BRKR|CB|C/B|MCB|MCCB|DEVICE|OCPD|CIRCUIT BREAKER)S?";
    private static final String THERE = "(?:INSTALLED|FITTED|PROVIDED|PRESENT|EQUIPPED|SUPPLIED)";
    private static final String HERE = "(?:POLES?|POSITIONS?|WAYS?|SLOTS?)";

    /** No device is there, whatever it is called. */
    private static final String NONE = "NO " + DEVICE + "(?: " + THERE + "| IN PLACE)?|(?:W/O|WITHOUT|LESS) (?:A )?"
            + DEVICE + "|(?:" + DEVICE + " )?(?:NOT " + THERE + "|MISSING|REMOVED)|UNEQUIPPED|NO BUS(?:SING)?";

    private static final String SPACE =
            "SPACES?(?: FOR)?|ESPACES?|ESPACIOS?|SPAZIO|SPC|BLANK(?:ED|ING|S)?(?:[ -]OFF)?(?: PLATES?| COVERS?)?"
                    + "|PROV(?:ISIONS?|\\.)?(?: FOR)?|PFB|(?:POLE )?FILLERS?(?: PLATES?)?|LEERPLATZ|RESERVEPLATZ";

    private static final String SPARE = "SPARES?(?! " + HERE
            + ")|R[EÉ]SERVES?|RESERVIERT|RESERVAS?|RISERVA|SPR?(?![ -]*\\d{1,4}+(?! ?(?:A|AMPS?|P|/ ?\\d)\\b))";

    /** There may be a device or not: a rating beside it tells. */
    private static final String FREE = "SPARE(?= " + HERE
            + ")|(?:(?:RESERVED )?FOR )?FUTURE(?: USE| LOAD)?|RESERVED|UNUSED|UNASSIGNED|UNALLOCATED|NOT (?:IN USE|USED|CONNECTED|ASSIGNED)"
            + "|NO LOAD|AVAILABLE|AVAIL|FREE|OPEN(?= (?:" + HERE + "|SPACES?)\\b|\\W{1,3}NO )"
            + "|VACANTE?S?|EMPTY|VAC[IÍ]O|VIDE|LEEG|LIVRE|LIBRES?|LIBERO|DISPONIBLE|FREI|LEER|VRIJ";

    /** Only of a device that is there. */
    private static final String OFF =
            "(?:(?:LEFT|LOCKED|TURNED|SWITCHED|TAGGED|PADLOCKED|KEEP|NORMALLY) |IN (?:THE )?)?OFF(?: POSITION)?|LOCKED(?: OPEN| OUT)?|TAGGED OUT"
                    + "|(?:W/|WITH) ?(?:A )?(?:" + DEVICE + "|LOCK)|" + DEVICE
                    + "(?=\\W{1,3}(?:UNUSED|NOT (?:IN USE|USED|CONNECTED)))";

    /** Says nothing of whether there is one: how it is rated, how old it is, what became of its wires. */
    private static final String BESIDE = "ONLY|" + HERE + "|" + DEVICE + "|CIRCUITS?|CKTS?|" + THERE
            + "|NOT WIRED|UNCONNECTED|DISCONNECTED|ABANDONED|NO (?:WIRES?|CONNECTION)|CAPPED(?: OFF)?"
            + "|EXISTING|EXIST|EXG|NEW|(?<=\\()(?:E|N|R|EX)(?=\\))|GFCI|GFI|AFCI|RCBO"
            + "|(?:C/W|W/|WITH) ?(?:BUS|BUSS|BUSSING|HARDWARE|HDWE|EPD|GFEP|GFCI|GFI|AFCI|RCD|RCBO|ELCB)|BUSS?ED|BUS(?= SPACE)|PREPARED"
            + "|\\d{1,4} ?(?:A|AMPS?|AT|AF|P)|\\d{1,4}";

    /** What a spare was once for. */
    private static final String ONCE =
            "(?<=[(,–—-] ?)(?:FORMERLY|FORMER|WAS|PREVIOUSLY|PREV|OLD|WIRES? (?:CAPPED|REMOVED))\\b.*";

    private static final Pattern PIECE = Pattern.compile("(?:(?<none>" + NONE + ")|(?<free>" + FREE + ")|(?<space>"
            + SPACE + ")|(?<spare>" + SPARE + ")|(?<off>" + OFF + ")|(?<once>" + ONCE + ")|(?<beside>" + BESIDE
            + "))(?![\\p{L}0-9])");

    private static final String BETWEEN = " *()[]<>\"'.,:;#/-–—|";

    /** With what such texts begin, besides figures. */
    private static final String[] BEGINNINGS = {
        "SP", "ESP", "FUT", "FRE", "FIL", "FOR", "UN", "RES", "RÉS", "RIS", "REM", "BUS", "BLANK", "BR", "BK", "CB",
        "C/B", "MCB", "MCCB", "MIS", "CIR", "CKT", "PREP", "PROV", "PFB", "POLE", "POSIT", "SLOT", "PADL", "EMP", "E)",
        "EX", "OPEN", "OFF", "OC", "VAC", "VID", "VR", "LEE", "LES", "LEF", "LIV", "LIB", "LOCK", "DISP", "DISC", "DEV",
        "NO", "NEW", "N)", "R)", "SW", "AVAIL", "ABAN", "WITHOUT", "W/", "TAG", "TUR", "KEEP", "IN "
    };

    private static final int LONGEST = 60;

    private FreePosition() {}

    /**
     * The use of a text of such words, a load where there is another among them.
     *
     * @param text in capitals, with single blanks
     * @param rated a device's rating stands beside it: then there is a device, unless the text says a space
     */
    static Use of(String text, boolean rated) {
        if (text.length() > LONGEST || !mayBeFree(text)) return Use.LOAD;
        boolean none = false, free = false, space = false, spare = false, off = false, parted = false;
        Matcher piece = PIECE.matcher(text).useTransparentBounds(true);
        String first = "";
        for (int at = past(text, 0), end = at; at < text.length(); end = piece.end(), at = past(text, end)) {
            piece.region(at, text.length());
            if (!piece.lookingAt()) return Use.LOAD;
            boolean said = piece.group("beside") == null;
            // said twice it is the texts of two entries
            if (said && piece.group().equals(first)) return Use.LOAD;
            if (said && first.isEmpty()) first = piece.group();
            else parted |= said && !text.substring(end, at).isBlank();
            none |= piece.group("none") != null;
            free |= piece.group("free") != null;
            space |= piece.group("space") != null;
            spare |= piece.group("spare") != null;
            off |= piece.group("off") != null;
            // of what is no spare it tells what it feeds
            if (piece.group("once") != null && !spare && !free) return Use.LOAD;
        }
        if (!none && !free && !space && !spare) return Use.LOAD;
        // the words of two entries, or of two things: 'SPARE SPACE'
        if (space && spare && !none && !free && !off && !parted) return Use.LOAD;
        if (space && !spare && !off) return Use.SPACE;
        boolean device = rated || off || spare && !none && !space;
        return device ? Use.SPARE : Use.SPACE;
    }

    private static boolean mayBeFree(String text) {
        int first = past(text, 0);
        if (first == text.length()) return false;
        char c = text.charAt(first);
        if (c >= '0' && c <= '9') return text.indexOf("SP", first) > 0;
        for (String begin : BEGINNINGS) if (text.startsWith(begin, first)) return true;
        return false;
    }

    private static int past(String text, int from) {
        int at = from;
        while (at < text.length() && BETWEEN.indexOf(text.charAt(at)) >= 0) at++;
        return at;
    }
}
