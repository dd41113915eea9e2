package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory;
import asfound.model.Directory.Header;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What stands over and among directories and looks like a name, a bus, a position or a sum of them, and is none. */
class WordsOfSheetsTest {

    @Test
    void a_system_or_a_device_beside_the_sheets_title_is_no_panels_name() throws IOException {
        for (String other : new String[] {"480Y/277", "120/208V", "200A 3P", "3P-200A"})
            try (DrawnSheet s = new DrawnSheet()) {
                s.text(40, 40, "PANEL SCHEDULE");
                s.text(120, 40, other);
                s.twoSided(60);
                assertThat(s.directory().header().designation().isStated())
                        .as(other)
                        .isFalse();
            }
    }

    @Test
    void a_board_may_have_a_chart() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "DISTRIBUTION BOARD CHART: DB G/1");
            s.twoSided(60);
            assertThat(s.directory().header().designation().or("-")).isEqualTo("DB G/1");
        }
    }

    @Test
    void a_dash_behind_a_rating_of_the_bus_makes_no_label_of_it() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PNL 2RPL3");
            s.text(40, 54, "225A BUS - 200A MAIN CB - 208Y/120V 3PH 4W - 10 KAIC - NEMA 1");
            s.twoSided(76);
            Header h = s.directory().header();
            assertThat(h.busA().or(0)).isEqualTo(225);
            assertThat(h.mainA().or(0)).isEqualTo(200);
            assertThat(h.interruptingKA().or(0.0)).isEqualTo(10);
        }
    }

    @Test
    void how_many_poles_the_first_devices_have_is_no_column_of_positions() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL L2-N");
            double[] x = {40, 80, 120, 170};
            String[][] rows = {
                {"1", "2", "40", "CONVEYOR"},
                {"3", "", "", ""},
                {"5", "1", "20", "DOCK LIGHTS"},
                {"7", "1", "20", "TIME CLOCK"},
                {"9", "1", "20", "SUMP ALARM"}
            };
            String[][] heads = {{"CIR.", "NO.", "TRIP", "SERVICE TO"}, {"NO.", "POLE", "AMP", ""}};
            for (int r = 0; r < 2; r++)
                for (int c = 0; c < 4; c++) if (!heads[r][c].isEmpty()) s.text(x[c], 60 + 9 * r, heads[r][c]);
            for (int r = 0; r < rows.length; r++)
                for (int c = 0; c < 4; c++) if (!rows[r][c].isEmpty()) s.text(x[c], 84 + 12 * r, rows[r][c]);
            assertThat(Readings.circuits(s.directory()))
                    .containsExactly("[1, 3] CONVEYOR", "[5] DOCK LIGHTS", "[7] TIME CLOCK", "[9] SUMP ALARM");
        }
    }

    @Test
    void a_sum_is_in_the_unit_of_its_label() throws IOException {
        for (String[] sum : new String[][] {{"Total connected kVA", "78.6"}, {"Total connected load:", "78,600"}})
            try (DrawnSheet s = new DrawnSheet()) {
                s.text(40, 40, "PANEL LP-1");
                s.twoSided(60);
                s.text(40, 160, sum[0]);
                s.text(160, 160, sum[1]);
                assertThat(s.directory().totals().totalVA().or(0.0)).as(sum[0]).isEqualTo(78_600);
            }
    }

    @Test
    void open_beside_a_position_without_a_device_is_a_space() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.typed(
                    40,
                    "PANEL: LP-1",
                    "CKT  LOAD SERVED        AMPS  POLES",
                    "1    NURSE CALL         20    1",
                    "2    UNIT HEATER        30    1",
                    "3    OPEN",
                    "4    DOCK LIGHTS        20    1");
            Directory d = s.directory();
            assertThat(d.circuits().stream().map(c -> c.use()).toList())
                    .containsExactly(Directory.Use.LOAD, Directory.Use.LOAD, Directory.Use.SPACE, Directory.Use.LOAD);
        }
    }

    @Test
    void what_stands_around_the_second_half_is_said_of_the_panel_as_well() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.typed(
                    40,
                    "PANEL: LP-1",
                    "CKT  LOAD SERVED        AMPS  POLES",
                    "1    NURSE CALL         20    1",
                    "3    UNIT HEATER        30    1",
                    "5    SPARE              20    1",
                    "7    DOCK LIGHTS        20    1");
            s.typed(
                    130,
                    "CKT  LOAD SERVED        AMPS  POLES",
                    "2    FUME HOOD          20    1",
                    "4    TEA KITCHEN        30    1",
                    "6    SPARE              20    1",
                    "8    GATE               20    1");
            s.typed(200, "Location: Stage 1", "Supplied by: DS-3");
            List<Directory> read = s.read().directories();
            assertThat(read).hasSize(1);
            assertThat(read.get(0).header().location().or("-")).isEqualTo("Stage 1");
            assertThat(read.get(0).header().fedFrom().or("-")).isEqualTo("DS-3");
        }
    }

    @Test
    void positions_that_are_free_together_are_so_one_by_one_and_no_device_has_four_poles_unsaid() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.typed(
                    40,
                    "PANEL: LP-1",
                    "CKT        LOAD SERVED        AMPS",
                    "1          NURSE CALL         20A",
                    "2          UNIT HEATER        20A",
                    "3 to 6     SPARE              20A",
                    "7          DOCK LIGHTS        20A",
                    "8-11       SPARE              20A",
                    "12         GATE               20A",
                    "13-16      KILN               20A");
            Directory d = s.directory();
            assertThat(Readings.circuits(d))
                    .containsExactly(
                            "[1] NURSE CALL",
                            "[2] UNIT HEATER",
                            "[3] SPARE",
                            "[4] SPARE",
                            "[5] SPARE",
                            "[6] SPARE",
                            "[7] DOCK LIGHTS",
                            "[8] SPARE",
                            "[9] SPARE",
                            "[10] SPARE",
                            "[11] SPARE",
                            "[12] GATE",
                            "[13, 14, 15, 16] KILN");
            assertThat(d.unread()).containsExactly(13);
        }
    }

    @Test
    void more_positions_than_the_poles_that_are_printed_are_told() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.typed(
                    40,
                    "PANEL: LP-1",
                    "CKT        LOAD SERVED        AMPS  POLES",
                    "1          NURSE CALL         20    1",
                    "2          UNIT HEATER        20    1",
                    "3 to 6     PUMP               20    2",
                    "7          DOCK LIGHTS        20    1",
                    "8-11       SPARE              30    2",
                    "12         GATE               20    1",
                    "13 to 16   SPARE              20    1",
                    "17-19      KILN               20    3");
            Directory d = s.directory();
            assertThat(d.unread()).containsExactly(3, 8);
            assertThat(Readings.circuits(d))
                    .containsExactly(
                            "[1] NURSE CALL",
                            "[2] UNIT HEATER",
                            "[3, 4, 5, 6] PUMP",
                            "[7] DOCK LIGHTS",
                            "[8, 9, 10, 11] SPARE",
                            "[12] GATE",
                            "[13] SPARE",
                            "[14] SPARE",
                            "[15] SPARE",
                            "[16] SPARE",
                            "[17, 18, 19] KILN");
        }
    }

    @Test
    void a_side_with_two_devices_left_is_read_though_positions_are_called_poles() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL LP-1");
            double[] x = {40, 80, 160, 220, 260, 340};
            s.line(51, x, "NO.", "", "", "NO.");
            s.line(60, x, "POLE", "LOAD SERVED", "AMPS", "POLE", "LOAD SERVED", "AMPS");
            s.line(74, x, "1", "NURSE CALL", "20", "2", "GATE", "20");
            double[] left = {40, 80, 160};
            s.line(88, x, "3", "UNIT HEATER", "20", "4", "FAN", "20");
            s.line(102, left, "5", "DOCK LIGHTS", "20");
            s.line(116, left, "7", "STORE", "20");
            assertThat(Readings.circuits(s.directory()))
                    .containsExactly(
                            "[1] NURSE CALL", "[2] GATE", "[3] UNIT HEATER", "[4] FAN", "[5] DOCK LIGHTS", "[7] STORE");
        }
    }
}
