package asfound.drawing.schedule.sample;

import asfound.drawing.schedule.sample.SamplePanel.SampleCircuit;
import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.model.Directory;
import asfound.model.Directory.Circuit;
import asfound.model.Problem;
import asfound.model.Stated;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Compares what was read of drawn samples with what was drawn. A difference counts as said only where a problem names its
 * position or its field, or where one is about the whole table or page: that something was said somewhere is not enough.
 */
final class SampleCheck {

    private final List<SamplePanel> panels;
    private final Shown shown;
    private final ScheduleReading reading;
    /** Whether a difference counts as well where something was said of it. */
    private final boolean all;

    private final List<String> silent = new ArrayList<>();

    private SampleCheck(List<SamplePanel> panels, Shown shown, ScheduleReading reading, boolean all) {
        this.all = all;
        this.panels = panels;
        this.shown = shown;
        this.reading = reading;
    }

    /**
     * Which of a panel's values its sheet shows.
     *
     * @param byPhase the loads stand in a column for each phase
     */
    record Shown(boolean loads, boolean byPhase, boolean totals) {}

    /** What differs without any word about it; empty where all is exact, or where the reader said what it doubts. */
    static List<String> silentDifferences(SampleSheets.Drawn drawn, ScheduleReading reading) {
        return silentDifferences(drawn.panels(), shown(drawn.layout()), reading);
    }

    /** All that differs of a sheet, whether or not the reader said that it doubts it. */
    static List<String> differences(SampleSheets.Drawn drawn, ScheduleReading reading) {
        return differences(drawn.panels(), shown(drawn.layout()), reading);
    }

    private static Shown shown(SampleLayout layout) {
        boolean byPhase = layout.loads() == SampleLayout.LoadStyle.VA_BY_PHASE
                || layout.loads() == SampleLayout.LoadStyle.KVA_BY_PHASE;
        return new Shown(layout.loads() != SampleLayout.LoadStyle.NONE, byPhase, layout.totals());
    }

    static List<String> silentDifferences(List<SamplePanel> panels, Shown shown, ScheduleReading reading) {
        return differences(panels, shown, reading, false);
    }

    /** All that differs, whether or not the reader said that it doubts it. */
    static List<String> differences(List<SamplePanel> panels, Shown shown, ScheduleReading reading) {
        return differences(panels, shown, reading, true);
    }

    private static List<String> differences(
            List<SamplePanel> panels, Shown shown, ScheduleReading reading, boolean all) {
        SampleCheck check = new SampleCheck(panels, shown, reading, all);
        check.run();
        return check.silent;
    }

    private void run() {
        if (!all && reading.problems().stream().anyMatch(SaidOf::wholePage)) return;
        Set<String> names = new TreeSet<>();
        for (SamplePanel panel : panels) {
            names.add(plain(panel.name()));
            Optional<Directory> read = reading.directories().stream()
                    .filter(d -> plain(d.panel()).equals(plain(panel.name())))
                    .findFirst();
            if (read.isEmpty()) {
                boolean nameless = reading.directories().stream()
                        .anyMatch(d -> d.header().designation().isBlank()
                                && !d.problems().isEmpty());
                if (all || !nameless && reading.problems().stream().noneMatch(p -> SaidOf.title(p, panel.name())))
                    silent.add("panel " + panel.name() + " is missing");
            } else differences(panel, read.get());
        }
        for (Directory d : reading.directories())
            if (!names.contains(plain(d.panel()))
                    && (all || d.problems().stream().noneMatch(SaidOf::wholeTable)))
                silent.add("there is no panel " + d.panel());
    }

    private static String plain(String name) {
        return name.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9]", "");
    }

    private void differences(SamplePanel panel, Directory read) {
        List<Problem> said = new ArrayList<>(read.problems());
        for (Problem p : reading.problems()) if (p.message().contains("'" + read.panel() + "'")) said.add(p);
        if (!all && (read.confidence() < Directory.DOUBTFUL || said.stream().anyMatch(SaidOf::wholeTable))) return;
        TreeMap<Integer, String> want = new TreeMap<>(), got = new TreeMap<>();
        Map<Integer, Set<Integer>> around = new TreeMap<>();
        for (SampleCircuit c : panel.circuits())
            for (int p : c.use().equals("space") ? c.positions() : List.of(c.first())) {
                want.put(p, text(panel, c));
                around.computeIfAbsent(p, q -> new TreeSet<>()).addAll(c.positions());
            }
        for (Circuit c : read.circuits())
            for (int p : c.use() == Directory.Use.SPACE ? c.positions() : List.of(c.position())) {
                got.put(p, text(c));
                around.computeIfAbsent(p, q -> new TreeSet<>()).addAll(c.positions());
            }
        TreeSet<Integer> all = new TreeSet<>(want.keySet());
        all.addAll(got.keySet());
        for (int p : all) {
            String w = want.getOrDefault(p, ""), g = got.getOrDefault(p, "");
            if (!w.equals(g) && (this.all || said.stream().noneMatch(s -> SaidOf.positions(s, around.get(p), w))))
                silent.add(panel.name() + " at " + p + ": drawn " + w + ", read " + g);
        }
        header(panel, read.header(), said);
        if (shown.totals()) totals(panel, read.totals());
    }

    private void header(SamplePanel panel, Directory.Header h, List<Problem> said) {
        header(panel, "location", h.location(), said);
        header(panel, "fedFrom", h.fedFrom(), said);
        header(panel, "voltage", h.voltage(), said);
        header(panel, "phases", h.phases(), said);
        header(panel, "wires", h.wires(), said);
        header(panel, "busA", h.busA(), said);
        header(panel, "mainA", h.mainA(), said);
        header(panel, "mains", h.mains(), said);
        header(panel, "interruptingKA", h.interruptingKA(), said);
        header(panel, "mounting", h.mounting(), said);
    }

    /** A header value may stay blank, and is then not stated; it is never another one than is drawn. */
    private void header(SamplePanel panel, String field, Stated<?> read, List<Problem> said) {
        String want = panel.header().get(field);
        if (!read.isStated() || same(want, read.value().orElseThrow())) return;
        if (all || said.stream().noneMatch(p -> SaidOf.header(p, read.raw())))
            silent.add(panel.name() + ": drawn " + field + " " + want + ", read " + read.raw());
    }

    private static boolean same(String want, Object read) {
        if (want == null) return false;
        if (read instanceof Double d) return d == Double.parseDouble(want);
        if (read instanceof asfound.model.Voltage v)
            return asfound.model.Voltage.parse(want).filter(v::equals).isPresent();
        return want.equalsIgnoreCase(read.toString());
    }

    private void totals(SamplePanel panel, Directory.Totals read) {
        double[] sums = new double[3];
        for (SampleCircuit c : panel.circuits()) for (int p : c.positions()) sums[panel.phaseOf(p)] += c.vaPerPole();
        for (int i = 0; i < read.byPhaseVA().size(); i++)
            total(panel, "total of phase " + (i + 1), sums[i], read.byPhaseVA().get(i));
        total(panel, "total", sums[0] + sums[1] + sums[2], read.totalVA());
    }

    private void total(SamplePanel panel, String what, double want, Stated<Double> read) {
        if (read.isStated() && Math.abs(read.or(0.0) - want) > 0.5)
            silent.add(panel.name() + ": drawn " + what + " " + want + ", read " + read.raw());
    }

    private String text(SamplePanel panel, SampleCircuit c) {
        if (c.use().equals("space")) return "space";
        List<Long> loads = new ArrayList<>();
        if (shown.loads() && c.vaPerPole() > 0 && shown.byPhase())
            for (int phase = 0; phase < 3; phase++) {
                int own = phase;
                loads.add(c.vaPerPole()
                        * c.positions().stream()
                                .filter(p -> panel.phaseOf(p) == own)
                                .count());
            }
        else if (shown.loads() && c.vaPerPole() > 0) loads.add((long) c.vaPerPole() * c.poles());
        return c.positions() + " " + c.poles() + "P " + c.rating() + "A " + c.use() + " " + loads
                + (c.use().equals("load") ? " " + c.description().toUpperCase(Locale.ROOT) : "");
    }

    private String text(Circuit c) {
        String use = c.use().name().toLowerCase(Locale.ROOT);
        if (use.equals("space")) return "space";
        List<Object> loads = new ArrayList<>();
        c.loadVA().forEach(l -> loads.add(l.isUnreadable() ? "unreadable" : (Object) Math.round(l.or(0.0))));
        while (shown.byPhase() && !loads.isEmpty() && loads.size() < 3) loads.add(0L);
        return c.positions() + " " + c.poles() + "P " + c.ratingA().or(0) + "A " + use + " " + loads
                + (use.equals("load") ? " " + c.description().or("").toUpperCase(Locale.ROOT) : "");
    }
}
