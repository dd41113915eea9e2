package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** Worksheets printed without a grid: numbers at the right of their cells, texts at the left, all at the foot of the row. */
class PrintedWorksheetsTest {

    @Test
    void the_last_line_of_a_wrapped_load_stands_beside_its_position() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "Board DB-7")
                    .text(40, 52, "Way")
                    .text(100, 52, "Load")
                    .text(200, 52, "Breaker");
            double y = 52;
            String[][] rows = {
                {"Emergency", "lighting", "gymnasium"},
                {"Fire alarm panel"},
                {"Cleaners sockets", "stair 2"},
                {"Floor boxes", "kitchen"},
                {"Spare"}
            };
            for (int r = 0; r < rows.length; r++) {
                y += 1.5;
                for (String line : rows[r]) s.text(100, y += 9, line);
                s.toTheRight(95, y, "" + (r + 1)).text(200, y, "16A");
            }
            Directory d = s.directory();
            assertThat(d.panel()).isEqualTo("DB-7");
            assertThat(Readings.circuits(d))
                    .containsExactly(
                            "[1] Emergency lighting gymnasium",
                            "[2] Fire alarm panel",
                            "[3] Cleaners sockets stair 2",
                            "[4] Floor boxes kitchen",
                            "[5] Spare");
        }
    }

    @Test
    void a_card_whose_title_runs_over_its_columns_has_both_its_sides() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(100, 40, "CIRCUIT DIRECTORY");
            s.text(100, 52, "Panel C-9").text(160, 52, "Location").text(210, 52, "Print shop");
            double[] at = {40, 60, 140, 162, 182, 280};
            for (int r = 0; r < 4; r++)
                s.line(68 + 12 * r, at, "" + (2 * r + 1), "Lathe " + r, "30", "" + (2 * r + 2), "Press " + r, "20");
            assertThat(Readings.circuits(s.directory()))
                    .containsExactly(
                            "[1] Lathe 0",
                            "[2] Press 0",
                            "[3] Lathe 1",
                            "[4] Press 1",
                            "[5] Lathe 2",
                            "[6] Press 2",
                            "[7] Lathe 3",
                            "[8] Press 3");
        }
    }
}
