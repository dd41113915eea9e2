package asfound.report.table;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.audit.Audit;
import asfound.finding.Correction;
import asfound.finding.DeviceDiffers;
import asfound.finding.Event;
import asfound.finding.Finding;
import asfound.finding.Severity;
import asfound.isolation.Verdict.Standing;
import asfound.model.Observation;
import asfound.model.Place;
import asfound.recordset.Grid;
import asfound.recordset.GridReading;
import asfound.recordset.GridRow;
import asfound.recordset.Grids;
import asfound.recordset.Limits;
import asfound.recordset.RecordSets;
import asfound.recordset.Settings;
import asfound.recordset.Source;
import asfound.report.pdf.SurveySheet;
import asfound.sample.MadeAudit;
import asfound.survey.SurveyReader;
import asfound.survey.SurveyReading;
import asfound.trust.Trace;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What we write for spreadsheets is read by our own readers as it stood before it was guarded. */
class ReadBackTest {

    private static final List<String> CELLS = List.of(
            "=1+1",
            "+1",
            "-1",
            "- spare -",
            "@SUM(A1)",
            "\t=1",
            "  =1",
            "'quoted'",
            "''",
            "'=1",
            "MEN'S ROOM",
            "\uFF1D1",
            "7,9");

    @TempDir
    Path folder;

    private interface Writing {
        void to(OutputStream out) throws IOException;
    }

    private Source written(String name, Writing writing) throws Exception {
        Path file = folder.resolve(name);
        try (OutputStream out = Files.newOutputStream(file)) {
            writing.to(out);
        }
        return RecordSets.single(file, Limits.usual(), new ArrayList<>());
    }

    private List<GridRow> readBack(String name, Writing writing) throws Exception {
        GridReading reading = Grids.read(written(name, writing), Limits.usual());
        assertThat(reading.problems()).isEmpty();
        return reading.grids().get(0).rows();
    }

    private void assertReadBack(Rows rows) throws Exception {
        List<GridRow> back = readBack("table.csv", out -> CsvFile.write(rows, out));
        assertThat(back).hasSize(rows.rows().size() + 1);
        for (int r = 0; r < rows.rows().size(); r++)
            assertThat(back.get(r + 1).cells().subList(0, rows.columns().size()))
                    .isEqualTo(rows.rows().get(r));
    }

    private static Audit hostile() {
        MadeAudit yard = new MadeAudit("Osprey Yard");
        for (String cell : CELLS) {
            Place at = Place.page("drawings/" + cell, 1);
            yard.findings.add(finding(cell, at));
            yard.verdicts.add(MadeAudit.verdict(cell, Standing.FAILS, "=A/1", "@B/1", cell));
            yard.plan.add(new Trace(
                    1, Optional.of(cell), cell, cell, cell, Observation.Method.OPENED, cell, List.of(cell), List.of()));
        }
        return yard.build();
    }

    private static Finding finding(String cell, Place at) {
        return new DeviceDiffers(new Event(
                Severity.CAUTION,
                Finding.Part.of(cell, cell),
                List.of(),
                cell,
                cell,
                List.of(at),
                List.of(),
                cell,
                cell,
                List.of(new Correction(at, cell, cell, Correction.Field.DESCRIPTION, cell, "x" + cell, cell))));
    }

    @Test
    void every_table_of_a_report_reads_back_the_same() throws Exception {
        Audit audit = hostile();
        assertReadBack(CorrectionRows.of(audit));
        assertReadBack(IsolationRows.of(audit));
        assertReadBack(RetraceRows.of(audit));
    }

    @Test
    void any_cells_read_back_the_same() throws Exception {
        long seed = 2_046;
        Random random = new Random(seed);
        String signs = "='+-@\t \"',;\naZ9\uFF1D";
        List<List<String>> rows = new ArrayList<>();
        for (int n = 0; n < 2_000; n++) {
            List<String> row = new ArrayList<>();
            for (int c = 0; c < 4; c++) {
                StringBuilder text = new StringBuilder(c == 0 ? "row " + n : "");
                for (int i = random.nextInt(6); i > 0; i--) text.append(signs.charAt(random.nextInt(signs.length())));
                row.add(text.toString());
            }
            rows.add(row);
        }
        List<GridRow> back =
                readBack("any.csv", out -> CsvFile.write(new Rows(List.of("a", "b", "c", "d"), rows), out));
        for (int r = 0; r < rows.size(); r++)
            assertThat(back.get(r + 1).cells().subList(0, 4))
                    .as("seed %d, row %d", seed, r)
                    .isEqualTo(rows.get(r));
    }

    @Test
    void the_workbook_reads_back_the_same() throws Exception {
        Audit audit = hostile();
        Source source = written("corrections.xlsx", out -> CorrectionsWorkbook.write(audit, out));
        Grid grid = Grids.read(source, Limits.usual()).grids().get(0);
        List<List<String>> changes = CorrectionRows.changes(audit);
        for (int r = 0; r < changes.size(); r++) {
            List<String> cells = new ArrayList<>(grid.rows().get(3 + r).cells());
            while (cells.size() < changes.get(r).size()) cells.add("");
            assertThat(cells).isEqualTo(changes.get(r));
        }
    }

    @Test
    void a_survey_sheet_that_is_filled_in_is_read_with_the_names_of_the_drawings() throws Exception {
        Source blank = written("monday.csv", out -> SurveySheet.writeCsv(hostile(), 99, out));
        String filled = Files.readString(blank.path(), StandardCharsets.UTF_8);
        assertThat(filled).contains("'=1+1,'=1+1,").contains("'@SUM(A1),'@SUM(A1),");
        SurveyReading reading = SurveyReader.read(
                written(
                        "filled.csv",
                        out -> out.write(filled.replace("'@SUM(A1),'@SUM(A1),,", "'@SUM(A1),'@SUM(A1),,'-9")
                                .getBytes(StandardCharsets.UTF_8))),
                Settings.none(),
                Limits.usual());
        assertThat(reading.observations()).singleElement().satisfies(o -> {
            assertThat(o.panel().raw()).isEqualTo("@SUM(A1)");
            assertThat(o.found().raw()).isEqualTo("-9");
        });
    }
}
