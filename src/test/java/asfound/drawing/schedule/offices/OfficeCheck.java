package asfound.drawing.schedule.offices;

import asfound.drawing.schedule.sample.SaidOf;
import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.model.Directory;
import asfound.model.Problem;
import asfound.model.Stated;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * Compares what was read of an office's sheet with what a person reads there. A difference is told where a problem names
 * its position or its value, or is about the whole table or page; that something was said somewhere is not enough.
 */
final class OfficeCheck {

    /** In VA: a kVA with one decimal is no more exact, summed over poles. */
    private static final double ROUNDED = 1;

    /** Of a column of loads that was not read, or not as its heading says. */
    private static final Pattern COLUMN = Pattern.compile("(?i)column|sums? of|totals?");

    private final OfficeTruth truth;
    private final ScheduleReading reading;
    private final Tally tally = new Tally();
    private final List<String> told = new ArrayList<>(), silent = new ArrayList<>();

    private OfficeCheck(OfficeTruth truth, ScheduleReading reading) {
        this.truth = truth;
        this.reading = reading;
    }

    /**
     * @param told differences of which a word was said
     * @param silent those of which none was
     */
    record Result(List<String> told, List<String> silent, Tally tally) {}

    static Result of(OfficeTruth truth, ScheduleReading reading) {
        OfficeCheck check = new OfficeCheck(truth, reading);
        for (OfficeTruth.Panel panel : truth.directories()) check.panel(panel);
        for (Directory d : reading.directories()) check.notInvented(d);
        return new Result(check.told, check.silent, check.tally);
    }

    private void panel(OfficeTruth.Panel panel) {
        List<Directory> read = reading.directories().stream()
                .filter(d -> OfficeTruth.plain(d.panel()).equals(OfficeTruth.plain(panel.panel())))
                .toList();
        List<Problem> said = new ArrayList<>(reading.problems());
        read.forEach(d -> said.addAll(d.problems()));
        boolean doubted = said.stream().anyMatch(p -> SaidOf.wholePage(p) || SaidOf.wholeTable(p))
                || read.stream().anyMatch(d -> d.confidence() < Directory.DOUBTFUL);
        if (read.isEmpty())
            note(
                    doubted || said.stream().anyMatch(p -> SaidOf.title(p, panel.panel())),
                    "panel " + panel.panel() + " is missing");
        circuits(panel, read, said, doubted);
        if (read.isEmpty()) return;
        headers(panel, read.get(0), said);
        loads(panel, read, said, doubted);
    }

    /** One line for all loads of a panel that were read otherwise, and one for those that were not read. */
    private void loads(OfficeTruth.Panel panel, List<Directory> read, List<Problem> said, boolean doubted) {
        List<String> otherwise = new ArrayList<>(), unread = new ArrayList<>();
        boolean positions = true;
        for (OfficeTruth.Circuit want : panel.circuits()) {
            if (want.loadVA() == null || want.loadVA() == 0) continue;
            for (Directory d : read)
                for (Directory.Circuit c : d.circuits()) {
                    if (!c.positions().get(0).equals(want.positions().get(0))) continue;
                    Stated<Double> load = c.totalVA();
                    if (Math.abs(load.or(0.0) - want.loadVA()) <= ROUNDED) continue;
                    String at = want.positions().get(0) + ": printed " + want.loadVA() + ", read " + load.raw();
                    (load.isStated() ? otherwise : unread).add(at);
                    if (load.isStated())
                        positions &= said.stream().anyMatch(p -> SaidOf.positions(p, Set.copyOf(c.positions()), ""));
                }
        }
        boolean columns = doubted
                || said.stream().anyMatch(p -> COLUMN.matcher(p.message()).find());
        if (!otherwise.isEmpty())
            note(
                    columns || positions,
                    panel.panel() + ", " + otherwise.size() + " loads otherwise, at " + otherwise.get(0));
        if (!unread.isEmpty())
            note(columns, panel.panel() + ", " + unread.size() + " loads not read, at " + unread.get(0));
    }

    private void note(boolean isTold, String difference) {
        (isTold ? told : silent).add(difference);
    }

    private void circuits(OfficeTruth.Panel panel, List<Directory> read, List<Problem> said, boolean doubted) {
        Map<Integer, String> want = new TreeMap<>(), got = new TreeMap<>();
        Map<Integer, Set<Integer>> around = new TreeMap<>();
        for (OfficeTruth.Circuit c : panel.circuits())
            put(want, around, c.positions(), c.use(), rowOf(c.poles(), c.ratingA(), c.use(), c.description()));
        for (Directory d : read)
            for (Directory.Circuit c : d.circuits()) {
                String use = c.use().name().toLowerCase(Locale.ROOT);
                if (c.ratingA().isBlank() && panel.blankPositions().containsAll(c.positions())) continue;
                Integer rating = c.ratingA().isStated() ? c.ratingA().or(0) : null;
                put(
                        got,
                        around,
                        c.positions(),
                        use,
                        rowOf(c.poles(), rating, use, c.description().or("")));
            }
        tally.circuits(want, got);
        if (read.isEmpty()) return;
        Set<Integer> all = new TreeSet<>(want.keySet());
        all.addAll(got.keySet());
        for (int p : all) {
            String w = want.getOrDefault(p, "nothing"), g = got.getOrDefault(p, "nothing");
            if (!w.equals(g))
                note(
                        doubted || said.stream().anyMatch(s -> SaidOf.positions(s, around.get(p), w)),
                        panel.panel() + " at " + p + ": printed " + w + ", read " + g);
        }
    }

    private static void put(
            Map<Integer, String> rows,
            Map<Integer, Set<Integer>> around,
            List<Integer> positions,
            String use,
            String row) {
        for (int p : use.equals("space") ? positions : positions.subList(0, 1)) {
            rows.merge(p, row, (a, b) -> a + " and " + b);
            around.computeIfAbsent(p, q -> new TreeSet<>()).addAll(positions);
        }
    }

    private static String rowOf(int poles, Integer rating, String use, String description) {
        if (use.equals("space")) return "space";
        String device = poles + "P " + (rating == null ? "" : rating + "A ") + use;
        return use.equals("load") ? device + " " + spelling(description) : device;
    }

    private static String spelling(String description) {
        return description
                .replace('\u2013', '-')
                .replace('\u2014', '-')
                .replace('\u2019', '\'')
                .replaceAll("\\s+", " ")
                .strip()
                .toUpperCase(Locale.ROOT);
    }

    private void headers(OfficeTruth.Panel panel, Directory read, List<Problem> said) {
        Directory.Header h = read.header();
        Map<String, Stated<?>> values = new LinkedHashMap<>();
        values.put("designation", h.designation());
        values.put("location", h.location());
        values.put("fedFrom", h.fedFrom());
        values.put("voltage", h.voltage());
        values.put("phases", h.phases());
        values.put("wires", h.wires());
        values.put("busA", h.busA());
        values.put("mainA", h.mainA());
        values.put("mains", h.mains());
        values.put("interruptingKA", h.interruptingKA());
        values.forEach((field, value) -> {
            Optional<?> got = value.value();
            String want = panel.header().get(field);
            boolean right = got.isPresent() && panel.says(field, got.get());
            if (want != null) tally.header(right);
            if (right || want == null && got.isEmpty()) return;
            String difference = panel.panel() + ", " + field + ": printed " + want + ", read " + value.raw();
            note(got.isEmpty() || said.stream().anyMatch(p -> SaidOf.header(p, value.raw())), difference);
        });
    }

    private void notInvented(Directory read) {
        if (truth.panel(read.panel()).isPresent()) return;
        tally.invented();
        boolean doubted = read.confidence() < Directory.DOUBTFUL
                || read.problems().stream().anyMatch(SaidOf::wholeTable);
        note(
                doubted,
                "there is no directory of '" + read.panel() + "' with "
                        + read.circuits().size() + " circuits");
    }
}
