package asfound.bench;

import asfound.audit.Audit;
import asfound.finding.Correction;
import asfound.finding.DeviceDiffers;
import asfound.finding.Event;
import asfound.finding.Finding;
import asfound.finding.Severity;
import asfound.isolation.DrawingVerdict;
import asfound.isolation.Verdict.Standing;
import asfound.model.Box;
import asfound.model.Directory;
import asfound.model.EquipmentKind;
import asfound.model.Observation;
import asfound.model.Place;
import asfound.model.Stated;
import asfound.network.DeviceRecord.Tracing;
import asfound.recordset.Limits;
import asfound.recordset.Source;
import asfound.report.DataFiles;
import asfound.report.folder.OutputFolder;
import asfound.report.since.AuditReader;
import asfound.report.since.Comparison;
import asfound.sample.MadeAudit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Writes and compares the data of a building of 400 panels and 12,000 circuits, one in six of them with a correction.
 * Run it after {@code mvn test-compile} with the test class path; the argument is a new folder.
 */
public final class OutputsBench {

    private OutputsBench() {}

    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        Audit audit = building(400, 30);
        for (int run = 1; run <= 3; run++) {
            long start = System.nanoTime();
            OutputFolder.at(folder, folder.resolveSibling("record set")).write(stage -> DataFiles.write(audit, stage));
            System.out.printf("run %d: written whole in %d ms%n", run, (System.nanoTime() - start) / 1_000_000);
        }
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.sorted().toList())
                System.out.printf("%12d bytes %s%n", Files.size(file), file.getFileName());
        }
        long start = System.nanoTime();
        Comparison since =
                Comparison.of(AuditReader.read(folder, Limits.usual()), AuditReader.read(folder, Limits.usual()));
        System.out.printf(
                "%d findings compared in %d ms%n", since.findings().size(), (System.nanoTime() - start) / 1_000_000);
    }

    private static Audit building(int panels, int circuits) {
        MadeAudit made = new MadeAudit("Benchmark hall");
        made.input(MadeAudit.SURVEY, Source.Kind.SURVEY, panels * circuits);
        for (int p = 0; p < panels; p++) {
            String name = "LP-" + p, file = "drawings/" + name + ".pdf";
            made.input(file, Source.Kind.PDF, 1).equipment(name, EquipmentKind.PANEL, true, true);
            made.verdicts.add(
                    MadeAudit.verdict(name, Standing.FAILS, "MDP/" + p, "MDP/" + p, "MDP/" + p + " was not traced."));
            made.drawings.add(new DrawingVerdict(file, Standing.FAILS, List.of(name), List.of("It fails.")));
            List<Directory.Circuit> entries = new ArrayList<>();
            for (int c = 1; c <= circuits; c++) entries.add(circuit(made, name, file, c));
            made.directories.add(new Directory(
                    name,
                    Directory.Header.empty(),
                    entries,
                    Directory.Totals.none(),
                    Place.page(file, 1),
                    1,
                    List.of(),
                    List.of()));
        }
        return made.build();
    }

    private static Directory.Circuit circuit(MadeAudit made, String panel, String file, int c) {
        Place at = Place.page(file, 1, new Box(60.25, 100 + 12.5 * c, 240, 12));
        String says = "Receptacles, room " + c;
        Observation seen =
                MadeAudit.saw(made.devices.size() + 2, panel, Integer.toString(c), says, Observation.Method.TONE);
        made.device(panel, Integer.toString(c), Tracing.TRACED, says, seen);
        if (c % 6 == 0)
            made.findings.add(new DeviceDiffers(new Event(
                    Severity.CAUTION,
                    Finding.Part.of(panel, Integer.toString(c)),
                    List.of(),
                    "20 A",
                    "30 A",
                    List.of(at),
                    List.of(seen),
                    panel + "/" + c + " is drawn with 20 A and was found with 30 A.",
                    "Write 30 A.",
                    List.of(new Correction(
                            at,
                            panel,
                            Integer.toString(c),
                            Correction.Field.RATING,
                            "20",
                            "30",
                            "Seen on the device.")))));
        return new Directory.Circuit(
                List.of(c), "", 1, Stated.of(20, "20", at), Stated.text(says, at), Directory.Use.LOAD, List.of(), at);
    }
}
