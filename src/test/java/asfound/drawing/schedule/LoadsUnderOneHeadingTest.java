package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** Two columns of loads under one heading in the middle of a panel: the left one is of the odd circuits, the right one of the even. */
class LoadsUnderOneHeadingTest {

    private static final double[] HEADS = {40, 65, 100, 214, 274, 334, 400, 500, 535};
    private static final double[] SIDES = {40, 65, 100, 400, 500, 535};

    private static DrawnSheet sheet(String note) throws IOException {
        DrawnSheet s = new DrawnSheet().text(40, 40, "PANEL LP-4").text(40, 90, note);
        s.line(110, HEADS, "CKT", "BKR", "LOAD SERVED", "A", "B", "C", "LOAD SERVED", "BKR", "CKT");
        for (int i = 0; i < 6; i++)
            s.line(
                    y(i),
                    SIDES,
                    "" + (2 * i + 1),
                    "20A-1P",
                    "RECEPTS RM 10" + i,
                    "LIGHTS RM 20" + i,
                    "20A-1P",
                    "" + (2 * i + 2));
        for (double x : new double[] {35, 60, 95, 190, 250, 310, 370, 495, 530, 560}) s.rule(x, 98, x, 235);
        for (double x : new double[] {220, 280, 340}) s.rule(x, 116, x, 235);
        for (int i = -1; i < 6; i++) s.rule(35, 115 + 20 * (i + 1), 560, 115 + 20 * (i + 1));
        return s;
    }

    private static double y(int row) {
        return 128 + 20 * row;
    }

    @Test
    void a_note_over_the_table_heads_none_of_its_columns() throws IOException {
        try (DrawnSheet s = sheet("Notes: LOADS IN kVA. PROVIDE LOCKABLE DEVICES FOR LIFE SAFETY CIRCUITS AS SHOWN.")) {
            for (int i = 0; i < 6; i++) {
                double left = 190 + 60 * (i % 3);
                s.toTheRight(left + 28, y(i), "1." + (i + 1));
                s.toTheRight(left + 58, y(i), "2." + (i + 1));
            }
            Directory d = s.directory();
            assertThat(Readings.loads(d))
                    .containsExactly(
                            1100.0, 2100.0, 1200.0, 2200.0, 1300.0, 2300.0, 1400.0, 2400.0, 1500.0, 2500.0, 1600.0,
                            2600.0);
            assertThat(Readings.said(d.problems())).isEmpty();
        }
    }

    @Test
    void where_nothing_stands_in_a_half_that_nothing_heads_it_is_told_and_no_load_is_read() throws IOException {
        try (DrawnSheet s = sheet("Surface mounted")) {
            for (int i = 0; i < 6; i++) {
                double left = 190 + 60 * (i % 3);
                s.toTheRight(left + 28, y(i), "1." + (i + 1));
                if (i % 3 != 2) s.toTheRight(left + 58, y(i), "2." + (i + 1));
            }
            Directory d = s.directory();
            assertThat(Readings.loads(d)).containsOnly(0.0);
            assertThat(Readings.said(d.problems()))
                    .contains("The column 'B' was not read: its entries are not of the kind, as '1.2'.");
        }
    }
}
