package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;

/** Where a panel stands, said without a label. */
class UnlabelledPlacesTest {

    private static final double[] AT = {40, 70, 200, 240};

    @Test
    void behind_the_panels_name_stands_its_place() throws IOException {
        assertThat(place("Panel PP-2, Janitor 118. 120/208V, 3-phase, 4-wire. Fed from MDP."))
                .isEqualTo("Janitor 118");
    }

    @Test
    void among_the_ratings_of_one_line_stands_its_place() throws IOException {
        assertThat(place("PANEL PP-3", "120/208V 3PH 4W", "225A BUS", "Roof Penthouse"))
                .isEqualTo("Roof Penthouse");
    }

    @Test
    void a_rooms_name_on_a_line_of_its_own_is_no_place_of_the_panel() throws IOException {
        assertThat(place("PANEL PP-4")).isEmpty();
    }

    private static String place(String... line) throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(300, 20, "CORRIDOR 2");
            double x = 40;
            for (String text : line) {
                s.text(x, 40, text);
                x += 110;
            }
            s.line(60, AT, "CKT", "SERVES", "TRIP", "POLES");
            for (int r = 1; r < 6; r++) s.line(60 + 12 * r, AT, "" + r, "Oven " + r, "20", "1");
            return s.directory().header().location().or("");
        }
    }
}
