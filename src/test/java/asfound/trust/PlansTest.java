package asfound.trust;

import static asfound.isolation.Verdict.Standing.AGREES;
import static asfound.isolation.Verdict.Standing.FAILS;
import static asfound.isolation.Verdict.Standing.UNPROVEN;
import static asfound.model.Observation.Method.OPENED;
import static asfound.model.Observation.Method.TONE;
import static asfound.network.Standing.CONFIRMED;
import static asfound.network.Standing.IN_CONFLICT;
import static asfound.network.Standing.UNTRACED;
import static asfound.trust.Wiring.verdict;
import static org.assertj.core.api.Assertions.assertThat;

import asfound.isolation.Verdict;
import asfound.model.EquipmentKind;
import asfound.network.Network;
import asfound.recordset.Settings;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlansTest {

    @Test
    void nothing_is_left_to_trace_where_all_is_traced() {
        Network network = building().feeder("MDP/1", "LP-1", CONFIRMED).network();

        assertThat(plan(network, verdict("LP-1", AGREES, "MDP/1"))).isEmpty();
    }

    @Test
    void an_untraced_isolation_point_goes_before_an_untraced_receptacle() {
        Network network = building()
                .untraced("LP-1/1", "RECEPT RM 1")
                .feeder("MDP/1", "LP-1", UNTRACED)
                .network();

        List<Trace> plan = plan(network, verdict("LP-1", UNPROVEN, "MDP/1"));

        assertThat(plan).extracting(PlansTest::device).containsExactly("MDP/1", "LP-1/1");
        assertThat(plan.get(0).settles()).containsExactly("LP-1");
        assertThat(plan.get(0).expect()).isEqualTo("LP-1");
        assertThat(plan.get(0).why()).startsWith("Decides whether the drawn points of LP-1 can be believed.");
        assertThat(plan).extracting(Trace::rank).containsExactly(1, 2);
    }

    @Test
    void a_second_supply_that_nobody_traced_stands_in_the_way_of_a_verdict_too() {
        Network network = building()
                .is(EquipmentKind.GENERATOR, "GEN")
                .feeder("MDP/1", "LP-1", CONFIRMED)
                .feeder("GEN/G1", "LP-1", UNTRACED)
                .network();

        List<Trace> plan = plan(network, verdict("LP-1", UNPROVEN, "MDP/1"));

        assertThat(plan).extracting(PlansTest::device).containsExactly("GEN/G1");
        assertThat(plan.get(0).settles()).containsExactly("LP-1");
    }

    @Test
    void what_lies_above_an_opened_point_is_in_nobody_s_way() {
        Network network = building()
                .is(EquipmentKind.UTILITY, "UTIL")
                .is(EquipmentKind.PANEL, "LP-9")
                .feeder("UTIL/M", "MDP", CONFIRMED)
                .feeder("MDP/1", "LP-1", UNTRACED)
                .feeder("MDP/3", "LP-9", UNTRACED)
                .network();

        assertThat(plan(network, verdict("LP-1", UNPROVEN, "MDP/1")))
                .filteredOn(t -> t.settles().contains("LP-1"))
                .extracting(PlansTest::device)
                .containsExactly("MDP/1");
    }

    @Test
    void a_conflict_is_ended_by_opening_the_device() {
        Network network = building().feeder("MDP/1", "LP-1", IN_CONFLICT).network();

        Trace trace = plan(network, verdict("LP-1", UNPROVEN, "MDP/1")).get(0);

        assertThat(trace.method()).isEqualTo(OPENED);
        assertThat(trace.why()).contains("Observations of it cannot all be true");
    }

    @Test
    void where_a_crossing_was_half_traced_its_other_half_is_traced_next() {
        Network network = building()
                .is(EquipmentKind.PANEL, "LP-2", "LP-3")
                .feedsOther("MDP/1", "LP-1", "LP-2")
                .feeder("MDP/3", "LP-3", UNTRACED)
                .feeder("MDP/5", "LP-2", UNTRACED)
                .network();

        List<Trace> plan = plan(network, verdict("LP-1", FAILS, "MDP/1"));

        assertThat(plan.get(0)).satisfies(t -> {
            assertThat(device(t)).isEqualTo("MDP/5");
            assertThat(t.why()).contains("LP-2, drawn here, was found on MDP/1, which is drawn for LP-1");
        });
    }

    @Test
    void life_safety_equipment_goes_before_others() {
        Network network = building()
                .is(EquipmentKind.PANEL, "ELP", "LP-2")
                .lifeSafety("ELP")
                .feeder("MDP/1", "LP-1", UNTRACED)
                .feeder("MDP/3", "LP-2", UNTRACED)
                .feeder("MDP/5", "ELP", UNTRACED)
                .network();

        assertThat(plan(
                        network,
                        verdict("LP-1", UNPROVEN, "MDP/1"),
                        verdict("LP-2", UNPROVEN, "MDP/3"),
                        verdict("ELP", UNPROVEN, "MDP/5")))
                .extracting(PlansTest::device)
                .containsExactly("MDP/5", "MDP/1", "MDP/3");
    }

    @Test
    void of_two_panels_the_one_with_more_wrong_entries_is_widened_first() {
        Network network = new Wiring()
                .circuit("LP-1/1", "RECEPT RM 1", TONE, "Recept rm 1")
                .circuit("LP-2/1", "RECEPT RM 2", TONE, "Recept rm 99")
                .untraced("LP-1/5", "RECEPT RM 3")
                .untraced("LP-1/7", "RECEPT RM 5")
                .untraced("LP-2/5", "RECEPT RM 4")
                .untraced("LP-2/7", "RECEPT RM 6")
                .network();

        List<Trace> plan = plan(network);

        assertThat(plan).extracting(PlansTest::device).containsExactly("LP-2/5", "LP-1/5", "LP-2/7", "LP-1/7");
        assertThat(plan.get(0).location()).hasValue("Closet LP-2");
        assertThat(plan.get(0).why()).contains("1 of 1 traced entries of LP-2 is wrong");
        assertThat(plan.get(1).why()).contains("Widens what is known of LP-1.");
    }

    @Test
    void where_an_entry_is_wrong_its_exchange_is_traced_before_its_neighbour_and_that_before_the_rest() {
        Network network = new Wiring()
                .circuit("LP-1/5", "LTG RM 221", TONE, "Lighting room 223")
                .untraced("LP-1/1", "RECEPT RM 3")
                .untraced("LP-1/3", "RECEPT RM 5")
                .untraced("LP-1/9", "RECEPT RM 7")
                .untraced("LP-1/21", "LTG RM 223")
                .network();

        List<Trace> plan = plan(network);

        assertThat(plan).extracting(PlansTest::device).startsWith("LP-1/21", "LP-1/3");
        assertThat(plan.get(0).why()).contains("What is drawn here was found on LP-1/5");
        assertThat(plan.get(1).why()).contains("The entry next to it, LP-1/5, is wrong");
    }

    @Test
    void a_first_walk_for_coverage_takes_every_other_device() {
        Wiring wiring = new Wiring();
        for (int i = 1; i <= 7; i += 2) wiring.untraced("LP-1/" + i, "RECEPT RM " + i);

        assertThat(plan(wiring.network()))
                .extracting(PlansTest::device)
                .containsExactly("LP-1/1", "LP-1/5", "LP-1/3", "LP-1/7");
    }

    @Test
    void a_connection_without_a_device_is_traced_by_a_row_with_a_blank_circuit() {
        Network network = building()
                .is(EquipmentKind.TRANSFORMER, "T-1")
                .feeder("T-1/", "LP-1", UNTRACED)
                .network();

        assertThat(plan(network)).singleElement().satisfies(t -> {
            assertThat(t.panel()).isEqualTo("T-1");
            assertThat(t.circuit()).isEmpty();
            assertThat(t.expect()).isEqualTo("LP-1");
        });
    }

    private static Wiring building() {
        return new Wiring().is(EquipmentKind.PANEL, "LP-1").is(EquipmentKind.SWITCHBOARD, "MDP");
    }

    private static List<Trace> plan(Network network, Verdict... verdicts) {
        return Plans.of(network, List.of(verdicts), List.of(), Settings.none());
    }

    private static String device(Trace trace) {
        return trace.panel() + "/" + trace.circuit();
    }
}
