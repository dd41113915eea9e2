package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Cards with the numbers in a shaded or ruled strip in their middle and nothing but a frame around the rest. */
class ShadedNumbersTest {

    @Test
    void each_line_beside_a_strip_of_numbers_is_a_row_of_its_own_and_none_is_a_joined_cell() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            card(s, 40, 6);
            Directory d = s.directory();
            assertThat(d.panel()).isEqualTo("A4");
            assertThat(Readings.circuits(d))
                    .hasSize(12)
                    .contains("[1] Lights room 0", "[2] Sockets 0", "[11] Lights room 5", "[12] Sockets 5");
            assertThat(d.header().busA().value()).contains(125);
            assertThat(d.problems()).isEmpty();
        }
    }

    @Test
    void of_two_cards_side_by_side_the_longer_one_keeps_both_its_sides() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            card(s, 30, 6);
            card(s, 310, 9);
            List<Directory> read = s.read().directories();
            assertThat(read).extracting(Directory::panel).containsExactly("A3", "A31");
            assertThat(read).extracting(d -> d.circuits().size()).containsExactly(12, 18);
        }
    }

    /** A card of 260 points' width; its panel is named after its place. */
    private static void card(DrawnSheet s, double x, int rows) throws IOException {
        s.text(x + 4, 50, "PANEL A" + (int) (x / 10)).text(x + 4, 60, "125A BUS, MLO, 120/240V 1PH 3W");
        double foot = 70 + 14 * rows;
        for (double y : new double[] {40, foot + 4}) s.rule(x, y, x + 260, y);
        for (double at : new double[] {x, x + 260}) s.rule(at, 40, at, foot + 4);
        for (double at : new double[] {x + 115, x + 130, x + 145}) s.rule(at, 70, at, foot);
        for (int r = 0; r <= rows; r++) s.rule(x + 115, 70 + 14 * r, x + 145, 70 + 14 * r);
        double[] at = {x + 4, x + 90, x + 118, x + 133, x + 150, x + 190};
        for (int r = 0; r < rows; r++)
            s.line(
                    80 + 14 * r,
                    at,
                    "Lights room " + r,
                    "20/1",
                    "" + (2 * r + 1),
                    "" + (2 * r + 2),
                    "20/1",
                    "Sockets " + r);
    }
}
