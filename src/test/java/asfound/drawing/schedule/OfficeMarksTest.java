package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import asfound.model.Directory;
import asfound.model.Directory.Circuit;
import asfound.model.Directory.Mains;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** What offices write beside the further poles of a device, and into the boxes of a form. */
class OfficeMarksTest {

    private static final double[] LIST = {40, 80, 260, 320};

    @Test
    void a_mark_before_the_number_of_poles_is_no_rating() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL 4HL1");
            s.line(60, LIST, "No.", "Name", "OCPD", "Load");
            s.line(74, LIST, "1", "Chiller", "60/3", "900 VA");
            s.line(88, LIST, "3", "", "-/3", "900 VA");
            s.line(102, LIST, "5", "", "-/3", "900 VA");
            s.line(116, LIST, "7", "Space", "-/-", "");
            s.line(130, LIST, "9", "Lights", "20/1", "300 VA");
            Directory d = s.directory();
            assertThat(Readings.circuits(d)).containsExactly("[1, 3, 5] Chiller", "[7] Space", "[9] Lights");
            assertThat(Readings.said(d.problems())).noneMatch(m -> m.contains("two entries"));
        }
    }

    @Test
    void a_word_that_says_with_which_position_a_pole_goes_is_no_load() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL GYM1");
            double[] at = {40, 70, 110, 250, 280, 320};
            s.line(60, at, "CKT", "AMP", "LOAD", "CKT", "AMP", "LOAD");
            s.line(74, at, "1", "60", "Water heater", "2", "20", "Lights");
            s.line(88, at, "3", "", "(cont.)", "4", "30", "Dryer");
            s.line(102, at, "5", "", "(cont.)", "6", "", "(with 4)");
            s.line(116, at, "7", "20", "Copier", "8", "20", "See manager");
            assertThat(Readings.circuits(s.directory()))
                    .containsExactly(
                            "[1, 3, 5] Water heater", "[2] Lights", "[4, 6] Dryer", "[7] Copier", "[8] See manager");
        }
    }

    @Test
    void a_bar_carries_a_device_on_where_no_ratings_are_given_and_a_dash_does_not() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL P-107");
            double[] at = {40, 70, 250, 280};
            s.line(60, at, "CKT", "LOAD", "CKT", "LOAD");
            s.line(74, at, "1", "Heat pump", "2", "Lights");
            s.line(88, at, "3", "|", "4", "Sockets");
            s.line(102, at, "5", "Lobby", "6", "-");
            s.line(116, at, "7", "Stage", "8", "Doors");
            assertThat(Readings.circuits(s.directory()))
                    .containsExactly(
                            "[1, 3] Heat pump",
                            "[2] Lights",
                            "[4] Sockets",
                            "[5] Lobby",
                            "[6] ",
                            "[7] Stage",
                            "[8] Doors");
        }
    }

    @Test
    void numbers_of_notes_are_no_poles() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL KP-2");
            double[] at = {40, 70, 200, 260};
            s.line(60, at, "CKT", "LOAD", "BREAKER", "NOTES");
            s.line(74, at, "1", "Kiln", "60A/3P", "");
            s.line(88, at, "3", "", "|", "");
            s.line(102, at, "5", "", "|", "2");
            s.line(116, at, "7", "Lights", "20A/1P", "");
            s.line(130, at, "9", "Fan", "20A/1P", "2");
            s.line(144, at, "11", "Pump", "20A/1P", "3");
            assertThat(Readings.circuits(s.directory()))
                    .containsExactly("[1, 3, 5] Kiln", "[7] Lights", "[9] Fan", "[11] Pump");
        }
    }

    @Test
    void of_the_boxes_of_a_form_the_ticked_one_counts() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "Panel: EM-1");
            s.text(200, 40, "Main: [ ] MLO [X] MCB");
            s.text(350, 40, "MCB Amps: 125A");
            s.text(40, 54, "[X] 120/240V 1PH 3W");
            s.text(200, 54, "[ ] 120/208V 3PH 4W");
            s.text(350, 54, "[ ] 277/480V 3PH 4W");
            s.twoSided(80);
            Directory.Header h = s.directory().header();
            assertThat(h.mains().value()).contains(Mains.BREAKER);
            assertThat(h.mainA().value()).contains(125);
            assertThat(h.phases().value()).contains(1);
            assertThat(h.voltage().raw()).contains("240");
        }
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "Panel: EM-2");
            s.text(200, 40, "Main: MLO (X) MCB ( )");
            s.twoSided(80);
            assertThat(s.directory().header().mains().value()).contains(Mains.LUGS);
        }
    }

    @Test
    void the_rating_of_the_main_breaker_is_not_that_of_the_mains() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "Branch Panel: PP-2");
            double[] at = {300, 380};
            s.line(42, at, "Mains Type:", "MCB");
            s.line(52, at, "Mains Rating:", "225 A");
            s.line(62, at, "MCB Rating:", "150 A");
            s.twoSided(90);
            Directory.Header h = s.directory().header();
            assertThat(h.mainA().value()).contains(150);
            assertThat(h.busA().value()).contains(225);
        }
    }

    @Test
    void two_spares_alike_do_not_make_one_device_of_a_switchboards_list() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "DISTRIBUTION SWITCHBOARD SCHEDULE - MSB");
            s.line(60, LIST, "NO.", "LOAD SERVED", "TRIP", "POLES");
            String[] loads = {"Panel HA", "Chiller", "SPARE", "Lifts", "SPARE", "Panel HB"};
            for (int i = 0; i < loads.length; i++)
                s.line(74 + 14 * i, LIST, "" + (i + 1), loads[i], loads[i].equals("SPARE") ? "100" : "400", "3");
            Directory d = s.directory();
            assertThat(d.panel()).isEqualTo("MSB");
            assertThat(d.circuits())
                    .extracting(Circuit::positions, Circuit::poles)
                    .contains(tuple(java.util.List.of(3), 3), tuple(java.util.List.of(5), 3))
                    .hasSize(6);
        }
    }
}
