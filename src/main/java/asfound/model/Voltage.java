package asfound.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A system voltage: phase to phase, and phase to neutral where given.
 *
 * @param lineToLine volts between phases (or the only figure stated)
 * @param lineToNeutral volts from phase to neutral, where stated
 */
public record Voltage(int lineToLine, Optional<Integer> lineToNeutral) {

    private static final Pattern KILOVOLTS = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*kV", Pattern.CASE_INSENSITIVE);
    private static final Pattern FIGURE =
            Pattern.compile("(?<![\\d.])(\\d{2,3}(?:,\\d{3})|\\d{2,5}(?:\\.\\d+)?)\\s*(kV)?");

    /** Reads {@code 208Y/120}, {@code 120/208V}, {@code 480/277V 3PH 4W}, {@code 13.8 kV}; empty where it names none. */
    public static Optional<Voltage> parse(String text) {
        Matcher m = KILOVOLTS.matcher(text);
        if (m.find())
            return Optional.of(new Voltage((int) Math.round(Double.parseDouble(m.group(1)) * 1000), Optional.empty()));
        List<Integer> figures = new ArrayList<>();
        Matcher f = FIGURE.matcher(text);
        while (f.find() && figures.size() < 2) {
            int volts = (int) Math.round(Double.parseDouble(f.group(1).replace(",", "")));
            if (volts >= 12) figures.add(volts);
        }
        if (figures.isEmpty()) return Optional.empty();
        if (figures.size() == 1) return Optional.of(new Voltage(figures.get(0), Optional.empty()));
        int high = Math.max(figures.get(0), figures.get(1)), low = Math.min(figures.get(0), figures.get(1));
        return Optional.of(high == low ? new Voltage(high, Optional.empty()) : new Voltage(high, Optional.of(low)));
    }

    /** Nothing stated by both contradicts: {@code 480} and {@code 480Y/277} are one system, {@code 480} and {@code 208} two. */
    public boolean agreesWith(Voltage other) {
        if (lineToLine == other.lineToLine)
            return lineToNeutral.isEmpty()
                    || other.lineToNeutral.isEmpty()
                    || lineToNeutral.equals(other.lineToNeutral);
        // one side names only the phase-to-neutral figure of the other's system
        return (lineToNeutral.isEmpty()
                        && other.lineToNeutral.filter(v -> v == lineToLine).isPresent())
                || (other.lineToNeutral.isEmpty()
                        && lineToNeutral.filter(v -> v == other.lineToLine).isPresent());
    }

    /** The usual writing: {@code 480Y/277}; {@code 240/120} where the figures are not in the ratio of a wye. */
    public String inWords() {
        if (lineToNeutral.isEmpty()) return Integer.toString(lineToLine);
        boolean wye = Math.abs(lineToLine / (double) lineToNeutral.get() - Math.sqrt(3)) < 0.05;
        return lineToLine + (wye ? "Y/" : "/") + lineToNeutral.get();
    }
}
