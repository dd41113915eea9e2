package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** Headers of labels with their values below, whose last row stands close over the headings of the columns (common practice). */
class HeadersOverHeadingsTest {

    @Test
    void a_value_over_the_column_of_phases_heads_no_column() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 70, 190, 230, 270, 290, 330, 370, 500};
            s.text(200, 40, "PANEL L1A");
            s.line(52, new double[] {40, 150, 268, 400}, "BUS", "MAIN", "INT. RATING", "PH/W");
            s.line(62, new double[] {40, 150, 266, 400}, "225 A", "150 A C/B", "10 kA", "3PH, 4W");
            s.line(76, at, "CIR", "LOAD", "VA", "BKR", "", "BKR", "VA", "LOAD", "CIR");
            for (int k = 0; k < 6; k++)
                s.line(
                        90 + 14 * k,
                        at,
                        "" + (2 * k + 1),
                        "Lights room " + k,
                        "900",
                        "20/1",
                        "ABC".substring(k % 3, k % 3 + 1),
                        "20/1",
                        "720",
                        "Outlets room " + k,
                        "" + (2 * k + 2));
            Directory.Header header = s.directory().header();
            assertThat(header.busA().value()).contains(225);
            assertThat(header.mainA().value()).contains(150);
            assertThat(header.interruptingKA().value()).contains(10.0);
            assertThat(header.phases().value()).contains(3);
            assertThat(header.wires().value()).contains(4);
        }
    }

    @Test
    void poles_written_with_the_rating_are_believed_over_a_figure_in_another_column_and_told() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 80, 130, 160};
            s.text(40, 40, "PANEL L1B").line(60, at, "CKT", "BKR", "P", "LOAD");
            for (int k = 1; k <= 8; k++) s.line(60 + 14 * k, at, "" + k, "1P-15A", k == 3 ? "2" : "1", "Lights " + k);
            Directory d = s.directory();
            assertThat(d.circuits()).allMatch(c -> c.poles() == 1);
            assertThat(d.unread()).containsExactly(3);
        }
    }
}
