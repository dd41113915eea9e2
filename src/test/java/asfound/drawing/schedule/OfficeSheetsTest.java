package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory;
import asfound.model.Directory.Mains;
import asfound.model.Problem;
import asfound.recordset.Limits;
import asfound.recordset.Settings;
import asfound.recordset.Source;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ways in which offices lay out their sheets, each by the trait that makes it hard to read. */
class OfficeSheetsTest {

    private static final double[] TWO_SIDED = {40, 70, 200, 240, 280, 420};
    private static final double[] LIST = {40, 80, 260, 320};

    @TempDir
    private Path folder;

    @Test
    void values_that_stand_over_their_labels_are_not_taken_from_the_line_below() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 200, 360};
            s.line(40, at, "S-1", "Stage left", "Dimmer rack");
            s.line(49, at, "Panel", "Location", "Fed from");
            s.line(66, at, "208Y/120V", "3", "4");
            s.line(75, at, "Voltage", "Phases", "Wires");
            s.line(92, at, "225 A", "175 A", "14 kA");
            s.line(101, at, "Bus rating", "Main breaker", "AIC rating");
            twoSided(s, 130);
            Directory d = only(read(s));
            assertThat(d.panel()).isEqualTo("S-1");
            assertThat(d.header().location().or("")).isEqualTo("Stage left");
            assertThat(d.header().fedFrom().or("")).isEqualTo("Dimmer rack");
            assertThat(d.header().phases().value()).contains(3);
            assertThat(d.header().busA().value()).contains(225);
            assertThat(d.header().mainA().value()).contains(175);
            assertThat(d.header().interruptingKA().value()).contains(14.0);
        }
    }

    @Test
    void a_name_before_the_first_label_of_a_running_line_names_the_panel() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PNL DB-3: 120/208V, 3PH, 4W, 225A BUS, 200A MCB, 10KAIC, FED FROM MDP/5, RM: Room 030");
            twoSided(s, 70);
            Directory d = only(read(s));
            assertThat(d.panel()).isEqualTo("DB-3");
            assertThat(d.header().fedFrom().or("")).isEqualTo("MDP/5");
            assertThat(d.header().location().or("")).isEqualTo("Room 030");
            assertThat(d.header().busA().value()).contains(225);
            assertThat(d.header().mainA().value()).contains(200);
            assertThat(d.header().voltage().isStated()).isTrue();
        }
    }

    @Test
    void what_a_header_says_between_bars_is_read_one_by_one_and_lugs_are_rated_as_the_bus() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "Board: HD-1 | Location: Hangar | Fed from: SUB-2 | 208Y/120V 3PH 4W | 100A MLO");
            twoSided(s, 70);
            Directory d = only(read(s));
            assertThat(d.panel()).isEqualTo("HD-1");
            assertThat(d.header().location().or("")).isEqualTo("Hangar");
            assertThat(d.header().fedFrom().or("")).isEqualTo("SUB-2");
            assertThat(d.header().mains().value()).contains(Mains.LUGS);
            assertThat(d.header().busA().value()).contains(100);
            assertThat(d.header().mainA().isBlank()).isTrue();
        }
    }

    @Test
    void what_follows_the_sentence_of_a_place_is_read_too() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "Panel BP-1 is located in the barn.");
            s.text(40, 52, "Fed from: Service disconnect. 120/208V, 3PH, 4W, 225A bus, 225A MCB, 10 kAIC");
            twoSided(s, 72);
            Directory d = only(read(s));
            assertThat(d.panel()).isEqualTo("BP-1");
            assertThat(d.header().fedFrom().or("")).isEqualTo("Service disconnect");
            assertThat(d.header().wires().value()).contains(4);
            assertThat(d.header().mainA().value()).contains(225);
        }
    }

    @Test
    void letters_set_apart_make_a_name() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(200, 40, "P A N E L   E M - 2");
            s.text(40, 54, "FED FROM ATS-2");
            twoSided(s, 80);
            assertThat(only(read(s)).panel()).isEqualTo("EM-2");
        }
    }

    @Test
    void figures_set_close_to_the_description_beside_them_stay_loads() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL MP-1");
            s.line(60, new double[] {44, 68, 150, 190, 250}, "CKT", "VA", "LOAD", "", "AMPS");
            String[] loads = {"1150", "420", "90", "1210", "640", "80"};
            String[] names = {"Water cooler", "Fire alarm", "Door holders", "RTU-3", "Dock leveler 2", "Sign"};
            for (int i = 0; i < 6; i++) {
                double y = 74 + 14 * i;
                s.toTheRight(56, y, Integer.toString(i + 1));
                s.toTheRight(90, y, loads[i]);
                s.text(93, y, names[i]);
                s.text(250, y, "20");
            }
            Directory d = only(read(s));
            assertThat(d.circuits().stream().map(c -> c.description().or(""))).containsExactly(names);
            assertThat(d.circuits().stream().map(c -> c.loadVA().get(0).value().orElseThrow()))
                    .containsExactly(1150.0, 420.0, 90.0, 1210.0, 640.0, 80.0);
        }
    }

    @Test
    void a_heading_at_the_other_edge_of_a_ruled_cell_still_heads_its_column() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL: HV-2");
            s.line(
                    60,
                    new double[] {40, 92, 212, 262, 302, 422},
                    "CKT",
                    "DESCRIPTION",
                    "BKR",
                    "BKR",
                    "DESCRIPTION",
                    "CKT");
            String[] loads = {"RTU-1", "RTU-2", "RTU-3", "EF-1", "EF-2", "EF-3"};
            for (int r = 0; r < 3; r++) {
                double y = 74 + 14 * r;
                s.toTheRight(89, y, Integer.toString(2 * r + 1))
                        .text(92, y, loads[2 * r])
                        .toTheRight(258, y, "20/1");
                s.toTheRight(298, y, "20/1")
                        .text(302, y, loads[2 * r + 1])
                        .toTheRight(468, y, Integer.toString(2 * r + 2));
            }
            for (double x : new double[] {38, 90, 210, 260, 300, 420, 470}) s.rule(x, 50, x, 106);
            for (int r = 0; r <= 4; r++) s.rule(38, 50 + 14 * r, 470, 50 + 14 * r);
            Directory d = only(read(s));
            assertThat(d.circuits().stream()
                            .map(c -> c.position() + " " + c.description().or("")))
                    .containsExactly("1 RTU-1", "2 RTU-2", "3 RTU-3", "4 EF-1", "5 EF-2", "6 EF-3");
        }
    }

    @Test
    void a_device_that_goes_on_at_the_head_of_the_next_half_leaves_no_space_there() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL RP3");
            double[] at = {40, 62, 180, 210, 260, 282, 400, 430};
            s.line(60, at, "CKT", "LOAD", "TRIP", "P", "CKT", "LOAD", "TRIP", "P");
            s.line(74, at, "1", "Lights", "20", "1", "7", "", "", "");
            s.line(88, at, "2", "Pump", "30", "2", "8", "Copier", "20", "1");
            s.line(102, at, "3", "Oven", "20", "1", "9", "", "", "");
            s.line(116, at, "4", "", "", "", "10", "Sign", "20", "1");
            s.line(130, at, "5", "RTU-1", "60", "3", "11", "Fan", "20", "1");
            s.line(144, at, "6", "Gate", "20", "1", "12", "Door", "20", "1");
            Directory d = only(read(s));
            assertThat(d.circuits().stream()
                            .map(c -> c.positions() + " " + c.description().or("")))
                    .containsExactly(
                            "[1] Lights",
                            "[2, 4] Pump",
                            "[3] Oven",
                            "[5, 7, 9] RTU-1",
                            "[6] Gate",
                            "[8] Copier",
                            "[10] Sign",
                            "[11] Fan",
                            "[12] Door");
        }
    }

    @Test
    void a_demand_factor_is_no_load_of_a_phase() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL MSB-2");
            double[] at = {40, 80, 220, 260, 300, 350, 400};
            s.line(60, at, "Circuit", "Serves", "Trip", "Poles", "kVA", "DF", "Demand kVA");
            s.line(74, at, "1", "Chiller", "50", "1", "1.68", "0.8", "1.34");
            s.line(88, at, "2", "Boiler", "70", "1", "5.07", "0.8", "4.06");
            s.line(102, at, "3", "Lift", "40", "1", "0.98", "0.8", "0.78");
            s.line(116, at, "4", "Lights", "20", "1", "1.20", "0.8", "0.96");
            assertThat(only(read(s)).circuits().stream()
                            .map(c -> c.loadVA().get(0).value().orElseThrow()))
                    .containsExactly(1680.0, 5070.0, 980.0, 1200.0);
        }
    }

    @Test
    void on_a_board_with_phases_R_Y_B_the_third_phase_is_B() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "DISTRIBUTION BOARD: DB-W2");
            double[] at = {40, 80, 220, 260, 300};
            s.line(60, at, "Way", "Description", "Ph", "Poles", "In (A)");
            s.line(74, at, "1", "Lights", "R", "1", "10");
            s.line(88, at, "", "Sockets", "Y", "1", "16");
            s.line(102, at, "", "Heater", "B", "1", "20");
            s.line(116, at, "2", "Lathe", "RYB", "3", "32");
            s.line(130, at, "3", "Press", "RYB", "3", "63");
            assertThat(only(read(s)).circuits().stream()
                            .map(c -> c.positions() + " " + c.description().or("")))
                    .containsExactly("[1] Lights", "[2] Sockets", "[3] Heater", "[4, 5, 6] Lathe", "[7, 8, 9] Press");
        }
    }

    @Test
    void a_schedule_of_fixtures_is_no_panel_and_is_told() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL BP-1");
            twoSided(s, 60);
            s.text(40, 200, "LIGHTING FIXTURE SCHEDULE");
            double[] at = {40, 80, 130, 300, 360};
            s.line(214, at, "NO.", "TYPE", "DESCRIPTION", "LAMPS", "VA");
            for (int i = 1; i <= 6; i++)
                s.line(214 + 14 * i, at, "" + i, "A" + i, "Troffer type " + i, "LED", "" + (30 + i));
            ScheduleReading read = read(s);
            assertThat(only(read).panel()).isEqualTo("BP-1");
            assertThat(read.problems().stream().map(Problem::message))
                    .containsExactly(
                            "The table headed 'LIGHTING FIXTURE SCHEDULE' was not taken for a panel's directory.");
        }
    }

    @Test
    void a_plain_directory_from_a_panels_door_is_read_and_its_missing_ratings_told() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(250, 40, "Panel LP-B");
            for (int r = 0; r < 6; r++) {
                s.toTheRight(60, 70 + 20 * r, Integer.toString(2 * r + 1)).text(72, 70 + 20 * r, "Lights room " + r);
                s.toTheRight(320, 70 + 20 * r, Integer.toString(2 * r + 2)).text(332, 70 + 20 * r, "Sockets room " + r);
            }
            Directory d = only(read(s));
            assertThat(d.panel()).isEqualTo("LP-B");
            assertThat(d.circuits()).hasSize(12);
            assertThat(d.circuits()).allMatch(c -> c.ratingA().isBlank());
            assertThat(d.problems().stream().map(Problem::message))
                    .contains("Most circuits were read without a rating.");
        }
    }

    @Test
    void a_right_side_that_is_listed_below_the_left_one_belongs_to_the_same_panel() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "Panel GP-2");
            for (int half = 0; half < 2; half++) {
                double y = 60 + 120 * half;
                s.text(40, y, half == 0 ? "Left side" : "Right side");
                s.line(y + 14, LIST, "Circuit", "Description", "Breaker", "Poles");
                for (int r = 0; r < 5; r++)
                    s.line(y + 28 + 14 * r, LIST, "" + (2 * r + 1 + half), "Load " + r + " of " + half, "20", "1");
            }
            Directory d = only(read(s));
            assertThat(d.panel()).isEqualTo("GP-2");
            assertThat(d.circuits().stream().map(Directory.Circuit::position))
                    .containsExactly(1, 2, 3, 4, 5, 6, 7, 8, 9, 10);
            assertThat(d.problems()).isEmpty();
        }
    }

    @Test
    void a_panels_title_without_a_directory_below_it_is_told() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL LA-1");
            twoSided(s, 60);
            s.text(40, 240, "PANEL LA-2");
            s.text(40, 260, "see sheet E-602");
            assertThat(read(s).problems().stream().map(Problem::message))
                    .containsExactly(
                            "The title 'PANEL LA-2' stands on the sheet, and no directory of that name was read.");
        }
    }

    @Test
    void a_list_of_poles_and_what_they_serve_is_a_schedule_and_a_decimal_comma_is_read() throws IOException {
        Path file = folder.resolve("list.csv");
        Files.writeString(
                file,
                "Board;Pole;Serves;No. of Poles;Trip Rating;kVA\r\nDB-7;1;Lighting;1;20;1,75\r\n"
                        + "DB-7;2-3-4;Cooker;3;70;1,02\r\nDB-7;5;Pump;1;20;0,30\r\nDB-7;6;Sign;1;20;0,25\r\n");
        Directory d = only(read(file, Source.Kind.SCHEDULE_TABLE));
        assertThat(d.panel()).isEqualTo("DB-7");
        assertThat(d.circuits().get(0).loadVA().get(0).value()).contains(1750.0);
        assertThat(d.circuits().get(1).positions()).containsExactly(2, 3, 4);
    }

    @Test
    void a_column_of_ratings_that_holds_something_else_is_told() throws IOException {
        Path file = folder.resolve("odd.csv");
        Files.writeString(
                file,
                "PANEL,K-1\nCkt,Description,Trip,Poles\n1,Lights,see E2,1\n2,Pump,see E3,1\n3,Fan,see E2,1\n"
                        + "4,Sign,see E4,1\n");
        assertThat(only(read(file, Source.Kind.SCHEDULE_TABLE)).problems().stream()
                        .map(Problem::message))
                .contains("The column 'Trip' was not read: its entries are not of the kind, as 'see E2'.");
    }

    @Test
    void a_position_a_letters_width_from_its_load_stays_a_position() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL GH");
            double[] at = {40, 66, 200};
            s.line(60, at, "Ckt", "Serves", "Breaker");
            String[] positions = {"1", "2", "3", "4-6", "5", "7", "8", "10-12", "9", "11"};
            for (int i = 0; i < positions.length; i++)
                s.line(
                        74 + 12 * i,
                        at,
                        positions[i],
                        "Oven " + (char) ('A' + i),
                        positions[i].contains("-") ? "30A/2P" : "20A/1P");
            assertThat(only(read(s)).circuits().stream()
                            .filter(c -> c.poles() == 2)
                            .map(c -> c.positions() + " " + c.description().or("")))
                    .containsExactly("[4, 6] Oven D", "[10, 12] Oven H");
        }
    }

    @Test
    void on_a_board_with_its_phases_side_by_side_each_phase_of_a_way_is_a_circuit() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "DISTRIBUTION BOARD: DB-OLD");
            double[] at = {40, 80, 180, 230, 330, 380, 480};
            s.line(60, at, "Way", "L1 circuit", "MCB", "L2 circuit", "MCB", "L3 circuit", "MCB");
            s.line(74, at, "1", "Lights hall", "B6", "Sockets", "B16", "Fire alarm", "B10");
            s.line(88, at, "2", "Lights yard", "B10", "Heater", "B20", "Spare", "B6");
            s.line(102, at, "3", "", "", "Lift motor", "C32", "", "");
            s.line(116, at, "4", "Lights roof", "B6", "Cooker", "B32", "Pump", "B16");
            Directory d = only(read(s));
            assertThat(d.circuits().stream()
                            .filter(c -> c.ratingA().isStated())
                            .map(c -> c.label() + " " + c.position() + " "
                                    + c.description().or("")))
                    .containsExactly(
                            "1L1 1 Lights hall",
                            "1L2 2 Sockets",
                            "1L3 3 Fire alarm",
                            "2L1 4 Lights yard",
                            "2L2 5 Heater",
                            "2L3 6 Spare",
                            "3L2 8 Lift motor",
                            "4L1 10 Lights roof",
                            "4L2 11 Cooker",
                            "4L3 12 Pump");
            assertThat(d.problems().stream().map(Problem::message))
                    .contains("Way 3 has one entry for its three phases; it may be a device of three poles.");
        }
    }

    @Test
    void panels_in_two_rows_of_two_keep_their_own_positions() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            for (int k = 0; k < 4; k++) {
                double x = 30 + 290 * (k % 2), y = 40 + 130 * (k / 2);
                s.text(x, y, "PANEL K" + k + "   FED FROM: MDP");
                double[] at = {x, x + 22, x + 100, x + 140, x + 162, x + 240};
                s.line(y + 14, at, "#", "LOAD", "CB", "#", "LOAD", "CB");
                for (int r = 0; r < 5; r++)
                    s.line(
                            y + 28 + 12 * r,
                            at,
                            "" + (2 * r + 1),
                            "Lights " + k + r,
                            "20/1",
                            "" + (2 * r + 2),
                            "Oven " + k + r,
                            "30/1");
            }
            ScheduleReading read = read(s);
            assertThat(read.directories().stream().map(Directory::panel)).containsExactly("K0", "K1", "K2", "K3");
            assertThat(read.directories()).allMatch(d -> d.circuits().size() == 10);
            assertThat(read.directories().get(2).circuits().get(0).description().or(""))
                    .isEqualTo("Lights 20");
        }
    }

    @Test
    void a_header_wider_than_its_directory_is_read_to_its_end() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 110, 180, 250, 320, 390, 460, 530};
            s.line(40, at, "PANEL", "LOCATION", "FED FROM", "VOLTAGE", "PHASE", "WIRE", "BUS", "MAIN");
            s.line(50, at, "LH-3", "Hub 3", "DP-H", "480Y/277V", "3", "4", "125A", "110A CB");
            twoSided(s, 80);
            Directory d = only(read(s));
            assertThat(d.panel()).isEqualTo("LH-3");
            assertThat(d.header().busA().value()).contains(125);
            assertThat(d.header().mainA().value()).contains(110);
        }
    }

    @Test
    void the_third_phase_stands_between_the_second_and_the_total() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL EDP");
            double[] at = {40, 80, 180, 240, 290, 340, 390};
            s.line(60, at, "No.", "Load", "Breaker", "kVA A", "kVA B", "kVA", "kVA total");
            s.line(74, at, "1,3,5", "Chiller", "40A 3P", "1.08", "1.08", "1.08", "3.24");
            s.line(88, at, "2,4,6", "Boiler", "60A 3P", "1.50", "1.50", "1.50", "4.50");
            s.line(102, at, "7", "Sign", "20A 1P", "0.40", "", "", "0.40");
            s.line(116, at, "8", "Gate", "20A 1P", "0.30", "", "", "0.30");
            assertThat(only(read(s)).circuits().stream()
                            .map(c -> c.loadVA().stream()
                                    .mapToDouble(l -> l.value().orElse(0.0))
                                    .sum()))
                    .containsExactly(3240.0, 4500.0, 400.0, 300.0);
        }
    }

    @Test
    void a_name_behind_that_of_the_building_and_one_that_goes_on_behind_a_dash_are_names() {
        assertThat(Titles.nameIn("ST. ORAN HOSPITAL - PANELBOARD R2D")).contains("R2D");
        assertThat(Titles.nameIn("Emergency panel NE-4")).contains("NE-4");
        assertThat(Values.name("CU-3 - Flat 3")).isEqualTo("CU-3");
        assertThat(Titles.nameIn("MOTOR SCHEDULE")).isEmpty();
        assertThat(Titles.nameIn("Panelboard ID")).isEmpty();
    }

    @Test
    void a_heading_in_the_middle_of_a_wide_column_heads_the_numbers_at_its_edge() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.line(40, new double[] {40, 150}, "PANEL 4HA", "FED FROM: DP3A");
            s.line(
                    60,
                    new double[] {60, 150, 260, 330, 440, 540},
                    "CIRCUIT",
                    "LOAD NAME",
                    "TRIP",
                    "TRIP",
                    "LOAD NAME",
                    "CIRCUIT");
            double[] at = {42, 110, 250, 320, 400, 520};
            for (int r = 0; r < 5; r++)
                s.line(74 + 12 * r, at, "" + (2 * r + 1), "Oven " + r, "20/1", "20/1", "Kiln " + r, "" + (2 * r + 2));
            Directory d = only(read(s));
            assertThat(d.circuits().stream().map(Directory.Circuit::position))
                    .containsExactly(1, 2, 3, 4, 5, 6, 7, 8, 9, 10);
            assertThat(d.problems()).isEmpty();
        }
    }

    @Test
    void an_entry_in_the_middle_of_its_rows_is_a_device_of_all_of_them() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL 4HA");
            double[] at = {40, 70, 170, 220};
            s.line(60, at, "CKT", "LOAD", "BKR", "VA");
            s.line(74, at, "1", "", "", "450");
            s.line(86, at, "3", "UPS 6", "70/3", "450");
            s.line(98, at, "5", "", "", "450");
            s.line(110, at, "7", "Gate", "20/1", "300");
            s.line(122, at, "9", "Sign", "20/1", "200");
            assertThat(only(read(s)).circuits().stream()
                            .map(c -> c.positions() + " " + c.description().or("")))
                    .containsExactly("[1, 3, 5] UPS 6", "[7] Gate", "[9] Sign");
        }
    }

    @Test
    void a_phase_over_its_unit_and_volt_amperes_with_stops_head_loads() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL M-2");
            double[] at = {40, 70, 170, 220, 270, 320};
            s.line(58, at, "", "", "", "A", "B", "C");
            s.line(67, at, "NO", "SERVES", "CB", "(VA)", "(VA)", "(VA)");
            s.line(80, at, "1", "Gate", "20/1", "300", "", "");
            s.line(92, at, "3", "Sign", "20/1", "", "200", "");
            s.line(104, at, "5", "Kiln", "20/1", "", "", "900");
            s.line(116, at, "7", "Oven", "20/1", "800", "", "");
            assertThat(only(read(s)).circuits().stream()
                            .map(c -> c.loadVA().stream()
                                    .mapToDouble(l -> l.value().orElse(0.0))
                                    .sum()))
                    .containsExactly(300.0, 200.0, 900.0, 800.0);
            assertThat(Headings.weight("V.A.", Role.LOAD)).isEqualTo(1);
            assertThat(Headings.weight("K.V.A.", Role.LOAD)).isEqualTo(1);
        }
    }

    @Test
    void a_label_is_no_name_and_a_rating_no_voltage() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 160, 260, 400};
            s.line(40, at, "PANEL DESIGNATION", "MAIN CB", "SYSTEM", "PH");
            s.line(50, at, "R1", "150A BREAKER", "125", "3");
            twoSided(s, 80);
            Directory d = only(read(s));
            assertThat(d.panel()).isEqualTo("R1");
            assertThat(d.header().voltage().isStated()).isFalse();
            assertThat(d.header().phases().value()).contains(3);
            assertThat(d.header().mainA().value()).contains(150);
        }
    }

    @Test
    void figures_under_an_unknown_heading_are_told() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL M-3");
            double[] at = {40, 70, 170, 220};
            s.line(60, at, "NO", "SERVES", "CB", "XYZ");
            for (int r = 1; r < 6; r++) s.line(60 + 12 * r, at, "" + r, "Oven " + r, "20/1", "" + 310 * r);
            assertThat(only(read(s)).problems().stream()
                            .map(Problem::message)
                            .toList()
                            .toString())
                    .contains("The column 'XYZ' was taken for loads by its figures alone.");
        }
    }

    /** Line to line is the square root of three times line to neutral on three phases, and twice on one: IEC 60038. */
    @Test
    void two_numbers_with_a_slash_are_a_voltage_only_where_a_system_has_such_voltages() {
        assertThat(List.of("208Y/120", "480/277 V", "400/230", "120/240V", "347/600", "208 V"))
                .allMatch(Values::isSystem);
        assertThat(List.of("180/23", "310/46", "120/121")).noneMatch(Values::isSystem);
    }

    @Test
    void a_side_whose_ratings_were_not_found_is_told_with_its_positions() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 70, 200, 240, 280};
            s.text(40, 40, "PANEL K-5");
            s.line(60, at, "CKT", "LOAD", "BKR", "CKT", "LOAD");
            for (int r = 0; r < 4; r++)
                s.line(
                        74 + 14 * r,
                        at,
                        "" + (2 * r + 1),
                        "Lights room " + r,
                        "20/1",
                        "" + (2 * r + 2),
                        "Sockets room " + r);
            assertThat(only(read(s)).problems().stream().map(Problem::message))
                    .contains("No column of ratings was found beside positions 2 to 8.");
        }
    }

    @Test
    void further_poles_without_a_number_below_the_last_position_bring_their_loads_to_the_device() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL K-4");
            s.line(60, LIST, "CKT", "LOAD", "BKR", "VA");
            s.line(74, LIST, "1", "Copier", "20/1", "700");
            s.line(88, LIST, "3", "Lights", "20/1", "900");
            s.line(102, LIST, "5", "Kiln", "30/3", "500");
            s.line(116, LIST, "", "", "", "500");
            s.line(130, LIST, "", "", "", "500");
            assertThat(only(read(s)).circuits().stream()
                            .map(c ->
                                    c.positions() + " " + Math.round(c.totalVA().or(0.0))))
                    .containsExactly("[1] 700", "[3] 900", "[5, 7, 9] 1500");
        }
    }

    @Test
    void rows_without_a_number_at_the_head_of_a_page_are_the_poles_of_a_device_that_began_before_it()
            throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL K-4 (CONTINUED)");
            s.line(60, LIST, "CKT", "LOAD", "BKR", "VA");
            s.line(74, LIST, "", "-", "-", "600");
            s.line(88, LIST, "45", "Copier", "20/1", "700");
            s.line(102, LIST, "47", "Lights", "20/1", "900");
            s.line(116, LIST, "49", "Fan", "20/1", "800");
            Directory d = only(read(s));
            assertThat(d.circuits().stream()
                            .map(c ->
                                    c.positions() + " " + Math.round(c.totalVA().or(0.0))))
                    .containsExactly("[43] 600", "[45] 700", "[47] 900", "[49] 800");
            assertThat(d.problems().stream().map(Problem::message))
                    .contains("Position 43 has a load, and neither a description nor a rating: "
                            + Reliability.OF_DEVICE_BEFORE + ".");
        }
    }

    /** A two-sided directory of eight positions. */
    private static void twoSided(DrawnSheet s, double y) throws IOException {
        s.line(y, TWO_SIDED, "CKT", "LOAD", "BKR", "CKT", "LOAD", "BKR");
        for (int r = 0; r < 4; r++)
            s.line(
                    y + 14 + 14 * r,
                    TWO_SIDED,
                    "" + (2 * r + 1),
                    "Lights room " + r,
                    "20/1",
                    "" + (2 * r + 2),
                    "Sockets room " + r,
                    "20/1");
    }

    private ScheduleReading read(DrawnSheet sheet) throws IOException {
        return read(sheet.save(folder.resolve("sheet.pdf")), Source.Kind.PDF);
    }

    private static ScheduleReading read(Path file, Source.Kind kind) throws IOException {
        Source source = new Source(file.getFileName().toString(), file, kind, Files.size(file), "");
        return new ScheduleReader(Settings.none(), Limits.usual()).read(source);
    }

    private static Directory only(ScheduleReading read) {
        List<Directory> all = read.directories();
        assertThat(all).as(() -> read.problems().toString()).hasSize(1);
        return all.get(0);
    }
}
