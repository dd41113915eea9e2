package asfound.drawing.schedule.sample;

import asfound.drawing.schedule.ScheduleReading;
import asfound.drawing.schedule.sample.SamplePanel.SampleCircuit;
import asfound.model.Directory;
import asfound.model.Directory.Circuit;
import asfound.model.Stated;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/** Compares what was read of drawn samples with what was drawn. */
final class SampleCheck {

    private SampleCheck() {}

    /** What differs without any word about it; empty where all is exact, or where the reader said what it doubts. */
    static List<String> silentDifferences(SampleSheets.Drawn drawn, ScheduleReading reading) {
        List<String> out = new ArrayList<>();
        if (!reading.problems().isEmpty()) return out;
        TreeSet<String> names = new TreeSet<>();
        for (SamplePanel panel : drawn.panels()) {
            names.add(plain(panel.name()));
            Optional<Directory> read = reading.directories().stream()
                    .filter(d -> plain(d.panel()).equals(plain(panel.name())))
                    .findFirst();
            if (read.isEmpty()) {
                boolean nameless = reading.directories().stream()
                        .anyMatch(d -> d.header().designation().isBlank()
                                && !d.problems().isEmpty());
                if (!nameless) out.add("panel " + panel.name() + " is missing");
            } else if (isSure(read.get(), drawn.layout())) differences(panel, read.get(), out);
        }
        for (Directory d : reading.directories())
            if (!names.contains(plain(d.panel())) && d.problems().isEmpty()) out.add("there is no panel " + d.panel());
        return out;
    }

    /** Nothing was said against the reading, but for the lugs that the sample has on purpose. */
    private static boolean isSure(Directory d, SampleLayout layout) {
        return !d.isDoubtful()
                && d.problems().stream()
                        .allMatch(p -> layout.lugs() && p.message().startsWith("Lugs without"));
    }

    private static String plain(String name) {
        return name.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9]", "");
    }

    private static void differences(SamplePanel panel, Directory read, List<String> out) {
        TreeMap<Integer, String> want = new TreeMap<>(), got = new TreeMap<>();
        for (SampleCircuit c : panel.circuits())
            for (int p : c.use().equals("space") ? c.positions() : List.of(c.first())) want.put(p, text(c));
        for (Circuit c : read.circuits())
            for (int p : c.use() == Directory.Use.SPACE ? c.positions() : List.of(c.position())) got.put(p, text(c));
        if (!want.equals(got))
            for (int p = 1; p <= panel.ways(); p++)
                if (!want.getOrDefault(p, "").equals(got.getOrDefault(p, "")))
                    out.add(panel.name() + " at " + p + ": drawn " + want.get(p) + ", read " + got.get(p));
        Directory.Header h = read.header();
        header(panel, "location", h.location(), out);
        header(panel, "fedFrom", h.fedFrom(), out);
        header(panel, "phases", h.phases(), out);
        header(panel, "wires", h.wires(), out);
        header(panel, "busA", h.busA(), out);
        header(panel, "mainA", h.mainA(), out);
    }

    /** A header value may stay blank, and is then not stated; it is never another one than is drawn. */
    private static void header(SamplePanel panel, String field, Stated<?> read, List<String> out) {
        String want = panel.header().get(field),
                got = read.value().map(Object::toString).orElse(null);
        if (got != null && !got.equals(want)) out.add(panel.name() + ": drawn " + field + " " + want + ", read " + got);
    }

    private static String text(SampleCircuit c) {
        if (c.use().equals("space")) return "space";
        return c.positions() + " " + c.poles() + "P " + c.rating() + "A " + c.use()
                + (c.use().equals("load") ? " " + c.description().toUpperCase(Locale.ROOT) : "");
    }

    private static String text(Circuit c) {
        String use = c.use().name().toLowerCase(Locale.ROOT);
        if (use.equals("space")) return "space";
        return c.positions() + " " + c.poles() + "P " + c.ratingA().or(0) + "A " + use
                + (use.equals("load") ? " " + c.description().or("").toUpperCase(Locale.ROOT) : "");
    }
}
