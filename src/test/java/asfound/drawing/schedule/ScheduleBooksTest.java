package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory;
import asfound.recordset.Limits;
import asfound.recordset.RecordSet;
import asfound.recordset.RecordSets;
import asfound.recordset.Settings;
import asfound.recordset.Source;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Workbooks and tables of panels as they lie in a folder: told from one-lines by what heads them. */
class ScheduleBooksTest {

    @TempDir
    private Path folder;

    @Test
    void a_panel_whose_two_sides_have_the_columns_of_feeders_is_a_panel_schedule() throws Exception {
        Source book = book(
                List.of("Panel", "K-4", "", "Voltage", "208Y/120"),
                List.of("Fed from", "MDP", "", "Phase", "3", "Bus", "225"),
                List.of("Ckt", "Load", "VA", "Poles", "Amps", "Amps", "Poles", "VA", "Load", "Ckt"),
                List.of("1", "Kiln", "900", "1", "20", "20", "1", "500", "Fan", "2"),
                List.of("3", "Lamps", "700", "1", "20", "30", "1", "800", "Pump", "4"));
        assertThat(book.kind()).isEqualTo(Source.Kind.WORKBOOK);
        Directory d = new ScheduleReader(Settings.none(), Limits.usual())
                .read(book)
                .directories()
                .get(0);
        assertThat(d.panel()).isEqualTo("K-4");
        assertThat(d.header().fedFrom().or("")).isEqualTo("MDP");
        assertThat(d.circuits()).hasSize(4);
    }

    @Test
    void labels_with_their_values_beside_them_head_no_table_of_feeders() throws Exception {
        Source book = book(
                List.of("Fed from", "MDP", "Voltage", "208Y/120", "Phase", "3", "Rating", "100"),
                List.of("Way", "Serves", "Breaker"),
                List.of("1", "Kiln", "20/1"),
                List.of("2", "Fan", "20/1"));
        assertThat(book.kind()).isEqualTo(Source.Kind.WORKBOOK);
    }

    @Test
    void circuits_with_what_they_serve_and_no_source_are_a_panel_schedule() throws Exception {
        Source book = book(
                List.of("PANEL: A1", "", "", "VOLTS: 277/480V", "", "MAINS: 100A MLO"),
                List.of("CIR.", "BKR", "POLE", "PH", "SERVES", "KVA", "REMARKS"),
                List.of("1", "20", "1", "A", "Kiln", "1.2", ""),
                List.of("2", "20", "1", "A", "Fan", "0.4", "GFCI"));
        assertThat(book.kind()).isEqualTo(Source.Kind.WORKBOOK);
    }

    @Test
    void panels_named_by_a_floor_and_a_letter_are_kept_apart_in_one_list() throws Exception {
        Source book = book(
                List.of("Panel", "Circuit", "Size", "Poles", "Load"),
                List.of("2A", "1/3", "30", "2", "Kiln"),
                List.of("2A", "2", "20", "1", "Fan"),
                List.of("2A", "4", "20", "1", "Lobby lights"),
                List.of("2B", "1", "20", "1", "Press"),
                List.of("2B", "2", "20", "1", "Sign"),
                List.of("2B", "3", "20", "1", "Stage lights"));
        assertThat(new ScheduleReader(Settings.none(), Limits.usual())
                        .read(book).directories().stream()
                                .map(d -> d.panel() + " " + d.circuits().size()))
                .containsExactly("2A 3", "2B 3");
    }

    @SafeVarargs
    private Source book(List<String>... rows) throws Exception {
        Path drawings = Files.createDirectories(folder.resolve("drawings"));
        try (OutputStream out = Files.newOutputStream(drawings.resolve("K-4.xlsx"))) {
            PlainWorkbook.write(out, "Sheet1", rows);
        }
        RecordSet set = RecordSets.open(folder, Limits.usual());
        return set.sources().get(0);
    }
}
