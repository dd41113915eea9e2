package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.model.Directory;
import asfound.recordset.Source;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Directories without headings: typed for a panel's door, or written down by whoever traced the circuits. */
class PlainDirectoriesTest {

    @Test
    void positions_at_both_edges_of_a_door_card_have_their_loads_between_them() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(100, 40, "PANEL RP-2");
            double[] at = {40, 60, 180, 320};
            for (int r = 0; r < 5; r++)
                s.line(60 + 14 * r, at, "" + (2 * r + 1), "Lights room " + r, "Sockets room " + r, "" + (2 * r + 2));
            Directory d = s.directory();
            assertThat(d.panel()).isEqualTo("RP-2");
            assertThat(Readings.circuits(d))
                    .containsExactly(
                            "[1] Lights room 0",
                            "[2] Sockets room 0",
                            "[3] Lights room 1",
                            "[4] Sockets room 1",
                            "[5] Lights room 2",
                            "[6] Sockets room 2",
                            "[7] Lights room 3",
                            "[8] Sockets room 3",
                            "[9] Lights room 4",
                            "[10] Sockets room 4");
        }
    }

    @Test
    void a_written_list_under_a_panels_name_parts_the_number_from_the_load() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "Panel B - basement");
            s.text(40, 60, "1 - Kitchen plugs");
            s.text(40, 74, "2 - Furnace");
            s.text(40, 88, "3 - Spare");
            s.text(40, 102, "4 - Garage door");
            Directory d = s.directory();
            assertThat(d.panel()).isEqualTo("B");
            assertThat(Readings.circuits(d))
                    .containsExactly("[1] Kitchen plugs", "[2] Furnace", "[3] Spare", "[4] Garage door");
        }
    }

    @Test
    void a_list_whose_numbers_are_named_as_circuits_is_parted_as_well() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "Load center T-3");
            String[] loads = {"Oven", "Furnace", "Spare", "Door", "Sign", "Pump", "Fan", "Lathe", "Press", "Saw"};
            for (int r = 0; r < loads.length; r++) s.text(40, 60 + 12 * r, "Ckt " + (r + 1) + ") " + loads[r]);
            assertThat(Readings.circuits(s.directory()))
                    .containsExactly(
                            "[1] Oven",
                            "[2] Furnace",
                            "[3] Spare",
                            "[4] Door",
                            "[5] Sign",
                            "[6] Pump",
                            "[7] Fan",
                            "[8] Lathe",
                            "[9] Press",
                            "[10] Saw");
        }
    }

    @Test
    void numbers_that_go_on_in_a_second_column_are_one_directory() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL S-2");
            double[] at = {40, 70, 200, 230};
            for (int r = 1; r < 5; r++) s.line(50 + 14 * r, at, "" + r, "Lathe " + r, "" + (r + 4), "Press " + r);
            assertThat(Readings.circuits(s.directory()))
                    .containsExactly(
                            "[1] Lathe 1",
                            "[2] Lathe 2",
                            "[3] Lathe 3",
                            "[4] Lathe 4",
                            "[5] Press 1",
                            "[6] Press 2",
                            "[7] Press 3",
                            "[8] Press 4");
        }
    }

    @Test
    void the_name_may_stand_in_the_cell_beside_the_word_panel() throws IOException {
        Directory d = Readings.table(
                "Panel,S-3\nFed from,MDP\n1,20,Lights,2,20,Copier\n3,20,Fan,4,20,Spare\n5,30,Oven,6,20,Sign\n7,20,Pump,8,20,Door\n");
        assertThat(d.panel()).isEqualTo("S-3");
        assertThat(Readings.circuits(d))
                .containsExactly(
                        "[1] Lights",
                        "[2] Copier",
                        "[3] Fan",
                        "[4] Spare",
                        "[5] Oven",
                        "[6] Sign",
                        "[7] Pump",
                        "[8] Door");
    }

    @Test
    void a_boards_name_with_its_place_behind_it_names_the_directory() throws IOException {
        Directory d =
                Readings.table("DB-6 workshop\nWay,Serves,MCB\n1,Lathe,B16\n2,Press,B16\n3,Saw,B16\n4,Spare,B16\n");
        assertThat(d.panel()).isEqualTo("DB-6");
    }

    @Test
    void notes_in_turn_below_another_title_are_no_directory() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "KEYNOTES");
            s.text(40, 60, "1. Existing panel LP-1 to remain.");
            s.text(40, 74, "2. Field verify.");
            s.text(40, 88, "3. See detail.");
            s.text(40, 102, "4. Patch wall.");
            assertThat(s.read().directories()).isEmpty();
        }
    }

    @Test
    void a_load_centre_without_headings_gives_each_load_its_own_rating() throws IOException {
        Directory d = Readings.table(
                "Panel LC-1\n1,Range,40A,30A,Dryer,2\n3,Kitchen,20A,20A,Bath,4\n5,Lights,15A,15A,Furnace,6\n"
                        + "7,Sump,20A,20A,Spare,8\n");
        assertThat(d.circuits().stream()
                        .map(c -> c.positions() + " " + c.description().or("") + " "
                                + c.ratingA().or(0)))
                .containsExactly(
                        "[1] Range 40",
                        "[2] Dryer 30",
                        "[3] Kitchen 20",
                        "[4] Bath 20",
                        "[5] Lights 15",
                        "[6] Furnace 15",
                        "[7] Sump 20",
                        "[8] Spare 20");
    }

    @Test
    void devices_written_behind_the_loads_are_read_as_devices() throws IOException {
        Directory d = Readings.table(
                "Panel LC-2\n1,Kitchen 20A,2,Bath 20A\n3,Lights 15A,4,Furnace 15A\n5,Range 40A 2P,6,Dryer 30A 2P\n7,,8,\n");
        assertThat(d.circuits().stream()
                        .map(c -> c.positions() + " " + c.description().or("") + " "
                                + c.ratingA().or(0)))
                .containsExactly(
                        "[1] Kitchen 20",
                        "[2] Bath 20",
                        "[3] Lights 15",
                        "[4] Furnace 15",
                        "[5, 7] Range 40",
                        "[6, 8] Dryer 30");
    }

    @Test
    void lists_of_positions_at_the_left_of_their_cells_belong_to_numbers_at_the_right() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL SH-1").text(40, 60, "NO").text(110, 60, "SERVES");
            String[][] rows = {
                {"1,3,5", "RTU-1"},
                {"2,4", "Water heater"},
                {"6", "Lights"},
                {"7", "Sockets"},
                {"8,10", "Welder"},
                {"9", "Gate"}
            };
            for (int r = 0; r < rows.length; r++) {
                double y = 74 + 13 * r;
                if (rows[r][0].contains(",")) s.text(40, y, rows[r][0]);
                else s.toTheRight(90, y, rows[r][0]);
                s.text(110, y, rows[r][1]);
            }
            assertThat(Readings.circuits(s.directory()))
                    .containsExactly(
                            "[1, 3, 5] RTU-1",
                            "[2, 4] Water heater",
                            "[6] Lights",
                            "[7] Sockets",
                            "[8, 10] Welder",
                            "[9] Gate");
        }
    }

    @Test
    void numbers_and_names_in_a_table_without_a_panel_or_a_spare_are_told_and_not_read() throws IOException {
        Path file = Files.createTempFile("list", ".csv");
        try {
            Files.writeString(file, "1,Oakes\n2,Tamm\n3,Pryor\n4,Akeley\n5,Brandt\n6,Corvin\n7,Ellery\n");
            ScheduleReading read = Readings.of(file, Source.Kind.SCHEDULE_TABLE);
            assertThat(read.directories()).isEmpty();
            assertThat(Readings.said(read.problems()))
                    .containsExactly("No panel schedule was recognised in this table.");
        } finally {
            Files.delete(file);
        }
    }
}
