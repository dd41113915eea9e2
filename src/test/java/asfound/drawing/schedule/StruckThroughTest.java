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
    void what_stands_beside_a_text_that_is_struck_through_is_what_holds() throws IOException {
        try (DrawnSheet s = list()) {
            strike(s, 70, 72, "Fax machine").text(130, 72, "Microwave");
            strike(s, 200, 86, "20/1").text(222, 86, "30/1");
            strike(s, 70, 100, "Sockets").text(100, 100, "& lights");
            Directory d = s.directory();
            assertThat(Readings.circuits(d)).startsWith("[1] Microwave", "[2] Lights", "[3] & lights");
            assertThat(d.circuits().get(1).ratingA().or(0)).isEqualTo(30);
            assertThat(d.unread()).containsExactly(1, 2, 3);
            assertThat(d.problems())
                    .extracting(Problem::message)
                    .containsExactly(
                            "Position 1 holds text that is struck through: 'Fax machine'; what stands beside it was read.",
                            "Position 2 holds text that is struck through: '20/1'; what stands beside it was read.",
                            "Position 3 holds text that is struck through: 'Sockets'; what stands beside it was read.");
        }
    }

    @Test
    void entries_struck_through_one_below_the_other_are_no_rulings() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "PANEL P-2").line(58, AT, "CKT", "LOAD", "BKR");
            for (int r = 0; r < 6; r++) {
                s.line(72 + 14 * r, AT, "" + (r + 1), "SPARE", "20/1");
                strike(s, 70, 72 + 14 * r, "SPARE").text(99, 72 + 14 * r, "Card reader " + r);
            }
            Directory d = s.directory();
            assertThat(Readings.circuits(d)).first().isEqualTo("[1] Card reader 0");
            assertThat(d.unread()).containsExactly(1, 2, 3, 4, 5, 6);
        }
    }

    private static DrawnSheet strike(DrawnSheet s, double x, double y, String text) throws IOException {
        return s.rule(x - 1, y - 3, x + 1 + DrawnSheet.width(text), y - 3);
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
