package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory;
import asfound.model.Problem;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** Directories that someone corrected by hand: a line through what no longer holds. */
class StruckThroughTest {

    private static final double[] AT = {40, 70, 200};

    @Test
    void a_text_with_a_line_through_it_is_told_and_its_circuit_counts_as_not_read() throws IOException {
        try (DrawnSheet s = list()) {
            s.rule(69, 69, 71 + DrawnSheet.width("Fax machine"), 69);
            Directory d = s.directory();
            assertThat(d.unread()).containsExactly(1);
            assertThat(d.problems())
                    .extracting(Problem::message)
                    .containsExactly(
                            "Position 1 holds text that is struck through: 'Fax machine'; it was read as it stands.");
        }
    }

    @Test
    void a_line_through_a_value_of_the_header_makes_the_directory_doubtful() throws IOException {
        try (DrawnSheet s = list()) {
            s.text(40, 44, "MAIN: 100A MCB").rule(39, 41, 41 + DrawnSheet.width("MAIN: 100A MCB"), 41);
            Directory d = s.directory();
            assertThat(d.confidence()).isLessThan(Directory.DOUBTFUL);
            assertThat(d.problems())
                    .extracting(Problem::message)
                    .containsExactly(
                            "The header holds text that is struck through: 'MAIN: 100A MCB'; it was read as it stands.");
        }
    }

    @Test
    void rulings_and_underlines_strike_nothing_through() throws IOException {
        try (DrawnSheet s = list()) {
            s.rule(69, 73, 71 + DrawnSheet.width("Fax machine"), 73);
            for (int r = 0; r < 5; r++) s.rule(36, 76 + 14 * r, 240, 76 + 14 * r);
            Directory d = s.directory();
            assertThat(d.unread()).isEmpty();
            assertThat(d.problems()).isEmpty();
        }
    }

    private static DrawnSheet list() throws IOException {
        DrawnSheet s = new DrawnSheet();
        s.text(40, 30, "PANEL P-2").line(58, AT, "CKT", "LOAD", "BKR");
        String[] loads = {"Fax machine", "Lights", "Sockets", "Copier", "Pump"};
        for (int r = 0; r < loads.length; r++) s.line(72 + 14 * r, AT, "" + (r + 1), loads[r], "20/1");
        return s;
    }
}
