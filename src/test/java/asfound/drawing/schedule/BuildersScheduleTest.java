package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** A panel builder's shop drawing: each side of the bus in a table of its own, and the panel named beside them. */
class BuildersScheduleTest {

    private static final double[] LEFT = {200, 240, 260, 290, 320}, RIGHT = {420, 460, 480, 510, 540};

    private static void side(DrawnSheet s, double[] at, double y, int first, String title) throws IOException {
        s.text(at[0], y, title);
        s.line(y + 13, at, "POS.", "P", "FRAME", "TRIP", "NAMEPLATE");
        double right = at[4] + 70;
        for (int r = 0; r < 6; r++) s.rule(at[0] - 3, y + 4 + 12 * r, right, y + 4 + 12 * r);
        for (double x : at) s.rule(x - 3, y + 4, x - 3, y + 64);
        s.rule(right, y + 4, right, y + 64);
        for (int r = 0; r < 4; r++)
            s.line(y + 25 + 12 * r, at, first + 2 * r + "", "1", "60", "20", "CRANE " + (first + 2 * r));
    }

    private static DrawnSheet headed() throws IOException {
        DrawnSheet s = new DrawnSheet();
        s.text(30, 30, "DEVICE SCHEDULE");
        s.text(30, 55, "PANEL").text(90, 55, "PP-3");
        s.text(30, 67, "BUS").text(90, 67, "400 A");
        s.rule(28, 46, 150, 46).rule(28, 58, 150, 58).rule(28, 70, 150, 70);
        s.rule(28, 46, 28, 70).rule(88, 46, 88, 70).rule(150, 46, 150, 70);
        return s.text(30, 80, "A. Bus: 1000 A/sq.in.");
    }

    @Test
    void the_sides_of_the_bus_stand_side_by_side() throws IOException {
        try (DrawnSheet s = headed()) {
            side(s, LEFT, 34, 1, "LEFT SIDE OF BUS");
            side(s, RIGHT, 34, 2, "RIGHT SIDE OF BUS");
            Directory d = s.directory();
            assertThat(d.panel()).isEqualTo("PP-3");
            assertThat(d.header().busA().or(0)).isEqualTo(400);
            assertThat(d.circuits()).hasSize(8).allMatch(c -> c.ratingA().or(0) == 20);
        }
    }

    @Test
    void the_sides_of_the_bus_stand_one_below_the_other() throws IOException {
        try (DrawnSheet s = headed()) {
            side(s, LEFT, 34, 1, "LEFT SIDE OF BUS");
            side(s, LEFT, 120, 2, "RIGHT SIDE OF BUS");
            Directory d = s.directory();
            assertThat(d.panel()).isEqualTo("PP-3");
            assertThat(d.circuits()).hasSize(8).allMatch(c -> c.ratingA().or(0) == 20);
        }
    }

    @Test
    void a_schedule_of_devices_without_breakers_is_none_of_a_panel() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 90, 240};
            s.text(40, 30, "FIRE ALARM LOOP 2").text(40, 42, "DEVICE SCHEDULE");
            s.line(56, at, "NO.", "DESCRIPTION", "TYPE");
            for (int r = 1; r < 7; r++) s.line(58 + 12 * r, at, r + "", "Detector room " + r, "SMOKE");
            assertThat(s.read().directories()).isEmpty();
        }
    }
}
