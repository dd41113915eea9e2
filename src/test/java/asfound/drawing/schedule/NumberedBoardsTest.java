package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.model.Directory;
import asfound.model.Directory.Circuit;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the numbers of a board count: poles across or with the sides exchanged, ways with phases, or devices. */
class NumberedBoardsTest {

    private static final double[] TWO = {40, 70, 200, 240, 280, 420};
    private static final double[] LIST = {40, 90, 260, 310, 360};

    @Test
    void a_way_whose_number_stands_beside_each_of_its_phases_has_three_positions() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "DISTRIBUTION BOARD: DB-4");
            s.line(60, LIST, "Way", "Phase", "Circuit description", "Rating A", "Poles");
            s.line(74, LIST, "1", "L1", "Lights hall", "10", "SP");
            s.line(88, LIST, "1", "L2", "Sockets hall", "32", "SP");
            s.line(102, LIST, "1", "L3", "Spare", "16", "SP");
            s.line(116, LIST, "2", "L1", "Chiller", "63", "TP");
            s.line(130, LIST, "2", "L2");
            s.line(144, LIST, "2", "L3");
            s.line(158, LIST, "3", "L1", "Pump", "16", "SP");
            s.line(172, LIST, "3", "L2", "Fan", "16", "SP");
            s.line(186, LIST, "3", "L3", "Kiln", "16", "SP");
            Directory d = s.directory();
            assertThat(Readings.circuits(d))
                    .containsExactly(
                            "[1] Lights hall",
                            "[2] Sockets hall",
                            "[3] Spare",
                            "[4, 5, 6] Chiller",
                            "[7] Pump",
                            "[8] Fan",
                            "[9] Kiln");
            assertThat(d.circuits().get(1).label()).isEqualTo("1L2");
        }
    }

    @Test
    void poles_beside_the_phases_of_positions_are_no_ways() throws IOException {
        double[] at = {40, 70, 110, 160, 220};
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL LP-4");
            s.line(60, at, "CKT", "POLES", "PH", "TRIP", "LOAD");
            String[] loads = {"Kiln", "Fan", "Pump", "Lathe", "Saw", "Press", "Hoist"};
            for (int i = 0; i < loads.length; i++)
                s.line(74 + 14 * i, at, "" + (i + 1), i < 4 ? "1" : "2", "" + "ABC".charAt(i % 3), "20", loads[i]);
            assertThat(s.directory().circuits()).extracting(Circuit::label).containsOnly("");
        }
    }

    @Test
    void phases_side_by_side_may_stand_over_the_headings_of_their_columns() throws IOException {
        double[] at = {40, 70, 150, 190, 270, 310, 390};
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "DISTRIBUTION BOARD: DB-4");
            s.text(125, 48, "L1").text(245, 48, "L2").text(365, 48, "L3");
            s.line(60, at, "Way", "Description", "A", "Description", "A", "Description", "A");
            s.line(74, at, "1", "Lights hall", "10", "Sockets hall", "32", "Heater", "16");
            s.line(88, at, "2", "Lights loft", "10", "Sockets loft", "32", "Cooker", "32");
            s.line(102, at, "3", "Lights yard", "10", "Sockets yard", "32", "Spare", "16");
            s.line(116, at, "4", "Lights shop", "10", "Sockets shop", "32", "Kettle point", "16");
            assertThat(Readings.circuits(s.directory()))
                    .startsWith("[1] Lights hall", "[2] Sockets hall", "[3] Heater", "[4] Lights loft")
                    .hasSize(12);
        }
    }

    @Test
    void even_numbers_on_the_left_and_odd_ones_on_the_right_are_one_panel() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL LP-4");
            s.line(60, TWO, "CKT", "LOAD", "BKR", "CKT", "LOAD", "BKR");
            for (int r = 1; r < 5; r++)
                s.line(60 + 14 * r, TWO, "" + 2 * r, "Fan " + r, "20/1", "" + (2 * r - 1), "Pump " + r, "20/1");
            Directory d = s.directory();
            assertThat(Readings.circuits(d))
                    .startsWith("[1] Pump 1", "[2] Fan 1", "[3] Pump 2")
                    .hasSize(8);
            assertThat(d.problems()).isEmpty();
        }
    }

    @Test
    void numbers_of_poles_that_happen_to_rise_are_no_positions() throws IOException {
        Directory d = Readings.table(
                "Ckt,Poles,Trip,Description\n1,3,60,UH-14\n2,3,15,FACP-5\n3,,,\n4,,,\n5,,,\n6,,,\n"
                        + "7,1,20,CU-6\n8,2,30,KILN KN-1\n9,1,20,RECEPT RM 9\n10,,,\n11,1,20,LTG RM 11\n12,2,20,WH-1\n"
                        + "13,1,25,RECEPT RM 13\n14,,,\n15,2,20,KILN KN-2\n16,3,60,PANEL LP-9\n17,,,\n18,,,\n19,1,20,EF-2\n20,,,\n");
        assertThat(d.circuits().stream().map(Circuit::positions).filter(p -> p.size() > 1))
                .containsExactly(
                        List.of(1, 3, 5),
                        List.of(2, 4, 6),
                        List.of(8, 10),
                        List.of(12, 14),
                        List.of(15, 17),
                        List.of(16, 18, 20));
        assertThat(d.circuits().stream().map(Circuit::position)).contains(7, 9, 11, 13, 19);
    }

    @Test
    void four_quarters_side_by_side_are_one_panel() throws IOException {
        double[] at = {20, 44, 110, 160, 184, 250, 300, 324, 390, 440, 464, 530};
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL LP-4");
            s.line(60, at, "CKT", "LOAD", "BKR", "CKT", "LOAD", "BKR", "CKT", "LOAD", "BKR", "CKT", "LOAD", "BKR");
            for (int r = 0; r < 4; r++)
                s.line(
                        74 + 14 * r,
                        at,
                        "" + (2 * r + 1),
                        "Lights hall " + r,
                        "20/1",
                        "" + (2 * r + 9),
                        "Sockets hall " + r,
                        "20/1",
                        "" + (2 * r + 2),
                        "Lights loft " + r,
                        "20/1",
                        "" + (2 * r + 10),
                        "Sockets loft " + r,
                        "20/1");
            Directory d = s.directory();
            assertThat(Readings.circuits(d))
                    .contains("[1] Lights hall 0", "[9] Sockets hall 0", "[2] Lights loft 0", "[16] Sockets loft 3")
                    .hasSize(16);
            assertThat(d.problems()).isEmpty();
        }
    }

    @Test
    void a_way_of_three_poles_among_ways_with_phases_has_them_all() throws IOException {
        Directory d = Readings.table("""
                Board,Way,Phase,Description,Rating A,Poles
                DB-4,1,L1,Lights,10,1
                DB-4,1,L2,Sockets,32,1
                DB-4,1,L3,Spare,16,1
                DB-4,2,TP,Chiller,63,3
                DB-4,3,L1,Pump,16,1
                DB-4,3,L2,Fan,16,1
                DB-4,3,L3,Kiln,16,1
                """);
        assertThat(Readings.circuits(d))
                .containsExactly(
                        "[1] Lights",
                        "[2] Sockets",
                        "[3] Spare",
                        "[4, 5, 6] Chiller",
                        "[7] Pump",
                        "[8] Fan",
                        "[9] Kiln");
    }

    @Test
    void a_star_at_a_position_points_to_a_note() throws IOException {
        Directory d = Readings.table("""
                Ckt,Load,Breaker
                1*,Lights,20/1
                2,Spa,30/2
                3,Kiln,20/1
                4,↑,↑
                5*,Sockets,20/1
                """);
        assertThat(Readings.circuits(d)).containsExactly("[1] Lights", "[2, 4] Spa", "[3] Kiln", "[5] Sockets");
        assertThat(d.unread()).isEmpty();
    }

    @Test
    void a_space_with_its_bus_is_a_space() throws IOException {
        Directory d = Readings.table("Ckt,Load,Breaker\n1,Lights,20/1\n2,SPACE W/ BUS,\n3,Fan,20/1\n4,Pump,20/1\n");
        assertThat(d.circuits().get(1).use()).isEqualTo(Directory.Use.SPACE);
    }

    @Test
    void numbered_notes_and_connections_of_equipment_are_no_directories() throws IOException {
        for (String title : new String[] {"KEYNOTES", "EQUIPMENT CONNECTION SCHEDULE"})
            try (DrawnSheet s = new DrawnSheet()) {
                s.text(40, 40, title);
                s.line(60, LIST, "NO.", "DESCRIPTION", "AMPS", "PANEL");
                for (int i = 1; i < 7; i++) s.line(60 + 14 * i, LIST, "" + i, "Connect the fan no. " + i, "20", "K1");
                ScheduleReading read = s.read();
                assertThat(read.directories()).isEmpty();
                assertThat(Readings.said(read.problems()))
                        .containsExactly("The table headed '" + title + "' was not taken for a panel's directory.");
            }
    }

    @Test
    void the_panels_own_name_may_stand_before_each_position() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL RP2 SCHEDULE");
            s.line(60, LIST, "Circuit", "Load", "Amps", "Poles");
            s.line(74, LIST, "RP2-1,3", "Kiln", "30", "2");
            s.line(88, LIST, "RP2-2", "Lights", "20", "1");
            s.line(102, LIST, "RP2-4", "Fan", "20", "1");
            s.line(116, LIST, "RP2-5", "Pump", "20", "1");
            assertThat(Readings.circuits(s.directory()))
                    .containsExactly("[1, 3] Kiln", "[2] Lights", "[4] Fan", "[5] Pump");
        }
    }

    @Test
    void tags_of_equipment_are_no_positions() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL RP2 SCHEDULE");
            s.line(60, LIST, "Circuit", "Load", "Amps", "Poles");
            for (int i = 1; i < 6; i++) s.line(60 + 14 * i, LIST, "EF-" + i, "Exhaust fan", "20", "1");
            assertThat(s.read().directories()).isEmpty();
        }
    }

    @Test
    void a_switchboard_counts_its_devices_and_not_their_poles() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "SWITCHBOARD: MSB");
            s.line(60, LIST, "CKT", "LOAD", "TRIP", "POLES");
            String[] loads = {"Panel HP-1", "Panel HP-2", "Chiller", "Lift", "Spare"};
            for (int i = 0; i < loads.length; i++) s.line(74 + 14 * i, LIST, "" + (i + 1), loads[i], "225", "3");
            s.line(74 + 14 * loads.length, LIST, "6", "Space");
            Directory d = s.directory();
            assertThat(Readings.circuits(d))
                    .containsExactly(
                            "[1] Panel HP-1", "[2] Panel HP-2", "[3] Chiller", "[4] Lift", "[5] Spare", "[6] Space");
            assertThat(d.circuits()).extracting(Circuit::poles).containsExactly(3, 3, 3, 3, 3, 1);
            assertThat(d.problems()).isEmpty();
        }
    }

    @Test
    void a_device_that_is_printed_beside_each_of_its_poles_is_one_device() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL: LP-4");
            s.line(60, LIST, "CKT", "LOAD", "TRIP", "POLES");
            for (int i = 1; i < 13; i++) {
                String load = (i <= 6 ? "Kiln " : "Press ") + (i % 2 == 0 ? "east" : "west");
                s.line(60 + 14 * i, LIST, "" + i, load, "60", "3");
            }
            assertThat(Readings.circuits(s.directory()))
                    .containsExactly(
                            "[1, 3, 5] Kiln west",
                            "[2, 4, 6] Kiln east",
                            "[7, 9, 11] Press west",
                            "[8, 10, 12] Press east");
        }
    }

    @Test
    void a_device_drawn_over_another_is_told_whatever_else_the_list_counts() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL: LP-4");
            s.line(60, LIST, "CKT", "LOAD", "TRIP", "POLES");
            String[] loads = {"Kiln", "Fan", "Pump", "Lathe", "Saw", "Press"};
            for (int i = 0; i < loads.length; i++)
                s.line(74 + 14 * i, LIST, "" + (i + 1), loads[i], "20", i == 0 ? "3" : "1");
            assertThat(Readings.said(s.directory().problems()))
                    .anyMatch(m -> m.startsWith("Position 1 could not be read in full: 3 poles"));
        }
    }

    @Test
    void a_list_of_equipment_that_names_panels_and_circuits_is_no_directory_of_them() throws IOException {
        double[] at = {40, 90, 190, 240, 300};
        try (DrawnSheet s = new DrawnSheet()) {
            s.line(60, at, "TAG", "DESCRIPTION", "OCP (A/P)", "PANEL", "CIRCUIT");
            for (int i = 1; i < 13; i++)
                s.line(60 + 14 * i, at, "EF-" + i, "Exhaust fan", "20/1", "LP-" + i % 3, "" + (3 * i + 1));
            ScheduleReading read = s.read();
            assertThat(read.directories()).isEmpty();
            assertThat(Readings.said(read.problems())).anyMatch(m -> m.startsWith("A list that names circuits"));
        }
    }

    @Test
    void a_schedule_of_equipment_with_its_panels_is_no_directory_of_them() throws IOException {
        double[] at = {40, 70, 120, 220, 260, 310, 360, 420};
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "MECHANICAL EQUIPMENT CONNECTION SCHEDULE");
            s.line(60, at, "NO.", "TAG", "DESCRIPTION", "MCA", "BREAKER", "POLES", "PANEL", "CIRCUIT");
            for (int i = 0; i < 8; i++)
                s.line(
                        74 + 14 * i,
                        at,
                        "" + (i + 1),
                        "RTU-" + i,
                        "Rooftop unit",
                        "" + (12 + i),
                        "30",
                        "3",
                        "MP" + i % 3,
                        "%d,%d,%d".formatted(2 * i + 1, 2 * i + 3, 2 * i + 5));
            assertThat(s.read().directories()).isEmpty();
        }
    }

    @Test
    void what_kind_every_device_is_of_makes_no_header_beside_the_table() throws IOException {
        double[] at = {40, 90, 200, 250, 300};
        try (DrawnSheet s = new DrawnSheet()) {
            s.rule(38, 50, 340, 50);
            s.text(40, 40, "DB REF DB-4");
            s.line(60, at, "Circuit", "Description", "Device", "Type", "Points");
            for (int i = 1; i < 7; i++) {
                s.line(60 + 14 * i, at, "" + i, "Sockets room " + i, "C16", "MCB", "" + 2 * i);
                s.rule(38, 63 + 14 * i, 340, 63 + 14 * i);
            }
            assertThat(Readings.said(s.directory().problems())).noneMatch(m -> m.startsWith("Not understood"));
        }
    }

    @Test
    void what_stands_in_brackets_behind_a_name_is_no_part_of_it() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL LP-4 (SECTIONS 1 AND 2)");
            assertThat(s.twoSided(70).directory().panel()).isEqualTo("LP-4");
        }
    }

    @Test
    void devices_that_go_by_a_name_with_a_number_count_once_whatever_their_poles() throws IOException {
        double[] at = {40, 90, 130, 190, 260};
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "Switchboard DB-1");
            s.line(60, at, "Device", "Poles", "Rating (A)", "Type", "Description");
            String[] loads = {"GPO east", "Compressor", "Lights", "SPARE", "Oven", "Hot water"};
            for (int i = 0; i < loads.length; i++)
                s.line(74 + 14 * i, at, "CB" + (i + 1), i % 3 == 1 ? "3" : "1", "20", "RCBO 30mA", loads[i]);
            Directory d = s.directory();
            assertThat(Readings.circuits(d))
                    .containsExactly(
                            "[1] GPO east", "[2] Compressor", "[3] Lights", "[4] SPARE", "[5] Oven", "[6] Hot water");
            assertThat(d.circuits()).extracting(Circuit::poles).containsExactly(1, 3, 1, 1, 3, 1);
            assertThat(d.circuits().get(1).label()).isEqualTo("CB2");
            assertThat(d.circuits().get(3).use()).isEqualTo(Directory.Use.SPARE);
            assertThat(d.problems()).isEmpty();
        }
    }

    @Test
    void lamps_and_fans_with_the_same_letters_are_no_devices_of_a_board() throws IOException {
        double[] at = {40, 90, 230, 290};
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "Appendix 4");
            s.line(60, at, "Ref", "Description", "Lamp", "Watts");
            for (int i = 1; i < 7; i++) s.line(60 + 14 * i, at, "F" + i, "Recessed luminaire " + i, "LED", "" + 12 * i);
            assertThat(s.read().directories()).isEmpty();
        }
    }

    @Test
    void a_row_that_says_which_ways_one_residual_current_device_protects_is_no_way() throws IOException {
        double[] at = {40, 80, 250, 310};
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "Consumer unit CU1");
            s.line(60, at, "Way", "Circuit", "MCB", "cpc mm²");
            s.text(40, 74, "RCD 1: 63 A 30 mA, ways 1 to 3");
            String[] loads = {"Cooker", "Ring kitchen", "Lights", "Shower", "Ring upstairs", "Garage"};
            for (int i = 0; i < 3; i++) s.line(88 + 14 * i, at, "" + (i + 1), loads[i], "B32", "2.5");
            s.text(40, 130, "RCD 2: 63 A 30 mA, ways 4 to 6");
            for (int i = 3; i < 6; i++) s.line(102 + 14 * i, at, "" + (i + 1), loads[i], "B32", "2.5");
            assertThat(Readings.circuits(s.directory()))
                    .containsExactly(
                            "[1] Cooker",
                            "[2] Ring kitchen",
                            "[3] Lights",
                            "[4] Shower",
                            "[5] Ring upstairs",
                            "[6] Garage");
        }
    }
}
