package asfound.drawing.schedule.text;

import asfound.model.Directory.Use;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A position that feeds nothing, with what is said of it behind the word: {@code SPACE (NO BREAKER)}, {@code BLANK POLE},
 * {@code SPARE - LOCKED OFF}, {@code NOT INSTALLED}. A single word that belongs to none of these makes it a load.
 */
final class FreePosition {

    private static final String DEVICE = "(?:BREAKER|BKR|BRKR|CB|C/B|MCB|MCCB|DEVICE|OCPD|CIRCUIT BREAKER)S?";
    private static final String THERE = "(?:INSTALLED|FITTED|PROVIDED|PRESENT|EQUIPPED|SUPPLIED)";
    private static final String HERE = "(?:POLES?|POSITIONS?|WAYS?|SLOTS?)";

    /** No device is there, whatever it is called. */
    private static final String NONE = "NO " + DEVICE + "(?: " + THERE + "| IN PLACE)?|(?:W/O|WITHOUT|LESS) (?:A )?"
            + DEVICE + "|(?:" + DEVICE + " )?NOT " + THERE;

    private static final String SPACE =
            "SPACES?(?: FOR)?|SPC|BLANK(?:ED|ING|S)?(?:[ -]OFF)?(?: PLATES?| COVERS?)?|PROV(?:ISIONS?|\\.)?(?: FOR)?|(?:POLE )?FILLERS?(?: PLATES?)?|VACANT|EMPTY";

    private static final String SPARE = "SPARES?(?! " + HERE + ")";

    /** There may be a device or not: a rating beside it tells. */
    private static final String FREE = "SPARE(?= " + HERE
            + ")|(?:(?:RESERVED )?FOR )?FUTURE(?: USE| LOAD)?|UNUSED|NOT (?:IN USE|USED|CONNECTED)|NO LOAD|OPEN(?= "
            + HERE + "|\\W{1,3}NO )";

    /** Only of a device that is there. */
    private static final String OFF =
            "(?:(?:LEFT|LOCKED|TURNED|SWITCHED|TAGGED|PADLOCKED|KEEP|NORMALLY) |IN (?:THE )?)?OFF(?: POSITION)?|LOCKED(?: OPEN| OUT)?|TAGGED OUT|"
                    + DEVICE + "(?=\\W{1,3}(?:UNUSED|NOT (?:IN USE|USED|CONNECTED)))";

    /** Says nothing of whether there is one. */
    private static final String BESIDE = "ONLY|" + HERE + "|" + DEVICE
            + "|AVAILABLE|AVAIL|INSTALLED|FITTED|RESERVED|NOT WIRED|UNCONNECTED|DISCONNECTED|NO (?:WIRES?|CONNECTION)|\\d{1,4} ?(?:A|AMPS?|AT|AF|P)";

    private static final Pattern PIECE = Pattern.compile("(?:(?<none>" + NONE + ")|(?<free>" + FREE + ")|(?<space>"
            + SPACE + ")|(?<spare>" + SPARE + ")|(?<off>" + OFF + ")|(?<beside>" + BESIDE + "))(?![A-Z0-9])");

    private static final String BETWEEN = " *()[]<>\"'.,:;/-–—";

    private static final int LONGEST = 60;

    private FreePosition() {}

    /**
     * The use of a text of such words, a load where there is another among them.
     *
     * @param text in capitals, with single blanks
     * @param rated a device's rating stands beside it: then there is a device, unless the text says a space
     */
    static Use of(String text, boolean rated) {
        if (text.length() > LONGEST) return Use.LOAD;
        boolean none = false, free = false, space = false, spare = false, off = false;
        Matcher piece = PIECE.matcher(text);
        String first = "";
        for (int at = past(text, 0); at < text.length(); at = past(text, piece.end())) {
            piece.region(at, text.length());
            if (!piece.lookingAt()) return Use.LOAD;
            // said twice it is the texts of two entries
            if (piece.group().equals(first)) return Use.LOAD;
            if (first.isEmpty()) first = piece.group();
            none |= piece.group("none") != null;
            free |= piece.group("free") != null;
            space |= piece.group("space") != null;
            spare |= piece.group("spare") != null;
            off |= piece.group("off") != null;
        }
        if (!none && !free && !space && !spare) return Use.LOAD;
        // the words of two entries, or of two things: 'SPARE SPACE'
        if (space && spare && !none && !free && !off) return Use.LOAD;
        if (space && !spare && !off) return Use.SPACE;
        boolean device = rated || off || spare && !none && !space;
        return device ? Use.SPARE : Use.SPACE;
    }

    private static int past(String text, int from) {
        int at = from;
        while (at < text.length() && BETWEEN.indexOf(text.charAt(at)) >= 0) at++;
        return at;
    }
}
