package asfound.recordset;

import asfound.model.CircuitRef;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the fields of surveys and one-lines say, each empty where it says nothing that can be understood. */
final class FieldValues {

    /** {@code 100}, {@code 100 A}, {@code 1,200A}, {@code 100A/3P}, {@code 20/1}, {@code 100A GFI}. */
    private static final Pattern AMPERES = Pattern.compile(
            "(\\d{1,3}(?:,\\d{3})+|\\d{1,5})(?:\\.0+)?\\s*(?:(?:A|AT|AMP|AMPS|AMPERES?)\\b.*|/\\s*[1234](?:\\s*-?\\s*P(?:OLES?)?)?)?",
            Pattern.CASE_INSENSITIVE);
    /** {@code 225AF/150AT}: of frame and trip, the trip protects. */
    private static final Pattern TRIP =
            Pattern.compile("\\d{1,5}\\s*AF\\s*[/,]?\\s*(\\d{1,5})\\s*AT", Pattern.CASE_INSENSITIVE);

    private static final Pattern POLES =
            Pattern.compile("([1-4])(?:\\.0)?\\s*-?\\s*P?(?:OLES?)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern NUMBER = Pattern.compile(
            "(\\d{1,3}(?:,\\d{3})+|\\d{1,9})(\\.\\d{1,6})?\\s*(?:FT|FEET|')?", Pattern.CASE_INSENSITIVE);
    /** What spreadsheets make of {@code 7-9-11} and {@code 7-9}. */
    private static final Pattern LIKE_A_DAY = Pattern.compile(
            "\\d{1,2}[/.-]\\d{1,2}[/.-]\\d{4}|\\d{4}-\\d{2}-\\d{2}.*"
                    + "|(\\d{1,2}-)?(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]{0,6}(-\\d{1,4})?",
            Pattern.CASE_INSENSITIVE);

    private FieldValues() {}

    static boolean looksLikeDay(String text) {
        return text.matches(".*\\d.*") && LIKE_A_DAY.matcher(text).matches();
    }

    static Optional<Integer> amperes(String text) {
        Matcher trip = TRIP.matcher(text);
        if (trip.matches()) return Optional.of(Integer.parseInt(trip.group(1)));
        Matcher m = AMPERES.matcher(text);
        return m.matches()
                ? Optional.of(Integer.parseInt(m.group(1).replace(",", ""))).filter(a -> a > 0)
                : Optional.empty();
    }

    static Optional<Integer> poles(String text) {
        Matcher m = POLES.matcher(text);
        return m.matches() ? Optional.of(Integer.parseInt(m.group(1))) : Optional.empty();
    }

    static Optional<Double> number(String text) {
        Matcher m = NUMBER.matcher(text);
        if (!m.matches()) return Optional.empty();
        String decimals = m.group(2) == null ? "" : m.group(2);
        return Optional.of(Double.parseDouble(m.group(1).replace(",", "") + decimals));
    }

    static Optional<CircuitRef> device(String text) {
        String tidy = text.replaceAll("^[\\s,;/&+-]+|[\\s,;/&+-]+$", "").replaceAll("(?<=\\d)\\.0$", "");
        boolean says = tidy.chars().anyMatch(Character::isLetterOrDigit)
                && !tidy.toLowerCase(Locale.ROOT).matches("n/?a|unknown|none|not known|tbd");
        return says ? CircuitRef.parse(tidy) : Optional.empty();
    }
}
