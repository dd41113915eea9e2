package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.model.Directory;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** Sheets on which an entry was painted over and written anew. */
class AmendedSheetsTest {

    private static final double[] AT = {40, 80, 260};

    private static void table(DrawnSheet s) throws IOException {
        s.text(40, 40, "PANEL W-1");
        s.line(60, AT, "CKT", "DESCRIPTION", "AMPS");
        for (int r = 1; r < 7; r++) s.line(60 + 14 * r, AT, "" + r, "Oven " + r, "20");
    }

    @Test
    void what_is_painted_over_is_not_read_and_is_told() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            table(s);
            s.paintOver(78, 60 + 14 * 3 - 9, 150, 12).text(80, 60 + 14 * 3, "Water heater");
            ScheduleReading read = s.read();
            Directory d = Readings.only(read);
            assertThat(d.circuits().get(2).description().or("")).isEqualTo("Water heater");
            assertThat(d.circuits().get(3).description().or("")).isEqualTo("Oven 4");
            assertThat(Readings.said(read.problems()))
                    .contains(
                            "5 letters of the page lie under areas painted over them and cannot be seen; they were not"
                                    + " read.");
        }
    }

    @Test
    void an_area_behind_the_text_hides_nothing() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.paintOver(0, 0, 600, 700);
            table(s);
            ScheduleReading read = s.read();
            assertThat(Readings.only(read).circuits()).hasSize(6);
            assertThat(read.problems()).isEmpty();
        }
    }

    @Test
    void an_area_that_is_painted_only_elsewhere_hides_nothing() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            table(s);
            s.holdTo(400, 60, 100, 100).paintOver(30, 30, 400, 200).release();
            ScheduleReading read = s.read();
            assertThat(Readings.only(read).circuits().get(2).description().or(""))
                    .isEqualTo("Oven 3");
            assertThat(read.problems()).isEmpty();
        }
    }

    @Test
    void an_entry_on_a_layer_that_is_switched_off_is_not_read() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            table(s);
            s.onLayerSwitchedOff(150, 60 + 14 * 3, "DEMOLISHED");
            ScheduleReading read = s.read();
            assertThat(Readings.only(read).circuits().get(2).description().or(""))
                    .isEqualTo("Oven 3");
            assertThat(read.problems()).isEmpty();
        }
    }

    @Test
    void text_that_is_not_drawn_is_read_and_doubted() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.drawing(false);
            table(s);
            s.drawing(true).text(40, 200, "Notes");
            ScheduleReading read = s.read();
            Directory d = Readings.only(read);
            assertThat(d.circuits()).hasSize(6);
            assertThat(d.confidence()).isLessThan(Directory.DOUBTFUL);
            assertThat(Readings.said(read.problems()))
                    .contains(
                            "74 of the page's 79 letters are not drawn: they are what a machine read from a picture, or"
                                    + " another text than the page shows. They were read, and nothing is said to agree with them.");
        }
    }
}
