package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory;
import asfound.model.Directory.Circuit;
import asfound.model.Directory.Use;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Devices of several poles as boards outside North America write them (common practice). */
class FurtherBoardsTest {

    private static Circuit at(Directory d, int position) {
        return d.circuits().stream()
                .filter(c -> c.positions().get(0) == position)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_device_written_by_its_first_and_last_pole_has_the_one_between() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 90, 130};
            s.text(40, 40, "SWITCHBOARD DB-1").line(60, at, "Pole", "A", "Circuit");
            String[][] rows = {
                {"1", "10", "Lights foyer"}, {"2", "10", "Lights office"}, {"3", "16", "Lights warehouse"},
                {"4-6", "32", "Workshop outlet"}, {"7", "20", "Hot water"}, {"8-10", "40", "Packaged air unit"},
                {"11", "10", "Security"}, {"12", "20", "Spare"}
            };
            for (int r = 0; r < rows.length; r++) s.line(74 + 14 * r, at, rows[r]);
            Directory d = s.directory();
            assertThat(at(d, 4).positions()).containsExactly(4, 5, 6);
            assertThat(at(d, 8).positions()).containsExactly(8, 9, 10);
            assertThat(d.circuits()).hasSize(8);
        }
    }

    @Test
    void two_poles_printed_beside_a_first_and_a_last_position_are_those_two() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 90, 130, 160};
            s.text(40, 40, "PANEL LP-9").line(60, at, "Ckt", "A", "P", "Load");
            String[][] rows = {
                {"1", "20", "1", "Lights"}, {"2", "20", "1", "Sign"}, {"3", "20", "1", "Fan"},
                {"4-6", "30", "2", "Heater"}, {"7", "20", "1", "Pump"}, {"8", "20", "1", "Clock"}
            };
            for (int r = 0; r < rows.length; r++) s.line(74 + 14 * r, at, rows[r]);
            Directory d = s.directory();
            assertThat(at(d, 4).positions()).containsExactly(4, 6);
            assertThat(at(d, 4).poles()).isEqualTo(2);
        }
    }

    @Test
    void a_ditto_beside_a_rating_of_its_own_is_told() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 90, 130};
            s.text(40, 40, "PANEL LP-8").line(60, at, "Ckt", "A", "Load");
            String[] loads = {"Lights", "Sign", "Oven", "\"", "Fan", "Pump", "Clock", "Spare"};
            for (int r = 0; r < loads.length; r++) s.line(74 + 14 * r, at, "" + (r + 1), "20", loads[r]);
            Directory d = s.directory();
            assertThat(d.problems())
                    .anyMatch(p -> p.message().startsWith("Position 4 could not be read in full: a ditto mark"));
            assertThat(d.unread()).containsExactly(4);
        }
    }

    @Test
    void odd_positions_with_a_dash_stay_two_where_even_ones_stand_beside_them() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 90, 130, 300, 350, 390};
            s.text(40, 40, "PANEL LP-4").line(60, at, "Ckt", "A", "Load", "Ckt", "A", "Load");
            s.line(74, at, "1-3", "30", "Heater", "2", "20", "Lights");
            s.line(88, at, "", "", "", "4", "20", "Receptacles");
            s.line(102, at, "5", "20", "Fan", "6-8", "40", "Range");
            s.line(116, at, "7", "20", "Spare", "", "", "");
            s.line(130, at, "9", "20", "Pump", "10", "20", "Sign");
            Directory d = s.directory();
            assertThat(at(d, 1).positions()).containsExactly(1, 3);
            assertThat(at(d, 6).positions()).containsExactly(6, 8);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"R3Y3B3", "R3 Y3 B3", "R3/Y3/B3", "R3,Y3,B3"})
    void the_phases_of_a_way_with_its_number_behind_each(String written) throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 110, 160};
            s.text(40, 40, "DISTRIBUTION BOARD DB-7").line(60, at, "Cct No.", "MCB A", "Description");
            String[] phases = {"R", "Y", "B"};
            int y = 74;
            for (int way = 1; way <= 4; way++) {
                if (way == 3) s.line(y += 14, at, written, "20", "Fan coil units");
                else for (String p : phases) s.line(y += 14, at, p + way, "10", "Lights " + p + way);
            }
            Directory d = s.directory();
            assertThat(at(d, 7).positions()).containsExactly(7, 8, 9);
            assertThat(at(d, 7).poles()).isEqualTo(3);
            assertThat(d.circuits()).hasSize(10);
        }
    }

    @Test
    void dittos_with_the_rating_beside_each_phase_of_a_way_are_one_device() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 90, 130};
            s.text(40, 40, "DISTRIBUTION BOARD DB-8").line(60, at, "Way", "A", "Circuit");
            for (int r = 0; r < 9; r++) {
                boolean oven = r / 3 == 1;
                String load = oven ? r == 3 ? "Oven" : "\"" : "Lights room " + (10 + r);
                s.line(74 + 14 * r, at, (1 + r / 3) + "L" + (1 + r % 3), oven ? "40" : "6", load);
            }
            Directory d = s.directory();
            assertThat(at(d, 4).positions()).containsExactly(4, 5, 6);
            assertThat(at(d, 4).description().raw()).isEqualTo("Oven");
            assertThat(d.circuits()).hasSize(7);
        }
    }

    @Test
    void a_device_of_three_poles_across_the_phases_of_its_row_is_one() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 80, 110, 230, 260, 380, 410};
            s.text(40, 30, "DB 5 - SPORTS HALL");
            s.line(48, at, "", "L1", "", "L2", "", "L3", "");
            s.line(60, at, "WAY", "Amp", "Circuit", "Amp", "Circuit", "Amp", "Circuit");
            s.line(74, at, "1", "6", "Boiler lights", "10", "Gym lights 1", "10", "Gym lights 2");
            s.line(88, at, "2", "32", "Gym sockets", "32", "Stage sockets", "20", "Store sockets");
            s.line(102, at, "3", "63 TP", "", "", "Dimmer rack", "", "");
            s.line(116, at, "4", "10", "Corridor", "6", "Toilets", "16", "Floods");
            s.line(130, at, "5", "16", "Board", "10", "Spare", "10", "Clock");
            Directory d = s.directory();
            assertThat(d.panel()).isEqualTo("DB 5");
            assertThat(at(d, 7).positions()).containsExactly(7, 8, 9);
            assertThat(at(d, 7).ratingA().or(0)).isEqualTo(63);
            assertThat(at(d, 7).description().raw()).isEqualTo("Dimmer rack");
            assertThat(d.circuits()).hasSize(13);
        }
    }

    @Test
    void a_filler_of_a_pole_is_a_space() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 90, 130};
            s.text(40, 40, "SWITCHBOARD DB-2").line(60, at, "Pole", "A", "Circuit");
            for (int r = 1; r <= 6; r++)
                s.line(60 + 14 * r, at, "" + r, r < 6 ? "10" : "", r < 6 ? "Lights " + r : "Pole Filler");
            assertThat(at(s.directory(), 6).use()).isEqualTo(Use.SPACE);
        }
    }
}
