package asfound.network;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.CircuitRef;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How people write a device: of a board with ways, and by a name that looks like positions. */
class WayNamesTest {

    @Test
    void a_three_pole_device_of_a_way_is_its_three_positions_however_it_is_written() {
        for (String written :
                List.of("9L1/9L2/9L3", "9L1-9L2-9L3", "9 L1,L2,L3", "9L1/L2/L3", "9L1L2L3", "9TP", "Way 9 TPN", "9RYB"))
            assertThat(WayNames.positions(written)).as(written).containsExactly(25, 26, 27);
        assertThat(WayNames.positions("2L3")).containsExactly(6);
    }

    @Test
    void what_names_no_way_and_phase_is_no_position() {
        for (String written : List.of("9", "L1", "F2", "9L4", "TIE", "M1 L1", "0L1"))
            assertThat(WayNames.positions(written)).as(written).isEmpty();
    }

    @Test
    void joined_numbers_that_fall_are_the_name_of_a_device_and_not_its_poles() {
        for (String name : List.of("52-1", "52/1", "4-1", "52-1-2"))
            assertThat(CircuitRef.parse(name)).as(name).contains(CircuitRef.named(name));
        assertThat(CircuitRef.parse("5-3-1")).contains(CircuitRef.of(1, 3, 5));
        assertThat(CircuitRef.parse("9/7")).contains(CircuitRef.of(7, 9));
        assertThat(CircuitRef.parse("11,7")).contains(CircuitRef.of(7, 11));
        assertThat(CircuitRef.parse("7-9-11")).contains(CircuitRef.of(7, 9, 11));
    }

    @Test
    void names_that_differ_in_what_stands_between_two_numbers_are_two_devices() {
        assertThat(CircuitRef.named("F1-1").key())
                .isEqualTo("F1-1")
                .isNotEqualTo(CircuitRef.named("F11").key());
        assertThat(CircuitRef.named("52 - 1").key())
                .isEqualTo(CircuitRef.named("52-1").key());
        assertThat(CircuitRef.named("Q-1").key())
                .isEqualTo(CircuitRef.named("q1").key());
    }
}
