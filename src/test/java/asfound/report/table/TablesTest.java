package asfound.report.table;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.audit.Audit;
import asfound.finding.Accepted;
import asfound.finding.Correction;
import asfound.finding.DeviceDiffers;
import asfound.finding.Event;
import asfound.finding.Finding;
import asfound.finding.Severity;
import asfound.isolation.Verdict.Standing;
import asfound.model.Place;
import asfound.report.Cautions;
import asfound.sample.MadeAudit;
import asfound.sample.OspreyYard;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TablesTest {

    private static byte[] csv(Rows rows) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        CsvFile.write(rows, out);
        return out.toByteArray();
    }

    private static List<Map<String, String>> corrections(Audit audit) throws IOException {
        return CsvBack.rows(csv(CorrectionRows.of(audit)));
    }

    private static Finding differs(String circuit, Correction.Field field, String shouldRead, String why) {
        Place at = Place.page(OspreyYard.LP_2A, 1);
        return new DeviceDiffers(new Event(
                Severity.CAUTION,
                Finding.Part.of("LP-2A", circuit),
                List.of(),
                "20 A",
                "30 A",
                List.of(at),
                List.of(),
                "It differs.",
                "Write it.",
                List.of(new Correction(at, "LP-2A", "3", field, "20", shouldRead, why))));
    }

    @Test
    void each_change_is_a_row_in_the_order_in_which_drawings_are_worked_through() throws IOException {
        List<Map<String, String>> rows = corrections(OspreyYard.audit());
        assertThat(rows)
                .extracting(r -> r.get("drawing") + " " + r.get("panel") + "/" + r.get("circuit") + " " + r.get("field")
                        + ": " + r.get("reads") + " -> " + r.get("should read"))
                .containsExactly(
                        "drawings/LP-2A.pdf LP-2A/3 rating: 20 -> 30",
                        "drawings/MDP.pdf MDP/7 description: LP-2A -> LP-2B",
                        "drawings/MDP.pdf MDP/9 description: LP-2B -> LP-2A",
                        "drawings/LP-2A.pdf LP-2A/5 look first: LIGHTS -> ");
        assertThat(rows.get(1))
                .containsEntry("sheet or page", "page 1")
                .containsEntry("why", "Traced to LP-2B.")
                .containsEntry("evidence", "survey/march.csv rows 2 (opened), 3 (tone)")
                .containsEntry(
                        "finding id", OspreyYard.audit().findings().get(0).id())
                .containsEntry("severity", "danger")
                .containsEntry("done", "")
                .containsEntry("box", "60.13 184.00 200.00 12.00")
                .containsEntry("caution", Cautions.SHORT);
    }

    @Test
    void a_formula_in_the_list_is_text_and_reads_back_as_it_stands() throws IOException {
        byte[] csv = csv(CorrectionRows.of(OspreyYard.audit()));
        assertThat(csv).asString(StandardCharsets.UTF_8).contains("\"'=HYPERLINK(\"\"http://evil.example\"\"");
        assertThat(CsvBack.rows(csv).get(0)).containsEntry("why", OspreyYard.FORMULA);
    }

    @Test
    void a_change_that_two_findings_ask_for_is_one_row_with_both() throws IOException {
        MadeAudit yard = new MadeAudit("Osprey Yard");
        yard.findings.add(differs("3", Correction.Field.RATING, "30", "Seen."));
        yard.findings.add(differs("5", Correction.Field.RATING, "30", "Said by the one-line."));
        List<Map<String, String>> rows = corrections(yard.build());
        assertThat(rows).hasSize(1);
        assertThat(rows.get(0).get("finding id").split("; ")).hasSize(2);
        assertThat(rows.get(0)).containsEntry("why", "Seen. Said by the one-line.");
    }

    @Test
    void two_findings_that_ask_for_different_values_at_one_place_say_so() throws IOException {
        MadeAudit yard = new MadeAudit("Osprey Yard");
        yard.findings.add(differs("3", Correction.Field.RATING, "30", "Seen."));
        yard.findings.add(differs("5", Correction.Field.RATING, "40", "Seen."));
        yard.findings.add(differs("7", Correction.Field.POLES, "2", "Seen."));
        assertThat(corrections(yard.build()))
                .extracting(r -> r.get("should read") + ": " + r.get("why"))
                .containsExactly(
                        "30: Two findings ask for different values here; look before changing. Seen.",
                        "40: Two findings ask for different values here; look before changing. Seen.",
                        "2: Seen.");
    }

    @Test
    void a_blank_value_says_in_words_that_the_entry_is_to_be_taken_out() throws IOException {
        MadeAudit yard = new MadeAudit("Osprey Yard");
        yard.findings.add(differs("3", Correction.Field.RATING, "30", "Seen."));
        yard.findings.add(differs("5", Correction.Field.DESCRIPTION, "", "Seen."));
        assertThat(corrections(yard.build()))
                .extracting(r -> r.get("field") + " " + r.get("change") + " " + r.get("should read"))
                .containsExactly("description take out ", "rating change to 30");
    }

    @Test
    void an_accepted_finding_changes_nothing() throws IOException {
        MadeAudit yard = new MadeAudit("Osprey Yard");
        Finding finding = differs("3", Correction.Field.RATING, "30", "Seen.");
        yard.accepted.add(new Accepted(finding, "Breaker is on order", "R. Adeyemi", LocalDate.of(2026, 5, 1)));
        assertThat(CorrectionRows.of(yard.build()).rows()).isEmpty();
        assertThat(CorrectionRows.accepted(yard.build()).get(0))
                .contains("Accepted by R. Adeyemi on 2026-05-01: Breaker is on order - It differs.");
    }

    @Test
    void verdicts_stand_worst_first_and_untraced_supply_is_no_empty_cell() throws IOException {
        MadeAudit yard = OspreyYard.asSurveyed();
        yard.verdicts.add(0, MadeAudit.verdict("AP-1", Standing.AGREES, "MDP/1", "MDP/1", "MDP/1 was traced to it."));
        yard.verdicts.add(MadeAudit.verdict("X-9", Standing.FAILS, "", "", "No drawing shows it."));
        List<Map<String, String>> rows = CsvBack.rows(csv(IsolationRows.of(yard.build())));
        assertThat(rows)
                .extracting(r -> r.get("equipment") + " " + r.get("verdict") + " " + r.get("drawn points") + " "
                        + r.get("found points"))
                .containsExactly(
                        "LP-2A fails MDP/7 MDP/9",
                        "LP-2B fails MDP/9 MDP/7",
                        "X-9 fails none none",
                        "MDP unproven UTIL/M not traced",
                        "AP-1 agrees MDP/1 MDP/1");
        assertThat(rows.get(0))
                .containsEntry("kind", "panel")
                .containsEntry("path", "UTIL > MDP/9")
                .containsEntry("drawings", "drawings/LP-2A.pdf; drawings/MDP.pdf");
    }

    @Test
    void the_isolation_table_says_in_every_row_what_agrees_means() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        CsvFile.write(IsolationRows.of(OspreyYard.audit()), IsolationRows.CAUTION, out);
        assertThat(CsvBack.rows(out.toByteArray()))
                .hasSize(3)
                .allSatisfy(row -> assertThat(row.get("caution"))
                        .contains(Cautions.AGREES)
                        .contains("test for absence of voltage"));
    }

    @Test
    void traces_to_make_stand_in_their_order() throws IOException {
        assertThat(CsvBack.rows(csv(RetraceRows.of(OspreyYard.audit()))))
                .singleElement()
                .satisfies(row -> assertThat(row)
                        .containsEntry("rank", "1")
                        .containsEntry("location", "Level 0, switch room")
                        .containsEntry("panel", "UTIL")
                        .containsEntry("circuit", "M")
                        .containsEntry("drawn as", "MDP")
                        .containsEntry("method", "opened")
                        .containsEntry("settles verdict of", "MDP"));
    }

    @Test
    void the_csv_keeps_to_rfc_4180() throws IOException {
        String csv = new String(csv(CorrectionRows.of(OspreyYard.audit())), StandardCharsets.UTF_8);
        assertThat(csv).startsWith("drawing,sheet or page,panel,").endsWith("\r\n");
        assertThat(csv.replace("\r\n", "")).doesNotContain("\n").doesNotContain("\r");
    }
}
