package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.model.Directory;
import asfound.model.Directory.Circuit;
import asfound.model.Directory.Use;
import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lists that someone typed who knows the building: sentences over the positions, the devices in words behind what they feed. */
class TypedListsTest {

    private static final String[] FIRST = {
        "1", "Furnace no. 5 - 20A",
        "2, 4", "Hot water heater - 30A double",
        "3", "Office outlets - 20A",
        "5, 7, 9", "Walk-in cooler compressor - 20A 3-pole",
        "6, 8", "Steam table - 30A double",
        "10", "Coffee urn outlet - 20A",
        "11", "spare - 20A",
        "12 to 16", "empty spaces"
    };

    private static final String[] SECOND = {
        "1, 3, 5", "Organ blower - 30A 3-pole",
        "2", "Boiler controls - 20A",
        "4, 6", "Bell tower motor - 20A double",
        "7", "Altar spotlights - 20A",
        "8", "spare - 20A",
        "9", "Ice machine - 15A"
    };

    @Test
    void two_panels_in_columns_of_text_side_by_side_keep_their_own_devices_and_headers() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 60, "PANEL A");
            s.text(40, 72, "Boiler room. Fed from the main switch. 120/208 volts, three");
            s.text(40, 84, "phase, 4 wire. 225 amp bus, 150 amp main breaker.");
            s.text(320, 60, "PANEL K");
            s.text(320, 72, "Pantry. Fed from Panel A. 120/208 volts, three phase,");
            s.text(320, 84, "4 wire. 125 amp bus, main lugs only.");
            rows(s, 40, 108, FIRST);
            rows(s, 320, 96, SECOND);
            ScheduleReading read = s.read();
            List<Directory> panels = read.directories().stream()
                    .sorted(Comparator.comparing(Directory::panel))
                    .toList();
            assertThat(panels).extracting(Directory::panel).containsExactly("A", "K");
            Directory a = panels.get(0), k = panels.get(1);
            assertThat(Readings.circuits(a))
                    .containsExactly(
                            "[1] Furnace no. 5",
                            "[2, 4] Hot water heater",
                            "[3] Office outlets",
                            "[5, 7, 9] Walk-in cooler compressor",
                            "[6, 8] Steam table",
                            "[10] Coffee urn outlet",
                            "[11] spare",
                            "[12] empty spaces",
                            "[13] empty spaces",
                            "[14] empty spaces",
                            "[15] empty spaces",
                            "[16] empty spaces");
            assertThat(a.circuits().get(1).poles()).isEqualTo(2);
            assertThat(a.circuits().get(1).ratingA().value()).contains(30);
            assertThat(a.circuits().get(3).poles()).isEqualTo(3);
            assertThat(a.circuits()).last().extracting(Circuit::use).isEqualTo(Use.SPACE);
            assertThat(Readings.circuits(k))
                    .containsExactly(
                            "[1, 3, 5] Organ blower",
                            "[2] Boiler controls",
                            "[4, 6] Bell tower motor",
                            "[7] Altar spotlights",
                            "[8] spare",
                            "[9] Ice machine");
            assertThat(a.header().mainA().value()).contains(150);
            assertThat(k.header().fedFrom().or("")).isEqualTo("A");
            assertThat(k.header().busA().value()).contains(125);
            assertThat(k.header().phases().value()).contains(3);
        }
    }

    @Test
    void a_list_that_goes_on_at_the_head_of_the_next_column_is_told() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            rows(
                    s,
                    320,
                    60,
                    "10",
                    "Sump pump - 20A",
                    "11",
                    "spare - 20A",
                    "12",
                    "Kitchen hood - 20A",
                    "13",
                    "Sign - 20A",
                    "14, 16",
                    "Dryer - 30A double");
            s.text(40, 300, "PANEL 3");
            s.text(40, 312, "Loft stair. Fed from Panel 1. 120/240 volts, single");
            s.text(40, 324, "phase, 3 wire. 100 amp bus, 60 amp main breaker.");
            rows(s, 40, 336, SECOND);
            ScheduleReading read = s.read();
            assertThat(Readings.said(read.problems()))
                    .contains(
                            "This looks like a schedule and could not be explained: a column of positions without descriptions"
                                    + " or ratings beside it.");
            assertThat(read.directories()).extracting(Directory::panel).containsExactly("3");
            assertThat(read.directories().get(0).header().fedFrom().or("")).isEqualTo("1");
        }
    }

    private static void rows(DrawnSheet s, double x, double y, String... rows) throws IOException {
        for (int i = 0; i < rows.length; i += 2) s.text(x, y + 6 * i, rows[i]).text(x + 60, y + 6 * i, rows[i + 1]);
    }
}
