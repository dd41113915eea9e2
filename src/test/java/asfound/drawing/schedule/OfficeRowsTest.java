package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.drawing.schedule.doubt.EntryDoubts;
import asfound.model.Directory;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** Which rows of an office's sheet make one device. */
class OfficeRowsTest {

    private static final double[] LIST = {40, 80, 260, 320};

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
            Directory d = s.directory();
            assertThat(Readings.circuits(d))
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
            assertThat(Readings.circuits(s.directory())).containsExactly("[1, 3, 5] UPS 6", "[7] Gate", "[9] Sign");
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
            assertThat(s.directory().circuits().stream()
                            .map(c ->
                                    c.positions() + " " + Math.round(c.totalVA().or(0.0))))
                    .containsExactly("[1] 700", "[3] 900", "[5, 7, 9] 1500");
        }
    }

    @Test
    void they_do_so_where_the_poles_stand_apart_from_the_rating_under_its_heading() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 80, 200, 216, 260};
            s.text(40, 40, "PANEL KP4");
            s.line(60, at, "CKT", "LOAD", "BKR", "", "VA");
            s.line(74, at, "1", "Copier", "20A", "1P", "700");
            s.line(88, at, "3", "Lights", "20A", "1P", "900");
            s.line(102, at, "5", "Heater", "30A", "2P", "400");
            s.line(116, at, "", "", "", "", "400");
            s.line(130, at, "9", "Kiln", "70A", "3P", "500");
            s.line(144, at, "", "", "", "", "500");
            s.line(158, at, "", "", "", "", "500");
            assertThat(Readings.loads(s.directory())).containsExactly(700.0, 900.0, 800.0, 1500.0);
        }
    }

    /** Under the name of a two-pole device its cells are joined, and each pole's load stands in its own row. */
    @Test
    void two_loads_in_a_joined_cell_are_those_of_its_rows() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "PANEL DA-1");
            s.line(50, LIST, "CKT", "LOAD", "BKR", "WATTS");
            s.line(70, LIST, "1", "Copier", "20/1", "700");
            s.line(90, LIST, "3", "Pedestal", "50/2", "2600");
            s.line(110, LIST, "5", "", "", "2600");
            s.line(130, LIST, "7", "Lights", "20/1", "900");
            s.line(150, LIST, "9", "Sign", "20/1", "300");
            for (double y : new double[] {56, 76, 96, 116, 136, 156}) {
                s.rule(36, y, 76, y);
                if (y != 96) s.rule(76, y, 360, y);
            }
            for (double x : new double[] {36, 76, 256, 316, 360}) s.rule(x, 56, x, 156);
            Directory d = s.directory();
            assertThat(Readings.circuits(d)).containsExactly("[1] Copier", "[3, 5] Pedestal", "[7] Lights", "[9] Sign");
            assertThat(Readings.loads(d)).containsExactly(700.0, 5200.0, 900.0, 300.0);
            assertThat(d.unread()).isEmpty();
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
            Directory d = s.directory();
            assertThat(d.circuits().stream()
                            .map(c ->
                                    c.positions() + " " + Math.round(c.totalVA().or(0.0))))
                    .containsExactly("[43] 600", "[45] 700", "[47] 900", "[49] 800");
            assertThat(Readings.said(d.problems()))
                    .contains("Position 43 has a load, and neither a description nor a rating: "
                            + EntryDoubts.OF_DEVICE_BEFORE + ".");
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
            assertThat(Readings.circuits(s.directory()))
                    .containsExactly("[1] Lights", "[2] Sockets", "[3] Heater", "[4, 5, 6] Lathe", "[7, 8, 9] Press");
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
            Directory d = s.directory();
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
            assertThat(Readings.said(d.problems()))
                    .contains("Way 3 has one entry for its three phases; it may be a device of three poles.");
        }
    }
}
