package asfound.command;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.audit.Audit;
import asfound.audit.Audits;
import asfound.model.Observation;
import asfound.model.Problem;
import asfound.network.DeviceRecord;
import asfound.network.DeviceRecord.Tracing;
import asfound.recordset.Limits;
import asfound.recordset.RecordSets;
import asfound.trust.Trace;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sheet that {@code plan --csv} makes goes to the field and comes back into {@code survey/}, read as it is. */
class PlanReadBackTest {

    private static final int PLANNED = 30;

    @TempDir
    private Path folder;

    private Path set;
    private Path sheet;
    private Audit before;

    @BeforeEach
    void a_plan_of_the_demo_building() throws Exception {
        set = folder.resolve("kestrel-wharf");
        Path demo = Path.of("fixtures/kestrel-wharf");
        try (Stream<Path> files = Files.walk(demo)) {
            for (Path file : files.toList()) {
                Path to = set.resolve(demo.relativize(file).toString());
                if (Files.isDirectory(file)) Files.createDirectories(to);
                else Files.copy(file, to);
            }
        }
        before = audit();
        sheet = set.resolve("survey/monday.csv");
        PrintWriter nowhere = new PrintWriter(new StringWriter());
        assertThat(Main.run(nowhere, nowhere, "plan", set.toString(), "--limit", "" + PLANNED, "--csv", "" + sheet))
                .isZero();
    }

    @Test
    void a_sheet_that_nobody_filled_in_changes_nothing_and_each_of_its_rows_is_told() throws Exception {
        Audit after = audit();

        assertThat(after.network()).isEqualTo(before.network());
        assertThat(after.verdicts()).isEqualTo(before.verdicts());
        assertThat(after.findings()).isEqualTo(before.findings());
        assertThat(after.plan()).isEqualTo(before.plan());
        assertThat(problems(after))
                .hasSize(PLANNED)
                .allSatisfy(p ->
                        assertThat(p.message()).startsWith("The row does not say what was found; it was not used"));
    }

    @Test
    void a_sheet_that_was_filled_in_is_read_with_nothing_to_complain_of_and_every_row_traces_its_device()
            throws Exception {
        List<Trace> planned = before.plan().subList(0, PLANNED);

        fillIn(PLANNED);
        Audit after = audit();

        assertThat(problems(after)).isEmpty();
        List<Observation> seen = ofSheet(after);
        assertThat(seen).hasSize(PLANNED);
        for (Trace trace : planned)
            assertThat(seen)
                    .as("the row of %s %s", trace.panel(), trace.circuit())
                    .filteredOn(o -> o.panel().or("").equals(trace.panel())
                            && o.circuit().raw().equals(trace.circuit()))
                    .singleElement()
                    .satisfies(o -> assertThat(o.location().or(""))
                            .isEqualTo(trace.location().orElse("")));
        List<String> traced = after.network().devices().stream()
                .filter(d -> d.tracing() == Tracing.TRACED || d.tracing() == Tracing.CONFLICT)
                .map(DeviceRecord::device)
                .map(d -> d.label())
                .toList();
        assertThat(seen)
                .allSatisfy(o -> assertThat(traced)
                        .contains(o.panel().or("") + "/"
                                + o.circuit().value().map(c -> c.key()).orElse("")));
    }

    @Test
    void of_a_sheet_filled_in_half_the_way_the_rows_left_blank_are_told_and_the_others_are_read() throws Exception {
        fillIn(PLANNED / 2);
        Audit after = audit();

        assertThat(ofSheet(after)).hasSize(PLANNED / 2);
        assertThat(problems(after)).hasSize(PLANNED - PLANNED / 2);
    }

    /** As a surveyor does: in the columns left blank, and nowhere else. */
    private void fillIn(int rows) throws IOException {
        String[] header;
        List<CSVRecord> records;
        try (CSVParser parser = CSVParser.parse(sheet, StandardCharsets.UTF_8, CSVFormat.DEFAULT)) {
            records = parser.getRecords();
            header = records.get(0).values();
        }
        List<String> columns = List.of(header);
        StringBuilder out = new StringBuilder();
        try (var printer = CSVFormat.DEFAULT.print(out)) {
            printer.printRecord((Object[]) header);
            for (int r = 1; r < records.size(); r++) {
                String[] cells = records.get(r).values();
                if (r <= rows) {
                    cells[columns.indexOf("relation")] = "feeds";
                    cells[columns.indexOf("found")] = "Unit heater UH-" + (900 + r);
                    cells[columns.indexOf("method")] = "opened";
                    cells[columns.indexOf("by")] = "N. Okafor";
                    cells[columns.indexOf("date")] = "2026-04-01";
                }
                printer.printRecord((Object[]) cells);
            }
        }
        Files.writeString(sheet, out);
    }

    private Audit audit() throws Exception {
        return Audits.of(RecordSets.open(set, Limits.usual()), Limits.usual(), (stage, done, of) -> {});
    }

    private static List<Problem> problems(Audit audit) {
        return audit.inputs().stream()
                .filter(i -> i.source().file().equals("survey/monday.csv"))
                .flatMap(i -> i.problems().stream())
                .toList();
    }

    private static List<Observation> ofSheet(Audit audit) {
        return audit.survey().stream()
                .filter(o -> o.place().file().equals("survey/monday.csv"))
                .toList();
    }
}
