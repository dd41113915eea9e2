package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.drawing.schedule.text.Headings;
import asfound.drawing.schedule.text.Role;
import asfound.model.Directory;
import asfound.model.Stated;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Where one column of an office's sheet ends and what heads the next. */
class OfficeColumnsTest {

    @Test
    void figures_set_close_to_the_description_beside_them_stay_loads() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL MP-1");
            s.line(60, new double[] {44, 68, 150, 190, 250}, "CKT", "VA", "LOAD", "", "AMPS");
            String[] loads = {"1150", "420", "90", "1210", "640", "80"};
            String[] names = {"Water cooler", "Fire alarm", "Door holders", "RTU-3", "Dock leveler 2", "Sign"};
            for (int i = 0; i < 6; i++) {
                double y = 74 + 14 * i;
                s.toTheRight(56, y, Integer.toString(i + 1));
                s.toTheRight(90, y, loads[i]);
                s.text(93, y, names[i]);
                s.text(250, y, "20");
            }
            Directory d = s.directory();
            assertThat(d.circuits().stream().map(c -> c.description().or(""))).containsExactly(names);
            assertThat(d.circuits().stream().map(c -> c.loadVA().get(0).value().orElseThrow()))
                    .containsExactly(1150.0, 420.0, 90.0, 1210.0, 640.0, 80.0);
        }
    }

    @Test
    void a_position_a_letters_width_from_its_load_stays_a_position() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL GH");
            double[] at = {40, 66, 200};
            s.line(60, at, "Ckt", "Serves", "Breaker");
            String[] positions = {"1", "2", "3", "4-6", "5", "7", "8", "10-12", "9", "11"};
            for (int i = 0; i < positions.length; i++)
                s.line(
                        74 + 12 * i,
                        at,
                        positions[i],
                        "Oven " + (char) ('A' + i),
                        positions[i].contains("-") ? "30A/2P" : "20A/1P");
            assertThat(s.directory().circuits().stream()
                            .filter(c -> c.poles() == 2)
                            .map(c -> c.positions() + " " + c.description().or("")))
                    .containsExactly("[4, 6] Oven D", "[10, 12] Oven H");
        }
    }

    @Test
    void a_heading_at_the_other_edge_of_a_ruled_cell_still_heads_its_column() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL: HV-2");
            s.line(
                    60,
                    new double[] {40, 92, 212, 262, 302, 422},
                    "CKT",
                    "DESCRIPTION",
                    "BKR",
                    "BKR",
                    "DESCRIPTION",
                    "CKT");
            String[] loads = {"RTU-1", "RTU-2", "RTU-3", "EF-1", "EF-2", "EF-3"};
            for (int r = 0; r < 3; r++) {
                double y = 74 + 14 * r;
                s.toTheRight(89, y, Integer.toString(2 * r + 1))
                        .text(92, y, loads[2 * r])
                        .toTheRight(258, y, "20/1");
                s.toTheRight(298, y, "20/1")
                        .text(302, y, loads[2 * r + 1])
                        .toTheRight(468, y, Integer.toString(2 * r + 2));
            }
            for (double x : new double[] {38, 90, 210, 260, 300, 420, 470}) s.rule(x, 50, x, 106);
            for (int r = 0; r <= 4; r++) s.rule(38, 50 + 14 * r, 470, 50 + 14 * r);
            Directory d = s.directory();
            assertThat(d.circuits().stream()
                            .map(c -> c.position() + " " + c.description().or("")))
                    .containsExactly("1 RTU-1", "2 RTU-2", "3 RTU-3", "4 EF-1", "5 EF-2", "6 EF-3");
        }
    }

    @Test
    void a_heading_in_the_middle_of_a_wide_column_heads_the_numbers_at_its_edge() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.line(40, new double[] {40, 150}, "PANEL 4HA", "FED FROM: DP3A");
            s.line(
                    60,
                    new double[] {60, 150, 260, 330, 440, 540},
                    "CIRCUIT",
                    "LOAD NAME",
                    "TRIP",
                    "TRIP",
                    "LOAD NAME",
                    "CIRCUIT");
            double[] at = {42, 110, 250, 320, 400, 520};
            for (int r = 0; r < 5; r++)
                s.line(74 + 12 * r, at, "" + (2 * r + 1), "Oven " + r, "20/1", "20/1", "Kiln " + r, "" + (2 * r + 2));
            Directory d = s.directory();
            assertThat(d.circuits().stream().map(Directory.Circuit::position))
                    .containsExactly(1, 2, 3, 4, 5, 6, 7, 8, 9, 10);
            assertThat(d.problems()).isEmpty();
        }
    }

    @Test
    void a_demand_factor_is_no_load_of_a_phase() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL MSB-2");
            double[] at = {40, 80, 220, 260, 300, 350, 400};
            s.line(60, at, "Circuit", "Serves", "Trip", "Poles", "kVA", "DF", "Demand kVA");
            s.line(74, at, "1", "Chiller", "50", "1", "1.68", "0.8", "1.34");
            s.line(88, at, "2", "Boiler", "70", "1", "5.07", "0.8", "4.06");
            s.line(102, at, "3", "Lift", "40", "1", "0.98", "0.8", "0.78");
            s.line(116, at, "4", "Lights", "20", "1", "1.20", "0.8", "0.96");
            assertThat(s.directory().circuits().stream()
                            .map(c -> c.loadVA().get(0).value().orElseThrow()))
                    .containsExactly(1680.0, 5070.0, 980.0, 1200.0);
        }
    }

    @Test
    void the_third_phase_stands_between_the_second_and_the_total() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL EDP");
            double[] at = {40, 80, 180, 240, 290, 340, 390};
            s.line(60, at, "No.", "Load", "Breaker", "kVA A", "kVA B", "kVA", "kVA total");
            s.line(74, at, "1,3,5", "Chiller", "40A 3P", "1.08", "1.08", "1.08", "3.24");
            s.line(88, at, "2,4,6", "Boiler", "60A 3P", "1.50", "1.50", "1.50", "4.50");
            s.line(102, at, "7", "Sign", "20A 1P", "0.40", "", "", "0.40");
            s.line(116, at, "8", "Gate", "20A 1P", "0.30", "", "", "0.30");
            assertThat(Readings.loads(s.directory())).containsExactly(3240.0, 4500.0, 400.0, 300.0);
        }
    }

    @Test
    void a_phase_over_its_unit_and_volt_amperes_with_stops_head_loads() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL M-2");
            double[] at = {40, 70, 170, 220, 270, 320};
            s.line(58, at, "", "", "", "A", "B", "C");
            s.line(67, at, "NO", "SERVES", "CB", "(VA)", "(VA)", "(VA)");
            s.line(80, at, "1", "Gate", "20/1", "300", "", "");
            s.line(92, at, "3", "Sign", "20/1", "", "200", "");
            s.line(104, at, "5", "Kiln", "20/1", "", "", "900");
            s.line(116, at, "7", "Oven", "20/1", "800", "", "");
            assertThat(Readings.loads(s.directory())).containsExactly(300.0, 200.0, 900.0, 800.0);
            assertThat(Headings.weight("V.A.", Role.LOAD)).isEqualTo(1);
            assertThat(Headings.weight("K.V.A.", Role.LOAD)).isEqualTo(1);
        }
    }

    @Test
    void a_list_of_poles_and_what_they_serve_is_a_schedule_and_a_decimal_comma_is_read() throws IOException {
        Directory d = Readings.table("Board;Pole;Serves;No. of Poles;Trip Rating;kVA\r\nDB-7;1;Lighting;1;20;1,75\r\n"
                + "DB-7;2-3-4;Cooker;3;70;1,02\r\nDB-7;5;Pump;1;20;0,30\r\nDB-7;6;Sign;1;20;0,25\r\n");
        assertThat(d.panel()).isEqualTo("DB-7");
        assertThat(d.circuits().get(0).loadVA().get(0).value()).contains(1750.0);
        assertThat(d.circuits().get(1).positions()).containsExactly(2, 3, 4);
    }

    /** In a long table one entry alone makes no column. */
    @Test
    void nearly_empty_columns_of_loads_are_parted_by_the_headings_of_their_phases() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL L-7");
            double[] at = {40, 70, 170, 210, 240, 270, 300};
            s.line(60, at, "CKT", "SERVES", "BKR", "P", "A VA", "B VA", "C VA");
            for (int r = 0; r < 14; r++) s.line(74 + 12 * r, at, "" + (r + 1), "Oven " + r, "20", "1");
            s.text(240, 74, "410").text(270, 86, "520").text(300, 98, "630");
            Directory d = s.directory();
            assertThat(byPhase(d, 1)).containsExactly("410", "", "");
            assertThat(byPhase(d, 2)).containsExactly("", "520", "");
            assertThat(byPhase(d, 3)).containsExactly("", "", "630");
            assertThat(byPhase(d, 4)).isEmpty();
            assertThat(d.circuits()).hasSize(14).allMatch(c -> c.poles() == 1);
            assertThat(d.problems()).isEmpty();
        }
    }

    private static List<String> byPhase(Directory d, int position) {
        return d.circuits().get(position - 1).loadVA().stream().map(Stated::raw).toList();
    }
}
