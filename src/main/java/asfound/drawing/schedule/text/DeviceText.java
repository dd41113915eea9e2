package asfound.drawing.schedule.text;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The rating and poles of a device as written: {@code 20}, {@code 20A}, {@code 20/1}, {@code 20A-1P}, {@code 1P20},
 * {@code 100AF/60AT/3P}, {@code C16}, {@code 32A TP}.
 *
 * @param ratingA trip rating in amperes, where written
 * @param poles where written
 */
public record DeviceText(Optional<Integer> ratingA, Optional<Integer> poles) {

    /** Standard ampere ratings of overcurrent devices: NFPA 70, 240.6(A), and IEC 60898-1 and 60947-2 (from memory). */
    private static final int[] STANDARD = {
        1, 2, 3, 4, 6, 8, 10, 13, 15, 16, 20, 25, 30, 32, 35, 40, 45, 50, 60, 63, 70, 80, 90, 100, 110, 125, 150, 160,
        175, 200, 225, 250, 300, 315, 320, 350, 400, 450, 500, 600, 601, 630, 700, 800, 1000, 1200, 1250, 1600, 2000,
        2500, 3000, 3200, 4000, 5000, 6000
    };

    private static final Pattern PART = Pattern.compile(
            "(?<trip>\\d+)\\s*AT\\b|(?<frame>\\d+)\\s*AF\\b|(?<ma>\\d+)\\s*MA\\b|(?<ka>\\d+(?:\\.\\d+)?)\\s*KA\\b"
                    + "|(?<plus>\\d)\\s*P?\\s*\\+\\s*N\\b|(?<poles>\\d)\\s*-?\\s*P(?:OLES?|H)?(?![A-Z])"
                    + "|(?<amps>\\d+(?:\\.\\d+)?)\\s*A(?:MPS?|MPERES?)?(?![A-Z])"
                    + "|(?<word>SINGLE|DOUBLE|TRIPLE|ONE|TWO|THREE|FOUR|SPN|SP&N|TPN|TP&N|DPN|SP|DP|TP|FP|4P)(?![A-Z])|(?<number>\\d+(?:\\.\\d+)?)|(?<letters>(?!X(?![A-Z]))[A-Z]+)");

    private static final Set<String> POLES = Set.of("SPN", "SP", "TPN", "TP", "DPN", "DP", "FP");
    private static final Pattern THOUSANDS = Pattern.compile("(?<=\\d),(?=\\d{3}(?!\\d))");
    private static final Pattern CURVE = Pattern.compile("\\b([BCDK])[- ]?(\\d{1,3})(?=\\s|$|[/,-]|A\\b)");
    /** A mark in the place of the rating: {@code -/3} beside the further poles of {@code 20/3}. */
    private static final Pattern CARRIED_ON = Pattern.compile("[-–—\"]+\\s*/\\s*([1-4])\\s*P?");

    private static final Pattern CORES = Pattern.compile("\\d\\s*[X×]\\s*[\\d.]+(?!\\s*A|[\\d.])");

    private static final Pattern BRACKETS = Pattern.compile("[()\\[\\]]");
    private static final Pattern BARE = Pattern.compile("[(.\\s-]*([1-4])[).\\s-]*");
    private static final Pattern BETWEEN = Pattern.compile("[\\s/\\\\,;:@+&×.#~*-]*|\\s*X\\s*");

    /** More letters than any device is written with. */
    private static final int LONGEST = 40;

    private static final int MOST_DIGITS = 4;

    private static final Set<String> BESIDE = Set.of(
            "A", "B", "C", "D", "K", "Z", "P", "MCB", "MCCB", "RCBO", "RCCB", "RCD", "GFCI", "GFI", "AFCI", "AFI",
            "CAFI", "DF", "ST", "GF", "TYPE", "CB", "BKR", "HACR", "GFEP", "LO", "SWD", "AMP", "AMPS", "POLE", "POLES",
            "T", "G", "GG", "AM", "AT", "LSI", "LSIG", "FUSE", "FU", "BS", "EN", "IEC", "N", "TM", "E", "EX", "EXIST",
            "R", "L", "H", "S", "I", "HT", "LOCK", "ON", "SW", "FDS", "W", "LCK", "EPO", "U", "TRIP", "CURVE", "CHAR",
            "NEW", "SHUNT", "GFP", "SINGLE", "DOUBLE", "TRIPLE", "ONE", "TWO", "THREE", "FOUR");

    boolean isEmpty() {
        return ratingA.isEmpty() && poles.isEmpty();
    }

    public static boolean isStandard(int amperes) {
        return Arrays.binarySearch(STANDARD, amperes) >= 0;
    }

    /** Reads a text that says nothing but a device; empty where it says anything else. */
    public static Optional<DeviceText> parse(String raw) {
        if (raw.length() > LONGEST) return Optional.empty();
        String upper = Texts.upper(raw);
        if (Texts.isFigures(upper)) return ofFigure(upper);
        if (!couldBe(upper) || isPhase(upper)) return Optional.empty();
        Matcher carried = CARRIED_ON.matcher(upper);
        if (!isDigit(upper.charAt(0)) && carried.matches())
            return Optional.of(new DeviceText(Optional.empty(), Optional.of(upper.charAt(carried.start(1)) - '0')));
        String text = isWritten(upper, ",") ? THOUSANDS.matcher(upper).replaceAll("") : upper;
        if (isWritten(text, "BCDK")) text = CURVE.matcher(text).replaceAll("$2");
        if (isWritten(text, "()[]")) text = BRACKETS.matcher(text).replaceAll(" ");
        if (text.isBlank() || Texts.saysNothing(text)) return Optional.empty();
        // four cores of 16 square millimetres are written so as well
        if (isWritten(text, "X×") && CORES.matcher(text).find()) return Optional.empty();
        Parts parts = new Parts();
        Matcher m = PART.matcher(text), between = BETWEEN.matcher(text);
        int last = 0;
        while (m.find()) {
            if (!between.region(last, m.start()).matches()) return Optional.empty();
            last = m.end();
            if (!parts.take(m)) return Optional.empty();
        }
        if (!between.region(last, text.length()).matches()) return Optional.empty();
        return parts.device();
    }

    /** Most entries that say a device say nothing but a rating, or nothing but poles. */
    private static Optional<DeviceText> ofFigure(String digits) {
        if (digits.length() > MOST_DIGITS) return Optional.empty();
        int rating = Integer.parseInt(digits);
        return rating == 0 ? Optional.empty() : Optional.of(new DeviceText(Optional.of(rating), Optional.empty()));
    }

    /** It has a figure or begins with poles in words; where it begins with any word, that is one said of devices. */
    private static boolean couldBe(String upper) {
        int from = 0;
        while (from < upper.length() && !isLetter(upper.charAt(from)) && !isDigit(upper.charAt(from))) from++;
        int to = from;
        while (to < upper.length() && isLetter(upper.charAt(to))) to++;
        String word = upper.substring(from, to);
        boolean poles = POLES.contains(word);
        if (!word.isEmpty() && !poles && !BESIDE.contains(word)) return false;
        return poles && from == 0 || Texts.hasFigure(upper);
    }

    /** {@code L2} is the phase of a further pole. */
    private static boolean isPhase(String upper) {
        return upper.length() == 2 && upper.charAt(0) == 'L';
    }

    /** One of these letters or marks stands in it. */
    private static boolean isWritten(String text, String some) {
        for (int i = 0; i < text.length(); i++) if (some.indexOf(text.charAt(i)) >= 0) return true;
        return false;
    }

    private static boolean isWordy(String text) {
        return !text.isEmpty() && Character.isLetter(text.charAt(0));
    }

    private static boolean isLetter(char c) {
        return c >= 'A' && c <= 'Z';
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    /** The parts as they come; two bare numbers are told apart by their sizes. */
    private static final class Parts {
        private Integer rating;
        private Integer poles;
        private Integer first;
        private Integer second;
        private int bare;

        boolean take(Matcher m) {
            if (m.group("ma") != null || m.group("ka") != null || m.group("frame") != null) return true;
            if (m.group("trip") != null) return set(m.group("trip"));
            if (m.group("amps") != null) return set(m.group("amps"));
            if (m.group("plus") != null) return pole(Integer.parseInt(m.group("plus")));
            if (m.group("poles") != null) return pole(Integer.parseInt(m.group("poles")));
            if (m.group("word") != null) return pole(polesOf(m.group("word")));
            if (m.group("letters") != null) return BESIDE.contains(m.group("letters"));
            String number = whole(m.group("number"));
            if (number.contains(".") || number.length() > MOST_DIGITS) return false;
            if (bare++ == 0) first = Integer.valueOf(number);
            else second = Integer.valueOf(number);
            return bare <= 2;
        }

        /** As a table of figures prints whole ones: {@code 20.0}. */
        private static String whole(String number) {
            int point = number.indexOf('.');
            return point > 0 && number.substring(point + 1).chars().allMatch(c -> c == '0')
                    ? number.substring(0, point)
                    : number;
        }

        private boolean set(String written) {
            String amps = whole(written);
            if (rating != null || amps.contains(".") || amps.length() > MOST_DIGITS) return false;
            rating = Integer.valueOf(amps);
            return true;
        }

        private boolean pole(int count) {
            if (poles != null || count < 1 || count > 4) return false;
            poles = count;
            return true;
        }

        Optional<DeviceText> device() {
            if (first != null && second != null) {
                if (rating != null || poles != null) return Optional.empty();
                boolean polesLast = second <= 4 && first > second;
                rating = polesLast ? first : second;
                poles = polesLast ? second : first;
                if (poles > 4 || poles < 1) return Optional.empty();
            } else if (first != null) {
                if (rating == null) rating = first;
                else if (poles == null && first <= 4) poles = first;
                else return Optional.empty();
            }
            if (rating != null && rating == 0) return Optional.empty();
            return Optional.of(new DeviceText(Optional.ofNullable(rating), Optional.ofNullable(poles)));
        }
    }

    private static int polesOf(String word) {
        return switch (word.charAt(0)) {
            case 'S', 'O' -> 1;
            case 'D' -> 2;
            case 'T' -> word.equals("TWO") ? 2 : 3;
            default -> 4;
        };
    }

    /**
     * A number of poles by itself: {@code 3}, {@code 3P}, {@code TP}.
     *
     * @param device what the text says as a device
     */
    static Optional<Integer> polesOnly(String raw, Optional<DeviceText> device) {
        String t = raw.strip();
        if (t.length() == 1)
            return t.charAt(0) >= '1' && t.charAt(0) <= '4' ? Optional.of(t.charAt(0) - '0') : Optional.empty();
        // a figure of several digits is a rating
        boolean mayBe = !isWordy(t) && !Texts.isFigures(t);
        Matcher bare = BARE.matcher(t);
        if (mayBe && bare.matches()) return Optional.of(bare.group(1).charAt(0) - '0');
        return device.filter(d -> d.ratingA().isEmpty()).flatMap(DeviceText::poles);
    }
}
