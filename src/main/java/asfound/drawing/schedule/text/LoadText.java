package asfound.drawing.schedule.text;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A load as written, in VA. */
public final class LoadText {

    private static final Pattern LOAD = Pattern.compile(
            "(\\d{1,3}(?:[,' ]\\d{3})+|\\d+)(\\.\\d+|,\\d{1,2})?\\s*(k?)\\s*(VA|W|WATTS)?", Pattern.CASE_INSENSITIVE);

    private static final Pattern THOUSANDS = Pattern.compile("[,' ]");

    private static final int LONGEST_UNIT = 5;
    private static final Pattern UNIT = Pattern.compile("k?(?:VA|W)|WATTS", Pattern.CASE_INSENSITIVE);

    private LoadText() {}

    /** A unit of loads without a figure, which says nothing: {@code VA}, {@code kW}. */
    public static boolean isUnit(String text) {
        return !text.isEmpty()
                && text.length() <= LONGEST_UNIT
                && "kKvVwW".indexOf(text.charAt(0)) >= 0
                && UNIT.matcher(text).matches();
    }

    /** The figure in VA; {@code thousands} where the heading gives kVA or kW. Empty where it is no figure. */
    public static Optional<Double> parse(String raw, boolean thousands) {
        String text = raw.strip();
        if (text.isEmpty() || text.charAt(0) < '0' || text.charAt(0) > '9') return Optional.empty();
        Matcher m = LOAD.matcher(text);
        if (!m.matches()) return Optional.empty();
        double figure = Double.parseDouble(THOUSANDS.matcher(m.group(1)).replaceAll("") + decimals(m.group(2)));
        boolean kilo = !m.group(3).isEmpty() || thousands && m.group(4) == null;
        return Optional.of(kilo ? Math.round(figure * 1_000_000) / 1000.0 : figure);
    }

    /** A comma before one or two figures is a decimal comma. */
    private static String decimals(String written) {
        return written == null ? "" : written.replace(',', '.');
    }
}
