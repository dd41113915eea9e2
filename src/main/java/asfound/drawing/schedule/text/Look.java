package asfound.drawing.schedule.text;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What an entry looks like by itself, in whatever column it stands.
 *
 * @param text as written
 * @param says it says something: it is neither blank nor a mark
 * @param device what it says as a device; empty where it says anything else
 * @param poles where it is a number of poles and nothing else
 * @param phases it names phases
 * @param wire it is a size of wire or conduit
 * @param figure it is a figure, with the unit of a load or without one
 * @param kind it says what a device is, and nothing that it feeds
 * @param letters how many it has
 * @param rating without a number of poles, in amperes; 0 where it is none
 */
public record Look(
        String text,
        boolean says,
        Optional<DeviceText> device,
        Optional<Integer> poles,
        boolean phases,
        boolean wire,
        boolean figure,
        boolean kind,
        int letters,
        int rating) {

    private static final Pattern PHASES = Pattern.compile(
            "(?:L?[123ABC]|[RYBØ]|[ABC]{2,3}|RED|YELLOW|BLUE|BROWN|BLACK|GR[AE]Y|WHITE|[-,/&+ ]|PH)+",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern WIRE = Pattern.compile(
            "#\\s*\\d|\\b\\d+\\s*AWG|\\bMM|\\bKCMIL|\\d\\s*[X×]\\s*\\d|\\d[CT]\\b|\\bEMT\\b|\\d/\\d",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern BARE_WIRE = Pattern.compile("\\d+(?:\\.5)?|\\d+\\s*[/+]\\s*\\d+(?:\\.\\d)?");
    /** {@code RCBO type C}. */
    private static final Pattern KIND_OF_DEVICE = Pattern.compile(
            "(?:(?:RCBO|RCD|RCCB|MCB|MCCB|ACB|GFCI|AFCI|GFEP|FUSE|BREAKER|CB|TYPE|CURVE|[ABCDK]|\\d+\\s?MA)[\\s,/-]*)+",
            Pattern.CASE_INSENSITIVE);

    /** Of what phases are written, by letters or by colours, and kinds of devices. */
    private static final String PHASE_LETTERS = "L123ABCRYPHEDOWUNKITGlabcryphedowunkitgØ-,/&+ ";

    private static final String KIND_LETTERS = "RCBODMAGFIEPUSKTYVrcbodmagfiepusktyv0123456789 \t\n\u000B\f\r,/-";

    private static final Pattern SMALL = Pattern.compile("\\d{1,2}(?:[.,]0+)?");
    private static final int SHORT = 3;

    public static Look of(String text) {
        Optional<DeviceText> device = DeviceText.parse(text);
        return new Look(
                text,
                !Texts.saysNothing(text),
                device,
                DeviceText.polesOnly(text, device),
                isOf(text, PHASE_LETTERS) && PHASES.matcher(text).matches(),
                isWire(text),
                LoadText.isFigure(text),
                isOf(text, KIND_LETTERS) && KIND_OF_DEVICE.matcher(text).matches(),
                letters(text),
                rating(device));
    }

    /** All its letters are some of these: of most texts the first or second is not. */
    private static boolean isOf(String text, String some) {
        for (int i = 0; i < text.length(); i++) if (some.indexOf(text.charAt(i)) < 0) return false;
        return !text.isEmpty();
    }

    private static boolean beginsWithFigure(String text) {
        return !text.isEmpty() && isFigure(text.charAt(0));
    }

    private static boolean isWire(String text) {
        if (Texts.isFigures(text)) return true;
        return mayBeWire(text) && WIRE.matcher(text).find()
                || mayBeBareWire(text) && BARE_WIRE.matcher(text).matches();
    }

    /** Whether one of the signs or pairs of letters stands in it without which it is no size of wire. */
    private static boolean mayBeWire(String text) {
        char last = ' ', seen = ' ';
        for (int i = 0; i < text.length(); i++) {
            char c = Character.toUpperCase(text.charAt(i));
            boolean sign = c == '#' || c == '/' || c == '×';
            boolean letters =
                    last == 'M' && (c == 'M' || c == 'T') || last == 'C' && c == 'M' || last == 'W' && c == 'G';
            boolean counted = isFigure(last) && (c == 'C' || c == 'T') || isFigure(seen) && c == 'X';
            if (sign || letters || counted) return true;
            last = c;
            if (!Character.isWhitespace(c)) seen = c;
        }
        return false;
    }

    private static boolean mayBeBareWire(String text) {
        return beginsWithFigure(text) && isFigure(text.charAt(text.length() - 1));
    }

    private static boolean isFigure(char c) {
        return c >= '0' && c <= '9';
    }

    /** Nothing but figures and spaces. */
    public boolean isNumbers() {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c != ' ' && (c < '0' || c > '9')) return false;
        }
        return !text.isEmpty();
    }

    private static int rating(Optional<DeviceText> device) {
        return device.filter(d -> d.poles().isEmpty())
                .flatMap(DeviceText::ratingA)
                .orElse(0);
    }

    /** A whole number of one or two digits. */
    public boolean isSmall() {
        return figure && SMALL.matcher(text).matches();
    }

    /** A number that is usual as a rating. */
    public boolean isUsualRating() {
        return figure && text.length() <= SHORT && isNumbers() && DeviceText.isStandard(Integer.parseInt(text));
    }

    private static int letters(String text) {
        int n = 0;
        for (int i = 0; i < text.length(); i++) if (Character.isLetter(text.charAt(i))) n++;
        return n;
    }
}
