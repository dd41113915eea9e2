package asfound.finding;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Stated;
import asfound.model.Voltage;
import asfound.sample.Building;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Electrical consistency, against published values. */
class ElectricalTest {

    /** Position 17 is on C: a published discussion first got B by dividing by three. */
    @ParameterizedTest
    @CsvSource({
        "1, 3, A",
        "2, 3, A",
        "3, 3, B",
        "4, 3, B",
        "5, 3, C",
        "6, 3, C",
        "17, 3, C",
        "3, 1, B",
        "4, 1, B",
        "5, 1, A"
    })
    void phases_go_by_rows_from_the_top(int position, int phases, char phase) {
        assertThat(Phases.letter(position, phases)).isEqualTo(phase);
    }

    /** NFPA 70 Table 310.16 at 75 degrees, 240.4(B): 3 AWG copper 100 A -> 100 A; 2 AWG 115 A -> 125 A. 240.4(D): 15/20/30. */
    @ParameterizedTest
    @CsvSource({
        "#3 Cu, 100",
        "#2 Cu, 125",
        "#12 Cu, 20",
        "#14, 15",
        "#10 Cu, 30",
        "#12 Al, 15",
        "#10 Al, 25",
        "500 kcmil Cu, 400",
        "2 sets 500 kcmil Cu, 800",
        "4/0 Al, 200"
    })
    void the_most_usual_protection_of_a_conductor(String wire, int amperes) {
        assertThat(Conductors.largestProtection(wire)).hasValue(amperes);
    }

    @Test
    void a_conductor_that_is_not_plainly_written_says_nothing() {
        assertThat(Conductors.largestProtection("per plans")).isEmpty();
        assertThat(Conductors.largestProtection("")).isEmpty();
    }

    @Test
    void a_conductor_too_small_for_its_device_is_a_question_of_caution() {
        Building small = Building.of("LP-1 panel", "MDP/7 -> LP-1 200A 3P #3 Cu", "MDP/7 feeds LP-1");
        assertThat(small.findings()).extracting(Finding::kind).containsExactly("device-differs");
        assertThat(small.findings().get(0).severity()).isEqualTo(Severity.CAUTION);
        assertThat(Building.of("LP-1 panel", "MDP/7 -> LP-1 100A 3P #3 Cu", "MDP/7 feeds LP-1")
                        .findings())
                .isEmpty();
    }

    @Test
    void equipment_of_460_volts_stands_on_a_480_volt_system() {
        Voltage drawn = Voltage.parse("480Y/277").orElseThrow();
        assertThat(Volts.agree(drawn, Voltage.parse("460").orElseThrow())).isTrue();
        assertThat(Volts.agree(drawn, Voltage.parse("277").orElseThrow())).isTrue();
        assertThat(Volts.agree(drawn, Voltage.parse("208Y/120").orElseThrow())).isFalse();
    }

    /** 39,900 VA at 208Y/120 are 110.751 A; a published example prints 110.7. */
    @Test
    void amperes_of_a_three_phase_panel_follow_from_its_total() {
        String[] right = {
            "LP-1 panel 208Y/120", "LP-1/1 20A RECEPT RM 101 39900 VA", "LP-1 total 39900 VA", "LP-1 amperes 110.7"
        };
        assertThat(Building.of(right).findings()).isEmpty();
        right[3] = "LP-1 amperes 191.8";
        assertThat(Building.of(right).findings()).extracting(Finding::kind).containsExactly("totals-differ");
    }

    @Test
    void a_sum_is_exact_to_half_of_the_last_printed_digit() {
        Stated<Double> kva = Stated.of(1200.0, "1.2", null), va = Stated.of(1200.0, "1200", null);
        assertThat(Sums.halfDigit(kva)).isEqualTo(50);
        assertThat(Sums.halfDigit(va)).isEqualTo(0.5);
        assertThat(Sums.inUnitOf(kva, 2_345)).isEqualTo("2.3");
    }

    @Test
    void a_feeder_above_the_bus_of_a_panel_without_a_main_is_told() {
        assertThat(Building.of("LP-1 panel 208Y/120 bus 100", "MDP/7 -> LP-1 225A")
                        .findings())
                .extracting(Finding::kind)
                .containsExactly("drawings-disagree");
        assertThat(Building.of("LP-1 panel 208Y/120 bus 225 main 225", "MDP/7 -> LP-1 225A")
                        .findings())
                .isEmpty();
    }

    @Test
    void a_panel_of_another_voltage_needs_a_transformer() {
        assertThat(Building.of("MDP panel 480Y/277", "LP-1 panel 208Y/120 fed from MDP CKT 7", "MDP/7 PANEL LP-1")
                        .findings())
                .extracting(Finding::kind)
                .containsExactly("drawings-disagree");
        assertThat(Building.of(
                                "MDP panel 480Y/277",
                                "T-1 is transformer",
                                "MDP/7 -> T-1",
                                "T-1 -> LP-1",
                                "LP-1 panel 208Y/120 fed from T-1",
                                "MDP/7 XFMR T-1")
                        .findings())
                .isEmpty();
    }
}
