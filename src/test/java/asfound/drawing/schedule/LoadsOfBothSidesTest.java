package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** One column of loads for each phase in the middle of a panel, for the circuits at its left and at its right. */
class LoadsOfBothSidesTest {

    private static final double[] AT = {40, 65, 100, 280, 320, 360, 400, 500, 535};

    @Test
    void a_load_in_the_left_half_of_a_cell_is_of_the_left_circuit_and_one_in_the_right_half_of_the_right()
            throws IOException {
        try (DrawnSheet sheet = sheet()) {
            for (int i = 0; i < 6; i++) {
                double left = 280 + 40 * (i % 3);
                if (i != 4) sheet.text(left - 3, y(i) - 5, "" + (600 + i));
                sheet.toTheRight(left + 33, y(i) + 5, "" + (1100 + i));
            }
            Directory d = Readings.only(sheet.read());
            assertThat(Readings.loads(d))
                    .containsExactly(
                            600.0, 1100.0, 601.0, 1101.0, 602.0, 1102.0, 603.0, 1103.0, 0.0, 1104.0, 605.0, 1105.0);
            assertThat(d.problems()).isEmpty();
        }
    }

    @Test
    void one_figure_for_both_is_no_load_of_either_and_told() throws IOException {
        try (DrawnSheet sheet = sheet()) {
            for (int i = 0; i < 6; i++) sheet.text(280 + 40 * (i % 3) + 7, y(i), "" + (600 + i));
            Directory d = Readings.only(sheet.read());
            assertThat(Readings.loads(d)).containsOnly(0.0);
            assertThat(d.problems())
                    .extracting(p -> p.message())
                    .anyMatch(m -> m.contains("The column 'B' was not read"));
        }
    }

    @Test
    void a_unit_set_apart_from_the_figures_before_it_is_no_column_and_no_load() throws IOException {
        try (DrawnSheet sheet = sheet()) {
            for (double x : new double[] {295, 335, 375}) sheet.rule(x, 112, x, 232);
            for (int i = 0; i < 6; i++) {
                double left = 275 + 40 * (i % 3);
                withUnit(sheet, left + 19, y(i), 2.4, "W", 3 * i + 7);
                if (i != 5) withUnit(sheet, left + 39, y(i), 2.4, "W", 98 + i);
            }
            Directory d = Readings.only(sheet.read());
            assertThat(Readings.loads(d))
                    .containsExactly(7.0, 98.0, 10.0, 99.0, 13.0, 100.0, 16.0, 101.0, 19.0, 102.0, 22.0, 0.0);
            assertThat(Readings.said(d.problems())).isEmpty();
        }
    }

    @Test
    void a_unit_at_the_other_edge_of_the_cell_belongs_to_its_figure() throws IOException {
        double[] at = {40, 65, 100, 280};
        try (DrawnSheet sheet = new DrawnSheet().text(40, 60, "PANEL LP-4")) {
            sheet.line(105, at, "CKT", "BKR", "LOAD SERVED", "LOAD");
            for (int i = 0; i < 6; i++) {
                sheet.line(y(i), at, "" + (i + 1), "20A-1P", "RECEPTS RM 10" + i);
                withUnit(sheet, 330, y(i), 12, "kVA", i + 2);
            }
            Directory d = Readings.only(sheet.read());
            assertThat(Readings.loads(d)).containsExactly(2000.0, 3000.0, 4000.0, 5000.0, 6000.0, 7000.0);
            assertThat(Readings.said(d.problems())).isEmpty();
        }
    }

    /** A figure that ends so far before its unit. */
    private static void withUnit(DrawnSheet sheet, double right, double y, double apart, String unit, int figure)
            throws IOException {
        double at = right - DrawnSheet.width(unit);
        sheet.text(at, y, unit).toTheRight(at - apart, y, "" + figure);
    }

    private static double y(int row) {
        return 125 + 20 * row;
    }

    /** Six rows of two circuits, with rules around the cells of loads. */
    private static DrawnSheet sheet() throws IOException {
        DrawnSheet sheet = new DrawnSheet().text(40, 60, "PANEL LP-4");
        sheet.line(105, AT, "CKT", "BKR", "LOAD SERVED", "A", "B", "C", "LOAD SERVED", "BKR", "CKT");
        for (int i = 0; i < 6; i++)
            sheet.line(
                    y(i),
                    new double[] {40, 65, 100, 400, 500, 535},
                    "" + (2 * i + 1),
                    "20A-1P",
                    "RECEPTS RM 10" + i,
                    "LIGHTS RM 20" + i,
                    "20A-1P",
                    "" + (2 * i + 2));
        for (double x : new double[] {35, 60, 95, 275, 315, 355, 395, 495, 530, 560}) sheet.rule(x, 95, x, 232);
        for (int i = -1; i < 7; i++) sheet.rule(35, 112 + 20 * i, 560, 112 + 20 * i);
        return sheet;
    }
}
