package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory.Header;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** Values of a header that go on in the next line, and values below them that are others. */
class WrappedValuesTest {

    @Test
    void two_lines_in_the_middle_of_a_cell_under_the_cell_of_a_label_are_one_value() throws IOException {
        for (boolean more : new boolean[] {true, false})
            try (DrawnSheet s = new DrawnSheet()) {
                centred(s, 90, 38, "TAG").text(200, 38, "VOLTS");
                centred(s, 340, 38, "LOCATION");
                centred(s, 340, 49, "HALL 2");
                if (more) centred(s, 340, 59, "GRID H14");
                centred(s, 90, 54, "RPP-2A").text(200, 54, "208Y/120");
                for (double y : new double[] {30, 41, 63}) s.rule(40, y, 400, y);
                for (double x : new double[] {40, 140, 280, 400}) s.rule(x, 30, x, 63);
                s.twoSided(90);
                assertThat(s.directory().header().location().or("")).isEqualTo(more ? "HALL 2 GRID H14" : "HALL 2");
            }
    }

    private static DrawnSheet centred(DrawnSheet s, double x, double y, String text) throws IOException {
        return s.text(x - DrawnSheet.width(text) / 2, y, text);
    }

    @Test
    void in_an_open_grid_the_next_rows_values_are_no_second_lines_of_the_last_columns() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {44, 90, 170, 230, 310, 360};
            s.line(40, at, "Panel:", "SP-D1", "Location:", "Boiler hall", "Fed from:", "USS-SP 2B");
            s.line(51, at, "Volts:", "480Y/277", "Phase, wire:", "3 PH, 4 W", "Bus:", "400 A");
            s.line(62, at, "Main:", "300 A MCB", "Short circuit:", "42 kA", "Book page:", "41");
            box(s, 40, 30, 404, 68);
            s.twoSided(90);
            Header h = s.directory().header();
            assertThat(h.fedFrom().or("")).isEqualTo("USS-SP 2B");
            assertThat(h.busA().raw()).isEqualTo("400 A");
            assertThat(h.mainA().value()).contains(300);
            assertThat(h.voltage().raw()).isEqualTo("480Y/277");
        }
    }

    @Test
    void in_a_cell_a_value_goes_on_under_itself_or_under_its_label() throws IOException {
        for (double x : new double[] {44, 82})
            try (DrawnSheet s = new DrawnSheet()) {
                s.text(44, 40, "Fed from:").text(82, 40, "switchboard MSB").text(x, 50, "section 4");
                s.text(154, 40, "Panel:").text(190, 40, "L-9");
                box(s, 40, 30, 150, 56);
                s.twoSided(90);
                assertThat(s.directory().header().fedFrom().or("")).isEqualTo("switchboard MSB section 4");
            }
    }

    @Test
    void a_sentence_about_the_panel_goes_on_in_lines_set_wide() throws IOException {
        String[] lines = {
            "Panel LP-27, located at MCC room 2, fed from XFMR T-27 in substation 4 of the north mill. 120/208 V, 3 phase, 4 wire. 225 A bus, 150 A main, 10",
            "kA interrupting."
        };
        try (DrawnSheet s = new DrawnSheet()) {
            double x = (612 - DrawnSheet.width(lines[0])) / 2;
            s.text(x, 40, lines[0]).text(x, 53, lines[1]);
            box(s, 20, 20, 592, 700);
            s.twoSided(72);
            Header h = s.directory().header();
            assertThat(h.interruptingKA().value()).contains(10.0);
            assertThat(h.mainA().value()).contains(150);
            assertThat(h.location().or("")).isEqualTo("MCC room 2");
        }
    }

    @Test
    void a_value_under_its_label_goes_on_in_a_line_close_under_it() throws IOException {
        String[][] lines = {
            {"Main electrical room 0.12, lower", "basement"}, {"BOILER HOUSE, NORTH SIDE, UNDER", "MEZZANINE"}
        };
        for (String[] place : lines)
            try (DrawnSheet s = new DrawnSheet()) {
                double x = 200 - DrawnSheet.width(place[0]) - 10;
                s.text(x, 40, "Panel").text(x, 49, "SW-2");
                s.text(x, 66, "Location").text(x, 75, place[0]).text(x, 84, place[1]);
                s.text(x, 101, "Fed from").text(x, 110, "Utility vault");
                s.text(x, 127, "System voltage").text(x, 136, "480Y/277V");
                double[] at = {200, 230, 360};
                s.line(40, at, "CKT", "LOAD", "BKR");
                for (int r = 1; r < 9; r++) s.line(40 + 13 * r, at, "" + r, "Pump " + r, "20/1");
                Header h = s.directory().header();
                assertThat(h.location().or("")).isEqualTo(place[0] + " " + place[1]);
                assertThat(h.fedFrom().or("")).isEqualTo("Utility vault");
            }
    }

    private static void box(DrawnSheet s, double left, double top, double right, double foot) throws IOException {
        s.rule(left, top, right, top).rule(left, foot, right, foot);
        s.rule(left, top, left, foot).rule(right, top, right, foot);
    }
}
