package asfound.drawing.schedule;

import asfound.model.Directory.Mains;
import asfound.model.Voltage;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Header values as written. */
final class Values {

    private static final Pattern VOLTAGE = Pattern.compile(
            "(?<![\\d.A-Z-])(\\d{3}\\s*Y?\\s*/\\s*\\d{2,3}|\\d{2,3}\\s*/\\s*\\d{3}Y?)\\s*(?:V(?:AC|OLTS?)?)?(?![\\dA])"
                    + "|(?<![\\d.A-Z-])(\\d{3})\\s*V(?:AC|OLTS?)?\\b",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern PAIR =
            Pattern.compile("(\\d{2,3})\\s*Y?\\s*/\\s*(\\d{2,3}).*", Pattern.CASE_INSENSITIVE);

    /** Without its unit only a usual voltage is one: 125 under a label is rather a rating. */
    private static final Pattern BARE_VOLTAGE = Pattern.compile(
            "(?:1(?:00|10|15|20|27|33)|2(?:00|08|20|30|40|77)|3(?:47|80|90)|4(?:00|15|16|40|60|80)|5(?:25|50|75)|6(?:00|60|90))(?:\\.0)?(?:\\s*V)?|\\d{3}\\s*V",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern PHASES = Pattern.compile(
            "(?<![\\d/.A-Z-])([13])\\s*-?\\s*(?:PH(?:ASES?)?\\b\\.?|[ØΦφ∅⌀])|\\b(SINGLE|THREE)[- ]PHASE|\\b(TP&?N?|SP&?N?)\\b",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern WIRES = Pattern.compile(
            "(?<![\\d/.A-Z-])([2345])\\s*-?\\s*(?:W(?:IRES?)?\\b)|\\b(THREE|FOUR)[- ]WIRE|\\b(TP&?N)\\b",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern KA = Pattern.compile(
            "(\\d+(?:\\.\\d+)?)\\s*(?:KA(?:IC)?\\b|K\\.?A\\.?I\\.?C|K\\s*AIC|K\\b)|(\\d{1,3},?000)\\s*(?:A\\.?I\\.?C|AMPS? ?(?:SYM|RMS|INT)|A\\b ?(?:SYM|RMS|INT))",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern BUS = Pattern.compile(
            "(\\d{2,4})\\s*(?:A|AMPS?|AMPERES?)?\\s*-?\\s*(?:COPPER |CU |AL |MAIN )?(?:BUS(?:SING|ED|BARS?)?)\\b"
                    + "|\\bBUS(?:SING|BARS?)?(?:\\s+(?:RATING|RATED|SIZE))?\\s*[-:=@(]?\\s*(\\d{2,4})\\s*A(?:MPS?)?\\b",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern LUGS = Pattern.compile(
            "\\bM\\.?L\\.?O\\b\\.?|\\bMAIN\\s+LUGS?(?:\\s+ONLY)?|\\bLUGS?\\s+ONLY|\\bLUGS\\b",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern LUGS_A = Pattern.compile(
            "(?<![\\d.,/])(\\d{2,4})\\s*-?\\s*(?:A|AMPS?|AMPERES?)?\\s*[-,(]?\\s*(?:M\\.?L\\.?O\\b|MAIN\\s+LUGS?|LUGS\\s+ONLY)"
                    + "|(?:\\bM\\.?L\\.?O\\b\\.?|\\bLUGS?(?:\\s+ONLY)?)\\s*[-,:(@]?\\s*(\\d{2,4})\\s*(?:A|AMPS?|AMPERES?)\\b",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern BREAKER = Pattern.compile(
            "\\bM\\.?C\\.?C?\\.?B\\b\\.?|\\b(?:MAIN\\s+)?(?:CIRCUIT\\s+)?(?:BREAKER|BRKR|BKR)\\b|\\bMAIN\\s+C\\.?B\\b|\\bACB\\b|\\bCB\\b",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern MAIN_A = Pattern.compile(
            "(\\d{2,4})\\s*-?\\s*(?:A|AT|AMPS?|AMPERES?)?\\s*[-,/]?\\s*(?:\\d\\s*-?\\s*P(?:OLES?)?\\s*[-,/]?\\s*)?(?:M\\.?C\\.?C?\\.?B\\b|MAIN\\s+(?:CIRCUIT\\s+)?(?:BREAKER|BKR|BRKR|CB)\\b|MAIN\\b(?!\\s*(?:LUG|BUS)))"
                    + "|\\b(?:M\\.?C\\.?B|MAIN\\s+(?:CIRCUIT\\s+)?(?:BREAKER|BKR|BRKR|CB|SWITCH|ISOLATOR)|INCOMER)\\s*[-:,(@]?\\s*(\\d{2,4})\\s*(?:A|AT|AMPS?)?\\b",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern AMPS = Pattern.compile(
            "(?<![\\d.A-Z/-])(\\d{2,4})(?![\\d.]|\\s*(?:V|Y|/\\d{2}|KA|K\\b|P\\b|W\\b|MM|AF))\\s*(?:A(?:T|MPS?|MPERES?)?\\b)?",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern POSITIONS = Pattern.compile(
            "([1-9]\\d{0,2})\\s*-?\\s*(?:CIRCUITS?|CKTS?\\.?|CCTS?|WAYS?|POLES?|SPACES?|POLE SPACES)?",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern NOTHING = Pattern.compile("(?i)[-–—_./\\s]*|n/?a|none|tbd|\\?+");

    /** A panel's name is no longer. */
    private static final int LONGEST_NAME = 32;

    private static final Pattern NO_NAME = Pattern.compile(
            "\\d{1,3}(?:,\\d{3})+.*|\\d[\\d.]*\\s*(?:A|AMPS?|V|VOLTS?|K|KA|KAIC|KVA|PH|W)"
                    + "|(?:of|for|the|in|at)\\b.*|k?(?:va|w|a)|amps?|volts?|hp",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern UNIT_LETTER = Pattern.compile("[AW]");
    /** Words of the sheet's own language. */
    private static final Pattern OF_THE_SHEET = Pattern.compile(
            "\\b(?:schedules?|directory|directories|details?|diagram|legend|notes?|data|location|voltage|volts|designation"
                    + "|information|type|name|total|totals|connected|load|loads|phase|rating|mounting|fed|from|continued"
                    + "|cover|door|size|sheet|lists?|circuits?|per|shall|only|is|are|was|located|supplied|serves)\\b",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern KIND =
            Pattern.compile("^(?:panel(?:board)?|pnl\\.?|distribution board)\\s+(?=\\S)", Pattern.CASE_INSENSITIVE);
    private static final Pattern CONTINUED =
            Pattern.compile("\\s*\\(?\\s*\\b(?:continued|cont'?d|cont\\.?)\\b\\s*\\.?\\)?$", Pattern.CASE_INSENSITIVE);
    private static final Pattern IN_BRACKETS = Pattern.compile(
            "(?<=\\d\\S{0,6})\\s+\\((?:sections?|sect?\\.|part|existing|new|relocated|revised)\\b[^()]*\\)?$",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern WITH_VOLTAGE = Pattern.compile(
            "^([A-Z0-9][A-Z0-9./#-]{0,15})[\\s,–—-]+\\d{3}Y?\\s*/\\s*\\d{3}Y?\\s*V?(?:OLTS?)?\\b.*$",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern BEHIND_DASH = Pattern.compile("(?<=\\d\\S{0,6})\\s+[-–—]\\s+.*$");
    private static final Pattern QUOTES = Pattern.compile("^[\"'“”‘’(\\[_]+|[\"'“”‘’)\\],;:_]+$");

    private static final Pattern TWO_DIGITS = Pattern.compile("\\d{2,3}");
    private static final Pattern PHASE_WIRE =
            Pattern.compile("[13]\\s*(ph|ø|φ|phase|p)?\\D{0,8}[2345]", Pattern.CASE_INSENSITIVE);
    private static final Pattern VOLTAGE_PHASES_WIRES = Pattern.compile(
            ".*\\d{3}\\s*V?(?:AC|OLTS?)?\\s*[/,;-]\\s*([13])\\s*(?:PH?|[ØΦφ∅⌀])?\\s*[/,;-]\\s*([2345])\\s*W?",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern NONE = Pattern.compile("none|n/?a", Pattern.CASE_INSENSITIVE);
    private static final Pattern BARE_WIRES = Pattern.compile("([2345])(?:\\s*\\+\\s*(?:G|GND|GROUND|E|PE))?");
    private static final Pattern BARE_KA = Pattern.compile(
            "(\\d{1,3}(?:,\\d{3})|\\d+(?:\\.\\d+)?)(?:\\s*(?:A|AMPS?|SYM\\.?|RMS|A\\.?I\\.?C\\.?|MIN\\.?))*",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern SUM = Pattern.compile(
            "(\\d{1,3}(?:[,']\\d{3})+|\\d+)(\\.\\d+)?\\s*(k?)\\s*(?:VA|W|A|AMPS?)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern THOUSANDS = Pattern.compile("[,']");

    private static final Pattern SENTENCE_END = Pattern.compile(
            "(?<=\\d[A-Z]?)\\.(?=\\s)|\\.$|(?:[.,;]|\\s[-–—])\\s+(?=\\d{3}\\s?[YV/]|\\d+\\s?(?:A|AMP|AMPS|V|PH|PHASE|W|WIRE|KA|KAIC)\\b)",
            Pattern.CASE_INSENSITIVE);

    /** {@code 230V single phase}: a kind of supply, and no equipment that gives it. */
    private static final Pattern SYSTEM_ALONE = Pattern.compile(
            "\\d{3}Y?(?:/\\d{3}Y?)?\\s*V(?:AC|OLTS?)?(?:[,\\s]+(?:SINGLE|THREE|[1-5])?[\\s-]*(?:PHASE|PH|WIRE|W)\\b)*",
            Pattern.CASE_INSENSITIVE);
    /** {@code 60A MCB} behind {@code 125A BUS}: what stands behind the word is another thing's. */
    private static final Pattern RATING_OF_MAIN =
            Pattern.compile("\\d+\\s*A(?:MPS?)?\\s*M\\.?C\\.?B\\b", Pattern.CASE_INSENSITIVE);

    private Values() {}

    /** Nothing is filled in, or a dash. */
    static boolean isNothing(String text) {
        return NOTHING.matcher(text).matches();
    }

    /** Whether a text can be the value of a field at all. */
    static boolean fits(Field field, String text) {
        if (text.isBlank() || text.length() > 90) return false;
        return switch (field) {
            case DESIGNATION -> isNameBehindItsWord(text);
            case LOCATION, MOUNTING -> !NOTHING.matcher(text).matches() && text.length() < 60;
            case FED_FROM ->
                !NOTHING.matcher(text).matches()
                        && text.length() < 60
                        && !SYSTEM_ALONE.matcher(text).matches();
            case VOLTAGE ->
                Voltage.parse(text).isPresent()
                        && TWO_DIGITS.matcher(text).find()
                        && voltageOf(text).isPresent();
            case PHASES -> phases(text, true).isPresent();
            case WIRES -> wires(text, true).isPresent();
            case PHASE_WIRE -> PHASE_WIRE.matcher(text).find();
            case BUS -> amps(text).isPresent() && !RATING_OF_MAIN.matcher(text).lookingAt();
            case MAIN ->
                mains(text).isPresent()
                        || amps(text).isPresent()
                        || NONE.matcher(text).matches();
            case MAIN_LUGS -> true;
            case MAINS_RATING -> mains(text).isPresent() || amps(text).isPresent();
            case POSITIONS -> positions(text).isPresent();
            case INTERRUPTING -> kiloamperes(text).isPresent();
            case AMPERES, LOAD_A, LOAD_B, LOAD_C, LOAD_TOTAL -> figure(text).isPresent();
            case OTHER -> true;
        };
    }

    /** Behind the word panel or a label for it {@code A} and {@code W} are names; elsewhere they are units. */
    static boolean isNameBehindItsWord(String text) {
        return isName(text) || UNIT_LETTER.matcher(name(text)).matches();
    }

    /** A panel's name: no word of the sheet's own language, and not too long. */
    static boolean isName(String text) {
        String t = name(text);
        if (t.length() > LONGEST_NAME || t.isEmpty() || NO_NAME.matcher(t).matches()) return false;
        if (NOTHING.matcher(t).matches() || OF_THE_SHEET.matcher(t).find()) return false;
        Map<Role, Double> heading = Headings.weigh(t);
        return heading.getOrDefault(Role.POSITION, 0.0) < 0.8 && heading.getOrDefault(Role.DESCRIPTION, 0.0) < 0.9;
    }

    /**
     * The text up to the end of its sentence, or to a voltage, rating or number of phases that follows a comma or stop. The
     * stop of an abbreviation ends none: {@code MDP CKT. 12}.
     */
    static String sentence(String text) {
        Matcher end = SENTENCE_END.matcher(text);
        // '2. OG corridor': a figure alone is no sentence
        while (end.find())
            if (!isFigures(text.substring(0, end.start()).strip()))
                return text.substring(0, end.start()).strip();
        return text.strip();
    }

    private static boolean isFigures(String text) {
        return text.isEmpty() || Texts.isFigures(text);
    }

    static String name(String text) {
        String t = KIND.matcher(text.strip()).replaceFirst("");
        t = CONTINUED.matcher(t).replaceAll("");
        t = WITH_VOLTAGE.matcher(t).replaceAll("$1");
        t = IN_BRACKETS.matcher(BEHIND_DASH.matcher(t).replaceAll("")).replaceAll("");
        return QUOTES.matcher(t).replaceAll("").strip();
    }

    static Optional<String> voltageOf(String text) {
        Matcher m = VOLTAGE.matcher(text);
        if (m.find()) return Optional.of(m.group().strip());
        Matcher bare = BARE_VOLTAGE.matcher(text.strip());
        return bare.matches() ? Optional.of(text.strip()) : Optional.empty();
    }

    /**
     * Two figures with a slash are the voltages of a system only where one is twice the other or as many times as line to
     * line is line to neutral: {@code 180/23} is two rooms.
     */
    static boolean isSystem(String voltage) {
        Matcher m = PAIR.matcher(voltage.strip());
        if (!m.matches()) return true;
        double a = Double.parseDouble(m.group(1)), b = Double.parseDouble(m.group(2));
        double ratio = Math.max(a, b) / Math.max(1, Math.min(a, b));
        return ratio > 1.65 && ratio < 2.15;
    }

    /** Behind a voltage with nothing but the figures of phases and wires, {@code 277/480V/3/4}: the one or the other. */
    static Optional<Integer> behindVoltage(String text, boolean wires) {
        Matcher m = VOLTAGE_PHASES_WIRES.matcher(text.strip());
        return m.matches() ? Optional.of(Integer.valueOf(m.group(wires ? 2 : 1))) : Optional.empty();
    }

    static Optional<Integer> phases(String text, boolean labelled) {
        String t = text.strip();
        if (labelled && (t.equals("1") || t.equals("3"))) return Optional.of(Integer.valueOf(t));
        if (labelled && (t.equalsIgnoreCase("single") || t.equalsIgnoreCase("one"))) return Optional.of(1);
        if (labelled && t.equalsIgnoreCase("three")) return Optional.of(3);
        Matcher m = PHASES.matcher(text);
        if (!m.find()) return Optional.empty();
        if (m.group(1) != null) return Optional.of(Integer.valueOf(m.group(1)));
        String word = (m.group(2) != null ? m.group(2) : m.group(3)).toUpperCase(Locale.ROOT);
        return Optional.of(word.startsWith("T") ? 3 : 1);
    }

    static Optional<Integer> wires(String text, boolean labelled) {
        Matcher bare = BARE_WIRES.matcher(text.strip());
        if (labelled && bare.matches()) return Optional.of(Integer.valueOf(bare.group(1)));
        Matcher m = WIRES.matcher(text);
        if (!m.find()) return Optional.empty();
        if (m.group(1) != null) return Optional.of(Integer.valueOf(m.group(1)));
        if (m.group(2) != null) return Optional.of(m.group(2).equalsIgnoreCase("four") ? 4 : 3);
        return Optional.of(4);
    }

    static Optional<Double> kiloamperes(String text) {
        Matcher m = KA.matcher(text);
        if (m.find()) {
            double figure = Double.parseDouble((m.group(1) != null ? m.group(1) : m.group(2)).replace(",", ""));
            return plausibleKa(figure);
        }
        Matcher bare = BARE_KA.matcher(text.strip());
        return bare.matches() ? plausibleKa(Double.parseDouble(bare.group(1).replace(",", ""))) : Optional.empty();
    }

    private static Optional<Double> plausibleKa(double figure) {
        double kilo = figure >= 1000 ? figure / 1000 : figure;
        return kilo >= 1 && kilo <= 300 ? Optional.of(kilo) : Optional.empty();
    }

    static Optional<Integer> amps(String text) {
        Matcher m = AMPS.matcher(text);
        while (m.find()) {
            int value = Integer.parseInt(m.group(1));
            if (value >= 15 && value <= 6000) return Optional.of(value);
        }
        return Optional.empty();
    }

    /** How many positions a panel has: {@code 42}, {@code 42 CKTS}. */
    static Optional<Integer> positions(String text) {
        Matcher m = POSITIONS.matcher(text.strip());
        return m.matches() ? Optional.of(Integer.valueOf(m.group(1))) : Optional.empty();
    }

    static Optional<Integer> busOf(String text) {
        Matcher m = BUS.matcher(text);
        return m.find() ? Optional.of(Integer.valueOf(m.group(1) != null ? m.group(1) : m.group(2))) : Optional.empty();
    }

    static Optional<Integer> mainOf(String text) {
        Matcher m = MAIN_A.matcher(text);
        return m.find() ? Optional.of(Integer.valueOf(m.group(1) != null ? m.group(1) : m.group(2))) : Optional.empty();
    }

    static Optional<Mains> mains(String text) {
        if (LUGS.matcher(text).find()) return Optional.of(Mains.LUGS);
        if (BREAKER.matcher(text).find()) return Optional.of(Mains.BREAKER);
        return Optional.empty();
    }

    static boolean isMainWord(String text) {
        return mains(text).isPresent();
    }

    /** What lugs are rated, which is what the bus is: {@code 100A MLO}, {@code MLO, 225 A}. */
    static Optional<Integer> lugsOf(String text) {
        Matcher m = LUGS_A.matcher(text);
        return m.find() ? Optional.of(Integer.valueOf(m.group(1) != null ? m.group(1) : m.group(2))) : Optional.empty();
    }

    /** A figure with its unit, as sums are written: in VA or amperes. */
    static Optional<Double> figure(String text) {
        Matcher m = SUM.matcher(text.strip());
        if (!m.matches()) return Optional.empty();
        double figure = Double.parseDouble(
                THOUSANDS.matcher(m.group(1)).replaceAll("") + (m.group(2) == null ? "" : m.group(2)));
        return Optional.of(m.group(3).isEmpty() ? figure : Math.round(figure * 1_000_000) / 1000.0);
    }
}
