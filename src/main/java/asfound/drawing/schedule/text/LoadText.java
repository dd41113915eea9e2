package asfound.drawing.schedule.text;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A load as written, in VA. */
public final class LoadText {

    private static final Pattern LOAD = Pattern.compile(
            "[~≈(]?\\s*(\\d{1,3}(?:[,' ]\\d{3})+|\\d+|(?=\\.\\d))(\\.\\d+|,\\d{1,2})?\\s*(k?)\\s*(VA|W|WATTS)?\\s*[)*†‡]*",
            Pattern.CASE_INSENSITIVE);
    /** A point before three figures is a decimal point in kVA; in VA, of which nothing is stated to a thousandth, one of thousands. */
    private static final Pattern POINT_OF_THOUSANDS = Pattern.compile("[1-9]\\d{0,2}\\.\\d{3}");

    private static final Pattern THOUSANDS = Pattern.compile("[,' ]");

    /** More letters than any figure of a load is written with. */
    private static final int LONGEST = 40;

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

    /** A figure of a load, with a unit or without one, as the notes of a sheet may mark it. */
    static boolean isFigure(String text) {
        return mayBe(text) && LOAD.matcher(text).matches();
    }

    /** The figure in VA; {@code thousands} where the heading gives kVA or kW. Empty where it is no figure. */
    public static Optional<Double> parse(String raw, boolean thousands) {
        String text = raw.strip();
        if (!mayBe(text)) return Optional.empty();
        Matcher m = LOAD.matcher(text);
        if (!m.matches()) return Optional.empty();
        String written = THOUSANDS.matcher(m.group(1)).replaceAll("") + decimals(m.group(2));
        double figure = Double.parseDouble(written);
        boolean kilo = !m.group(3).isEmpty() || thousands && m.group(4) == null;
        boolean point =
                written.indexOf('.') > 0 && POINT_OF_THOUSANDS.matcher(written).matches();
        return Optional.of(kilo || point ? Math.round(figure * 1_000_000) / 1000.0 : figure);
    }

    private static boolean mayBe(String text) {
        if (text.isEmpty() || text.length() > LONGEST) return false;
        char c = text.charAt(0);
        return c >= '0' && c <= '9' || text.length() > 1 && ".~≈(".indexOf(c) >= 0;
    }

    /** A comma before one or two figures is a decimal comma. */
    private static String decimals(String written) {
        return written == null ? "" : written.replace(',', '.');
    }
}
