package asfound.finding;

import asfound.model.Directory;
import asfound.model.Stated;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A schedule's own sums beside what its rows add up to. */
final class Sums {

    /** Amperes are worked out by each office in its own way of rounding volts: 2 % besides the last digit. */
    private static final double AMPERES = 0.02;

    /**
     * A sum that does not follow.
     *
     * @param which {@code A}, {@code B}, {@code C}, {@code total} or {@code amperes}
     * @param should what it should read, in the unit and with the digits of what stands there
     */
    record Sum(String which, Stated<Double> stated, String should) {}

    private final Directory directory;

    private Sums(Directory directory) {
        this.directory = directory;
    }

    static List<Sum> of(Directory directory) {
        return new Sums(directory).all();
    }

    private List<Sum> all() {
        List<Sum> sums = new ArrayList<>();
        boolean unread = directory.isDoubtful()
                || directory.circuits().stream()
                        .flatMap(c -> c.loadVA().stream())
                        .anyMatch(Stated::isUnreadable);
        if (unread) return sums;
        var totals = directory.totals();
        for (int i = 0; i < totals.byPhaseVA().size() && i < 3; i++)
            phase(i, totals.byPhaseVA().get(i)).ifPresent(sums::add);
        total(totals.totalVA()).ifPresent(sums::add);
        if (sums.isEmpty()) amperes(totals.amperes()).ifPresent(sums::add);
        return sums;
    }

    private Optional<Sum> phase(int i, Stated<Double> stated) {
        boolean byPhase = directory.circuits().stream()
                .filter(c -> c.loadVA().stream().anyMatch(Stated::isStated))
                .allMatch(c -> c.loadVA().size() > 1);
        if (!byPhase) return Optional.empty();
        List<Stated<Double>> rows = directory.circuits().stream()
                .filter(c -> c.loadVA().size() > i)
                .map(c -> c.loadVA().get(i))
                .toList();
        return differs(String.valueOf((char) ('A' + i)), stated, rows);
    }

    private Optional<Sum> total(Stated<Double> stated) {
        return differs(
                "total",
                stated,
                directory.circuits().stream().flatMap(c -> c.loadVA().stream()).toList());
    }

    private Optional<Sum> differs(String which, Stated<Double> stated, List<Stated<Double>> rows) {
        if (!stated.isStated() || rows.stream().noneMatch(Stated::isStated)) return Optional.empty();
        double sum = 0, tolerance = halfDigit(stated) + 1e-6;
        for (Stated<Double> row : rows) {
            sum += row.or(0.0);
            if (row.isStated()) tolerance += halfDigit(row);
        }
        if (Math.abs(sum - stated.or(0.0)) <= tolerance) return Optional.empty();
        return Optional.of(new Sum(which, stated, inUnitOf(stated, sum)));
    }

    /** From the total: three-phase VA / (sqrt(3) V), single-phase VA / V; or the fullest phase's VA / V to neutral. */
    private Optional<Sum> amperes(Stated<Double> stated) {
        Optional<Double> total = directory.totals().totalVA().value();
        var voltage = directory.header().voltage().value();
        Optional<Integer> phases = Phases.phases(directory);
        if (!stated.isStated() || total.isEmpty() || voltage.isEmpty() || phases.isEmpty()) return Optional.empty();
        double volts = voltage.get().lineToLine() * (phases.get() == 3 ? Math.sqrt(3) : 1);
        double even = total.get() / volts;
        double slack = halfDigit(stated) + halfDigit(directory.totals().totalVA()) / volts;
        boolean fullest = voltage.get().lineToNeutral().isPresent()
                && directory.totals().byPhaseVA().stream()
                        .flatMap(p -> p.value().stream())
                        .anyMatch(va ->
                                near(stated, va / voltage.get().lineToNeutral().get(), slack));
        if (near(stated, even, slack) || fullest) return Optional.empty();
        return Optional.of(new Sum("amperes", stated, inUnitOf(stated, even)));
    }

    private static boolean near(Stated<Double> stated, double amperes, double slack) {
        return Math.abs(stated.or(0.0) - amperes) <= AMPERES * amperes + slack;
    }

    /** Half of the last printed digit, in the value's unit (a figure printed as 1.2 kVA is exact to 50 VA). */
    static double halfDigit(Stated<Double> stated) {
        return 0.5 * unit(stated) * Math.pow(10, -decimals(stated));
    }

    static String inUnitOf(Stated<Double> stated, double value) {
        return String.format(Locale.ROOT, "%." + decimals(stated) + "f", value / unit(stated));
    }

    /** The same sum with another figure, written in the same unit. */
    static Stated<Double> read(Stated<Double> stated, String figure) {
        return Stated.of(
                Double.parseDouble(figure) * unit(stated),
                figure,
                stated.place().orElse(null));
    }

    private static int decimals(Stated<Double> stated) {
        String digits = figure(stated);
        return digits.contains(".") ? digits.length() - digits.indexOf('.') - 1 : 0;
    }

    /** 1000 where the printed figure is in kVA and the value in VA. */
    private static double unit(Stated<Double> stated) {
        String figure = figure(stated);
        double printed = figure.isEmpty() ? 0 : Double.parseDouble(figure);
        return printed != 0 && Math.abs(stated.or(0.0) / printed - 1000) < 1 ? 1000 : 1;
    }

    private static String figure(Stated<Double> stated) {
        var m = java.util.regex.Pattern.compile("\\d+(?:\\.\\d+)?|\\.\\d+")
                .matcher(stated.raw().replace(",", ""));
        return m.find() ? m.group() : "";
    }
}
