package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;

/** Devices of several poles whose entry stands between their positions or beside the middle one. */
class BracketedDevicesTest {

    private static final double[] AT = {40, 70, 110};

    @Test
    void an_entry_between_two_positions_is_the_device_of_both() throws IOException {
        assertThat(read("1|20-1|Lights", "3||", "5|20-2|Water heater", "7|20-1|Copier", "9||Space"))
                .isEqualTo("[1] Lights, [3, 5] Water heater, [7] Copier, [9] Space");
    }

    @Test
    void an_entry_beside_the_middle_of_three_positions_is_the_device_of_all() throws IOException {
        assertThat(read("1|20-1|Lights", "3||", "5|100-3|Water heater", "7||", "9||Space"))
                .isEqualTo("[1] Lights, [3, 5, 7] Water heater, [9] Space");
    }

    @Test
    void a_device_with_room_below_its_entry_begins_there() throws IOException {
        assertThat(read("1|20-1|Lights", "3||", "5|20-2|Water heater", "7||", "9||Space"))
                .isEqualTo("[1] Lights, [3] , [5, 7] Water heater, [9] Space");
    }

    private static String read(String... rows) throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "PANEL XP").line(50, AT, "CKT", "BREAKER", "SERVES");
            for (int r = 0; r < rows.length; r++) s.line(64 + 14 * r, AT, rows[r].split("\\|", -1));
            return String.join(", ", Readings.circuits(s.directory()));
        }
    }
}
