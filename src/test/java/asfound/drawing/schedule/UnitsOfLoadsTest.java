package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory;
import asfound.model.Problem;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Loads whose heading gives another unit than their figures are in (arithmetic: a pole carries its amperes times its volts). */
class UnitsOfLoadsTest {

    private static List<String> told(String heading, String... loads) throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 80, 120, 220};
            s.text(40, 40, "PANEL LP-8").line(60, at, "CKT", "A", "LOAD", heading);
            for (int k = 1; k <= 6; k++)
                s.line(60 + 14 * k, at, "" + k, "20", "Lights " + k, loads[(k - 1) % loads.length]);
            Directory d = s.directory();
            return d.problems().stream().map(Problem::message).toList();
        }
    }

    @Test
    void figures_of_VA_under_a_heading_in_kVA_are_told() throws IOException {
        assertThat(told("kVA", "1200", "900"))
                .containsExactly("The loads are more than their devices carry; they may be in VA, not kVA.");
        assertThat(told("VA", "1200", "900")).isEmpty();
    }

    @Test
    void figures_of_kVA_under_a_heading_in_VA_are_told() throws IOException {
        assertThat(told("VA", "1.2", "0.9"))
                .containsExactly("The loads are next to nothing; they may be in kVA, not VA.");
        assertThat(told("kVA", "1.2", "0.9")).isEmpty();
    }
}
