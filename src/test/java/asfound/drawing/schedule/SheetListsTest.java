package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.model.Directory;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** Numbered notes and revisions on the sheet of a directory. */
class SheetListsTest {

    private static final String[] NOTES = {
        "Provide a lock-on device for the fire alarm circuit.",
        "Existing to remain.",
        "20A branch circuits shall be #12 AWG, min.",
        "Verify in the field."
    };

    @Test
    void beside_its_rows_take_nothing_from_it() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 90, "PANEL N-1").twoSided(110).text(470, 106, "KEYED NOTES");
            for (int n = 0; n < NOTES.length; n++)
                s.line(120 + 14 * n, new double[] {470, 490}, "" + (n + 1), NOTES[n]);
            Directory d = s.directory();
            assertThat(d.panel()).isEqualTo("N-1");
            assertThat(d.circuits())
                    .hasSize(8)
                    .allSatisfy(c -> assertThat(c.ratingA().value()).contains(20));
            assertThat(d.confidence()).isEqualTo(1);
        }
    }

    @Test
    void that_are_the_circuits_of_a_door_card_are_read() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 60, 200};
            s.text(40, 40, "PANEL N-2").line(60, at, "NO.", "NOTES", "AMPS");
            for (int n = 0; n < NOTES.length; n++) s.line(74 + 14 * n, at, "" + (n + 1), "Kitchen ring " + n, "32");
            assertThat(s.directory().circuits()).hasSize(4);
        }
    }

    @Test
    void of_revisions_beside_its_rows_take_nothing_from_it_and_are_not_told() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {470, 495, 545};
            s.text(40, 90, "PANEL N-3")
                    .twoSided(110)
                    .text(470, 101, "REVISIONS")
                    .line(111, at, "NO.", "DATE", "FOR");
            for (int n = 1; n <= 3; n++) s.line(111 + 12 * n, at, "" + n, "2026-0" + n + "-11", "Review");
            ScheduleReading read = s.read();
            assertThat(Readings.only(read).circuits()).hasSize(8);
            assertThat(read.problems()).isEmpty();
        }
    }

    @Test
    void of_feeders_beside_its_rows_are_read_apart() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {470, 495, 545};
            s.text(40, 90, "PANEL N-4")
                    .twoSided(110)
                    .text(470, 101, "FEEDER SCHEDULE")
                    .line(113, at, "NO.", "AMPS", "WIRE");
            for (int n = 1; n <= 3; n++) s.line(115 + 11 * n, at, "" + n, "" + 100 * n, "4#" + n);
            Directory d = s.directory();
            assertThat(d.circuits())
                    .hasSize(8)
                    .allSatisfy(c -> assertThat(c.ratingA().value()).contains(20));
        }
    }
}
