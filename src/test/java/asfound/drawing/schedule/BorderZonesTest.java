package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** The marks of zones along the border of a sheet. */
class BorderZonesTest {

    private static final double[] REVISIONS = {430, 450, 500};

    @Test
    void are_no_positions_beside_a_directory_and_a_table_of_revisions() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(60, 90, "PANEL Z-1").twoSided(110);
            for (int zone = 1; zone <= 8; zone++)
                s.text(8, 98 * zone - 40, "" + zone).text(598, 98 * zone - 40, "" + zone);
            for (int i = 0; i < 6; i++) s.text(100 * i + 50, 12, "" + "FEDCBA".charAt(i));
            s.line(600, REVISIONS, "NO.", "DATE", "DESCRIPTION").line(612, REVISIONS, "1", "2026-02-03", "AS BUILT");
            Directory d = s.directory();
            assertThat(d.panel()).isEqualTo("Z-1");
            assertThat(d.circuits()).hasSize(8);
            assertThat(d.confidence()).isEqualTo(1);
        }
    }

    @Test
    void positions_near_the_edge_are_positions() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {12, 40, 220};
            s.text(40, 40, "PANEL Z-2").line(60, at, "CKT", "LOAD", "BKR");
            for (int p = 1; p <= 14; p++) s.line(60 + 46 * p, at, "" + p, "Pump " + p, "20/1");
            assertThat(s.directory().circuits()).hasSize(14);
        }
    }

    @Test
    void ways_far_apart_near_the_edge_are_ways() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {16, 40, 70, 260};
            s.text(40, 40, "DISTRIBUTION BOARD Z-3").line(60, at, "WAY", "PHASE", "LOAD", "A");
            for (int r = 0; r < 24; r++)
                s.line(84 + 20 * r, at, r % 3 == 0 ? "" + (1 + r / 3) : "", "L" + (1 + r % 3), "Ring main " + r, "32");
            Directory d = s.directory();
            assertThat(d.circuits()).hasSize(24);
            assertThat(d.circuits().get(23).positions()).containsExactly(24);
        }
    }
}
