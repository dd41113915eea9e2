package asfound.bench;

import asfound.drawing.Drawings;
import asfound.finding.Finding;
import asfound.finding.Findings;
import asfound.model.Box;
import asfound.model.CircuitRef;
import asfound.model.Directory;
import asfound.model.Directory.Circuit;
import asfound.model.Directory.Use;
import asfound.model.EquipmentKind;
import asfound.model.Observation;
import asfound.model.Observation.Method;
import asfound.model.Observation.Relation;
import asfound.model.OneLine;
import asfound.model.Place;
import asfound.model.Stated;
import asfound.network.Network;
import asfound.network.Networks;
import asfound.recordset.Settings;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Paper and survey of a large campus reconciled: network and findings. Arguments: numbers of survey rows (default 10,000,
 * 100,000 and 1,000,000). There is one panel to 50 rows; one circuit in two hundred is not as drawn. Run with
 * {@code -Xmx4g}.
 */
public final class FindingsBenchmark {

    private static final int CIRCUITS = 42;

    private final Random random = new Random(7);
    private final List<Directory> directories = new ArrayList<>();
    private final List<Observation> survey = new ArrayList<>();

    private FindingsBenchmark(int rows) {
        int panels = Math.max(1, rows / 50);
        for (int p = 0; p < panels; p++) panel(p, panels);
        while (survey.size() < rows) survey.add(again(survey.get(random.nextInt(survey.size()))));
    }

    public static void main(String[] args) {
        int[] sizes = args.length == 0
                ? new int[] {10_000, 100_000, 1_000_000}
                : java.util.Arrays.stream(args).mapToInt(Integer::parseInt).toArray();
        for (int rows : sizes) new FindingsBenchmark(rows).run();
    }

    private void run() {
        Drawings drawings = new Drawings(directories, new OneLine(List.of(), List.of()));
        Instant start = Instant.now();
        Duration before = cpu();
        Network network = Networks.build(drawings, survey, Settings.none());
        Duration joined = Duration.between(start, Instant.now());
        List<Finding> findings = Findings.of(drawings, survey, network, List.of(), Settings.none())
                .findings();
        Duration all = Duration.between(start, Instant.now());
        System.out.printf(
                "%,d rows, %,d panels: network %.1f s, findings %.1f s (processor %.1f s), %,d findings, %,d MB%n",
                survey.size(),
                directories.size(),
                joined.toMillis() / 1000.0,
                all.minus(joined).toMillis() / 1000.0,
                cpu().minus(before).toMillis() / 1000.0,
                findings.size(),
                (Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory()) >> 20);
    }

    /** Processor time of the whole process, which other work on the machine does not lengthen. */
    private static Duration cpu() {
        return ProcessHandle.current().info().totalCpuDuration().orElse(Duration.ZERO);
    }

    /** Ten panels to a feeding panel; the rest of each directory are branch circuits. */
    private void panel(int p, int panels) {
        String name = name(p), file = "drawings/" + name + ".pdf";
        List<Circuit> circuits = new ArrayList<>(CIRCUITS);
        for (int i = 1; i <= CIRCUITS; i++) {
            int child = 10 * p + i;
            boolean feeder = i <= 10 && child < panels;
            String text = feeder ? "PANEL " + name(child) : describe(p, i);
            Place at = Place.page(file, 1, new Box(i % 2 * 200, 12 * i, 200, 12));
            circuits.add(new Circuit(
                    List.of(i), "", 1, Stated.of(20, "20", at), Stated.text(text, at), Use.LOAD, List.of(), at));
            boolean wrong = random.nextInt(200) == 0;
            survey.add(row(name, i, wrong ? "Door heater DH-" + p + i : feeder ? name(child) : seen(p, i)));
        }
        directories.add(new Directory(
                name,
                Directory.Header.empty(),
                circuits,
                Directory.Totals.none(),
                Place.page(file, 1),
                1,
                List.of(),
                List.of()));
    }

    private static String name(int p) {
        return "LP-" + (1 + p / 26) + (char) ('A' + p % 26);
    }

    private static String describe(int p, int i) {
        return i % 3 == 0 ? "EXHAUST FAN EF-" + p + i : (i % 3 == 1 ? "RECEPT RM " : "LTG RM ") + (100 * p + i);
    }

    private static String seen(int p, int i) {
        return i % 3 == 0 ? "EF-" + p + i : (i % 3 == 1 ? "Receptacles room " : "Lights, room ") + (100 * p + i);
    }

    private Observation row(String panel, int circuit, String found) {
        Place.InRow at = new Place.InRow("survey/survey.csv", "", survey.size() + 2);
        return new Observation(
                Stated.text(panel, at),
                Stated.of(CircuitRef.of(circuit), Integer.toString(circuit), at),
                Relation.FEEDS,
                Stated.text(found, at),
                EquipmentKind.UNKNOWN,
                Method.TONE,
                Stated.blank(at),
                Stated.blank(at),
                Stated.blank(at),
                Stated.blank(at),
                Stated.blank(at),
                Stated.blank(at),
                "",
                Stated.of(LocalDate.of(2025, 3, 1), "2025-03-01", at),
                "",
                "",
                at);
    }

    private Observation again(Observation o) {
        return row(
                o.panel().or(""),
                o.circuit().or(CircuitRef.of(1)).positions().get(0),
                o.found().or(""));
    }
}
