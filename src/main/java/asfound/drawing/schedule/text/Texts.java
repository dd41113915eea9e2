package asfound.drawing.schedule.text;

import asfound.model.Blanks;
import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a cell says without saying a value: nothing, a dash, a ditto; and how lines of one cell are put together. */
public final class Texts {

    private static final Pattern DASH = Pattern.compile(
            "[-–—_.|:;·•~¦│↓⇓▼↑⇑▲{}\\[\\]<>^\\\\⎫⎬⎭*=/\\s]+|[-–—]+\\s*[>v]?|[-–—\"]+\\s*/\\s*[1-4]\\s*P?|I");
    private static final Pattern LEADER = Pattern.compile("\\s*(?:[.·…_]\\s?){3,}$");
    private static final Pattern ARROW = Pattern.compile("[|¦│↓⇓▼↑⇑▲{}⎫⎬⎭I]");
    private static final Pattern DITTO = Pattern.compile(
            "[\"“”'`´″〃,\\s]+|[-–—\\s(\\[]*(?:\"|''|″|〃|(?:ditto|dto\\.?|do\\.?|id\\.|[ií]dem|d[°º]|[↳↪⤷└⮡])(?:\\s*(?:ckt\\.?|#)?\\s*\\d{1,3})?|same(?: (?:breaker|bkr|brkr|c/?b|circuit|ckt|device|handle))?(?: as above)?|(?:[2-4][- ]?p(?:ole)?,? |with |w/ ?|tied (?:to |with )?|linked (?:to |with )?)?(?:as |see )?above|cont(?:\\.|'?d\\.?|inued)?"
                    + "|linked|tied|ganged|(?:2nd|3rd|second|third) (?:pole|leg|phase)|(?:pole|leg) (?:no\\.? ?)?[23](?: of [234])?"
                    + "|(?:combined |tied |joined |linked |part |see |same |used )?(?:with|w/|of|as|see|to|by|ver|voir|con|avec)\\s*(?:(?:ckt|cir|circ|cto|cct)s?\\.?|circuit(?:s|os?)?|pos\\.?|no\\.?|#)?\\s*(?:no\\.?|n[°º])?\\s*#?\\d{1,3})[-–—\\s)\\]]*",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

    /** As words for a ditto begin, after which it is looked at in full. */
    private static final String[] DITTO_WORDS = {
        "ditto",
        "dto",
        "do",
        "d°",
        "dº",
        "id",
        "íd",
        "same",
        "second",
        "cont",
        "combined",
        "above",
        "as",
        "with",
        "w/",
        "tied",
        "third",
        "joined",
        "linked",
        "leg",
        "ganged",
        "part",
        "pole",
        "see",
        "used",
        "ver",
        "voir",
        "con ",
        "avec",
        "2nd",
        "2p",
        "2-p",
        "3rd",
        "3p",
        "3-p"
    };

    private static final String DITTO_LETTERS = "dDsScCaAwWtTjJpPlLgGuUiIíÍvV23";

    private static final Pattern AROUND = Pattern.compile("^[-–—:=,;_\\s]+(?=\\S)|[,;:_\\s]+$");
    private static final Pattern ACCENTS = Pattern.compile("\\p{Mn}+");
    private static final Pattern ABBREVIATED =
            Pattern.compile(".*(?:^|\\W)(?:w|c/w|w/o|b|o|h|f)/", Pattern.CASE_INSENSITIVE);

    private Texts() {}

    /** Nothing is said: blank, or marks that only carry on a line above. */
    static boolean isDash(String text) {
        return !text.isBlank()
                && (!isWordy(text) || text.equals("I"))
                && DASH.matcher(text.strip()).matches();
    }

    public static boolean isDitto(String text) {
        return !text.isBlank()
                && text.length() < 24
                && !isPlain(text)
                && DITTO.matcher(text.strip()).matches();
    }

    /** It begins with a letter or a digit, as no dash does. */
    private static boolean isWordy(String text) {
        char first = text.charAt(0);
        return first >= '0' && first <= '9' || first != 'v' && Character.isLetter(first);
    }

    /** It begins as no word for a ditto does. */
    private static boolean isPlain(String text) {
        if (!isWordy(text)) return false;
        if (DITTO_LETTERS.indexOf(text.charAt(0)) < 0) return true;
        int first = Character.toLowerCase(text.charAt(0));
        for (String word : DITTO_WORDS)
            if (word.charAt(0) == first && text.regionMatches(true, 0, word, 0, word.length())) return false;
        return true;
    }

    public static boolean saysNothing(String text) {
        return text.isBlank() || isDash(text) || isDitto(text);
    }

    /** A mark that carries on what stands above, as against a blank. */
    public static boolean isMark(String text) {
        return isDash(text) || isDitto(text);
    }

    /** A bar, an arrow or a ditto, as no blank position is marked. */
    public static boolean isArrow(String text) {
        return isDitto(text)
                || text.length() < 3 && isDash(text) && ARROW.matcher(text).find();
    }

    /** Without the dots or the line that lead from an entry to the next column, or that a form has to write upon. */
    public static String withoutLeader(String text) {
        boolean none = text.isEmpty() || ".·…_".indexOf(text.charAt(text.length() - 1)) < 0;
        if (none) return text;
        Matcher leader = LEADER.matcher(text);
        if (!leader.find()) return text;
        return text.substring(0, leader.start() + (isOfAbbreviation(text, leader.start()) ? 1 : 0));
    }

    /** {@code LTS. .......}: the full stop stands against the word, and a blank before the leader's close dots. */
    private static boolean isOfAbbreviation(String text, int at) {
        return at > 0
                && text.charAt(at) == '.'
                && at + 3 < text.length()
                && Character.isWhitespace(text.charAt(at + 1))
                && !Character.isWhitespace(text.charAt(at + 2))
                && !Character.isWhitespace(text.charAt(at + 3));
    }

    /** Puts a further line to a text: a word broken at its own hyphen or slash is put together again. */
    public static String continued(String text, String line) {
        if (text.isEmpty()) return line;
        int n = text.length();
        char last = text.charAt(n - 1);
        boolean broken = (last == '-' || last == '/')
                && n > 1
                && Character.isLetterOrDigit(text.charAt(n - 2))
                && Character.isLetterOrDigit(line.charAt(0));
        boolean joined = broken && !ABBREVIATED.matcher(text).matches();
        return joined ? text + line : text + " " + line;
    }

    public static boolean hasFigure(String text) {
        for (int i = 0; i < text.length(); i++) if (isFigure(text.charAt(i))) return true;
        return false;
    }

    /** One of some signs stands in it: whoever looks for what is not written without one need look no further where none does. */
    static boolean hasOne(String text, String signs) {
        for (int i = 0; i < text.length(); i++) if (signs.indexOf(text.charAt(i)) >= 0) return true;
        return false;
    }

    /** Nothing but figures; not blank. */
    public static boolean isFigures(String text) {
        for (int i = 0; i < text.length(); i++) if (!isFigure(text.charAt(i))) return false;
        return !text.isEmpty();
    }

    private static boolean isFigure(char c) {
        return c >= '0' && c <= '9';
    }

    /** {@code tension} for {@code tensión}: who types a heading leaves its accents out or not. */
    static String withoutAccents(String text) {
        for (int i = 0; i < text.length(); i++)
            if (text.charAt(i) >= 0xC0)
                return ACCENTS.matcher(Normalizer.normalize(text, Normalizer.Form.NFD))
                        .replaceAll("");
        return text;
    }

    /** Without the marks and blanks that part a value from its label, and from what follows it. */
    public static String bare(String text) {
        String t = text.strip();
        boolean bare =
                !t.isEmpty() && Character.isLetterOrDigit(t.charAt(0)) && ",;:_".indexOf(t.charAt(t.length() - 1)) < 0;
        return bare ? t : AROUND.matcher(t).replaceAll("").strip();
    }

    /** With a single blank wherever there is any space. */
    static String spaced(String text) {
        return Blanks.single(text);
    }

    public static String upper(String text) {
        return text.strip().toUpperCase(Locale.ROOT);
    }
}
