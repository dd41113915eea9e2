package asfound.isolation;

import static asfound.isolation.Verdict.Standing.AGREES;
import static asfound.isolation.Verdict.Standing.FAILS;
import static asfound.isolation.Verdict.Standing.UNPROVEN;
import static asfound.isolation.Verdicts.drawnPoints;
import static asfound.isolation.Verdicts.foundPoints;
import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.EquipmentKind;
import asfound.network.Building;
import org.junit.jupiter.api.Test;

/**
 * Cases that every electrician knows, each a small named building with its source. All of them follow the rule that work
 * is isolated from <em>every</em> source (29 CFR 1910.333(b)(2)(ii), 1910.147(d)).
 */
class WorkedCasesTest {

    /** Common practice: a double-ended board, two services and a tie between the halves. */
    private static Building mainTieMain() {
        return new Building()
                .equipment("UTIL-A", EquipmentKind.UTILITY)
                .equipment("UTIL-B", EquipmentKind.UTILITY)
                .feeder("UTIL-A", "52-A", "MSB-A")
                .feeder("UTIL-B", "52-B", "MSB-B")
                .tie("MSB-A", "52-T", "MSB-B")
                .feeder("MSB-A", "3", "DP-1");
    }

    @Test
    void main_tie_main_each_half_is_parted_by_its_main_and_the_tie() {
        Building b = mainTieMain();
        assertThat(drawnPoints(b, "MSB-A")).containsExactly("MSB-A/52-T", "UTIL-A/52-A");
        assertThat(drawnPoints(b, "MSB-B")).containsExactly("MSB-A/52-T", "UTIL-B/52-B");
        assertThat(drawnPoints(b, "DP-1")).containsExactly("MSB-A/3");
        assertThat(Verdicts.of(b, "MSB-A").standing()).isEqualTo(UNPROVEN);
    }

    @Test
    void main_tie_main_traced_as_drawn_agrees() {
        Building b = mainTieMain()
                .saw("UTIL-A", "52-A", "feeds", "MSB-A")
                .saw("UTIL-B", "52-B", "feeds", "MSB-B")
                .saw("MSB-A", "52-T", "feeds", "MSB-B");
        assertThat(Verdicts.of(b, "MSB-A").standing()).isEqualTo(AGREES);
        assertThat(Verdicts.of(b, "MSB-B").standing()).isEqualTo(AGREES);
        assertThat(foundPoints(b, "MSB-B")).containsExactly("MSB-A/52-T", "UTIL-B/52-B");
        assertThat(Verdicts.of(b, "DP-1").standing()).isEqualTo(UNPROVEN);
    }

    /** A transfer switch with two inputs: both must be open (NFPA 70 700.7, 702.7 and 230.2(E): mark all sources on site). */
    private static Building transferSwitch() {
        return new Building()
                .equipment("UTIL", EquipmentKind.UTILITY)
                .equipment("GEN-1", EquipmentKind.GENERATOR)
                .equipment("ATS-1", EquipmentKind.TRANSFER_SWITCH)
                .feeder("UTIL", "M1", "MDP")
                .feeder("MDP", "5", "ATS-1")
                .feeder("GEN-1", "CB1", "ATS-1")
                .feeder("ATS-1", "", "LP-EM")
                .saw("MDP", "5", "feeds", "ATS-1")
                .saw("GEN-1", "CB1", "feeds", "ATS-1")
                .saw("ATS-1", "", "feeds", "LP-EM");
    }

    @Test
    void a_transfer_switch_is_parted_by_both_its_inputs() {
        Building b = transferSwitch();
        assertThat(drawnPoints(b, "ATS-1")).containsExactly("GEN-1/CB1", "MDP/5");
        assertThat(drawnPoints(b, "LP-EM")).containsExactly("GEN-1/CB1", "MDP/5");
        assertThat(Verdicts.of(b, "ATS-1").standing()).isEqualTo(AGREES);
        assertThat(Verdicts.of(b, "LP-EM").standing()).isEqualTo(AGREES);
    }

    @Test
    void a_transfer_switch_never_feeds_back_into_its_normal_supply() {
        assertThat(drawnPoints(transferSwitch(), "MDP")).containsExactly("UTIL/M1");
    }

    @Test
    void a_generator_input_that_the_drawing_leaves_out_keeps_the_transfer_switch_live() {
        Building b = new Building()
                .equipment("UTIL", EquipmentKind.UTILITY)
                .equipment("ATS-1", EquipmentKind.TRANSFER_SWITCH)
                .feeder("UTIL", "M1", "MDP")
                .feeder("MDP", "5", "ATS-1")
                .saw("MDP", "5", "feeds", "ATS-1")
                .saw("GEN-1", "CB1", "feeds", "ATS-1")
                .saw("ATS-1", "E", "fed by", "GEN-1", EquipmentKind.GENERATOR);
        Verdict v = Verdicts.of(b, "ATS-1");
        assertThat(v.standing()).isEqualTo(FAILS);
        assertThat(v.liveFrom()).containsExactly("GEN-1");
        assertThat(v.path().get(0)).isEqualTo("GEN-1/CB1");
    }

    /** Solar backfeed through a panel breaker (NFPA 70 705.10: plaque of all sources; point of connection on the load side). */
    @Test
    void solar_backfed_through_a_panel_breaker_must_be_opened_too() {
        Building b = new Building()
                .equipment("UTIL", EquipmentKind.UTILITY)
                .equipment("INV-1", EquipmentKind.INVERTER)
                .feeder("UTIL", "M1", "MDP")
                .panel("MDP", "UTIL", "7-9-11 LP-2A")
                .panel("LP-2A", "MDP-7", "38-40 SOLAR INVERTER INV-1", "1 RECEPT RM 204")
                .saw("MDP", "7", "feeds", "LP-2A")
                .saw("LP-2A", "38", "fed by", "INV-1", EquipmentKind.INVERTER);
        assertThat(drawnPoints(b, "LP-2A")).containsExactly("LP-2A/38", "MDP/7");
        assertThat(Verdicts.of(b, "LP-2A").standing()).isEqualTo(AGREES);
        // the inverter's supply passes back through the feeder: MDP is live from below
        assertThat(drawnPoints(b, "MDP")).containsExactly("MDP/7", "UTIL/M1");
    }

    @Test
    void solar_that_no_drawing_shows_keeps_the_panel_live() {
        Building b = new Building()
                .equipment("UTIL", EquipmentKind.UTILITY)
                .feeder("UTIL", "M1", "MDP")
                .panel("MDP", "UTIL", "7-9-11 LP-2A")
                .panel("LP-2A", "MDP-7", "38-40 SPARE")
                .saw("UTIL", "M1", "feeds", "MDP")
                .saw("MDP", "7", "feeds", "LP-2A")
                .saw("LP-2A", "38", "fed by", "INV-1", EquipmentKind.INVERTER);
        Verdict panel = Verdicts.of(b, "LP-2A");
        assertThat(panel.standing()).isEqualTo(FAILS);
        assertThat(panel.liveFrom()).containsExactly("INV-1");
        assertThat(panel.path()).containsExactly("LP-2A/38");
        assertThat(panel.reason())
                .startsWith(
                        "Supply from INV-1 was traced into LP-2A through LP-2A/38, and opening MDP/7 does not part it.");
        assertThat(foundPoints(b, "LP-2A")).containsExactly("LP-2A/38", "MDP/7");
        Verdict upstream = Verdicts.of(b, "MDP");
        assertThat(upstream.standing()).isEqualTo(FAILS);
        assertThat(upstream.path()).containsExactly("LP-2A/38", "MDP/7");
    }

    /** Common practice: a UPS with its battery, and a maintenance bypass around it. */
    private static Building upsWithBypass() {
        return new Building()
                .equipment("UTIL", EquipmentKind.UTILITY)
                .equipment("UPS-1", EquipmentKind.UPS)
                .feeder("UTIL", "M1", "MDP")
                .feeder("MDP", "3", "UPS-1")
                .feeder("MDP", "5", "PDU-1")
                .feeder("UPS-1", "OUT", "PDU-1")
                .saw("MDP", "3", "feeds", "UPS-1")
                .saw("MDP", "5", "feeds", "PDU-1")
                .saw("UPS-1", "OUT", "feeds", "PDU-1");
    }

    @Test
    void what_a_ups_feeds_is_parted_by_its_output_and_the_bypass() {
        assertThat(drawnPoints(upsWithBypass(), "PDU-1")).containsExactly("MDP/5", "UPS-1/OUT");
        assertThat(Verdicts.of(upsWithBypass(), "PDU-1").standing()).isEqualTo(AGREES);
    }

    @Test
    void a_ups_itself_is_never_agreed_since_it_stores_energy() {
        Verdict v = Verdicts.of(upsWithBypass(), "UPS-1");
        assertThat(v.standing()).isEqualTo(UNPROVEN);
        assertThat(v.reason()).contains("stores energy");
    }

    @Test
    void a_bypass_that_no_drawing_shows_keeps_the_load_live() {
        Building b = new Building()
                .equipment("UTIL", EquipmentKind.UTILITY)
                .equipment("UPS-1", EquipmentKind.UPS)
                .feeder("UTIL", "M1", "MDP")
                .feeder("MDP", "3", "UPS-1")
                .feeder("UPS-1", "OUT", "PDU-1")
                .saw("UPS-1", "OUT", "feeds", "PDU-1")
                .saw("MDP", "5", "feeds", "PDU-1");
        Verdict v = Verdicts.of(b, "PDU-1");
        assertThat(v.standing()).isEqualTo(FAILS);
        assertThat(v.path()).containsExactly("UTIL/M1", "MDP/5");
        assertThat(foundPoints(b, "PDU-1")).containsExactly("MDP/5", "UPS-1/OUT");
    }

    /**
     * A second supply, of an emergency lighting circuit, was not on the as-built drawings; the fixture that was believed dead
     * was not (NIOSH state FACE investigation 04WA080, 2004: the facts only; names and numbers here are ours).
     */
    @Test
    void a_supply_missing_from_the_as_built_drawings_fails_the_drawing() {
        Building b = new Building()
                .equipment("UTIL", EquipmentKind.UTILITY)
                .equipment("LTG-CEILING-3", EquipmentKind.DISCONNECT)
                .feeder("UTIL", "M1", "LP-N")
                .feeder("UTIL", "M2", "LP-E")
                .feeder("LP-N", "14", "LTG-CEILING-3")
                .saw("LP-N", "14", "feeds", "LTG-CEILING-3")
                .saw("LP-E", "3", "feeds", "LTG-CEILING-3");
        Verdict v = Verdicts.of(b, "LTG-CEILING-3");
        assertThat(v.standing()).isEqualTo(FAILS);
        assertThat(v.drawnPoints()).extracting(Object::toString).containsExactly("LP-N/14");
        assertThat(v.path()).containsExactly("UTIL/M2", "LP-E/3");
        assertThat(v.reason()).contains("traced to LP-E/3").contains("stays live from UTIL");
        assertThat(foundPoints(b, "LTG-CEILING-3")).containsExactly("LP-E/3", "LP-N/14");
    }

    /** Common practice: two feeder breakers labelled for one another. */
    @Test
    void two_crossed_feeder_breakers_fail_both_panels_and_darken_the_other() {
        Building b = new Building()
                .equipment("UTIL", EquipmentKind.UTILITY)
                .feeder("UTIL", "M1", "MDP")
                .panel("MDP", "UTIL", "7-9-11 LP-2A", "8-10-12 LP-2B")
                .panel("LP-2A", "MDP-7", "1 LTG")
                .panel("LP-2B", "MDP-8", "1 LTG", "2 LP-FIRE")
                .panel("LP-FIRE", "LP-2B/2", "1 FIRE ALARM")
                .saw("MDP", "7", "feeds", "LP-2B")
                .saw("MDP", "8", "feeds", "LP-2A");
        Verdict a = Verdicts.of(b, "LP-2A");
        assertThat(a.standing()).isEqualTo(FAILS);
        assertThat(a.path()).containsExactly("UTIL/M1", "MDP/8");
        assertThat(foundPoints(b, "LP-2A")).containsExactly("MDP/8");
        assertThat(a.alsoDark()).containsExactly("LP-FIRE", "LP-2B");
        assertThat(a.reason())
                .contains("MDP/7 is drawn as the point for LP-2A and was traced to LP-2B instead.")
                .contains("LP-2A was traced to MDP/8, and opening MDP/7 does not open it.");
        assertThat(Verdicts.of(b, "LP-2B").standing()).isEqualTo(FAILS);
        assertThat(Verdicts.of(b, "MDP").standing()).isEqualTo(UNPROVEN);
    }

    /** Multiwire branch circuits open together (NFPA 70 210.4(B)): both legs keep the equipment live. */
    private static Building multiwire() {
        return new Building()
                .equipment("UTIL", EquipmentKind.UTILITY)
                .equipment("WS-12", EquipmentKind.DISCONNECT)
                .feeder("UTIL", "M1", "LP-1")
                .panel("LP-1", "UTIL/M1", "3 WS-12", "5 WS-12")
                .saw("UTIL", "M1", "feeds", "LP-1")
                .saw("LP-1", "3", "feeds", "WS-12")
                .saw("LP-1", "5", "feeds", "WS-12");
    }

    @Test
    void a_multiwire_circuit_on_two_breakers_is_parted_by_the_one_device_above_both() {
        assertThat(drawnPoints(multiwire(), "WS-12")).containsExactly("UTIL/M1");
        assertThat(Verdicts.of(multiwire(), "WS-12").standing()).isEqualTo(AGREES);
    }

    @Test
    void a_multiwire_circuit_with_a_second_source_behind_its_panel_needs_both_legs_open() {
        Building b = multiwire()
                .equipment("GEN-1", EquipmentKind.GENERATOR)
                .feeder("GEN-1", "CB1", "LP-1")
                .feeder("GEN-1", "CB2", "LP-1");
        assertThat(drawnPoints(b, "WS-12")).containsExactly("LP-1/3", "LP-1/5");
        assertThat(Verdicts.of(b, "WS-12").standing()).isEqualTo(AGREES);
    }

    @Test
    void the_second_pole_of_a_multiwire_circuit_that_the_drawing_leaves_out_fails() {
        Building b = new Building()
                .equipment("UTIL", EquipmentKind.UTILITY)
                .feeder("UTIL", "M1", "LP-1")
                .equipment("WS-12", EquipmentKind.DISCONNECT)
                .panel("LP-1", "UTIL/M1", "3 WS-12", "5 SPARE")
                .saw("LP-1", "3", "feeds", "WS-12")
                .saw("LP-1", "5", "feeds", "WS-12");
        Verdict v = Verdicts.of(b, "WS-12");
        assertThat(v.standing()).isEqualTo(FAILS);
        assertThat(v.reason()).contains("WS-12 was traced to LP-1/5");
    }
}
