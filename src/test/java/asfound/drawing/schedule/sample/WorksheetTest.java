package asfound.drawing.schedule.sample;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.model.Directory;
import asfound.model.Problem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Worksheets, each by the trait that makes it hard to read. */
class WorksheetTest {

    @TempDir
    private Path folder;

    private final GridPaper paper = new GridPaper("Sheet1");

    @Test
    void a_circuit_that_is_crossed_out_is_read_told_and_not_relied_on() throws IOException {
        row(0, 0, "PANEL LP-4");
        table(2, 0);
        paper.strike(4, 1);
        ScheduleReading reading = read();
        assertThat(reading.problems().stream().map(Problem::inWords))
                .containsExactly(
                        "book.xlsx, sheet Sheet1, row 5: Row 5 holds text that is crossed out, as 'Oven'; it was"
                                + " read as it stands. Look whether the entry still holds; clear what does not.");
        assertThat(only(reading).unread()).containsExactly(2);
        assertThat(only(reading).circuits()).hasSize(4);
    }

    @Test
    void a_panel_whose_supply_is_crossed_out_is_doubtful() throws IOException {
        row(0, 0, "PANEL LP-4", "", "FED FROM", "MDP-2");
        table(2, 0);
        paper.strike(0, 3);
        assertThat(only(read()).isDoubtful()).isTrue();
    }

    @Test
    void a_value_wider_than_the_cells_that_are_joined_for_it_stays_beside_its_own_label() throws IOException {
        String[] header = {
            "PANEL", "", "LP-4", "", "ROOM", "", "Corridor 118 beside the lift lobby", "", "FED BY", "", "MDP-2"
        };
        row(0, 0, header);
        for (int c = 0; c < 12; c += 2) paper.join(0, c, 0, c + 1);
        table(2, 0);
        assertThat(only(read()).header().location().or("")).isEqualTo("Corridor 118 beside the lift lobby");
        assertThat(only(read()).header().fedFrom().or("")).isEqualTo("MDP-2");
    }

    @Test
    void numbers_of_notes_beside_the_rows_are_no_loads() throws IOException {
        row(0, 0, "PANEL LP-4");
        table(2, 0);
        row(3, 4, "3");
        row(5, 4, "1");
        assertThat(only(read()).circuits()).allMatch(c -> c.loadVA().isEmpty());
    }

    @Test
    void values_of_the_header_under_the_positions_are_no_rows_that_were_passed_over() throws IOException {
        row(0, 0, "WIRES", "PHASES", "PANEL");
        row(1, 0, "4", "3", "LP-4");
        table(3, 0);
        ScheduleReading reading = read();
        assertThat(only(reading).header().wires().value()).contains(4);
        assertThat(reading.problems()).isEmpty();
        assertThat(only(reading).problems()).isEmpty();
    }

    @Test
    void the_sums_of_the_phases_behind_one_label_are_not_the_whole() throws IOException {
        row(0, 0, "PANEL LP-4");
        row(2, 0, "CKT", "LOAD SERVED", "AMPS", "POLES", "VA A", "VA B");
        for (int i = 0; i < 6; i++)
            row(3 + i, 0, "" + (i + 1), "Oven " + i, "20", "1", i % 2 == 0 ? "500" : "", i % 2 == 0 ? "" : "700");
        row(10, 1, "TOTAL", "", "", "1500", "2100");
        assertThat(only(read()).totals().totalVA().isBlank()).isTrue();
    }

    @Test
    void panels_side_by_side_in_rows_of_their_own_keep_their_own_columns() throws IOException {
        row(0, 0, "PANEL LP-4");
        table(1, 0);
        row(1, 4, "VA");
        row(5, 4, "640");
        row(0, 6, "PANEL LP-5");
        row(1, 6, "LOCATION", "Stair 4");
        row(2, 6, "FED FROM", "MDP-3");
        table(4, 6);
        List<Directory> read = read().directories();
        assertThat(read.stream().map(Directory::panel)).containsExactly("LP-4", "LP-5");
        assertThat(read.get(0).circuits().get(3).totalVA().value()).contains(640.0);
        assertThat(read.get(1).circuits()).allMatch(c -> c.loadVA().isEmpty());
    }

    @Test
    void whole_numbers_that_a_program_wrote_with_a_point_are_positions_ratings_and_poles() throws IOException {
        row(0, 0, "PANEL LP-4");
        row(2, 0, "CKT", "LOAD SERVED", "AMPS", "POLES", "KVA");
        for (int i = 1; i <= 4; i++) row(2 + i, 0, i + ".0", "Oven " + i, "20.0", "1.0", "2.0");
        assertThat(only(read()).circuits().stream()
                        .map(c -> c.positions() + " " + c.ratingA().or(0) + " "
                                + c.totalVA().or(0.0)))
                .containsExactly("[1] 20 2000.0", "[2] 20 2000.0", "[3] 20 2000.0", "[4] 20 2000.0");
    }

    @Test
    void marks_that_may_carry_on_either_of_two_devices_are_told_unless_phases_show_which() throws IOException {
        row(0, 0, "PANEL LP-4");
        row(2, 0, "CKT", "LOAD SERVED", "AMPS", "");
        String[] served = {"Oven", "Kiln", "Pump", "-", "Lift", "Fan"}, amps = {"20", "20", "30", "-", "20", "20"};
        for (int i = 0; i < 6; i++) row(3 + i, 0, "" + (i + 1), served[i], amps[i]);
        assertThat(only(read()).problems().stream().map(Problem::message)).anyMatch(m -> m.contains("Position 2 "));
        row(2, 3, "PHASE");
        for (int i = 0; i < 6; i++) row(3 + i, 3, "ABC".substring(i % 3, i % 3 + 1));
        assertThat(only(read()).problems()).isEmpty();
        assertThat(only(read()).circuits().stream().map(Directory.Circuit::positions))
                .contains(List.of(3, 4));
    }

    @Test
    void a_decimal_comma_shows_loads_in_thousands_as_a_point_does() throws IOException {
        row(0, 0, "PANEL LP-4");
        row(2, 0, "CKT", "LOAD SERVED", "AMPS", "POLES", "LOAD");
        for (int i = 1; i <= 4; i++) row(2 + i, 0, "" + i, "Oven " + i, "20", "1", "1,2" + i);
        assertThat(only(read()).circuits().get(0).totalVA().value()).contains(1210.0);
    }

    private void table(int row, int column) {
        row(row, column, "CKT", "LOAD SERVED", "AMPS", "POLES");
        String[] served = {"Oven", "Kiln", "Pump", "Lift"};
        for (int i = 0; i < 4; i++) row(row + 1 + i, column, "" + (i + 1), served[(i + 3) % 4], "20", "1");
    }

    private void row(int row, int column, String... cells) {
        for (int c = 0; c < cells.length; c++)
            if (cells[c].matches("\\d+")) paper.figure(row, column + c, cells[c]);
            else paper.text(row, column + c, cells[c]);
    }

    private ScheduleReading read() throws IOException {
        Path file = folder.resolve("book.xlsx");
        GridBook.write(file, List.of(paper), GridLayout.Figures.NUMBERS, new Random(1));
        return RandomGridsTest.read(file);
    }

    private static Directory only(ScheduleReading read) {
        assertThat(read.directories()).as("%s", read.problems()).hasSize(1);
        return read.directories().get(0);
    }
}
