package asfound.report;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.audit.Audit;
import asfound.drawing.Drawings;
import asfound.finding.Corrected;
import asfound.finding.Event;
import asfound.finding.Finding;
import asfound.finding.Findings;
import asfound.isolation.Isolation;
import asfound.isolation.Verdict;
import asfound.network.DeviceRecord;
import asfound.network.DeviceRecord.Tracing;
import asfound.network.Network;
import asfound.network.Networks;
import asfound.recordset.Settings;
import asfound.sample.Building;
import asfound.sample.MadeAudit;
import asfound.sample.RandomBuilding;
import asfound.sample.kestrel.KestrelWharf;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The correction list is complete: a drafter who makes every change in {@code corrections.csv}, as it is written there,
 * leaves no finding on anything that was traced, but those that the list itself says must be looked at first.
 */
class CorrectionsRoundTripTest {

    static LongStream some() {
        return LongStream.range(0, 8);
    }

    static LongStream many() {
        return LongStream.range(5_000, 5_500);
    }

    @Test
    void the_demo_building() throws Exception {
        Audit audit = KestrelWharf.audit();
        Settings settings = audit.recordSet().settings();
        Drawings corrected = Drafter.worksThrough(audit);
        Network network = Networks.build(corrected, audit.survey(), settings);
        List<Verdict> verdicts = Isolation.verdicts(network);
        List<Finding> left = Findings.of(corrected, audit.survey(), network, verdicts, settings)
                .findings();
        assertThat(audit.findings()).hasSizeGreaterThan(10);
        assertThat(unexplained(left, audit.findings(), network)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("some")
    void random_buildings_all_traced(long seed) throws Exception {
        assertComplete(RandomBuilding.withEveryKind(seed, 14, 1));
    }

    @ParameterizedTest
    @MethodSource("some")
    void random_buildings_half_traced(long seed) throws Exception {
        assertComplete(RandomBuilding.withEveryKind(seed, 14, 0.5));
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("many")
    void and_so_five_hundred(long seed) throws Exception {
        assertComplete(RandomBuilding.withEveryKind(seed, 20, 0.8));
    }

    private static void assertComplete(RandomBuilding sample) throws Exception {
        Building building = sample.building();
        List<Finding> findings = building.findings();
        MadeAudit made = new MadeAudit("random").with(building.drawings());
        made.findings.addAll(findings);
        Building corrected = building.with(Drafter.worksThrough(made.build()));
        List<Finding> left = corrected.findings();
        List<Finding> leftByHeart =
                building.with(Corrected.of(building.drawings(), findings)).findings();
        assertThat(inWords(left))
                .as("the list says what its findings say, seed %d", sample.seed())
                .isEqualTo(inWords(leftByHeart));
        assertThat(unexplained(left, findings, corrected.network()))
                .as("seed %d", sample.seed())
                .isEmpty();
    }

    /** Findings that are left on traced devices, and that the list did not say must be looked at. */
    private static List<String> unexplained(List<Finding> left, List<Finding> before, Network network) {
        Set<String> traced = network.devices().stream()
                .filter(d -> d.tracing() == Tracing.TRACED)
                .map(DeviceRecord::device)
                .map(d -> d.label())
                .collect(Collectors.toSet());
        Set<String> toLookAt = before.stream()
                .filter(f -> f.corrections().isEmpty())
                .map(Finding::id)
                .collect(Collectors.toSet());
        return inWords(left.stream()
                .filter(f -> !toLookAt.contains(f.id()))
                .filter(f -> isOnTraced(f.event(), traced))
                .toList());
    }

    private static boolean isOnTraced(Event event, Set<String> traced) {
        return event.parts().stream().allMatch(p -> p.circuit().isEmpty() || traced.contains(p.inWords()));
    }

    private static List<String> inWords(List<Finding> findings) {
        return findings.stream().map(f -> f.id() + ": " + f.message()).toList();
    }
}
