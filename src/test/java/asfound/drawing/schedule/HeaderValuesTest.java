package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.model.Directory;
import asfound.model.Directory.Header;
import asfound.model.Directory.Mains;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a header says of its panel: nothing that stands behind a label is lost without a word. */
class HeaderValuesTest {

    @Test
    void an_interrupting_rating_is_written_with_its_kind_before_the_unit_or_behind_it() throws IOException {
        for (String written :
                new String[] {"65,000 RMS SYM. AMPERES", "65,000 AMPERES RMS SYM.", "65,000 A SYM", "65,000 SYM. AMPS"})
            try (DrawnSheet s = new DrawnSheet()) {
                s.text(40, 40, "PANEL: DP-1").line(52, new double[] {40, 200}, "SHORT CIRCUIT RATING", written);
                s.twoSided(80);
                assertThat(s.directory().header().interruptingKA().value())
                        .as(written)
                        .contains(65.0);
            }
    }

    @Test
    void a_value_that_does_not_fit_its_label_is_kept_as_written_and_told() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "PANEL: LP-4");
            s.text(40, 42, "VOLTAGE: 2O8Y/l2O");
            s.text(200, 42, "BUS: two twenty-five");
            s.text(40, 54, "LOCATION: Attic");
            s.twoSided(70);
            ScheduleReading read = s.read();
            Header header = Readings.only(read).header();
            assertThat(header.voltage().isUnreadable()).isTrue();
            assertThat(header.voltage().raw()).isEqualTo("2O8Y/l2O");
            assertThat(header.busA().isUnreadable()).isTrue();
            assertThat(header.location().or("")).isEqualTo("Attic");
            assertThat(told(read))
                    .containsExactly(
                            "The header was not understood here: '2O8Y/l2O' as voltage.",
                            "The header was not understood here: 'two twenty-five' as bus.");
        }
    }

    @Test
    void a_panel_named_a_or_v_is_no_label_with_a_unit() throws IOException {
        for (String name : List.of("PANEL A", "PANEL V", "Panelboard A", "PNL. A", "A")) {
            Directory d = Readings.table(
                    "Panel," + name + ",,Location,Rm 108\nVoltage,\"208Y/120 V, 3PH, 4W\",,Fed from,MDP\n"
                            + "Bus rating,225 A,,Mains,MLO\n\nCkt,Poles,Trip,Description\n1,1,20,Recept rm 101\n2,1,20,Recept rm 102\n"
                            + "3,1,20,Recept rm 103\n4,1,20,Recept rm 104\n");
            assertThat(d.panel())
                    .as(name)
                    .endsWith(name.substring(name.length() - 1))
                    .hasSizeLessThan(13);
            assertThat(d.header().voltage().isStated()).as(name).isTrue();
        }
    }

    @Test
    void a_dash_behind_a_label_says_that_nothing_is_stated() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 42, "PANEL: LP-4");
            s.text(200, 42, "VOLTAGE: --");
            s.twoSided(70);
            ScheduleReading read = s.read();
            assertThat(Readings.only(read).header().voltage().isBlank()).isTrue();
            assertThat(told(read)).isEmpty();
        }
    }

    @Test
    void a_source_whose_name_is_parted_at_its_hyphen_is_read_whole() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.rule(38, 22, 38, 52).rule(120, 22, 120, 52).rule(200, 22, 200, 52);
            s.rule(38, 22, 200, 22).rule(38, 52, 200, 52);
            s.text(40, 34, "PANEL: LP-4");
            s.text(122, 34, "FED FROM: DIST-");
            s.text(122, 44, "21");
            s.twoSided(80);
            assertThat(s.directory().header().fedFrom().or("")).isEqualTo("DIST-21");
        }
    }

    @Test
    void mains_are_rated_as_the_bus_is_where_they_are_lugs() throws IOException {
        Header header = mains("MAINS TYPE: MLO", "MCB RATING: -", "MAINS RATING: 400 A");
        assertThat(header.mains().value()).contains(Mains.LUGS);
        assertThat(header.busA().value()).contains(400);
        assertThat(header.mainA().isBlank()).isTrue();
    }

    @Test
    void mains_are_rated_as_the_bus_is_where_the_main_breaker_has_a_rating_of_its_own() throws IOException {
        Header header = mains("MAINS TYPE: MCB", "MCB RATING: 150 A", "MAINS RATING: 225 A");
        assertThat(header.mainA().value()).contains(150);
        assertThat(header.busA().value()).contains(225);
    }

    @Test
    void the_rating_of_mains_without_another_is_the_main_breakers() throws IOException {
        Header header = mains("MAINS TYPE: MCB", "LOCATION: Attic", "MAINS RATING: 225 A");
        assertThat(header.mainA().value()).contains(225);
        assertThat(header.busA().isBlank()).isTrue();
    }

    private Header mains(String... lines) throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 20, "PANEL: LP-4");
            for (int i = 0; i < lines.length; i++) s.text(40, 31 + 11 * i, lines[i]);
            s.twoSided(76);
            return s.directory().header();
        }
    }

    @Test
    void a_panel_with_its_header_below_is_read_beside_panels_with_theirs_above() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            for (int i = 0; i < 2; i++) {
                double x = 300 * i;
                s.text(x + 40, 40, "PANEL LP-" + i);
                s.text(x + 40, 51, "VOLTAGE: 208Y/120 V   PHASE: 3   WIRE: 4   BUS: 100A   MAIN: 60A");
                list(s, x, 70);
            }
            list(s, 0, 300);
            s.text(40, 372, "PANEL: LP-7");
            s.text(110, 372, "480Y/277V, 3PH, 4W");
            s.text(210, 372, "225A BUS");
            s.text(40, 384, "M.L.O.");
            Directory below = s.read().directories().stream()
                    .filter(d -> d.panel().equals("LP-7"))
                    .findFirst()
                    .orElseThrow();
            assertThat(below.header().busA().value()).contains(225);
            assertThat(below.header().phases().value()).contains(3);
            assertThat(below.header().mains().value()).contains(Mains.LUGS);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "VOLTS 208Y/120  PHASE 3  WIRE 4  BUS 225  MAIN 100",
                "208Y/120 VOLTS  3 PHASE  4 WIRE  225A BUS  100A MAIN BREAKER"
            })
    void values_in_turn_with_their_labels_are_read_whichever_comes_first(String line) throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "PANEL LP-4");
            s.text(40, 44, line);
            Header header = s.twoSided(70).directory().header();
            assertThat(header.phases().value()).contains(3);
            assertThat(header.wires().value()).contains(4);
            assertThat(header.busA().value()).contains(225);
            assertThat(header.mainA().value()).contains(100);
        }
    }

    @Test
    void a_voltage_behind_the_name_is_no_part_of_it() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL LP-4 208Y/120 V");
            Directory d = s.twoSided(70).directory();
            assertThat(d.panel()).isEqualTo("LP-4");
            assertThat(d.header().voltage().isStated()).isTrue();
        }
    }

    @Test
    void a_form_of_labels_and_figures_close_above_heads_no_column() throws IOException {
        double[] form = {40, 80, 130, 170}, at = {40, 60, 100, 140, 300, 440, 480, 520};
        try (DrawnSheet s = new DrawnSheet()) {
            s.line(30, form, "PANEL", "LP-4", "VOLTS", "208Y/120");
            s.line(42, form, "TYPE", "BOLT-ON", "PH/W", "3/4");
            s.line(54, form, "MAIN", "60 A", "BUS", "125 A");
            s.line(74, at, "", "AMP", "POLE", "CIRCUIT DESCRIPTION", "CIRCUIT DESCRIPTION", "POLE", "AMP", "");
            for (int r = 0; r < 5; r++)
                s.line(
                        88 + 14 * r,
                        at,
                        "" + (2 * r + 1),
                        "20",
                        "1",
                        "Lights hall " + r,
                        "Sockets hall " + r,
                        "1",
                        "20",
                        "" + (2 * r + 2));
            Directory d = s.directory();
            assertThat(d.circuits()).hasSize(10);
            assertThat(d.header().busA().value()).contains(125);
            assertThat(d.header().mainA().value()).contains(60);
            assertThat(d.header().phases().value()).contains(3);
        }
    }

    @Test
    void lugs_that_feed_a_further_panel_are_not_those_of_the_mains() throws IOException {
        assertThat(mains("MAINS: 150A MCB W/ ISOLATED SUB-FEED LUGS")).isEqualTo("BREAKER 150");
        assertThat(mains("MAINS: 225A MCB, FEED-THRU LUGS")).isEqualTo("BREAKER 225");
        assertThat(mains("MAINS: 100A MAIN BREAKER WITH DOUBLE LUGS")).isEqualTo("BREAKER 100");
        assertThat(mains("MAINS: MLO W/ FEED-THRU LUGS")).isEqualTo("LUGS -");
        assertThat(mains("MAINS: SANS (COSSES SEULEMENT)")).isEqualTo("LUGS -");
        assertThat(mains("MAINS: ZAPATAS PRINCIPALES")).isEqualTo("LUGS -");
        assertThat(mains("MAINS: 225A MAIN LUGS ONLY, SUB-FEED LUGS")).isEqualTo("LUGS -");
    }

    private static String mains(String said) throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "PANEL: LP-4").text(40, 42, said).twoSided(70);
            Header header = s.directory().header();
            return header.mains().value().map(Mains::name).orElse("") + " "
                    + header.mainA().value().map(String::valueOf).orElse("-");
        }
    }

    @Test
    void a_key_to_abbreviations_makes_no_lugs_of_a_main_breaker() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.twoSided(40);
            s.text(40, 130, "PANEL LP-4");
            s.text(120, 130, "MAINS: 225A MCB W/ FEED-THRU LUGS");
            s.text(40, 160, "ABBREVIATIONS");
            s.line(172, new double[] {40, 90}, "MLO", "MAIN LUGS ONLY");
            s.line(182, new double[] {40, 90}, "MCB", "MAIN CIRCUIT BREAKER");
            Header header = s.directory().header();
            assertThat(header.mains().value()).contains(Mains.BREAKER);
            assertThat(header.mainA().value()).contains(225);
        }
    }

    @Test
    void the_number_of_a_breaker_in_the_main_board_is_no_rating_of_the_mains() throws IOException {
        Header header = Readings.table(
                        "Board,DB-K\nFed from,Main DB CB 22\nMain,80 A circuit breaker\n\nCkt,Poles,Trip,Description\n"
                                + "1,1,20,Lights\n2,1,20,Plugs\n3,1,20,Geyser\n4,1,20,Stove\n")
                .header();
        assertThat(header.mainA().value()).contains(80);
        assertThat(header.fedFrom().or("")).isEqualTo("Main DB CB 22");
    }

    @Test
    void a_panel_that_is_called_sp_says_nothing_of_phases() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "DB NO.: PDB-2A");
            s.text(160, 30, "FED FROM: SUB-PANEL SP-2");
            s.text(320, 30, "SYSTEM: 415/240 V, 3 PHASE, 4 WIRE");
            s.twoSided(70);
            assertThat(s.directory().header().phases().value()).contains(3);
        }
    }

    @Test
    void bus_and_fault_rating_are_read_from_sentences_that_go_on_below() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "PANEL 2H-CR");
            s.text(
                    40,
                    42,
                    "Panelboard 2H-CR is located in Electrical Room 2-117 and is fed from ATS-CR2. It is rated 400 amperes,");
            s.text(
                    40,
                    54,
                    "480Y/277 volts, 3 phase, 4 wire, with a 250 ampere main circuit breaker, and has a short circuit rating of");
            s.text(40, 66, "35,000 amperes RMS symmetrical. Enclosure is NEMA 1, surface mounted.");
            s.twoSided(90);
            Header header = s.directory().header();
            assertThat(header.busA().value()).contains(400);
            assertThat(header.mainA().value()).contains(250);
            assertThat(header.interruptingKA().value()).contains(35.0);
            assertThat(header.fedFrom().or("")).isEqualTo("ATS-CR2");
        }
    }

    @Test
    void a_name_in_large_type_at_the_other_end_of_the_titles_line_is_the_panels() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.large(40, 40, 18, "HP-B").large(420, 40, 10, "Panel schedule").twoSided(80);
            assertThat(s.directory().panel()).isEqualTo("HP-B");
        }
        // as small as the title it may be anything
        try (DrawnSheet s = new DrawnSheet()) {
            s.large(40, 40, 10, "HP-B").large(420, 40, 10, "Panel schedule").twoSided(80);
            assertThat(s.directory().header().designation().isBlank()).isTrue();
        }
    }

    @Test
    void the_part_of_a_board_that_a_sheet_shows_stands_behind_its_name() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(240, 30, "RPP-14A - SECTION 1 OF 2")
                    .text(40, 42, "FED FROM: PDU-1A")
                    .twoSided(70);
            assertThat(s.directory().panel()).isEqualTo("RPP-14A");
        }
        // a section of a specification
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(240, 30, "262416 - SECTION 1 OF 2")
                    .text(40, 42, "FED FROM: PDU-1A")
                    .twoSided(70);
            assertThat(s.directory().header().designation().isBlank()).isTrue();
        }
    }

    @Test
    void fewer_circuits_than_the_header_says_are_told() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL: LP-4");
            s.text(150, 40, "NO. OF CIRCUITS: 12");
            s.twoSided(70);
            assertThat(told(s.read()))
                    .containsExactly(
                            "The header says 12 positions, and the directory was read as ending at position 8.");
        }
    }

    @Test
    void as_many_circuits_as_the_header_says_are_no_matter() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL: LP-4");
            s.text(150, 40, "NO. OF CIRCUITS: 8");
            s.twoSided(70);
            assertThat(told(s.read())).isEmpty();
        }
    }

    private static void list(DrawnSheet s, double x, double y) throws IOException {
        double[] at = {x + 40, x + 70, x + 200};
        s.line(y, at, "CKT", "LOAD", "BKR");
        for (int r = 1; r < 5; r++) s.line(y + 12 * r, at, "" + r, "Lights room " + r, "20/1");
    }

    private static List<String> told(ScheduleReading read) {
        return Readings.said(Readings.only(read).problems()).stream().sorted().toList();
    }
}
