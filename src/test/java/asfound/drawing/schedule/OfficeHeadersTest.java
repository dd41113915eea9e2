package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import asfound.drawing.schedule.phrase.Titles;
import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.drawing.schedule.text.NameText;
import asfound.drawing.schedule.text.SystemText;
import asfound.model.Directory;
import asfound.model.Directory.Mains;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the headers of an office's sheets say of a panel, and how. */
class OfficeHeadersTest {

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
            s.twoSided(130);
            Directory d = s.directory();
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
    void a_title_names_the_panel_whatever_kind_of_board_it_says() throws IOException {
        String[] titles = {
            "MOTOR CONTROL CENTER MCC-2",
            "COLUMN WIDTH PANEL MCC-2 - 120/208V, 3PH, 4W",
            "SERVICE SWITCHBOARD SCHEDULE - MCC-2"
        };
        for (String title : titles)
            try (DrawnSheet s = new DrawnSheet()) {
                s.text(40, 40, title);
                s.twoSided(70);
                assertThat(s.directory().panel()).as(title).isEqualTo("MCC-2");
            }
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "MEMO: Panel directory as posted");
            s.text(40, 54, "Panel PP-2, 120/208V, 3PH, 4W. 60 A main breaker. FROM MDP-7.");
            s.twoSided(70);
            Directory d = s.directory();
            assertThat(d.panel()).isEqualTo("PP-2");
            assertThat(d.header().fedFrom().or("")).isEqualTo("MDP-7");
        }
    }

    @Test
    void a_title_that_runs_up_the_side_of_the_table_names_the_panel() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "120/208V, 3PH, 4W, 100A BUS, MLO");
            s.turned(30, 110, "PANEL LP-4N");
            s.twoSided(60);
            assertThat(s.directory().panel()).isEqualTo("LP-4N");
        }
    }

    @Test
    void phases_and_wires_may_stand_behind_the_voltage_without_their_words() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL 2HB");
            s.text(40, 54, "VOLTAGE/PHASE/WIRE:").text(160, 54, "277/480V/3/4");
            s.twoSided(80);
            Directory.Header h = s.directory().header();
            assertThat(h.phases().value()).contains(3);
            assertThat(h.wires().value()).contains(4);
        }
    }

    @Test
    void a_name_before_the_first_label_of_a_running_line_names_the_panel() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PNL DB-3: 120/208V, 3PH, 4W, 225A BUS, 200A MCB, 10KAIC, FED FROM MDP/5, RM: Room 030");
            s.twoSided(70);
            Directory d = s.directory();
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
            s.twoSided(70);
            Directory d = s.directory();
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
            s.twoSided(72);
            Directory d = s.directory();
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
            s.twoSided(80);
            assertThat(s.directory().panel()).isEqualTo("EM-2");
        }
    }

    @Test
    void a_header_wider_than_its_directory_is_read_to_its_end() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 110, 180, 250, 320, 390, 460, 530};
            s.line(40, at, "PANEL", "LOCATION", "FED FROM", "VOLTAGE", "PHASE", "WIRE", "BUS", "MAIN");
            s.line(50, at, "LH-3", "Hub 3", "DP-H", "480Y/277V", "3", "4", "125A", "110A CB");
            s.twoSided(80);
            Directory d = s.directory();
            assertThat(d.panel()).isEqualTo("LH-3");
            assertThat(d.header().busA().value()).contains(125);
            assertThat(d.header().mainA().value()).contains(110);
        }
    }

    @Test
    void a_name_behind_that_of_the_building_and_one_that_goes_on_behind_a_dash_are_names() {
        assertThat(Titles.nameIn("ST. ORAN HOSPITAL - PANELBOARD R2D")).contains("R2D");
        assertThat(Titles.nameIn("Emergency panel NE-4")).contains("NE-4");
        assertThat(NameText.name("CU-3 - Flat 3")).isEqualTo("CU-3");
        assertThat(Titles.nameIn("MOTOR SCHEDULE")).isEmpty();
        assertThat(Titles.nameIn("Panelboard ID")).isEmpty();
    }

    @Test
    void a_label_is_no_name_and_a_rating_no_voltage() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 160, 260, 400};
            s.line(40, at, "PANEL DESIGNATION", "MAIN CB", "SYSTEM", "PH");
            s.line(50, at, "R1", "150A BREAKER", "125", "3");
            s.twoSided(80);
            Directory d = s.directory();
            assertThat(d.panel()).isEqualTo("R1");
            assertThat(d.header().voltage().isStated()).isFalse();
            assertThat(d.header().phases().value()).contains(3);
            assertThat(d.header().mainA().value()).contains(150);
        }
    }

    /** Line to line is the square root of three times line to neutral on three phases, and twice on one: IEC 60038. */
    @Test
    void two_numbers_with_a_slash_are_a_voltage_only_where_a_system_has_such_voltages() {
        assertThat(List.of("208Y/120", "480/277 V", "400/230", "120/240V", "347/600", "208 V"))
                .allMatch(SystemText::isSystem);
        assertThat(List.of("180/23", "310/46", "120/121")).noneMatch(SystemText::isSystem);
    }

    @Test
    void titles_over_short_turned_headings_name_their_tables_though_all_else_is_said_below() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            for (int k = 0; k < 2; k++) {
                double top = 40 + 330 * k, foot = top + 84;
                s.text(40, top, "PANEL TR-" + (k + 1));
                double[] at = {40, 70, 190, 220};
                String[] headings = {"CKT", "LOAD", "TRIP", "P"};
                for (int c = 0; c < 4; c++) s.turned(at[c] + 8, foot, headings[c]);
                for (int r = 0; r < 6; r++)
                    s.line(foot + 14 + 12 * r, at, "" + (r + 1), "Lights room " + k + r, "20", "1");
                double below = foot + 110;
                s.text(40, below, "FED FROM: MDP-" + (k + 1)).text(40, below + 12, "LOCATION: Loft " + (k + 1));
                s.text(40, below + 24, "BUS: 225A").text(40, below + 36, "MAIN: 100A");
            }
            ScheduleReading read = s.read();
            assertThat(read.directories())
                    .extracting(
                            Directory::panel,
                            d -> d.header().fedFrom().or(""),
                            d -> d.header().location().or(""))
                    .containsExactly(tuple("TR-1", "MDP-1", "Loft 1"), tuple("TR-2", "MDP-2", "Loft 2"));
            assertThat(read.directories())
                    .allMatch(d -> d.circuits().size() == 6 && d.problems().isEmpty());
            assertThat(read.problems()).isEmpty();
        }
    }

    @Test
    void the_main_breakers_rating_behind_the_word_bus_is_not_the_buss() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 26, "PANEL H-12");
            s.text(40, 40, "277/480V - 3PH - 4W - 125A BUS - 60A MCB - 42K AIC");
            s.twoSided(70);
            Directory.Header h = s.directory().header();
            assertThat(h.busA().value()).contains(125);
            assertThat(h.mainA().value()).contains(60);
        }
    }

    @Test
    void a_kind_of_supply_is_a_voltage_and_no_equipment_and_a_measured_fault_current_is_no_rating() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 26, "PANEL CU-12");
            s.text(40, 40, "Supply: 230V single phase, 60A cut-out");
            s.text(40, 54, "230V single phase. Ze 0.21 ohm. Ipf 1.1kA");
            s.twoSided(80);
            Directory d = s.directory();
            assertThat(d.header().fedFrom().isBlank()).isTrue();
            assertThat(d.header().voltage().isStated()).isTrue();
            assertThat(d.header().phases().value()).contains(1);
            assertThat(d.header().interruptingKA().isStated()).isFalse();
        }
    }

    @Test
    void a_label_that_runs_into_the_name_of_the_supply_is_no_part_of_it() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 26, "PANEL PP3B");
            s.text(40, 40, "Fed fromMDP");
            s.twoSided(70);
            assertThat(s.directory().header().fedFrom().or("")).isEqualTo("MDP");
        }
    }
}
