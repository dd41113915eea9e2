package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory;
import asfound.model.Directory.Mains;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Headers beside what else stands on a sheet, which says nothing of the panel. */
class HeadersAmongListsTest {

    private static final double[] AT = {40, 80, 200, 240};

    private static DrawnSheet rows(DrawnSheet s, double y) throws IOException {
        s.line(y, AT, "CKT", "LOAD", "AMP", "P");
        for (int r = 1; r <= 8; r++) s.line(y + 14 * r, AT, "" + r, "LIGHTS ROOM " + r, "20", "1");
        return s;
    }

    @Test
    void the_column_of_a_list_of_fixtures_is_no_value_of_the_panel() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] list = {330, 360, 450, 500, 540};
            s.text(330, 30, "FIXTURE LIST").line(44, list, "TYPE", "FITTING", "VOLTS", "W", "MOUNTING");
            s.line(58, list, "A", "LED TROFFER", "277", "42", "RECESSED");
            s.line(72, list, "B", "VAPOR TIGHT", "277", "38", "SURFACE");
            s.line(86, list, "C", "DOWNLIGHT", "277", "14", "RECESSED");
            s.text(40, 60, "PANEL K1").text(40, 74, "208Y/120V, 3PH, 4W");
            Directory d = rows(s, 110).directory();
            assertThat(d.header().voltage().raw()).contains("208Y/120");
            assertThat(d.header().mounting().isBlank()).isTrue();
        }
    }

    @Test
    void an_abbreviation_that_is_explained_says_nothing_of_the_mains() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            rows(s, 60).text(40, 40, "PANEL K2  -  225A MAIN BREAKER").text(40, 230, "MLO MAIN LUGS ONLY");
            Directory d = s.directory();
            assertThat(d.header().mains().value()).contains(Mains.BREAKER);
        }
    }

    @Test
    void a_name_with_the_words_of_its_letters_behind_it_is_a_title() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            Directory d =
                    rows(s, 60).text(40, 40, "MDP - MAIN DISTRIBUTION PANEL").directory();
            assertThat(d.panel()).isEqualTo("MDP");
            assertThat(d.header().designation().isStated()).isTrue();
        }
    }

    @Test
    void a_rating_with_main_lugs_elsewhere_in_its_line_is_that_of_the_bus() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            rows(s, 60).text(40, 40, "PANEL K3, 225A, 120/208 VOLT, 3 PHASE, 4 WIRE, M.L.O.");
            Directory d = s.directory();
            assertThat(d.header().busA().value()).contains(225);
            assertThat(d.header().mains().value()).contains(Mains.LUGS);
        }
    }

    @Test
    void a_room_keeps_its_word() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            rows(s, 60).text(40, 30, "PANEL K4").text(40, 42, "LOCATION ROOM 118");
            assertThat(s.directory().header().location().raw()).isEqualTo("ROOM 118");
        }
    }

    @Test
    void a_name_behind_the_word_for_a_panel_may_look_like_a_phase() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.line(40, new double[] {40, 80, 130, 190}, "PANEL", "L3", "LOCATION", "THIRD FLOOR HALL");
            Directory d = rows(s, 60).directory();
            assertThat(d.panel()).isEqualTo("L3");
            assertThat(d.header().location().raw()).isEqualTo("THIRD FLOOR HALL");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "DB 5 – SPORTS HALL | SPORTS HALL",
                "PANEL K5 - MECHANICAL ROOM 12 | MECHANICAL ROOM 12",
                "EXISTING 225A, 120/208 VOLT, 3 PHASE, 4 WIRE, M.L.O. PANEL IN CORR. 200, FED FROM DP-2 | CORR. 200"
            })
    void a_place_stands_in_the_title(String title, String place) throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            assertThat(rows(s, 60)
                            .text(40, 40, title)
                            .directory()
                            .header()
                            .location()
                            .raw())
                    .isEqualTo(place);
        }
    }

    @Test
    void a_board_s_name_that_is_the_value_of_a_label_is_not_that_of_the_directory() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            rows(s, 60).line(40, new double[] {40, 100}, "Fed from", "DB-MAIN");
            assertThat(s.directory().header().designation().isBlank()).isTrue();
        }
        try (DrawnSheet s = new DrawnSheet()) {
            assertThat(rows(s, 60).text(40, 40, "DB-MAIN").directory().panel()).isEqualTo("DB-MAIN");
        }
    }

    @Test
    void what_was_done_to_a_panel_is_no_place() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            assertThat(rows(s, 60)
                            .text(40, 40, "PANEL K6 - REVISED")
                            .directory()
                            .header()
                            .location()
                            .isBlank())
                    .isTrue();
        }
    }

    @Test
    void a_header_that_begins_beside_the_headings_of_columns_leaves_them_headings() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 80, 200, 240, 280, 320, 400, 480};
            s.line(60, at, "Cct No.", "Designation", "Breaker", "kVA A", "kVA B", "kVA C", "PANEL NAME", "KP 5");
            String[][] rows = {
                {"1", "Washer", "20/1", "0.50", "", "", "LOCATION", "Closet E3"},
                {"3", "Dryer", "20/1", "", "0.44", "", "SOURCE", "MSB-1"},
                {"5", "Fan", "20/1", "", "", "0.46", "BUS AMPS", "400"},
                {"2", "Oven", "20/1", "0.94", "", "", "", ""},
                {"4", "Clock", "20/1", "", "0.10", "", "", ""},
                {"6", "Lights", "20/1", "", "", "0.90", "", ""}
            };
            for (int r = 0; r < rows.length; r++) s.line(74 + 14 * r, at, rows[r]);
            Directory d = s.directory();
            assertThat(d.panel()).isEqualTo("KP 5");
            assertThat(d.circuits().get(2).loadVA().stream().map(l -> l.or(0.0)))
                    .containsExactly(0.0, 440.0, 0.0);
        }
    }

    @Test
    void a_place_in_running_text_ends_before_what_is_said_next() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            rows(s, 60)
                    .text(
                            40,
                            40,
                            "Panel K7 is located in Room 017 and is fed from Panel MDP. It is rated 120/208 V, 3 phase.");
            Directory d = s.directory();
            assertThat(d.header().location().value()).contains("Room 017");
            assertThat(d.header().fedFrom().value().orElse("")).endsWith("MDP");
        }
    }

    @Test
    void a_rating_in_words_below_each_entry_of_a_card_is_that_of_its_device() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(100, 30, "PANEL B");
            for (int r = 0; r < 6; r++)
                for (int side = 0; side < 2; side++) {
                    double x = 40 + 190 * side, y = 60 + 34 * r;
                    s.text(x, y + 8, "" + (2 * r + 1 + side)).text(x + 20, y, "Lights room " + (2 * r + side));
                    s.text(x + 20, y + 12, "20 A 1-pole");
                    s.rule(x - 6, y - 12, x + 170, y - 12).rule(x - 6, y + 22, x + 170, y + 22);
                    s.rule(x - 6, y - 12, x - 6, y + 22).rule(x + 14, y - 12, x + 14, y + 22);
                    s.rule(x + 170, y - 12, x + 170, y + 22);
                }
            Directory d = s.directory();
            assertThat(d.circuits()).hasSize(12).allMatch(c -> c.ratingA().or(0) == 20 && c.poles() == 1);
        }
    }
}
