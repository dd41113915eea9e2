package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** Names without a word that says what they are, over several directories of one sheet (common practice). */
class NamesAlikeTest {

    private static void panel(DrawnSheet s, double x, double nameAt, double size, String name) throws IOException {
        double[] at = {x, x + 30, x + 60};
        s.large(nameAt, 60, size, name).text(x, 74, "LOCATION: RM 101").text(x + 110, 74, "FED FROM: EQ-1 CKT 7");
        s.text(x, 84, "VOLTAGE: 120 V, 1 PH, 2 WIRE").line(100, at, "CKT", "A", "LOAD");
        for (int k = 1; k <= 6; k++) s.line(100 + 14 * k, at, "" + k, "20", "Lights " + k);
    }

    private static String second(double nameAt, double size, String name) throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            panel(s, 40, 40, 14, "IP-OR1");
            panel(s, 320, nameAt, size, name);
            return s.read().directories().stream()
                    .map(Directory::panel)
                    .filter(n -> !n.equals("IP-OR1"))
                    .findFirst()
                    .orElseThrow();
        }
    }

    @Test
    void letters_where_the_name_of_the_panel_beside_it_stands_are_a_name() throws IOException {
        assertThat(second(320, 14, "IP-CATH")).isEqualTo("IP-CATH");
    }

    @Test
    void letters_elsewhere_or_in_other_type_are_none() throws IOException {
        assertThat(second(420, 14, "IP-CATH")).isNotEqualTo("IP-CATH");
        assertThat(second(320, 9, "IP-CATH")).isNotEqualTo("IP-CATH");
    }

    @Test
    void letters_that_are_read_as_a_board_are_a_name_among_its_labels() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            panel(s, 40, 40, 14, "HDP");
            assertThat(s.directory().panel()).isEqualTo("HDP");
        }
    }

    @Test
    void a_name_stands_at_the_other_end_of_a_title_over_a_directory_whose_header_is_below() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 80, 120};
            s.text(40, 60, "HEAT TRACING PANEL SCHEDULE").large(480, 60, 12, "EHT-7");
            s.line(80, at, "CKT", "A", "LOAD");
            for (int k = 1; k <= 12; k++) s.line(80 + 14 * k, at, "" + k, "20", "Trace " + k);
            s.text(40, 290, "LOCATION: PIPE BRIDGE").text(200, 290, "FED FROM: MDP CKT 7");
            s.text(40, 304, "VOLTAGE: 208Y/120 V").text(200, 304, "BUS: 225 A").text(320, 304, "MAIN: 150 A");
            assertThat(s.directory().panel()).isEqualTo("EHT-7");
        }
    }

    @Test
    void the_title_of_the_works_names_no_panel() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL ALTERATIONS, RECORD DRAWING");
            panel(s, 40, 40, 10, "Panel KP");
            assertThat(s.directory().panel()).isEqualTo("KP");
        }
    }

    @Test
    void a_quoted_letter_behind_the_title_of_a_table_of_loads_is_a_name() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 80, 120};
            s.text(40, 60, "CUADRO DE CARGAS TABLERO \"B\"").line(80, at, "CTO.", "A", "CARGA");
            for (int k = 1; k <= 6; k++) s.line(80 + 14 * k, at, "" + k, "20", "Alumbrado " + k);
            assertThat(s.directory().panel()).isEqualTo("B");
        }
    }
}
