package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** Entries beside the middle of their positions: where a bracket is drawn around these, it says which they are. */
class BracketsTest {

    private static final double[] AT = {40, 70, 200, 240};

    @Test
    void a_bracket_around_positions_says_where_the_device_begins_whose_entry_stands_beside_their_middle()
            throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "PANEL PL1").line(50, AT, "CKT", "SERVICE", "TRIP", "P");
            for (int r = 0; r < 8; r++) s.text(40, 64 + 16 * r, "" + (2 * r + 1));
            String[] none = {"", ""};
            s.line(64 + 16, AT, none[0], "BRIDGE CRANE", "30", "3");
            s.line(64 + 64, AT, none[0], "COMPRESSOR", "40", "3");
            s.line(64 + 104, AT, none[0], "SOFTENER", "15", "2");
            bracket(s, 64, 96);
            bracket(s, 112, 144);
            bracket(s, 160, 176);
            assertThat(Readings.circuits(s.directory()))
                    .containsExactly("[1, 3, 5] BRIDGE CRANE", "[7, 9, 11] COMPRESSOR", "[13, 15] SOFTENER");
        }
    }

    @Test
    void the_bracket_of_the_odd_positions_joins_no_even_ones_though_it_stands_between_both() throws IOException {
        double[] at = {40, 80, 200, 240, 268, 400};
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "PANEL LC-1").line(50, at, "C/B", "OUTLETS", "No.", "No.", "OUTLETS", "C/B");
            String[] odd = {"LIGHTS", "EV CHARGER", "", "SOCKETS"}, even = {"FAN", "OVEN", "BOILER", "PUMP"};
            for (int r = 0; r < 4; r++) {
                double y = 64 + 16 * r;
                s.line(y, at, "", odd[r], "" + (2 * r + 1), "" + (2 * r + 2), even[r], "1P-15");
                if (r != 1 && r != 2) s.text(40, y, "1P-20");
            }
            s.text(40, 88, "2P-40").rule(232, 40, 232, 120);
            s.rule(220, 75, 220, 96).rule(216, 75, 220, 75).rule(216, 96, 220, 96);
            for (double y = 54; y < 130; y += 16) if (y != 86) s.rule(36, y, 430, y);
            assertThat(Readings.circuits(s.directory()))
                    .containsExactly(
                            "[1] LIGHTS",
                            "[2] FAN",
                            "[3, 5] EV CHARGER",
                            "[4] OVEN",
                            "[6] BOILER",
                            "[7] SOCKETS",
                            "[8] PUMP");
        }
    }

    private static void bracket(DrawnSheet s, double first, double last) throws IOException {
        s.rule(60, first - 5, 60, last).rule(57, first - 5, 60, first - 5).rule(57, last, 60, last);
    }

    @Test
    void the_rules_of_a_cell_are_no_bracket() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "PANEL PL1").line(50, AT, "CKT", "SERVICE", "TRIP", "P");
            for (int r = 0; r < 6; r++)
                s.line(64 + 16 * r, AT, "" + (r + 1), r == 3 ? "" : "LOAD " + r, r == 3 ? "" : "20");
            for (double y : new double[] {54, 86, 118, 150}) s.rule(36, y, 260, y);
            for (int g = 0; g < 3; g++) s.rule(66, 54 + 32 * g, 66, 86 + 32 * g);
            Directory d = s.directory();
            assertThat(d.circuits()).allMatch(c -> c.poles() == 1);
            assertThat(Readings.circuits(d)).contains("[1] LOAD 0", "[3] LOAD 2", "[6] LOAD 5");
        }
    }

    @Test
    void dashes_in_the_middle_of_a_wide_column_cut_no_words_off_the_entries_over_them() throws IOException {
        double[] at = {40, 60, 220, 250};
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "PANEL LP-4");
            s.text(40, 50, "CKT")
                    .text(100, 50, "LOAD DESCRIPTION")
                    .text(214, 50, "AMPS")
                    .text(244, 50, "POLES");
            String[] loads = {"UNIT HTR UH-2", "", "", "AIR COMPRESSOR AC-1", "", "", "YARD LTG WEST", "CRANE", "SPARE"
            };
            for (int r = 0; r < loads.length; r++) {
                boolean three = r == 0 || r == 3, own = !loads[r].isEmpty();
                s.line(64 + 14 * r, at, "" + (2 * r + 1), loads[r], own ? "20" : "-", own ? three ? "3" : "1" : "-");
                if (!own) s.text(138, 64 + 14 * r, "-");
            }
            assertThat(Readings.circuits(s.directory()))
                    .containsExactly(
                            "[1, 3, 5] UNIT HTR UH-2",
                            "[7, 9, 11] AIR COMPRESSOR AC-1",
                            "[13] YARD LTG WEST",
                            "[15] CRANE",
                            "[17] SPARE");
        }
    }

    @Test
    void numbers_of_poles_that_rise_beside_phases_are_no_ways_where_their_column_is_headed_poles() throws IOException {
        double[] at = {40, 70, 190, 230, 270};
        String[] poles = {"1", "2", "", "1", "1", "1", "2", "", "1", "1"};
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "PANEL WLP1").line(50, at, "CKT", "LOAD", "TRIP", "POLES", "PH");
            for (int r = 0; r < poles.length; r++) {
                boolean own = !poles[r].isEmpty();
                String phase = "" + "ABC".charAt(r % 3), position = "" + (2 * r + 1);
                s.line(64 + 14 * r, at, position, own ? "Load " + r : "", own ? "20" : "", poles[r], phase);
            }
            Directory d = s.directory();
            assertThat(Readings.circuits(d))
                    .containsExactly(
                            "[1] Load 0",
                            "[3, 5] Load 1",
                            "[7] Load 3",
                            "[9] Load 4",
                            "[11] Load 5",
                            "[13, 15] Load 6",
                            "[17] Load 8",
                            "[19] Load 9");
        }
    }
}
