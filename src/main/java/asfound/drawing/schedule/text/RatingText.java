package asfound.drawing.schedule.text;

import asfound.model.Directory.Mains;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Ratings and breaking capacities as a header writes them. */
public final class RatingText {

    private static final Pattern KA = Pattern.compile(
            "(\\d+(?:\\.\\d+)?)\\s*(?:KA(?:IC)?\\b|K\\.?A\\.?I\\.?C|K\\s*AIC|K\\b)|(\\d{1,3},?000)\\s*(?:A\\.?I\\.?C|AMP(?:ERE)?S? ?(?:SYM|RMS|INT)|A\\b ?(?:SYM|RMS|INT)"
                    + "|(?:(?:RMS|SYM(?:METRICAL)?\\b\\.?)\\s*)+A(?:MP(?:ERE)?S?)?\\b)",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern BUS = Pattern.compile(
            "(\\d{2,4})\\s*(?:A|AMPS?|AMPERES?)?\\s*-?\\s*(?:COPPER |CU |AL |MAIN )?(?:BUS(?:SING|ED|BARS?)?)\\b"
                    + "|\\b(?:BUS(?:SING|BARS?)?(?:\\s+CHAMBER)?|PAN\\s+ASSEMBLY)(?:\\s+(?:RATING|RATED|SIZE)(?:\\s+(?:AT|FOR))?)?\\s*[-:=@(]?\\s*(\\d{2,4})\\s*A(?:MPS?)?\\b"
                    + "|\\b(?:IT|PANEL(?:BOARD)?|BOARD)\\s+IS\\s+RATED\\s+(?:AT\\s+|FOR\\s+)?(\\d{2,4})\\s*A(?:MP(?:ERE)?S?)?\\b",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern LUGS = Pattern.compile(
            "\\bM\\.?L\\.?O\\b\\.?|\\bMAIN\\s+LUGS?(?:\\s+ONLY)?|\\bLUGS?\\s+ONLY|\\bLUGS\\b"
                    + "|\\bCOSSES(?:\\s+(?:SEULEMENT|PRINCIPALES))?\\b|\\bZAPATAS(?:\\s+PRINCIPALES)?\\b",
            Pattern.CASE_INSENSITIVE);
    /** Lugs from which a further panel is fed, beside whatever the mains are: {@code 150A MCB W/ ISOLATED SUB-FEED LUGS}. */
    private static final Pattern FURTHER_LUGS = Pattern.compile(
            "\\b(?:FEED[-\\s]*(?:THRU|THROUGH|THR)|THRU[-\\s]*FEED|THROUGH[-\\s]*FEED|SUB[-\\s]*FEED|DOUBLE|NEUTRAL|GROUND|EQUIPMENT)[-\\s]*(?:MAIN[-\\s]*)?LUGS?\\b",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern LUGS_A = Pattern.compile(
            "(?<![\\d.,/])(\\d{2,4})\\s*-?\\s*(?:A|AMPS?|AMPERES?)?\\s*[-,(]?\\s*(?:M\\.?L\\.?O\\b|MAIN\\s+LUGS?|LUGS\\s+ONLY)"
                    + "|(?:\\bM\\.?L\\.?O\\b\\.?|\\bLUGS?(?:\\s+ONLY)?)\\s*[-,:(@]?\\s*(\\d{2,4})\\s*(?:A|AMPS?|AMPERES?)\\b",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern WITH_UNIT =
            Pattern.compile("(?<![\\d.,/-])(\\d{2,4})\\s*-?\\s*(?:A|AMPS?|AMPERES?)\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern BREAKER = Pattern.compile(
            "\\bM\\.?C\\.?C?\\.?B\\b\\.?|\\b(?:MAIN\\s+)?(?:CIRCUIT\\s+)?(?:BREAKER|BRKR|BKR)\\b|\\bMAIN\\s+C\\.?B\\b|\\bACB\\b|\\bCB\\b",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern MAIN_A = Pattern.compile(
            "(\\d{2,4})\\s*-?\\s*(?:A|AT|AMPS?|AMPERES?)?\\s*[-,/]?\\s*(?:\\d\\s*-?\\s*P(?:OLES?)?\\s*[-,/]?\\s*)?(?:M\\.?C\\.?C?\\.?B\\b|MAIN\\s+(?:CIRCUIT\\s+)?(?:BREAKER|BKR|BRKR|CB)\\b|MAIN\\b(?!\\s*(?:LUG|BUS)))"
                    + "|\\b(?:M\\.?C\\.?B|MAIN\\s+(?:CIRCUIT\\s+)?(?:BREAKER|BKR|BRKR|CB|SWITCH)|INCOMER)\\s*[-:,(@]?\\s*(\\d{2,4})\\s*(?:A|AT|AMPS?)?\\b",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern ISOLATOR =
            Pattern.compile("\\bisolators?\\b|\\b(?:switch[- ]?)?disconnectors?\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern AMPS = Pattern.compile(
            "(?:(?<![\\d.A-Z/-])|(?<=\\b[1-4]P-))(\\d{2,4})(?![\\d.]|\\s*(?:V|Y|%|/\\d{2}|KA|K\\b|P\\b|W\\b|MM|AF|A\\s?/\\s?(?:SQ|MM|CM|IN)))\\s*(?:A(?:T|MPS?|MPERES?)?\\b)?",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern BARE_KA = Pattern.compile(
            "(\\d{1,3}(?:,\\d{3})|\\d+(?:\\.\\d+)?)(?:\\s*(?:A|AMP(?:ERE)?S?|SYM(?:METRICAL)?\\.?|RMS|A\\.?I\\.?C\\.?|MIN\\.?))*",
            Pattern.CASE_INSENSITIVE);

    private RatingText() {}

    public static Optional<Integer> amps(String text) {
        Matcher m = AMPS.matcher(text);
        while (m.find()) {
            int value = Integer.parseInt(m.group(1));
            if (value >= 15 && value <= 6000) return Optional.of(value);
        }
        return Optional.empty();
    }

    public static Optional<Integer> busOf(String text) {
        if (!Texts.hasOne(text, "BbIi") || !Texts.hasFigure(text)) return Optional.empty();
        Matcher m = BUS.matcher(text);
        if (!m.find()) return Optional.empty();
        String amperes = m.group(1) != null ? m.group(1) : m.group(2) != null ? m.group(2) : m.group(3);
        return Optional.of(Integer.valueOf(amperes));
    }

    /** An isolator or a disconnector breaks no overcurrent: what it carries is no rating of a main breaker. */
    public static boolean isOfIsolator(String text) {
        return ISOLATOR.matcher(text).find() && !BREAKER.matcher(text).find();
    }

    public static Optional<Integer> mainOf(String text) {
        if (!Texts.hasOne(text, "Mm") || !Texts.hasFigure(text)) return Optional.empty();
        Matcher m = MAIN_A.matcher(text);
        return m.find() && !isOfIsolator(text)
                ? Optional.of(Integer.valueOf(m.group(1) != null ? m.group(1) : m.group(2)))
                : Optional.empty();
    }

    /** What lugs are rated, which is what the bus is: {@code 100A MLO}, {@code MLO, 225 A}. */
    public static Optional<Integer> lugsOf(String text) {
        if (!Texts.hasOne(text, "Ll") || !Texts.hasFigure(text)) return Optional.empty();
        Matcher m = LUGS_A.matcher(text);
        if (m.find()) return Optional.of(Integer.valueOf(m.group(1) != null ? m.group(1) : m.group(2)));
        return LUGS.matcher(text).find() ? onlyAmperes(text) : Optional.empty();
    }

    /** {@code 225A, 120/208V, 3 PHASE, 4 WIRE, M.L.O.}: the one rating of the line. */
    private static Optional<Integer> onlyAmperes(String text) {
        Matcher m = WITH_UNIT.matcher(text);
        if (!m.find()) return Optional.empty();
        Integer rating = Integer.valueOf(m.group(1));
        return m.find() ? Optional.empty() : Optional.of(rating);
    }

    public static Optional<Mains> mains(String text) {
        if (Texts.hasOne(text, "Ll")
                && LUGS.matcher(FURTHER_LUGS.matcher(text).replaceAll("")).find()) return Optional.of(Mains.LUGS);
        if (Texts.hasOne(text, "Bb") && BREAKER.matcher(text).find()) return Optional.of(Mains.BREAKER);
        return Optional.empty();
    }

    public static boolean isMainWord(String text) {
        return mains(text).isPresent();
    }

    public static Optional<Double> kiloamperes(String text) {
        if (!Texts.hasFigure(text)) return Optional.empty();
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
}
