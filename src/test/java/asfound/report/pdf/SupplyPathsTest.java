package asfound.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.EquipmentKind;
import asfound.network.Building;
import asfound.network.Standing;
import org.junit.jupiter.api.Test;

/** The picture of the ways of supply stays a picture, and says what it has no room for. */
class SupplyPathsTest {

    @Test
    void of_forty_parallel_feeders_five_of_each_standing_are_drawn_and_the_rest_counted() {
        Building b = new Building().equipment("UTIL", EquipmentKind.UTILITY).feeder("UTIL", "M", "MDP");
        for (int i = 1; i <= 40; i++) b.feeder("MDP", "F" + i, "LP-1");
        for (int i = 1; i <= 10; i++) b.saw("MDP", "F" + i, "feeds", "LP-1");
        SupplyPaths paths = SupplyPaths.of(b.network(), "LP-1");
        assertThat(paths.connections())
                .filteredOn(c -> c.to().equals("LP-1"))
                .hasSize(10)
                .filteredOn(c -> c.standing() == Standing.CONFIRMED)
                .hasSize(5);
        assertThat(paths.linesNotShown()).isEqualTo(30);
    }
}
