package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.model.Directory;
import asfound.model.Problem;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lists of circuits under headings that stand once, with a line before each panel; and lists that count other things. */
class ListsOfSeveralPanelsTest {

    private static final double[] AT = {40, 70, 240, 290};

    @Test
    void a_line_below_the_headings_names_the_panel_of_the_rows_below_it() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.line(40, AT, "CKT", "LOAD DESCRIPTION", "AMPS", "POLES");
            panel(s, 54, "PANEL 1PA - RM 118 - 120/208V 3PH 4W - 125A MLO", "Lights");
            panel(s, 138, "PANEL 1PB - RM 133 - 120/208V 3PH 4W - 100A MAIN BREAKER", "Sockets");
            List<Directory> read = s.read().directories();
            assertThat(read).extracting(Directory::panel).containsExactly("1PA", "1PB");
            assertThat(Readings.circuits(read.get(0))).contains("[1] Lights 1");
            assertThat(read.get(0).header().busA().value()).contains(125);
            assertThat(Readings.circuits(read.get(1))).contains("[1] Sockets 1");
            assertThat(read.get(1).header().mainA().value()).contains(100);
        }
    }

    private static void panel(DrawnSheet s, double y, String title, String loads) throws IOException {
        s.text(40, y, title);
        for (int n = 1; n <= 5; n++) s.line(y + 14 * n, AT, "" + n, loads + " " + n, "20", "1");
    }

    @Test
    void columns_before_the_positions_say_where_each_panel_is_and_what_feeds_it() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 90, 150, 210, 270, 310, 340};
            s.line(40, at, "Panel", "Location", "Volts", "Fed from", "Circuit", "A", "Load");
            for (int r = 0; r < 10; r++) {
                String[] panel = r < 5
                        ? new String[] {"1LA", "Rm 119", "208Y/120", "MDP"}
                        : new String[] {"2HA", "Rm 219", "480Y/277", r == 7 ? "T-2" : "MSB"};
                s.line(54 + 14 * r, at, panel[0], panel[1], panel[2], panel[3], "" + (1 + r % 5), "20", "Lights " + r);
            }
            List<Directory> read = s.read().directories();
            assertThat(read).extracting(Directory::panel).containsExactly("1LA", "2HA");
            assertThat(read.get(0).header().location().raw()).isEqualTo("Rm 119");
            assertThat(read.get(0).header().fedFrom().raw()).isEqualTo("MDP");
            assertThat(read.get(1).header().voltage().raw()).isEqualTo("480Y/277");
            // its rows do not agree
            assertThat(read.get(1).header().fedFrom().isBlank()).isTrue();
        }
    }

    @Test
    void columns_before_the_positions_say_what_the_bus_and_mains_of_each_panel_are() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 80, 120, 160, 220, 280, 340, 400, 440, 470};
            String[] heads = {
                "Panel",
                "Phases",
                "Wires",
                "Bus Rating",
                "Mains Type",
                "Main Rating",
                "AIC Rating",
                "Circuit",
                "A",
                "Load"
            };
            s.line(40, at, heads);
            for (int r = 0; r < 10; r++) {
                String[] own = r < 5
                        ? new String[] {"1LA", "3", "4", "225 A", "MCB", "200 A", "22 kA"}
                        : new String[] {"2HA", "3", "4", "400 A", "MLO", "", "10 kA"};
                s.line(54 + 14 * r, at, own[0], own[1], own[2], own[3], own[4], own[5], own[6]);
                s.line(54 + 14 * r, new double[] {400, 440, 470}, "" + (1 + r % 5), "20", "Lights " + r);
            }
            List<Directory> read = s.read().directories();
            Directory.Header first = read.get(0).header(), second = read.get(1).header();
            assertThat(first.busA().value()).contains(225);
            assertThat(first.mainA().value()).contains(200);
            assertThat(first.mains().value()).contains(Directory.Mains.BREAKER);
            assertThat(first.interruptingKA().value()).contains(22.0);
            assertThat(second.busA().value()).contains(400);
            assertThat(second.mainA().isBlank()).isTrue();
            assertThat(second.mains().value()).contains(Directory.Mains.LUGS);
            assertThat(second.phases().value()).contains(3);
            assertThat(second.wires().value()).contains(4);
            assertThat(read).allSatisfy(d -> assertThat(d.problems()).isEmpty());
        }
    }

    @Test
    void the_same_breaker_written_in_words_carries_a_device_on() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 26, "PANEL 1PA");
            s.line(40, AT, "CKT", "LOAD DESCRIPTION", "AMPS", "POLES");
            s.line(54, AT, "1", "Water heater", "30", "2");
            s.line(68, AT, "2", "Vehicle charger", "40", "2");
            s.line(82, AT, "3", "(same breaker)");
            s.line(96, AT, "4", "(same breaker)");
            s.line(110, AT, "5", "Lights", "20", "1");
            s.line(124, AT, "6", "Sockets", "20", "1");
            Directory d = s.directory();
            assertThat(Readings.circuits(d))
                    .containsExactly("[1, 3] Water heater", "[2, 4] Vehicle charger", "[5] Lights", "[6] Sockets");
            assertThat(d.problems()).isEmpty();
        }
    }

    @Test
    void the_column_that_says_spare_holds_the_descriptions_though_notes_are_longer() throws IOException {
        double[] at = {40, 70, 200, 240, 280};
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL 1PB");
            s.line(54, at, "1", "Lights", "20", "1", "handle tied off with wire");
            s.line(68, at, "2", "SPARE", "20", "1", "label faded beyond reading");
            s.line(82, at, "3", "Gate", "20", "1", "loose neutral at the bar");
            s.line(96, at, "4", "SPACE");
            s.line(110, at, "5", "Fan", "20", "1", "label faded beyond reading");
            s.line(124, at, "6", "Pump", "20", "1");
            assertThat(Readings.circuits(s.directory()))
                    .containsExactly("[1] Lights", "[2] SPARE", "[3] Gate", "[4] SPACE", "[5] Fan", "[6] Pump");
        }
    }

    @Test
    void a_list_of_relays_ports_or_zones_is_no_directory_and_is_told() throws IOException {
        double[] at = {40, 100, 200, 260, 320, 420};
        for (String counted : new String[] {"RELAY", "PORT", "ZONE NO."})
            try (DrawnSheet s = new DrawnSheet()) {
                s.text(40, 26, "CONTROL PANEL LCP-1");
                s.line(40, at, counted, "AREA", "RATING", counted, "AREA", "RATING");
                for (int r = 0; r < 6; r++)
                    s.line(
                            54 + 14 * r,
                            at,
                            "" + (2 * r + 1),
                            "Lobby " + r,
                            "20A",
                            "" + (2 * r + 2),
                            "Stair " + r,
                            "20A");
                ScheduleReading read = s.read();
                assertThat(read.directories()).as(counted).isEmpty();
                assertThat(read.problems())
                        .extracting(Problem::message)
                        .contains("The table headed '" + counted + "' was not taken for a panel's directory.");
            }
    }
}
