package asfound.report.table;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.audit.Audit;
import asfound.finding.DeviceDiffers;
import asfound.finding.Event;
import asfound.finding.Finding;
import asfound.finding.Severity;
import asfound.sample.MadeAudit;
import asfound.sample.OspreyYard;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.junit.jupiter.api.Test;

class CorrectionsWorkbookTest {

    private static byte[] written(Audit audit) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        CorrectionsWorkbook.write(audit, out);
        return out.toByteArray();
    }

    private static List<List<String>> sheet(byte[] workbook, String name) throws IOException {
        try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(workbook))) {
            Sheet sheet = book.findSheet(name).orElseThrow();
            return sheet.read().stream().map(CorrectionsWorkbookTest::texts).toList();
        }
    }

    private static List<String> texts(Row row) {
        return row.stream().map(c -> c == null ? "" : c.getText()).toList();
    }

    private static Map<String, String> parts(byte[] workbook) throws IOException {
        Map<String, String> parts = new HashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(workbook))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry())
                parts.put(entry.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
        }
        return parts;
    }

    @Test
    void it_holds_the_same_rows_as_the_csv_under_a_title_and_the_cautions() throws IOException {
        byte[] workbook = written(OspreyYard.audit());
        List<List<String>> rows = sheet(workbook, "Corrections");
        assertThat(rows.get(0).get(0)).isEqualTo("Osprey Yard: corrections to the drawings (3)");
        assertThat(rows.get(1).get(0)).contains("test for absence of voltage");
        assertThat(rows.get(2)).isEqualTo(CorrectionRows.COLUMNS);
        List<List<String>> changes = CorrectionRows.changes(OspreyYard.audit());
        for (int r = 0; r < changes.size(); r++)
            assertThat(rows.get(3 + r).subList(0, 11)).isEqualTo(changes.get(r).subList(0, 11));
        assertThat(rows).hasSize(3 + changes.size());
        assertThat(sheet(workbook, "Look first").get(3)).contains("look first", "LIGHTS");
        assertThat(sheet(workbook, "Cautions")).hasSizeGreaterThan(3);
    }

    /** As 29 CFR 1910.147(c)(6)-(7) has it in mind; the reminder defers to local rules. */
    @Test
    void a_sheet_says_for_each_finding_who_relies_on_what_is_corrected() throws IOException {
        List<List<String>> rows = sheet(written(OspreyYard.audit()), "To be told");
        assertThat(rows.get(1).get(0))
                .contains("29 CFR 1910.147(c)(6)", "(c)(7)", "deferring to local rules", "test for absence of voltage");
        assertThat(rows.get(2)).isEqualTo(TellRows.COLUMNS);
        assertThat(rows.get(3).subList(1, 7))
                .containsExactly(
                        "danger",
                        "The feeders of LP-2A and LP-2B are crossed: opening MDP/7 for LP-2A leaves it live.",
                        "LP-2A, LP-2B",
                        "MDP/7, MDP/9",
                        "",
                        "drawings/MDP.pdf");
        assertThat(rows).hasSize(3 + OspreyYard.audit().findings().size());
    }

    @Test
    void a_formula_from_a_drawing_is_text_and_no_part_holds_a_formula() throws IOException {
        byte[] workbook = written(OspreyYard.audit());
        try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(workbook))) {
            Cell why = book.getFirstSheet().read().get(3).getCell(8);
            assertThat(why.getType()).isEqualTo(CellType.STRING);
            assertThat(why.getText()).isEqualTo(OspreyYard.FORMULA);
        }
        parts(workbook)
                .forEach((name, xml) ->
                        assertThat(xml).as(name).doesNotContain("<f>").doesNotContain("<f "));
    }

    @Test
    void it_can_be_filtered_scrolled_and_printed() throws IOException {
        String sheet = parts(written(OspreyYard.audit())).get("xl/worksheets/sheet1.xml");
        assertThat(sheet)
                .contains("<autoFilter ref=\"A3:N6\"")
                .contains("ySplit=\"3\"")
                .contains("state=\"frozen\"");
        assertThat(sheet)
                .contains("orientation=\"landscape\"")
                .contains("fitToWidth=\"1\"")
                .contains("fitToHeight=\"0\"");
        assertThat(parts(written(OspreyYard.audit())).get("xl/workbook.xml")).contains("_xlnm.Print_Titles");
    }

    @Test
    void the_same_audit_gives_the_same_bytes_whenever_it_is_written() throws Exception {
        byte[] first = written(OspreyYard.audit());
        Thread.sleep(20);
        assertThat(written(OspreyYard.audit())).isEqualTo(first);
    }

    @Test
    void control_characters_are_shown_and_a_text_past_the_limit_says_that_it_is_cut() throws IOException {
        MadeAudit yard = new MadeAudit("Osprey Yard");
        yard.findings.add(new DeviceDiffers(new Event(
                Severity.CAUTION,
                Finding.Part.of("LP\u00012A"),
                List.of(),
                "x".repeat(40_000),
                "",
                List.of(),
                List.of(),
                "m",
                "c",
                List.of())));
        List<String> row = sheet(written(yard.build()), "Look first").get(3);
        assertThat(row).contains("LP<U+0001>2A");
        assertThat(row.get(5)).hasSize(32_767).endsWith("[cut here: 40000 characters in all; the .csv file has them]");
    }

    @Test
    void a_list_without_changes_says_so() throws IOException {
        assertThat(sheet(written(new MadeAudit("Empty lot").build()), "Corrections")
                        .get(3)
                        .get(0))
                .isEqualTo("None.");
    }
}
