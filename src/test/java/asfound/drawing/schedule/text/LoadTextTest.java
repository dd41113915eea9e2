package asfound.drawing.schedule.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Figures of loads as offices write them (common practice). */
class LoadTextTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "1200;1200",
                "1,200;1200",
                "1'200;1200",
                "1 200;1200",
                "1.200;1200",
                "1200 VA;1200",
                "1.2K;1200",
                "1.20 kVA;1200",
                "1.200 kVA;1200",
                "0.720;0.72",
                "(1200);1200",
                "~1200;1200",
                "1200*;1200",
                "1200.5;1200.5"
            })
    void under_a_heading_in_VA_a_figure_is_of_VA_unless_it_says_otherwise(String written, double va) {
        assertThat(LoadText.parse(written, false)).contains(va);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {"1.2;1200", "1,2;1200", ".72;720", "1.200;1200", "12.345;12345", "1200 W;1200", "1.2 kVA;1200"})
    void under_a_heading_in_kVA_a_figure_is_of_kVA_unless_it_says_otherwise(String written, double va) {
        assertThat(LoadText.parse(written, true)).contains(va);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "-", ".", "(", "12/3", "1.2.3", "RM 4", "20A", "(2) 40"})
    void what_is_no_figure_is_not_taken_for_a_load(String written) {
        assertThat(LoadText.parse(written, false)).isEmpty();
        assertThat(LoadText.isFigure(written)).isFalse();
    }
}
