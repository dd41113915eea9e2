package asfound.finding;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.sample.Planted;
import asfound.sample.RandomBuilding;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Findings of random buildings are exactly the events planted in them, as far as the traced rows can reveal them. */
class RandomBuildingsTest {

    static LongStream some() {
        return LongStream.range(0, 30);
    }

    static LongStream many() {
        return LongStream.range(1_000, 2_000);
    }

    static Stream<String> kinds() {
        return RandomBuilding.kinds().stream();
    }

    @ParameterizedTest
    @MethodSource("some")
    void a_building_drawn_as_it_is_has_no_findings(long seed) {
        assertExactly(RandomBuilding.plain(seed, 8, 1));
        assertExactly(RandomBuilding.plain(seed, 8, 0.5));
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void one_event_is_found_alone(String kind) {
        for (long seed = 0; seed < 5; seed++)
            for (double coverage : new double[] {1, 0.5, 0.1})
                assertExactly(RandomBuilding.with(seed, 6, coverage, List.of(kind)));
    }

    @ParameterizedTest
    @MethodSource("some")
    void every_event_is_found_and_no_other_when_all_is_traced(long seed) {
        assertExactly(RandomBuilding.withEveryKind(seed, 14, 1));
    }

    @ParameterizedTest
    @MethodSource("some")
    void half_traced_what_the_rows_reveal_is_found_and_nothing_else(long seed) {
        assertExactly(RandomBuilding.withEveryKind(seed, 14, 0.5));
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("many")
    void and_so_in_a_thousand_buildings(long seed) {
        List<String> twice = Stream.concat(kinds(), kinds()).toList();
        for (double coverage : new double[] {1, 0.8, 0.5, 0.2})
            assertExactly(RandomBuilding.with(seed, 10 + (int) (seed % 20), coverage, twice));
    }

    private static void assertExactly(RandomBuilding sample) {
        List<Finding> findings = new ArrayList<>(sample.building().findings());
        List<Planted.Expected> missing = new ArrayList<>();
        for (Planted.Expected expected : sample.expected()) {
            var met = findings.stream().filter(expected::isMetBy).findFirst();
            if (met.isPresent()) findings.remove(met.get());
            else missing.add(expected);
        }
        assertThat(missing)
                .as("missed, seed %d: besides %s", sample.seed(), inWords(findings))
                .isEmpty();
        assertThat(inWords(findings)).as("false alarms, seed %d", sample.seed()).isEmpty();
    }

    private static List<String> inWords(List<Finding> findings) {
        return findings.stream().map(f -> f.kind() + ": " + f.message()).toList();
    }
}
