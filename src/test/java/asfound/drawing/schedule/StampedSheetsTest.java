package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory;
import asfound.model.Problem;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sheets with a stamp in large type over the directory (common practice). */
class StampedSheetsTest {

    private static DrawnSheet plain() throws IOException {
        DrawnSheet s = new DrawnSheet();
        double[] at = {40, 80, 120, 160};
        s.text(40, 40, "PANEL LP-8").line(60, at, "CKT", "A", "P", "LOAD");
        for (int k = 1; k <= 12; k++) s.line(60 + 14 * k, at, "" + k, "20", "1", "Lights in room " + k);
        return s;
    }

    private static Directory stamped(double x, double y, double size, double degrees, String text) throws IOException {
        try (DrawnSheet s = plain().stamp(x, y, size, degrees, text)) {
            return s.directory();
        }
    }

    private static List<String> unstamped() throws IOException {
        try (DrawnSheet s = plain()) {
            return Readings.circuits(s.directory());
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 30, 45, 90})
    void a_stamp_belongs_to_no_entry_and_is_told(double degrees) throws IOException {
        Directory d = stamped(100, 200, 40, degrees, "VOID 2024");
        assertThat(Readings.circuits(d)).isEqualTo(unstamped());
        assertThat(d.problems())
                .extracting(Problem::message)
                .containsExactly("Over the directory stands in large type: 'VOID 2024'.");
        assertThat(d.confidence()).isLessThan(Directory.DOUBTFUL);
    }

    @ParameterizedTest
    @ValueSource(strings = {"AS-BUILT", "RECORD DRAWING", "COPY 2", "ISSUED FOR CONSTRUCTION"})
    void one_that_says_nothing_against_the_sheet_is_not_told(String text) throws IOException {
        Directory d = stamped(40, 230, 20, 20, text);
        assertThat(Readings.circuits(d)).isEqualTo(unstamped());
        assertThat(d.problems()).isEmpty();
        assertThat(d.confidence()).isEqualTo(1);
    }

    @Test
    void a_large_title_over_a_directory_is_no_stamp() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 80, 120, 160};
            s.large(40, 40, 24, "PANEL LP-8").line(60, at, "CKT", "A", "P", "LOAD");
            for (int k = 1; k <= 12; k++) s.line(60 + 14 * k, at, "" + k, "20", "1", "Lights in room " + k);
            Directory d = s.directory();
            assertThat(d.panel()).isEqualTo("LP-8");
            assertThat(d.problems()).isEmpty();
        }
    }

    @Test
    void one_beside_a_directory_is_told_and_leaves_it_as_it_is() throws IOException {
        try (DrawnSheet s = plain()) {
            for (int k = 0; k < 4; k++) s.text(320, 400 + 12 * k, "Some note of the sheet " + k);
            var read = s.stamp(310, 440, 40, 0, "VOID").read();
            assertThat(read.directories()).singleElement().satisfies(d -> {
                assertThat(Readings.circuits(d)).isEqualTo(unstamped());
                assertThat(d.problems()).isEmpty();
            });
            assertThat(read.problems())
                    .extracting(Problem::message)
                    .contains("Beside the directories of the sheet stands in large type: 'VOID'.");
        }
    }
}
