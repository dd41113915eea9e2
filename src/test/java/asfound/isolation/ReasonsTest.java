package asfound.isolation;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.EquipmentKind;
import asfound.network.Building;
import org.junit.jupiter.api.Test;

/** The sentences of a verdict stay readable however many devices they are about. */
class ReasonsTest {

    /** A bus fed by many generators, and one feeder more that was found. */
    private static String reason(int generators) {
        Building b = new Building().equipment("UTIL", EquipmentKind.UTILITY);
        for (int i = 1; i <= generators; i++)
            b.equipment("GEN-" + i, EquipmentKind.GENERATOR).feeder("GEN-" + i, "G", "SWBD");
        return Verdicts.of(b.saw("UTIL", "M1", "feeds", "SWBD"), "SWBD").reason();
    }

    @Test
    void few_points_are_named_in_each_sentence() {
        assertThat(reason(2)).contains("opening GEN-1/G and GEN-2/G does not open it");
    }

    @Test
    void many_are_counted_and_listed_once_as_the_drawn_points() {
        assertThat(reason(40))
                .contains("opening the 40 drawn points does not open it")
                .doesNotContain("GEN-17/G and");
    }
}
