package asfound.finding;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.sample.Building;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One event is told once, in the plainest words that explain most. */
class EventsTest {

    private static List<String> findings(String... lines) {
        return Building.of(lines).findings().stream()
                .map(f -> f.kind() + " "
                        + String.join(
                                ", ",
                                f.event().parts().stream()
                                        .map(Finding.Part::inWords)
                                        .toList()))
                .toList();
    }

    @Test
    void three_breakers_that_changed_places_are_one_event() {
        assertThat(findings(
                        "MDP/7 PANEL LP-1",
                        "MDP/9 PANEL LP-2",
                        "MDP/11 PANEL LP-3",
                        "MDP/7 feeds LP-2",
                        "MDP/9 feeds LP-3",
                        "MDP/11 feeds LP-1"))
                .containsExactly("crossed-feeds MDP/7, MDP/9, MDP/11");
    }

    @Test
    void two_branch_circuits_that_changed_places_between_two_panels_are_one_crossing_in_whatever_words() {
        assertThat(findings(
                        "LP-1/26 LIGHTING RM 459",
                        "LP-2/1 RECEPTACLES RM 494",
                        "LP-1/26 feeds Plugs 494",
                        "LP-2/1 feeds lts 459"))
                .containsExactly("crossed-feeds LP-1/26, LP-2/1");
        assertThat(findings(
                        "LP-1/26 LIGHTING RM 459",
                        "LP-2/1 RECEPTACLES RM 494",
                        "LP-1/26 feeds Plugs 494",
                        "LP-2/1 feeds lts 461"))
                .containsExactly("feeds-other LP-1/26", "feeds-other LP-2/1");
    }

    @Test
    void an_elevator_on_a_second_breaker_beside_that_breakers_own_load_is_a_duplicate_feed() {
        assertThat(findings(
                        "DP-1/15 ELEVATOR 1",
                        "DP-1/7 AIR COMPRESSOR RM 332",
                        "DP-1/15 feeds Elev. 1",
                        "DP-1/7 feeds Air compressor, Rm 332",
                        "DP-1/7 feeds Elevator no. 1"))
                .containsExactly("duplicate-feed DP-1/7, DP-1/15");
    }

    @Test
    void a_motor_control_centre_found_on_a_hand_dryers_breaker_besides_is_a_duplicate_feed() {
        assertThat(findings(
                        "MSB/F5 -> MCC-1",
                        "EP-1/8 HAND DRYER RM 328",
                        "MSB/F5 feeds MCC-1",
                        "EP-1/8 feeds Hand dryer, room 328",
                        "EP-1/8 feeds MCC 1 [kind switchboard]"))
                .containsExactly("duplicate-feed EP-1/8, MSB/F5");
    }

    @Test
    void a_panel_moved_to_another_breaker_with_its_solar_inverter_is_fed_from_one_undocumented_place_not_from_two() {
        assertThat(findings(
                        "INV-1 is inverter",
                        "DP-2/2 PANEL HP-7",
                        "EP-1/24 SPARE",
                        "INV-1/D1 -> HP-7",
                        "DP-2/2 nothing",
                        "EP-1/24 feeds HP-7",
                        "INV-1/D1 feeds HP-7"))
                .containsExactly("nothing-connected DP-2/2", "undocumented-feed EP-1/24");
    }

    @Test
    void a_device_of_a_ups_written_as_cb2_in_one_place_and_listed_so_in_another_is_one_supply() {
        assertThat(findings(
                        "UPS-1 is ups", "UPS-1/CB2 -> UP-1", "UP-1 panel fed from UPS-1 CB2", "UPS-1/CB2 feeds UP-1"))
                .isEmpty();
        assertThat(findings("DP-1/7 PANEL LP-1", "DP-1/CB7 feeds LP-1")).isEmpty();
    }

    @Test
    void a_board_on_whose_voltage_drawings_disagree_is_told_once_and_not_at_its_boards_and_breakers_again() {
        assertThat(findings(
                        "HP-4 is panel 480Y/277",
                        "HP-4 panel 208Y/120",
                        "HP-5 panel 480Y/277",
                        "HP-4/1 PANEL HP-5",
                        "HP-4/4 RECEPT RM 204",
                        "HP-4/4 feeds Recept rm 204 [480Y/277]"))
                .containsExactly("drawings-disagree HP-4");
        assertThat(findings(
                        "HP-4 panel 208Y/120",
                        "HP-5 panel 480Y/277",
                        "HP-4/1 PANEL HP-5",
                        "HP-4/4 RECEPT RM 204",
                        "HP-4/4 feeds Recept rm 204 [480Y/277]"))
                .containsExactly("device-differs HP-4/4", "drawings-disagree HP-5");
    }

    @Test
    void a_supply_fan_traced_by_its_mark_with_stops_is_traced_as_drawn() {
        Building mcc = Building.of(
                "UTIL is utility",
                "UTIL/M -> MCC-1",
                "SF-2 is motor",
                "MCC-1/1B -> SF-2",
                "UTIL/M feeds MCC-1",
                "MCC-1/1B feeds S.F.-2");
        assertThat(mcc.findings()).isEmpty();
        assertThat(mcc.verdicts())
                .extracting(v -> v.equipment() + " " + v.standing())
                .contains("SF-2 AGREES");
    }

    @Test
    void a_board_seen_to_be_fed_by_another_than_drawn_is_an_undocumented_feed_though_no_device_was_seen() {
        String[] drawn = {
            "MSB/F1 -> DP-1",
            "MSB/F2 -> DP-2",
            "DP-1/2 PANEL LP-1",
            "T-1 is transformer",
            "DP-1/4 -> T-1",
            "T-1 -> LP-2"
        };
        assertThat(findings(and(drawn, "LP-1 fed by DP-2"))).containsExactly("undocumented-feed DP-2, LP-1");
        assertThat(findings(and(drawn, "LP-1 fed by DP-1"))).isEmpty();
        assertThat(findings(and(drawn, "LP-2 fed by DP-1", "LP-2 fed by T-1"))).isEmpty();
    }

    private static String[] and(String[] drawn, String... seen) {
        return java.util.stream.Stream.of(drawn, seen)
                .flatMap(java.util.Arrays::stream)
                .toArray(String[]::new);
    }

    @Test
    void a_breaker_named_by_its_device_number_is_that_breaker_and_not_two_positions() {
        assertThat(findings(
                        "MSB/52-1 -> LP-1 100A 3P",
                        "MSB/52-2 -> LP-2 100A 3P",
                        "MSB/52-1 feeds LP-2",
                        "MSB/52-2 feeds LP-1 [100A 3P]"))
                .containsExactly("crossed-feeds MSB/52-1, MSB/52-2");
    }

    @Test
    void a_tagged_heater_on_breakers_of_two_panels_is_a_duplicate_feed_in_whatever_words() {
        assertThat(findings(
                        "LP-1/11 UNIT HEATER UH-1",
                        "LP-2/40 SPARE",
                        "LP-1/11 feeds unit heater UH1",
                        "LP-2/40 feeds UH-1"))
                .containsExactly("duplicate-feed LP-2/40, LP-1/11");
        assertThat(findings(
                        "LP-1/11 UNIT HEATER UH-1",
                        "LP-2/40 SPARE",
                        "LP-1/11 feeds UH-1",
                        "LP-2/40 feeds Unit htr. UH\u20131"))
                .containsExactly("duplicate-feed LP-2/40, LP-1/11");
        assertThat(findings(
                        "LP-1/11 UNIT HEATER UH-1",
                        "LP-2/40 SPARE",
                        "LP-1/11 feeds unit heater UH1",
                        "LP-2/40 feeds UH-11"))
                .containsExactly("undocumented-feed LP-2/40");
        // a room may have several circuits
        assertThat(findings(
                        "LP-1/11 LIGHTING RM 516",
                        "LP-2/40 SPARE",
                        "LP-1/11 feeds lights 516",
                        "LP-2/40 feeds Lights rm 516"))
                .containsExactly("undocumented-feed LP-2/40");
    }

    @Test
    void a_load_seen_to_be_fed_and_not_to_be_fed_in_other_words_is_a_conflict() {
        assertThat(findings(
                        "LP-1/6 VENDING MACHINE RM 488",
                        "LP-1/6 feeds Vending 488",
                        "LP-1/6 does not feed vending machine room 488"))
                .containsExactly("survey-conflict LP-1/6");
        assertThat(findings(
                        "LP-1/6 VENDING MACHINE RM 488",
                        "LP-1/6 feeds Vending 488",
                        "LP-1/6 does not feed vending machine room 489"))
                .isEmpty();
    }

    @Test
    void a_panel_without_a_card_is_not_found_where_all_is_traced_and_its_breaker_feeds_a_motor() {
        assertThat(findings("HDP/8 -> KP-9", "KP-9 is panel", "HDP/8 feeds Pump P-3"))
                .containsExactlyInAnyOrder("equipment-not-found KP-9", "feeds-other HDP/8");
    }

    @Test
    void two_panels_that_both_hang_on_the_same_two_breakers_are_one_duplicate_feed() {
        assertThat(findings(
                        "MDP/7 PANEL LP-1",
                        "MDP/9 PANEL LP-2",
                        "MDP/7 feeds LP-1",
                        "MDP/7 feeds LP-2",
                        "MDP/9 feeds LP-1",
                        "MDP/9 feeds LP-2"))
                .containsExactly("duplicate-feed MDP/7, MDP/9");
    }

    @Test
    void a_crossing_of_which_only_one_side_was_traced_is_feeds_other() {
        assertThat(findings("MDP/7 PANEL LP-1", "MDP/9 PANEL LP-2", "MDP/7 feeds LP-2"))
                .containsExactly("feeds-other MDP/7");
    }

    @Test
    void a_board_of_named_and_numbered_devices_is_judged_without_mixing_the_two() {
        assertThat(findings(
                        "MSB/F5 -> LP-5",
                        "MSB/123456789012 -> LP-6",
                        "MSB/1 SPARE",
                        "MSB/3 SPARE",
                        "MSB/5 SPARE",
                        "MSB/F5 nothing",
                        "MSB/123456789012 nothing",
                        "MSB/1 feeds LP-5",
                        "MSB/3 feeds LP-6",
                        "MSB/5 feeds LP-7"))
                .contains("undocumented-feed MSB/5");
    }

    @Test
    void branch_circuits_are_crossed_by_their_descriptions() {
        assertThat(findings(
                        "LP-1/1 RECEPT RM 204",
                        "LP-1/3 RECEPT RM 206",
                        "LP-1/1 feeds receptacles room 206",
                        "LP-1/3 feeds Plugs 204"))
                .containsExactly("crossed-feeds LP-1/1, LP-1/3");
    }

    @Test
    void a_breaker_traced_to_another_panel_is_feeds_other() {
        assertThat(findings(
                        "LP-1 panel",
                        "LP-2 panel",
                        "MDP/7 PANEL LP-1",
                        "MDP/9 SPARE",
                        "MDP/7 feeds Panel LP2 [kind panel]"))
                .containsExactly("feeds-other MDP/7");
    }

    @Test
    void a_feeder_traced_to_the_panel_beyond_its_transformer_agrees() {
        assertThat(findings(
                        "T-1 is transformer",
                        "MDP/7 -> T-1",
                        "T-1 -> LP-1",
                        "MDP/7 XFMR T-1",
                        "MDP/7 feeds LP-1",
                        "LP-1/M fed by MDP"))
                .isEmpty();
    }

    @Test
    void a_transfer_switch_may_have_two_supplies() {
        assertThat(findings(
                        "ATS-1 is transfer switch",
                        "GEN-1 is generator",
                        "MDP/7 -> ATS-1",
                        "GEN-1 -> ATS-1",
                        "MDP/7 feeds ATS-1",
                        "GEN-1 feeds ATS-1"))
                .isEmpty();
    }

    @Test
    void two_feeds_by_one_device_are_one_difference_when_the_drawing_names_one() {
        assertThat(findings("LP-1/1 RECEPT RM 204", "LP-1/1 feeds Recept rm 204", "LP-1/1 feeds Exhaust fan EF-7"))
                .containsExactly("feeds-other LP-1/1");
    }

    @Test
    void a_device_seen_not_to_feed_what_is_drawn_is_told() {
        assertThat(findings("MDP/7 PANEL LP-1", "LP-1 panel", "MDP/7 does not feed LP-1"))
                .containsExactly("feeds-other MDP/7");
    }

    @Test
    void numbering_taken_down_instead_of_across_is_one_event() {
        List<String> lines = new ArrayList<>();
        for (int p = 1; p <= 12; p++) lines.add("LP-1/" + p + " RECEPT RM " + (100 + p));
        for (int p = 1; p <= 12; p++) {
            int down = (p - 1) / 2 + 1 + (p % 2 == 0 ? 6 : 0);
            lines.add("LP-1/" + down + " feeds Recept rm " + (100 + p));
        }
        assertThat(Building.of(lines.toArray(String[]::new)).findings())
                .extracting(Finding::kind)
                .containsExactly("shifted-directory");
    }

    @Test
    void two_rings_that_share_a_board_are_two_events() {
        assertThat(findings(
                        "MDP/7 PANEL LP-1",
                        "MDP/9 PANEL LP-2",
                        "LP-1/2 SPARE",
                        "LP-2/2 SPARE",
                        "MDP/7 feeds LP-1",
                        "MDP/9 feeds LP-2",
                        "LP-1/2 feeds MDP",
                        "LP-2/2 feeds MDP"))
                .containsExactly("feed-loop LP-1/2, MDP/7", "feed-loop LP-2/2, MDP/9");
    }

    @Test
    void a_new_panel_takes_its_feeder_and_its_circuits_into_one_event() {
        assertThat(findings(
                        "MDP/7 PANEL LP-1",
                        "MDP/9 SPARE",
                        "MDP/9 feeds LP-9 [kind panel]",
                        "LP-9/1 feeds Recept rm 901",
                        "LP-9/3 feeds Recept rm 903"))
                .containsExactly("equipment-not-drawn LP-9, MDP/9, LP-9/1, LP-9/3");
    }

    @Test
    void a_panel_renamed_on_site_is_one_event_and_is_corrected_by_its_name() {
        Building building = Building.of(
                "MDP/7 PANEL LP-1",
                "LP-1 panel fed from MDP CKT 7",
                "LP-1/1 RECEPT RM 101",
                "LP-1/2 RECEPT RM 102",
                "LP-1/3 RECEPT RM 103",
                "MDP/7 feeds NP-1 [kind panel]",
                "NP-1/1 feeds Recept rm 101",
                "NP-1/2 feeds Recept rm 102",
                "NP-1/3 feeds Recept rm 103");
        List<Finding> findings = building.findings();
        assertThat(findings).extracting(Finding::kind).containsExactly("equipment-not-drawn");
        assertThat(findings.get(0).message()).contains("It is what the drawings call LP-1");
        assertThat(building.with(Corrected.of(building.drawings(), findings)).findings())
                .isEmpty();
    }

    @Test
    void labels_prove_nothing() {
        assertThat(findings(
                        "LP-1/1 RECEPT RM 101",
                        "LP-1/3 SPARE",
                        "LP-1/1 feeds Exhaust fan EF-9 [label]",
                        "LP-1/3 feeds Recept rm 300 [label 60A]"))
                .isEmpty();
    }

    @Test
    void an_unclear_description_goes_to_a_person_and_raises_no_alarm() {
        Building building = Building.of("LP-1/1 AC UNIT", "LP-1/1 feeds Split system outside");
        assertThat(building.findings()).isEmpty();
    }

    @Test
    void danger_is_where_the_evidence_leaves_it_live_with_the_drawn_device_open() {
        List<Finding> crossed = Building.of(
                        "UTIL is utility",
                        "UTIL -> MDP",
                        "MDP/7 -> LP-1",
                        "MDP/9 SPARE",
                        "MDP/7 feeds LP-1",
                        "MDP/9 feeds LP-1",
                        "UTIL feeds MDP")
                .findings();
        assertThat(crossed)
                .extracting(Finding::kind, Finding::severity)
                .containsExactly(org.assertj.core.groups.Tuple.tuple("duplicate-feed", Severity.DANGER));
    }

    @Test
    void the_same_facts_in_another_order_of_rows_give_the_same_ids() {
        String[] one = {"MDP/7 PANEL LP-1", "MDP/9 PANEL LP-2", "MDP/7 feeds LP-2", "MDP/9 feeds LP-1"};
        String[] other = {"MDP/9 PANEL LP-2", "MDP/7 PANEL LP-1", "MDP/9 feeds LP-1", "MDP/7 feeds LP-2"};
        assertThat(Building.of(one).findings().get(0).id())
                .isEqualTo(Building.of(other).findings().get(0).id());
        assertThat(Building.of(one).findings().get(0).facts())
                .isEqualTo(Building.of(other).findings().get(0).facts());
    }
}
