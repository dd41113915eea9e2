package asfound.finding;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Voltage;
import asfound.sample.Building;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a drawing lists as the two sides of a transformer, beside what it draws before and behind it. */
class TransformerSidesTest {

    private static List<Finding> between(String supply, String transformer, String load) {
        return Building.of(
                        "MDP panel " + supply,
                        "T-1 is transformer " + transformer,
                        "MDP/7 -> T-1",
                        "T-1 -> LP-1",
                        "LP-1 panel " + load + " fed from T-1",
                        "MDP/7 XFMR T-1")
                .findings();
    }

    private static String told(List<Finding> findings) {
        assertThat(findings).extracting(Finding::kind).containsExactly("drawings-disagree");
        Event e = findings.get(0).event();
        assertThat(e.severity()).isEqualTo(Severity.CAUTION);
        assertThat(e.parts().get(0).equipment()).isEqualTo("T-1");
        return e.message();
    }

    @Test
    void the_panel_behind_is_not_of_the_secondary_side() {
        assertThat(told(between("480Y/277", "480-208Y/120", "480Y/277")))
                .contains("the side that supplies")
                .contains("480-208Y/120")
                .contains("LP-1 480Y/277");
    }

    @Test
    void the_board_before_is_not_of_the_primary_side() {
        assertThat(told(between("600Y/347", "480-208Y/120", "208Y/120")))
                .contains("the side that is supplied")
                .contains("MDP 600Y/347");
    }

    @Test
    void both_sides_that_fit_are_told_of_nothing() {
        assertThat(between("480Y/277", "480-208Y/120", "208Y/120")).isEmpty();
    }

    @Test
    void one_that_steps_up_may_be_listed_with_its_higher_side_first() {
        assertThat(between("208Y/120", "480-208Y/120", "480Y/277")).isEmpty();
    }

    @Test
    void one_voltage_alone_names_no_second_side() {
        assertThat(between("480Y/277", "480V", "208Y/120")).isEmpty();
    }

    @Test
    void two_rows_that_list_one_transformer_differently_disagree() {
        assertThat(told(Building.of(
                                "MDP panel 480Y/277",
                                "T-1 is transformer 480-208Y/120",
                                "T-1 is transformer 600-208Y/120",
                                "MDP/7 -> T-1",
                                "MDP/7 XFMR T-1")
                        .findings()))
                .contains("480-208Y/120", "600-208Y/120");
    }

    /** The writings are common practice (from memory). */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "480-208Y/120                        |    | 480     | 208Y/120",
                "480V - 208Y/120V, 3PH, 4W           |    | 480     | 208Y/120",
                "480Δ-208Y/120                       |    | 480     | 208Y/120",
                "480V DELTA TO 208Y/120V             |    | 480     | 208Y/120",
                "480D-208Y/120V 75KVA 5.75%Z K-13    |    | 480     | 208Y/120",
                "480/208                             |    | 480     | 208",
                "480/208/120                         |    | 480     | 208Y/120",
                "480-120/240V 1PH                    |    | 480     | 240/120",
                "13.8kV-480Y/277V                    |    | 13800   | 480Y/277",
                "12,470GRDY/7200-480Y/277            |    | 12470Y/7200 | 480Y/277",
                "11000/433/250                       |    | 11000   | 433Y/250",
                "11kV / 400V                         |    | 11000   | 400",
                "480-480Y/277                        |    | 480     | 480Y/277",
                "480 | 225 kVA to 208Y/120                | 480     | 208Y/120",
                "480 | 45 kVA, secondary 240 V            | 480     | 240",
                "''  | 75 kVA, 480-208Y/120               | 480     | 208Y/120",
            })
    void sides_are_read_as_the_trade_writes_them(String cell, String note, String one, String other) {
        Windings sides = Windings.of(cell, note == null ? "" : note).orElseThrow();
        assertThat(sides.one().inWords()).isEqualTo(one);
        assertThat(sides.other().inWords()).isEqualTo(other);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "480",
                "480Y/277",
                "240/480",
                "208Y/120V 3PH 4W 60HZ",
                "75 KVA",
                "",
                "2400/4160 - 480 - 208",
                "see E-2"
            })
    void what_names_one_system_or_three_states_no_sides(String cell) {
        assertThat(Windings.of(cell, "")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"2019 - 208/120 side renewed", "moved to 480V room", "K-13, 115C rise", "to be removed"})
    void a_remark_about_something_else_states_no_sides(String note) {
        assertThat(Windings.of("480", note)).isEmpty();
    }

    @Test
    void a_side_for_two_connections_suits_either() {
        Windings sides = Windings.of("240/480-120/240", "").orElseThrow();
        assertThat(Windings.suits(sides.one(), Voltage.parse("480Y/277").orElseThrow()))
                .isTrue();
        assertThat(Windings.suits(sides.one(), Voltage.parse("240").orElseThrow()))
                .isTrue();
        assertThat(Windings.suits(sides.one(), Voltage.parse("600").orElseThrow()))
                .isFalse();
    }
}
