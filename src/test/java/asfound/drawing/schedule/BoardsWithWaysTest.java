package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.model.Directory;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Distribution boards whose ways have a phase each, and what their titles call them. */
class BoardsWithWaysTest {

    private static final double[] AT = {40, 90, 130};

    private static Directory read(String title, String[] phases) throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, title);
            s.line(60, AT, "Circuit", "Rating", "Description");
            for (int r = 0; r < 9; r++)
                s.line(74 + 14 * r, AT, (1 + r / 3) + " " + phases[r % 3], "20 A", "Sockets room " + (10 + r));
            return s.directory();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "Br,Bl,Gr",
        "R,W,B",
        "Red,White,Blue",
        "Brown,Black,Grey",
        "R,Y,Bl",
        "Red,Yel,Bl",
        "Blk,Red,Blu",
        "R,Y,B",
        "L1,L2,L3"
    })
    void ways_named_by_the_colours_of_their_conductors_are_counted_across(String a, String b, String c)
            throws IOException {
        Directory d = read("DB4 - Workshop distribution", new String[] {a, b, c});
        assertThat(d.circuits().stream().map(Directory.Circuit::position)).containsExactly(1, 2, 3, 4, 5, 6, 7, 8, 9);
        assertThat(d.circuits()).allMatch(k -> k.ratingA().or(0) == 20);
        assertThat(d.panel()).isEqualTo("DB4");
        assertThat(d.problems()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"R,W,B", "R,Y,B", "'Red ','White ','Blue '"})
    void colours_before_their_ways_are_counted_across(String a, String b, String c) throws IOException {
        Directory d = Readings.only(coloursFirst(a, b, c));
        assertThat(d.circuits().stream().map(Directory.Circuit::position)).containsExactly(1, 2, 3, 4, 5, 6, 7, 8, 9);
        assertThat(d.problems()).isEmpty();
    }

    @Test
    void letters_before_numbers_that_are_no_colours_of_three_phases_are_no_ways() throws IOException {
        ScheduleReading read = coloursFirst("R", "Y", "W");
        assertThat(read.directories())
                .allMatch(d -> d.isDoubtful() && !d.problems().isEmpty());
    }

    private static ScheduleReading coloursFirst(String a, String b, String c) throws IOException {
        String[] phases = {a, b, c};
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "DB4 - Workshop distribution");
            s.line(60, AT, "Cct", "Amps", "Circuit");
            for (int r = 0; r < 9; r++)
                s.line(
                        74 + 14 * r,
                        AT,
                        phases[r % 3] + (1 + r / 3),
                        r == 7 ? "" : "20",
                        r == 7 ? "BLANK" : "GPO ROOM " + r);
            return s.read();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "DB SCHEDULE FOR LDB-3,LDB-3",
        "DB SCHEDULE – DB-E0,DB-E0",
        "FEEDER PILLAR FP-04,FP-04",
        "Distribution Board Schedule for DB-7,DB-7",
    })
    void the_kind_of_a_board_is_not_its_name(String title, String name) throws IOException {
        assertThat(read(title, new String[] {"L1", "L2", "L3"}).panel()).isEqualTo(name);
    }

    @Test
    void a_title_that_names_the_kind_alone_names_no_board() throws IOException {
        Directory d = read("DB SCHEDULE", new String[] {"L1", "L2", "L3"});
        assertThat(d.header().designation().isStated()).isFalse();
    }

    @Test
    void colours_of_no_sequence_in_use_are_no_positions() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            String[] phases = {"Br", "Yel", "Blu"};
            s.text(40, 40, "Panel DB4");
            s.line(60, AT, "Circuit", "Rating", "Description");
            for (int r = 0; r < 9; r++)
                s.line(74 + 14 * r, AT, (1 + r / 3) + " " + phases[r % 3], "20 A", "Sockets room " + (10 + r));
            ScheduleReading read = s.read();
            assertThat(read.directories()).isEmpty();
            assertThat(read.problems()).isNotEmpty();
        }
    }

    @Test
    void a_way_with_the_letters_of_all_its_phases_holds_all_three() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "Panel DB4");
            s.line(60, AT, "Circuit", "Rating", "Description");
            String[] ways = {"1R", "1Y", "1B", "2RYB", "3R", "3Y", "3B"};
            for (int r = 0; r < ways.length; r++) s.line(74 + 14 * r, AT, ways[r], "20 A", "Sockets room " + (10 + r));
            Directory d = s.directory();
            assertThat(d.circuits().stream().map(Directory.Circuit::positions))
                    .containsExactly(
                            List.of(1), List.of(2), List.of(3), List.of(4, 5, 6), List.of(7), List.of(8), List.of(9));
        }
    }

    @Test
    void a_device_of_three_poles_under_the_last_phase_makes_it_no_other_column_than_those_of_the_others()
            throws IOException {
        double[] at = {40, 70, 160, 200, 290, 330, 420};
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "DISTRIBUTION BOARD DB-A");
            s.line(50, new double[] {110, 240, 370}, "R PHASE", "Y PHASE", "B PHASE");
            s.line(64, at, "WAY", "DESCRIPTION", "MCB (A)", "DESCRIPTION", "MCB (A)", "DESCRIPTION", "MCB (A)");
            s.line(80, at, "1", "Water cooler", "16", "Sockets", "20", "Split unit", "25");
            for (int w = 2; w <= 5; w++) {
                s.line(66 + 14 * w, new double[] {40, 200, 420}, "" + w, "Pump " + w, "32 TP");
                s.rule(60, 56 + 14 * w, 470, 56 + 14 * w);
            }
            s.rule(60, 56, 470, 56);
            s.line(66 + 14 * 6, at, "6", "SPARE", "16", "SPARE", "16", "BLANK", "");
            Directory d = s.directory();
            assertThat(Readings.circuits(d))
                    .containsExactly(
                            "[1] Water cooler",
                            "[2] Sockets",
                            "[3] Split unit",
                            "[4, 5, 6] Pump 2",
                            "[7, 8, 9] Pump 3",
                            "[10, 11, 12] Pump 4",
                            "[13, 14, 15] Pump 5",
                            "[16] SPARE",
                            "[17] SPARE",
                            "[18] BLANK");
            assertThat(d.problems()).isEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource({"R PHASE,Y PHASE,B PHASE", "L1,L2,L3"})
    void a_row_for_each_way_and_the_three_phases_side_by_side_is_read_whatever_the_cables(String a, String b, String c)
            throws IOException {
        double[] at = {40, 70, 95, 190, 230, 255, 350, 390, 415, 510};
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "DISTRIBUTION BOARD DB-A");
            s.line(50, new double[] {130, 290, 450}, a, b, c);
            s.line(64, at, "WAY", "AMP", "CIRCUIT", "CABLE", "AMP", "CIRCUIT", "CABLE", "AMP", "CIRCUIT", "CABLE");
            String[] sizes = {"2.5", "6.0", "1.5"};
            for (int w = 1; w <= 6; w++) {
                String[] row = new String[10];
                row[0] = "" + w;
                for (int p = 0; p < 3; p++) {
                    row[3 * p + 1] = p == 0 ? "16" : "32";
                    row[3 * p + 2] = "Sockets room " + w + p;
                    row[3 * p + 3] = sizes[p];
                }
                s.line(66 + 14 * w, at, row);
            }
            Directory d = s.directory();
            assertThat(d.circuits()).hasSize(18);
            assertThat(d.circuits().get(4).label()).isEqualTo("2L2");
            assertThat(d.circuits().get(4).description().or("")).isEqualTo("Sockets room 21");
            assertThat(d.problems()).isEmpty();
        }
    }

    @Test
    void what_feeds_what_is_under_circuit_and_not_under_the_use_that_a_few_rows_name() throws IOException {
        double[] at = {40, 76, 110, 160, 300};
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "DB-T1");
            s.line(60, at, "Way", "Phase", "Rating A", "Circuit", "Use");
            for (int r = 0; r < 12; r++)
                s.line(
                        74 + 14 * r,
                        at,
                        r % 3 == 0 ? "" + (1 + r / 3) : "",
                        "L" + (1 + r % 3),
                        "20",
                        "Outlets room " + (10 + r),
                        r % 4 == 0 ? "Emergency lighting" : "");
            assertThat(s.directory().circuits())
                    .hasSize(12)
                    .allMatch(k -> k.description().or("").startsWith("Outlets room"));
        }
    }
}
