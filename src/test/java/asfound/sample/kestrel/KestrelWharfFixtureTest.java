package asfound.sample.kestrel;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.sample.kestrel.DrawnPanel.DrawnCircuit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The record set that is kept is the one that the story makes, and it is one that could stand in a building. */
class KestrelWharfFixtureTest {

    /** NFPA 70 (2023) 240.6(A), standard ampere ratings of inverse time circuit breakers, as far as they are used here. */
    private static final Set<Integer> STANDARD_RATINGS = Set.of(
            15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450,
            500, 600, 700, 800, 1000, 1200);

    private final List<DrawnPanel> panels = new KestrelDrawings().panels();

    @Test
    void the_kept_files_are_the_ones_that_the_story_makes() throws IOException {
        Path folder = Path.of("fixtures/kestrel-wharf");
        Map<String, byte[]> kept = new TreeMap<>();
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.filter(Files::isRegularFile).toList())
                kept.put(folder.relativize(path).toString().replace('\\', '/'), Files.readAllBytes(path));
        }
        Map<String, byte[]> made = KestrelWharf.files();
        assertThat(kept.keySet()).isEqualTo(made.keySet());
        made.forEach((name, bytes) -> assertThat(kept.get(name))
                .as("%s: make the record set anew with KestrelWharf's main", name)
                .isEqualTo(bytes));
    }

    @Test
    void about_350_circuits_stand_in_about_a_dozen_panels() {
        assertThat(panels).hasSize(14);
        assertThat(panels.stream().mapToInt(p -> p.circuits().size()).sum()).isBetween(340, 400);
    }

    @Test
    void every_rating_is_a_standard_one() {
        for (DrawnPanel panel : panels)
            for (DrawnCircuit circuit : panel.circuits())
                if (!circuit.isSpace())
                    assertThat(STANDARD_RATINGS)
                            .as("%s/%s", panel.name(), circuit.inWords())
                            .contains(circuit.ratingA());
    }

    @Test
    void no_circuit_is_loaded_beyond_its_rating_and_no_panel_beyond_its_bus() {
        for (DrawnPanel panel : panels) {
            double toNeutral = panel.lineVolts() / Math.sqrt(3);
            for (DrawnCircuit circuit : panel.circuits())
                for (int va : circuit.poleVA())
                    assertThat(va / toNeutral)
                            .as("%s/%s", panel.name(), circuit.inWords())
                            .isLessThanOrEqualTo(circuit.ratingA());
            assertThat(panel.amperes()).as(panel.name()).isLessThanOrEqualTo(panel.busA());
        }
    }

    @Test
    void what_stands_in_one_panel_can_be_told_apart() {
        for (DrawnPanel panel : panels)
            assertThat(panel.circuits().stream().filter(DrawnCircuit::isLoad).map(DrawnCircuit::description))
                    .as(panel.name())
                    .doesNotHaveDuplicates();
    }
}
