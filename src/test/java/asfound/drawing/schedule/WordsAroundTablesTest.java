package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Letters, paragraphs and titles around a directory: what of them is said of the panel. */
class WordsAroundTablesTest {

    @Test
    void who_wrote_a_letter_feeds_no_panel() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "To: Facilities")
                    .text(40, 42, "From: Electrical shop")
                    .text(40, 54, "Re: Panel P-2");
            s.text(40, 80, "PANEL P-2, 120/208V, 3PH, 4W").twoSided(100);
            assertThat(s.directory().header().fedFrom().isBlank()).isTrue();
        }
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 68, "From: SB-1")
                    .text(40, 80, "PANEL P-2, 120/208V, 3PH, 4W")
                    .twoSided(100);
            assertThat(s.directory().header().fedFrom().or("")).isEqualTo("SB-1");
        }
    }

    @Test
    void a_paragraph_goes_on_in_the_next_line_where_its_next_word_had_no_room() throws IOException {
        String first =
                "PANEL P-2, 120/208 VOLTS, THREE PHASE, FOUR WIRE, MAIN BREAKER OF 100 AMPERES, NEMA 1 ENCLOSURE,"
                        + " FED FROM SWITCHBOARD";
        double margin = 0.5 * (612 - DrawnSheet.width(first));
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(margin, 40, first).text(margin, 50, "SB-1.").twoSided(80);
            assertThat(s.directory().header().fedFrom().or("")).isEqualTo("SWITCHBOARD SB-1");
        }
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL P-2, 120/208V, 3PH, 4W, 100A MCB, FED FROM MDP");
            s.text(40, 50, "FLUSH MOUNTED IN THE DRILL HALL").twoSided(80);
            assertThat(s.directory().header().fedFrom().or("")).isEqualTo("MDP");
        }
    }

    @Test
    void a_name_may_stand_apart_beside_the_title_of_its_schedule() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "NG-LP").text(140, 30, "PANELBOARD SCHEDULE");
            s.text(40, 46, "FED FROM: NG-MDP")
                    .text(200, 46, "LOCATION: ELEC 001")
                    .twoSided(80);
            assertThat(s.directory().panel()).isEqualTo("NG-LP");
        }
    }

    @Test
    void what_kind_of_panel_it_is_stands_in_brackets_behind_its_name() throws IOException {
        assertThat(panel("PANEL IG-4A (ISOLATED GROUND)")).isEqualTo("IG-4A");
        assertThat(panel("PANEL CR-2 (CRITICAL)")).isEqualTo("CR-2");
        // two panels may differ by no more than such a word
        assertThat(panel("PANEL: LP-2 (EAST)")).isEqualTo("LP-2 (EAST)");
    }

    @Test
    void hp_behind_the_word_panel_and_a_busway_are_names() throws IOException {
        assertThat(panel("PANEL \"HP\"")).isEqualTo("HP");
        assertThat(panel("BUSWAY BD-1 PLUG-IN UNIT SCHEDULE")).isEqualTo("BD-1");
    }

    @Test
    void a_value_stands_anywhere_in_the_cell_of_a_form_whose_corner_holds_its_label() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            for (double x : new double[] {40, 160, 320, 480}) s.rule(x, 30, x, 60);
            for (double y : new double[] {30, 60}) s.rule(40, y, 480, y);
            s.text(43, 38, "PANEL").text(163, 38, "LOCATION").text(323, 38, "FED FROM");
            s.text(110, 56, "LP-C").text(250, 56, "ELEC RM 202").text(420, 56, "DP-1");
            Directory d = s.twoSided(90).directory();
            assertThat(d.panel()).isEqualTo("LP-C");
            assertThat(d.header().location().or("")).isEqualTo("ELEC RM 202");
            assertThat(d.header().fedFrom().or("")).isEqualTo("DP-1");
        }
    }

    @Test
    void a_figure_and_w_in_the_name_of_a_place_are_no_number_of_wires() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "PANEL: HP-5W").text(160, 30, "LOCATION: Linen 5W").text(300, 30, "FED FROM: DP-5W");
            s.text(40, 44, "SERVICE: 120/208V 3PH 4W");
            assertThat(s.twoSided(70).directory().header().wires().value()).contains(4);
        }
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "PANEL: HP-5W").text(160, 30, "LOCATION: Linen 5W");
            assertThat(s.twoSided(70).directory().header().wires().isBlank()).isTrue();
        }
    }

    @Test
    void the_last_row_of_a_table_ends_where_the_next_panels_header_begins() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "PANEL C-RP1").twoSided(44);
            s.text(40, 118, "PANEL C-RP2, 208Y/120V, 3PH, 4W").twoSided(132);
            // shades behind every second row
            for (double y : new double[] {34, 48, 62, 76, 90, 122, 136, 150, 164, 178}) s.rule(36, y, 460, y);
            List<Directory> read = s.read().directories();
            assertThat(read).extracting(Directory::panel).containsExactly("C-RP1", "C-RP2");
            assertThat(read)
                    .allMatch(d -> d.circuits().size() == 8 && d.problems().isEmpty());
        }
    }

    private static String panel(String title) throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, title);
            Directory d = s.twoSided(70).directory();
            return d.panel();
        }
    }
}
