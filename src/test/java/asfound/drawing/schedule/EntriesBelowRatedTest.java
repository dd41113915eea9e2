package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** An entry without a rating beneath a rated device, on sheets that print no poles (common practice). */
class EntriesBelowRatedTest {

    private static final String[] LOADS = {"Lights", "Sign", "Oven", "Kiln", null, null, "Clock", "Pump"};

    /** With a two pole oven at 3 and a two pole kiln at 4, whose further poles are written as given. */
    private static Directory directory(String fifth, String sixth, String... loads) throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] left = {40, 80, 120, 220}, right = {300, 340, 380, 480};
            String[] heads = {"Ckt", "A", "Load", "VA"};
            s.text(40, 40, "PANEL LP-8").line(60, left, heads).line(60, right, heads);
            for (int k = 1; k <= 8; k++) {
                String load = k == 5 ? fifth : k == 6 ? sixth : LOADS[k - 1];
                String rating = k == 5 || k == 6 ? "" : k == 3 || k == 4 ? "40" : "20";
                String va = loads.length == 0 ? "500" : loads[k - 1];
                s.line(60 + 14 * ((k + 1) / 2), k % 2 == 1 ? left : right, "" + k, rating, load, va);
            }
            return s.directory();
        }
    }

    private static List<Integer> ovens(Directory d) {
        return d.circuits().stream()
                .filter(c -> "Oven".equals(c.description().or("")))
                .findFirst()
                .orElseThrow()
                .positions();
    }

    @ParameterizedTest
    @CsvSource({
        "dto.,dto.",
        "idem,idem",
        "Linked,Linked",
        "Tied to 3,Tied to 4",
        "Used by 3,Used by 4",
        "2nd pole,2nd pole",
        "Ver cto. 3,Ver cto. 4",
        "Voir circ. n° 3,Voir circ. n° 4",
        "Con 3,Con 4",
        "Pole 2 of 2,Pole 2 of 2",
        "w/ above,w/ above",
        "2-pole above,2-pole above",
        "],]",
        "^,^"
    })
    void a_word_or_mark_that_carries_on_the_device_above_is_its_further_pole(String fifth, String sixth)
            throws IOException {
        Directory d = directory(fifth, sixth);
        assertThat(ovens(d)).containsExactly(3, 5);
        assertThat(d.unread()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"X,X", "2-Pole,2-Pole", "Used,Used", "Blocked,Blocked", "Ckt 3,Ckt 4", "Oven (2),Kiln (2)", "Oven,Kiln"
    })
    void one_that_says_too_little_for_a_load_of_its_own_is_told(String fifth, String sixth) throws IOException {
        Directory d = directory(fifth, sixth);
        assertThat(d.unread()).containsExactly(5, 6);
        assertThat(d.problems())
                .anyMatch(
                        p -> p.message()
                                .equals(
                                        "Position 5 could not be read in full: '" + fifth.toUpperCase()
                                                + "' without a rating; nothing shows whether it is a further pole of the device above."));
    }

    @Test
    void a_load_of_which_the_rating_was_left_out_is_a_load() throws IOException {
        Directory d = directory("Door opener", "Dock leveler");
        assertThat(ovens(d)).containsExactly(3);
        assertThat(d.unread()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"N/A", "Space"})
    void a_free_position_with_a_load_is_told(String free) throws IOException {
        assertThat(directory(free, free).unread()).containsExactly(5, 6);
        assertThat(directory(free, free, "500", "500", "500", "500", "", "", "500", "500")
                        .unread())
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Con 3", "See 3"})
    void a_word_with_a_number_beside_a_rating_and_poles_of_its_own_is_what_the_circuit_feeds(String load)
            throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 80, 120, 160};
            s.text(40, 40, "PANEL LP-8").line(60, at, "Ckt", "A", "P", "Load");
            for (int k = 1; k <= 8; k++) s.line(60 + 14 * k, at, "" + k, "20", "1", k == 5 ? load : "Lights " + k);
            assertThat(Readings.circuits(s.directory())).contains("[5] " + load);
        }
    }
}
