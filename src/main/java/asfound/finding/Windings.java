package asfound.finding;

import asfound.model.Voltage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The two sides of a transformer as a drawing states them: {@code 480-208Y/120}, {@code 13.8kV-480Y/277V},
 * {@code 480V DELTA TO 208Y/120V}, {@code 11000/433/250}. Which side is supplied is not taken from the order: one that
 * steps up is often listed with its higher side first (common practice).
 *
 * @param one the side written first, usually the primary
 * @param other the side written after it
 */
record Windings(Voltage one, Voltage other) {

    /** A figure, and its unit where it has one. Figures of other units (kVA, A, %, PH, W, Hz) are none. */
    private static final Pattern FIGURE =
            Pattern.compile("(?<![\\w.-])(\\d{1,3}(?:,\\d{3})+|\\d+(?:\\.\\d+)?)(?:\\s*(KV|V)(?![A-Z]))?(?![\\d.])"
                    + "(?!\\s*(?:K?VA|K?W|HZ|PH|PHASE|WIRE|DEG|C|A|AMPS?|K?AIC|KCMIL)\\b|\\s*[%°Øø#])");

    /** A dash as in {@code K-13} stands between a letter and a figure; between two figures it parts the sides. */
    private static final Pattern DASH = Pattern.compile("(?<=[\\dVYDAΔ/)])\\s*[-–—]\\s*(?=\\d)");

    /** What joins the two figures of one system: {@code 208Y/120}, {@code 208/120}, {@code 12470GRDY/7200}. */
    private static final Pattern JOINT = Pattern.compile("\\s*(?:GRD\\s*)?(?:Y|WYE|STAR)?\\s*/\\s*");

    private static final String PAIR = "\\d{3,5}\\s*Y?\\s*/\\s*\\d{3,5}";

    /** {@code 75 kVA, 480-208Y/120} in a remark. */
    private static final Pattern BOTH_IN_NOTE =
            Pattern.compile("(\\d[\\d.,]*\\s*(?:K?V)?\\s*(?:DELTA|Δ|D)?)\\s*(?:[-–—:]|\\bTO\\b)\\s*(" + PAIR + ")");

    /** {@code 225 kVA to 208Y/120}, {@code secondary 240 V} in a remark. */
    private static final Pattern SECOND_IN_NOTE = Pattern.compile("(?:\\bKVA|V|\\d|DELTA|Δ|^)\\s*\\bTO\\s+(" + PAIR
            + "|\\d{3,5}\\s*V\\b)|\\bSEC(?:\\.|ONDARY)?:?\\s+(" + PAIR + "|\\d{3,5}\\s*V\\b)");

    private record Figure(int volts, boolean kilo, int start, int end) {}

    /** Reads a voltage cell; empty where it names one system, or more than two. */
    static Optional<Windings> parse(String text) {
        List<Voltage> systems = systems(text);
        return systems.size() == 2 ? Optional.of(new Windings(systems.get(0), systems.get(1))) : Optional.empty();
    }

    /** From the voltage cell, or from cell and remark: {@code 480} with {@code 225 kVA to 208Y/120}. */
    static Optional<Windings> of(String cell, String note) {
        Optional<Windings> inCell = parse(cell);
        if (inCell.isPresent()) return inCell;
        String remark = note.toUpperCase(Locale.ROOT);
        List<Voltage> named = systems(cell);
        Matcher both = BOTH_IN_NOTE.matcher(remark);
        if (both.find()) return parse(both.group(1) + " TO " + both.group(2)).filter(w -> w.hasNoYear());
        Matcher second = SECOND_IN_NOTE.matcher(remark);
        if (named.size() != 1 || !second.find()) return Optional.empty();
        return parse(cell + " TO " + (second.group(1) != null ? second.group(1) : second.group(2)));
    }

    /** A remark's {@code 2019 - 208/120 side renewed} states no voltage of 2019. */
    private boolean hasNoYear() {
        return one.lineToLine() < 1900 || one.lineToLine() > 2099;
    }

    /** The systems that a text names, in its order. */
    private static List<Voltage> systems(String text) {
        String plain = DASH.matcher(text.toUpperCase(Locale.ROOT)).replaceAll(" TO ");
        List<Figure> figures = figures(plain);
        List<Voltage> systems = new ArrayList<>();
        for (int i = figures.size() - 1; i >= 0; i--) {
            Figure last = figures.get(i);
            if (i > 0 && isOneSystem(plain, figures.get(i - 1), last)) {
                int a = figures.get(i - 1).volts(), b = last.volts();
                systems.add(0, new Voltage(Math.max(a, b), Optional.of(Math.min(a, b))));
                i--;
            } else systems.add(0, new Voltage(last.volts(), Optional.empty()));
        }
        return systems;
    }

    private static List<Figure> figures(String text) {
        List<Figure> figures = new ArrayList<>();
        Matcher m = FIGURE.matcher(text);
        while (m.find()) {
            double value = Double.parseDouble(m.group(1).replace(",", ""));
            boolean kilo = "KV".equals(m.group(2));
            int volts = (int) Math.round(kilo ? value * 1000 : value);
            if (volts >= 12) figures.add(new Figure(volts, kilo, m.start(), m.end()));
        }
        return figures;
    }

    /** Joined by a slash, in the ratio of a wye or of a winding tapped in its middle. */
    private static boolean isOneSystem(String text, Figure a, Figure b) {
        if (a.kilo() != b.kilo()
                || !JOINT.matcher(text.substring(a.end(), b.start())).matches()) return false;
        double ratio = Math.max(a.volts(), b.volts()) / (double) Math.min(a.volts(), b.volts());
        return Math.abs(ratio - Math.sqrt(3)) < 0.05 || isTapped(ratio);
    }

    private static boolean isTapped(double ratio) {
        return Math.abs(ratio - 2) < 0.03;
    }

    /** The side is of this system; one of two connections, as {@code 240/480}, is of either. */
    static boolean suits(Voltage side, Voltage system) {
        if (Volts.agree(side, system)) return true;
        return side.lineToNeutral()
                .filter(half -> isTapped(side.lineToLine() / (double) half))
                .filter(half -> Volts.agree(new Voltage(half, Optional.empty()), system)
                        || Volts.agree(new Voltage(side.lineToLine(), Optional.empty()), system))
                .isPresent();
    }

    boolean agreesWith(Windings that) {
        return (suits(one, that.one) && suits(other, that.other)) || (suits(one, that.other) && suits(other, that.one));
    }

    String inWords() {
        return one.inWords() + " to " + other.inWords();
    }
}
