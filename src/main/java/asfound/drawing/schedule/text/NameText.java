package asfound.drawing.schedule.text;

import java.util.Map;
import java.util.regex.Pattern;

/** A panel's name as a header writes it. */
public final class NameText {

    /** A panel's name is no longer. */
    private static final int LONGEST_NAME = 32;

    private static final Pattern NO_NAME = Pattern.compile(
            "\\d{1,3}(?:,\\d{3})+.*|\\d[\\d.]*\\s*(?:A|AMPS?|V|VOLTS?|K|KA|KAIC|KVA|PH|W)"
                    // a system, and a device with its poles
                    + "|\\d{3}Y?\\s*/\\s*\\d{2,3}Y?\\s*V?|\\d{2,4}\\s*A?[\\s/-]*[1-4]\\s?-?P(?:OLES?)?|[1-4]\\s?-?P(?:OLES?)?[\\s/-]*\\d{2,4}\\s*A?"
                    + "|(?:of|for|the|in|at)\\b.*|(?:BS|EN|IEC)(?:\\s*\\(?EN\\)?)?\\s+\\d.*|k?(?:va|w|a)|amps?|volts?|hp",
            Pattern.CASE_INSENSITIVE);
    /** {@code 2A}, {@code 12A}: floor and letter; no panel is rated so little but for 15 and 20 A. */
    private static final Pattern UNIT_LETTER = Pattern.compile("[AW]|HP|(?:[1-9]|1[0-46-9]|2[1-9])[AK]");
    /** Words of the sheet's own language. */
    private static final Pattern OF_THE_SHEET = Pattern.compile(
            "\\b(?:schedules?|directory|directories|details?|diagram|legend|notes?|data|location|voltage|volts|designation"
                    + "|information|type|name|total|totals|connected|load|loads|phase|rating|mounting|fed|from|continued"
                    + "|cover|door|size|sheet|lists?|listings?|reports?|print-?outs?|summary|index|by|typed|posted|prepared|revised|printed"
                    + "|circuits?|per|shall|only|is|are|was|located|supplied|serves|records?"
                    + "|alterations?|additions?|renovations?|revisions?|modifications?|upgrades?|replacements?|relocations?|drawings?)\\b",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern KIND =
            Pattern.compile("^(?:panel(?:\\s?board)?|pnl\\.?|distribution board)\\s+(?=\\S)", Pattern.CASE_INSENSITIVE);
    private static final Pattern CONTINUED =
            Pattern.compile("\\s*\\(?\\s*\\b(?:continued|cont'?d|cont\\.?)\\b\\s*\\.?\\)?$", Pattern.CASE_INSENSITIVE);
    /** Where a name may end: behind a figure, or behind so few capitals as no word of running text has. */
    private static final String OWN = "(?:(?<=\\d\\S{0,6})|(?<=^[A-Z]{1,4})|(?<=^[A-Z]{1,4}-[A-Z]{1,5}))";

    /** What is said of a panel behind its name, and of its sheet. */
    private static final String REMARK =
            "(?:sections?|sect?\\.|part|existing|exist\\.|new|relocated|revised|rev|replaced|to remain|fed|see|surface|flush|nema"
                    + "|page|sheet|updated|dated)\\b[^()\\[\\]]*|typ(?:ical)?\\.?(?: of \\d+)?";

    private static final String RATING =
            "\\d{2,4}\\s*A(?:MPS?)?\\b[^()\\[\\]]*|\\d{3}Y?\\s*/\\s*\\d{3}[^()\\[\\]]*|\\d+ of \\d+|MLO|MCB";
    /** What the panel is for; of names that are letters alone two may differ by no more than that. */
    private static final String PURPOSE =
            "(?:isolated ground|ig|emergency|normal|critical|life safety|equipment branch|standby|ups|double tub)";
    /** By any other word or number in brackets two panels may differ: {@code LP-2 (EAST)}, {@code LP (101)}. */
    private static final Pattern IN_BRACKETS = Pattern.compile(
            OWN + "\\s+[(\\[](?:" + REMARK + "|" + RATING + "|[ENR]|EX\\.?)[)\\]]?$|(?<=\\d\\S{0,6})\\s+\\(" + PURPOSE
                    + "\\b[^()]*\\)?$",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern REMARK_BEHIND_DASH =
            Pattern.compile(OWN + "\\s+[-–—]\\s+(?:" + REMARK + ")$|(?<=\\S)\\s+[-–—]+$", Pattern.CASE_INSENSITIVE);
    /** {@code LP-1 REV 2}, {@code LP-1 AS OF 5/12/98}: of which day or page the sheet is. */
    private static final Pattern OF_SHEET = Pattern.compile(
            OWN
                    + "\\s+(?:(?:REV\\.?|PG\\.?|PAGE|SHEET)\\s*\\d.*|(?:DATED|UPDATED|AS OF)\\b.*|\\d{1,2}/\\d{1,2}/\\d{2,4}|W/\\s?.*)$",
            Pattern.CASE_INSENSITIVE);
    /** {@code DB-01 (12 WAY TP&N)}, {@code LP-1 42 POLE}: how large it is, and no part of its name. */
    private static final Pattern SIZE = Pattern.compile(
            OWN
                    + "(?:\\s+[-–—]\\s+|,?\\s+)\\(?\\d{1,3}\\s*-?\\s*(?:ways?|circuits?|ckts?|poles?|spaces?)\\b[^()]*\\)?$",
            Pattern.CASE_INSENSITIVE);
    /** {@code LP-1, 225A, MLO}: what it is rated for. */
    private static final Pattern RATED = Pattern.compile(
            OWN
                    + "(?:\\s+[-–—]\\s+|,?\\s+)(?=\\d{2,4}\\s*A(?:MPS?|MPERES?)?\\b|\\d{3}Y?\\s*/\\s*\\d{3}|\\d{3}\\s*V(?:OLTS?|AC)?\\b"
                    + "|[13]\\s?(?:PH|PHASE|Ø)\\b|M\\.?L\\.?O\\b|M\\.?C\\.?B\\b).*$",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern WITH_VOLTAGE = Pattern.compile(
            "^([A-Z0-9][A-Z0-9./#-]{0,15})[\\s,:–—-]+\\d{3}Y?\\s*/\\s*\\d{3}Y?\\s*V?(?:OLTS?)?\\b.*$",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern BEHIND_DASH = Pattern.compile(
            "(?<=\\d\\S{0,6})\\s+[-–—](?:\\s+.*)?$|(?<=^(?:[A-Z]|[A-Z]{1,4}-[A-Z]{1,5}))\\s+[-–—]\\s+\\p{L}{4}.*$");
    private static final Pattern QUOTES = Pattern.compile("^[\"'“”‘’(\\[_]+|[\"'“”‘’)\\],;:_.]+$");

    /** {@code 'C' Section 1}: what stands behind the quotes is no part of the name. */
    private static final Pattern QUOTED =
            Pattern.compile("^[\"'“‘]([A-Z0-9][A-Z0-9./# -]{0,11})[\"'”’](?:[\\s,(–—-].*)?$", Pattern.CASE_INSENSITIVE);
    /** {@code 2NRA Section 1}, {@code 2NRA - SECT. 2 OF 2}: which part of the board is shown. */
    private static final Pattern SECTION = Pattern.compile(
            "[\\s,–—(-]+(?:SECTION|SECT\\.?|SEC\\.?)\\s*(?:NO\\.?\\s*|#\\s*)?\\d(?:\\s+OF\\s+\\d)?\\)?$",
            Pattern.CASE_INSENSITIVE);

    /** {@code H, hall closet}: where the panel stands. */
    private static final Pattern BEHIND_COMMA = Pattern.compile("^([A-Z0-9][A-Z0-9./#-]{0,11}),\\s+(?=\\p{L}{3}).*$");

    /** {@code LP-1: Kitchen}: what it serves. */
    private static final Pattern BEHIND_COLON =
            Pattern.compile("^((?=\\S*\\d)[A-Z0-9][A-Z0-9./#-]{0,11}):\\s+(?=\\p{L}{3}).*$");

    private NameText() {}

    /** Behind the word panel or a label for it {@code A}, {@code W}, {@code HP} and {@code 2A} are names; elsewhere units. */
    public static boolean isNameBehindItsWord(String text) {
        return isName(text) || UNIT_LETTER.matcher(name(text)).matches();
    }

    /** A panel's name: no word of the sheet's own language, and not too long. */
    public static boolean isName(String text) {
        String t = name(text);
        if (t.length() > LONGEST_NAME || t.isEmpty() || NO_NAME.matcher(t).matches()) return false;
        if (Values.isNothing(t) || OF_THE_SHEET.matcher(t).find()) return false;
        Map<Role, Double> heading = Headings.weigh(t);
        return heading.getOrDefault(Role.POSITION, 0.0) < 0.8 && heading.getOrDefault(Role.DESCRIPTION, 0.0) < 0.9;
    }

    public static String name(String text) {
        String t = text.strip();
        if (isOneWord(t)) return t;
        t = replaced(t, "dDpP", KIND, "");
        t = replaced(t, "cC", CONTINUED, "");
        t = replaced(t, "\"'“‘", QUOTED, "$1");
        t = replaced(t, "cC", SECTION, "");
        t = PlacedName.of(t).map(PlacedName::name).orElse(t);
        t = replaced(t, "/", WITH_VOLTAGE, "$1");
        t = replaced(t, "0123456789Mm", RATED, "");
        t = replaced(t, "0123456789", SIZE, "");
        t = replaced(t, ",", BEHIND_COMMA, "$1");
        t = replaced(t, ":", BEHIND_COLON, "$1");
        t = replaced(t, "-–—", BEHIND_DASH, "");
        t = replaced(t, "-–—", REMARK_BEHIND_DASH, "");
        t = replaced(t, "([", IN_BRACKETS, "");
        t = replaced(t, " ", OF_SHEET, "");
        String bare = (isWithin(t) ? t : QUOTES.matcher(t).replaceAll("")).strip();
        // a bracket within the name keeps its other half
        return bare.lastIndexOf('(') > bare.lastIndexOf(')') ? bare + ")" : bare;
    }

    /** {@code 2LA-3}: nothing can be said around it. */
    private static boolean isOneWord(String text) {
        for (int i = 0; i < text.length(); i++)
            if (!Character.isLetterOrDigit(text.charAt(i)) && text.charAt(i) != '-') return false;
        return !text.isEmpty() && Character.isLetterOrDigit(text.charAt(0)) && text.charAt(text.length() - 1) != '-';
    }

    /** Only a text with one of the signs holds what is replaced: most names have none, and are looked at no further. */
    private static String replaced(String text, String signs, Pattern what, String with) {
        return Texts.hasOne(text, signs) ? what.matcher(text).replaceAll(with) : text;
    }

    /** It begins and ends with a letter or a figure: no quotes stand around it. */
    private static boolean isWithin(String text) {
        return !text.isEmpty()
                && Character.isLetterOrDigit(text.charAt(0))
                && Character.isLetterOrDigit(text.charAt(text.length() - 1));
    }
}
