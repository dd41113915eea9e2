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
                    + "|cover|door|size|sheet|lists?|listings?|reports?|print-?outs?|summary|index"
                    + "|circuits?|per|shall|only|is|are|was|located|supplied|serves|records?)\\b",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern KIND =
            Pattern.compile("^(?:panel(?:board)?|pnl\\.?|distribution board)\\s+(?=\\S)", Pattern.CASE_INSENSITIVE);
    private static final Pattern CONTINUED =
            Pattern.compile("\\s*\\(?\\s*\\b(?:continued|cont'?d|cont\\.?)\\b\\s*\\.?\\)?$", Pattern.CASE_INSENSITIVE);
    private static final Pattern IN_BRACKETS = Pattern.compile(
            "(?<=\\d\\S{0,6})\\s+\\((?:sections?|sect?\\.|part|existing|new|relocated|revised|isolated ground|ig|emergency|normal"
                    + "|critical|life safety|equipment branch|standby|ups|double tub)\\b[^()]*\\)?$",
            Pattern.CASE_INSENSITIVE);
    /** {@code DB-01 (12 WAY TP&N)}: how large it is, and no part of its name. */
    private static final Pattern SIZE_IN_BRACKETS = Pattern.compile(
            "(?<=\\d\\S{0,6})\\s+\\(\\d{1,3}\\s*-?\\s*(?:ways?|circuits?|ckts?|poles?|spaces?)\\b[^()]*\\)?$",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern WITH_VOLTAGE = Pattern.compile(
            "^([A-Z0-9][A-Z0-9./#-]{0,15})[\\s,–—-]+\\d{3}Y?\\s*/\\s*\\d{3}Y?\\s*V?(?:OLTS?)?\\b.*$",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern BEHIND_DASH = Pattern.compile(
            "(?<=\\d\\S{0,6})\\s+[-–—](?:\\s+.*)?$|(?<=^(?:[A-Z]|[A-Z]{1,4}-[A-Z]{1,5}))\\s+[-–—]\\s+\\p{L}{4}.*$");
    private static final Pattern QUOTES = Pattern.compile("^[\"'“”‘’(\\[_]+|[\"'“”‘’)\\],;:_.]+$");

    /** {@code H, hall closet}: where the panel stands. */
    private static final Pattern BEHIND_COMMA = Pattern.compile("^([A-Z0-9][A-Z0-9./#-]{0,11}),\\s+(?=\\p{L}{3}).*$");

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
        t = replaced(t, "dDpP", KIND, "");
        t = replaced(t, "cC", CONTINUED, "");
        t = PlacedName.of(t).map(PlacedName::name).orElse(t);
        t = replaced(t, "/", WITH_VOLTAGE, "$1");
        t = replaced(t, "(", SIZE_IN_BRACKETS, "");
        t = replaced(t, ",", BEHIND_COMMA, "$1");
        t = replaced(t, "-–—", BEHIND_DASH, "");
        t = replaced(t, "(", IN_BRACKETS, "");
        String bare = (isWithin(t) ? t : QUOTES.matcher(t).replaceAll("")).strip();
        // a bracket within the name keeps its other half
        return bare.lastIndexOf('(') > bare.lastIndexOf(')') ? bare + ")" : bare;
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
