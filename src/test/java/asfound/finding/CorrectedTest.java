package asfound.finding;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.drawing.Drawings;
import asfound.network.Device;
import asfound.network.DeviceRecord;
import asfound.sample.Building;
import asfound.sample.RandomBuilding;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Drawings with every correction made audit clean, but for what only a person can settle and for devices that nobody
 * traced: where half a crossing is known, the other half still reads as it did.
 */
class CorrectedTest {

    static LongStream some() {
        return LongStream.range(0, 15);
    }

    static LongStream many() {
        return LongStream.range(3_000, 4_000);
    }

    @ParameterizedTest
    @MethodSource("some")
    void the_corrected_drawings_of_a_traced_building_audit_clean(long seed) {
        assertClean(RandomBuilding.withEveryKind(seed, 12, 1));
    }

    @ParameterizedTest
    @MethodSource("some")
    void half_traced_no_correction_makes_a_new_finding(long seed) {
        assertClean(RandomBuilding.withEveryKind(seed, 12, 0.5));
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("many")
    void and_so_in_a_thousand_buildings(long seed) {
        for (double coverage : new double[] {1, 0.6, 0.3})
            assertClean(RandomBuilding.withEveryKind(seed, 12, coverage));
    }

    private static void assertClean(RandomBuilding sample) {
        Building building = sample.building();
        List<Finding> before = building.findings();
        assertNoTwoCorrectionsOfOneValue(before, sample.seed());
        Drawings corrected = Corrected.of(building.drawings(), before);
        Set<String> forAPerson = before.stream()
                .filter(f -> f.corrections().isEmpty())
                .map(f -> f.kind() + " " + f.event().about().inWords())
                .collect(Collectors.toSet());
        Set<Device> traced = building.network().devices().stream()
                .filter(d -> d.tracing() == DeviceRecord.Tracing.TRACED)
                .map(DeviceRecord::device)
                .collect(Collectors.toSet());
        assertThat(building.with(corrected).findings().stream()
                        .filter(f -> f.event().parts().stream()
                                .allMatch(p -> p.circuit().isEmpty()
                                        || traced.contains(new Device(
                                                p.equipment(), p.circuit().get()))))
                        .filter(f -> !forAPerson.contains(
                                f.kind() + " " + f.event().about().inWords()))
                        .map(f -> f.kind() + ": " + f.message()))
                .as("seed %d", sample.seed())
                .isEmpty();
    }

    /** Corrections come from several findings; no two may write different things in one place. */
    private static void assertNoTwoCorrectionsOfOneValue(List<Finding> findings, long seed) {
        var byValue = findings.stream()
                .flatMap(f -> f.corrections().stream())
                .filter(c -> !c.reads().isEmpty())
                .collect(Collectors.groupingBy(
                        c -> c.place().inWords() + c.place() + c.panel() + c.circuit() + c.field(),
                        Collectors.mapping(Correction::shouldRead, Collectors.toSet())));
        assertThat(byValue.entrySet().stream().filter(e -> e.getValue().size() > 1))
                .as("seed %d", seed)
                .isEmpty();
    }

    @Test
    void a_crossing_is_corrected_at_the_schedule_the_one_line_and_both_headers() {
        Building building = Building.of(
                "MDP/7 PANEL LP-1",
                "MDP/9 PANEL LP-2",
                "MDP/7 -> LP-1",
                "MDP/9 -> LP-2",
                "LP-1 panel fed from MDP CKT 7",
                "LP-2 panel fed from MDP CKT 9",
                "MDP/7 feeds LP-2",
                "MDP/9 feeds LP-1");
        List<Finding> findings = building.findings();
        assertThat(findings).extracting(Finding::kind).containsExactly("crossed-feeds");
        assertThat(findings.get(0).corrections())
                .extracting(c -> c.panel() + "/" + c.circuit() + " " + c.field().word() + ": " + c.reads() + " -> "
                        + c.shouldRead())
                .containsExactlyInAnyOrder(
                        "MDP/7 description: PANEL LP-1 -> PANEL LP-2",
                        "MDP/7 to: LP-1 -> LP-2",
                        "MDP/9 description: PANEL LP-2 -> PANEL LP-1",
                        "MDP/9 to: LP-2 -> LP-1",
                        "LP-2/ fed from: MDP CKT 9 -> MDP CKT 7",
                        "LP-1/ fed from: MDP CKT 7 -> MDP CKT 9");
        assertThat(building.with(Corrected.of(building.drawings(), findings)).findings())
                .isEmpty();
    }

    @Test
    void each_example_of_the_guide_is_clean_once_corrected() {
        Stream.of(CrossedFeeds.GUIDE, ShiftedDirectory.GUIDE, DuplicateFeed.GUIDE, UndocumentedSource.GUIDE)
                .map(Guide::example)
                .map(e -> Building.of(e.drawn(), e.survey()))
                .forEach(b -> assertThat(
                                b.with(Corrected.of(b.drawings(), b.findings())).findings())
                        .extracting(Finding::message)
                        .isEmpty());
    }
}
