package asfound.drawing.page;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Box;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** A letter far larger than the page, as no sheet has, neither takes all of its time nor hides what else stands on it. */
@Timeout(60)
class GiantLettersTest {

    private static Glyph letter(String text, double x, double bottom, double size) {
        return new Glyph(text, new Box(x, bottom - size, 0.5 * size, size), size, 0, 0);
    }

    private static List<Glyph> dashes() {
        List<Glyph> row = new ArrayList<>();
        for (int i = 0; i < 20; i++) row.add(letter("-", 40 + 5 * i, 100, 10));
        return row;
    }

    @Test
    void a_drawn_line_is_found_beside_it() {
        for (double size : new double[] {1e4, 1e7, 1e10, 1e13}) {
            List<Glyph> letters = dashes();
            letters.add(letter("-", 0, size / 2, size));
            assertThat(TypedRules.of(letters).across()).as("size " + size).hasSize(1);
        }
    }

    @Test
    void what_is_printed_twice_beside_it_is_read_once() {
        List<Glyph> letters = dashes();
        letters.addAll(dashes());
        letters.add(letter("M", 0, 5e6, 1e7));
        assertThat(Doubles.without(letters)).hasSize(21);
    }
}
