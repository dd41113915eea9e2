package asfound.drawing.schedule.text;

import asfound.model.Voltage;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Header values as written: whether a text can be the value of a field, and what is the same for all fields. */
public final class Values {

    private static final Pattern POSITIONS = Pattern.compile(
            "([1-9]\\d{0,2})\\s*-?\\s*(?:CIRCUITS?|CKTS?\\.?|CCTS?|WAYS?|POLES?|SPACES?|POLE SPACES)?",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern NOTHING = Pattern.compile("(?i)[-–—_./\\s]*|n/?a|none|tbd|\\?+");
    /** {@code Location of the board}: what stands behind the first word of a label is more of the label. */
    private static final Pattern OF_LABEL =
            Pattern.compile("(?:of|frm)\\b.*|(?:panel|board)", Pattern.CASE_INSENSITIVE);

    private static final Pattern TWO_DIGITS = Pattern.compile("\\d{2,3}");
    private static final Pattern PHASE_WIRE =
            Pattern.compile("[13]\\s*(ph|ø|φ|phase|p)?\\D{0,8}[2345]", Pattern.CASE_INSENSITIVE);
    private static final Pattern NONE = Pattern.compile("none|n/?a", Pattern.CASE_INSENSITIVE);
    private static final Pattern SUM = Pattern.compile(
            "(\\d{1,3}(?:[,']\\d{3})+|\\d+)(\\.\\d+)?\\s*(k?)\\s*(?:VA|W|A|AMPS?)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern KILO = Pattern.compile("\\bk(?:VA|W)\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern THOUSANDS = Pattern.compile("[,']");
    private static final Pattern SENTENCE_END = Pattern.compile(
            "(?<=\\d[A-Z]?)\\.(?=\\s)|\\.(?=\\s+(?:It|Its|The|This|Main|Mains|Bus|Busbars?|Rated|Panel|Incomer|Incoming|Fault|Pan|Supply)\\s)|,?\\s+and\\s+(?:is|has)\\b|,?\\s+and(?:\\s+is)?$|\\s+[-–—/]$|\\.$|(?:[.,;]|\\s[-–—])\\s+(?=\\d{3}\\s?[YV/]|\\d+\\s?(?:A|AMP|AMPS|V|PH|PHASE|W|WIRE|KA|KAIC)\\b)",
            Pattern.CASE_INSENSITIVE);
    /** {@code 1. 120/240 volts}: the panel named 1, and what it supplies. */
    private static final Pattern SYSTEM_BEHIND = Pattern.compile("[.,]?\\s+\\d{3}Y?\\s?[V/]", Pattern.CASE_INSENSITIVE);

    /** {@code 230V single phase}: a kind of supply, and no equipment that gives it. */
    private static final Pattern SYSTEM_ALONE = Pattern.compile(
            "\\d{3}Y?(?:/\\d{3}Y?)?\\s*V(?:AC|OLTS?)?(?:[,\\s]+(?:SINGLE|TWO|THREE|FOUR|[1-5])?[\\s-]*(?:PHASE|PH|WIRE|W)\\b)*(?:[,\\s]+(?:TN-?C?-?S|TT|IT|\\d{2}\\s*HZ)\\b)*",
            Pattern.CASE_INSENSITIVE);
    /** {@code 60A MCB} behind {@code 125A BUS}: what stands behind the word is another thing's. */
    private static final Pattern RATING_OF_MAIN =
            Pattern.compile("\\d+\\s*A(?:MPS?)?\\s*M\\.?C\\.?B\\b", Pattern.CASE_INSENSITIVE);

    private Values() {}

    /** What a text behind a label says: behind {@code Supply} may stand the equipment that gives it, or its kind. */
    public static Field announced(Field label, String text) {
        return label == Field.FED_FROM && SYSTEM_ALONE.matcher(text).matches() ? Field.VOLTAGE : label;
    }

    /** Nothing is filled in, or a dash. */
    public static boolean isNothing(String text) {
        return NOTHING.matcher(text).matches();
    }

    /** Whether a text can be the value of a field at all. */
    public static boolean fits(Field field, String text) {
        if (text.isBlank() || text.length() > 90) return false;
        return switch (field) {
            case DESIGNATION -> NameText.isNameBehindItsWord(text);
            case LOCATION, MOUNTING ->
                !NOTHING.matcher(text).matches()
                        && !OF_LABEL.matcher(text).matches()
                        && text.length() < 60
                        && Headings.weight(text, Role.POSITION) < 0.8;
            case FED_FROM ->
                !NOTHING.matcher(text).matches()
                        && !OF_LABEL.matcher(text).matches()
                        && text.length() < 60
                        && !SYSTEM_ALONE.matcher(text).matches();
            case VOLTAGE ->
                Voltage.parse(text).isPresent()
                        && TWO_DIGITS.matcher(text).find()
                        && SystemText.voltageOf(text).isPresent();
            case PHASES -> SystemText.phases(text, true).isPresent();
            case WIRES -> SystemText.wires(text, true).isPresent();
            case PHASE_WIRE -> PHASE_WIRE.matcher(text).find();
            case BUS ->
                RatingText.amps(text).isPresent()
                        && !RATING_OF_MAIN.matcher(text).lookingAt();
            case MAIN, ISOLATOR ->
                RatingText.mains(text).isPresent()
                        || RatingText.amps(text).isPresent()
                        || NONE.matcher(text).matches();
            case MAIN_LUGS -> true;
            case MAINS_RATING ->
                RatingText.mains(text).isPresent() || RatingText.amps(text).isPresent();
            case POSITIONS -> positions(text).isPresent();
            case INTERRUPTING -> RatingText.kiloamperes(text).isPresent();
            case AMPERES, LOAD_A, LOAD_B, LOAD_C, LOAD_TOTAL -> figure(text).isPresent();
            case FAULT_CURRENT, OTHER -> true;
        };
    }

    /**
     * The text up to the end of its sentence, or to a voltage, rating or number of phases that follows a comma or stop. The
     * stop of an abbreviation ends none: {@code MDP CKT. 12}.
     */
    public static String sentence(String text) {
        Matcher end = SENTENCE_END.matcher(text);
        // '2. OG corridor': a figure alone is no sentence
        while (end.find())
            if (!isFigures(text.substring(0, end.start()).strip())
                    || SYSTEM_BEHIND
                            .matcher(text)
                            .region(end.start(), text.length())
                            .lookingAt()) return text.substring(0, end.start()).strip();
        return text.strip();
    }

    private static boolean isFigures(String text) {
        return text.isEmpty() || Texts.isFigures(text);
    }

    /** How many positions a panel has: {@code 42}, {@code 42 CKTS}. */
    public static Optional<Integer> positions(String text) {
        Matcher m = POSITIONS.matcher(text.strip());
        return m.matches() ? Optional.of(Integer.valueOf(m.group(1))) : Optional.empty();
    }

    /** A sum with the unit that stands in its label: {@code Total connected kVA}, {@code 78.6}. */
    public static String inUnitOf(String label, Field field, String value) {
        boolean bare = field.isTotal() && !value.isEmpty() && Character.isDigit(value.charAt(value.length() - 1));
        Matcher kilo = KILO.matcher(label);
        return bare && kilo.find() ? value + " " + kilo.group() : value;
    }

    /** A figure with its unit, as sums are written: in VA or amperes. */
    public static Optional<Double> figure(String text) {
        Matcher m = SUM.matcher(text.strip());
        if (!m.matches()) return Optional.empty();
        double figure = Double.parseDouble(
                THOUSANDS.matcher(m.group(1)).replaceAll("") + (m.group(2) == null ? "" : m.group(2)));
        return Optional.of(m.group(3).isEmpty() ? figure : Math.round(figure * 1_000_000) / 1000.0);
    }
}
