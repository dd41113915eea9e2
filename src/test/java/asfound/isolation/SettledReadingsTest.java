package asfound.isolation;

import static asfound.isolation.Verdict.Standing.AGREES;
import static asfound.isolation.Verdict.Standing.FAILS;
import static asfound.isolation.Verdict.Standing.UNPROVEN;
import static asfound.isolation.Verdicts.drawnPoints;
import static asfound.isolation.Verdicts.foundPoints;
import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.EquipmentKind;
import asfound.network.Building;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The readings that the record set's format settles, line by line, on a small workshop. */
class SettledReadingsTest {

    /** Utility, distribution panel, two lighting panels; every feeder traced as drawn. */
    private static Building workshop() {
        return drawnWorkshop()
                .saw("UTIL", "M1", "feeds", "MDP")
                .saw("MDP", "7", "feeds", "LP-1")
                .saw("MDP", "9", "feeds", "LP-2");
    }

    private static Building drawnWorkshop() {
        return new Building()
                .equipment("UTIL", EquipmentKind.UTILITY)
                .feeder("UTIL", "M1", "MDP")
                .feeder("MDP", "7", "LP-1")
                .feeder("MDP", "9", "LP-2");
    }

    private static Verdict.Standing standing(Building b, String equipment) {
        return Verdicts.of(b, equipment).standing();
    }

    @Test
    void what_is_traced_as_drawn_agrees_and_does_not_say_dead() {
        Verdict v = Verdicts.of(workshop(), "LP-1");
        assertThat(v.standing()).isEqualTo(AGREES);
        assertThat(v.reason())
                .isEqualTo(
                        "MDP/7 was traced to LP-1 as drawn, and no other way for supply into it was drawn or found under its name. "
                                + "That does not mean that it is dead.");
        assertThat(v.liveFrom()).isEmpty();
        assertThat(v.path()).isEmpty();
    }

    @Test
    void pure_sources_get_no_verdict_and_everything_else_does() {
        assertThat(Isolation.verdicts(workshop().network()))
                .extracting(Verdict::equipment)
                .containsExactly("LP-1", "LP-2", "MDP");
    }

    @Test
    void a_point_that_was_not_traced_is_unproven() {
        Verdict v = Verdicts.of(drawnWorkshop(), "LP-1");
        assertThat(v.standing()).isEqualTo(UNPROVEN);
        assertThat(v.reason()).isEqualTo("MDP/7 was not traced to LP-1.");
        assertThat(v.foundPoints()).isEmpty();
    }

    @Test
    void a_label_proves_nothing() {
        Building b = drawnWorkshop().saw("MDP", "7", "feeds", "LP-1", EquipmentKind.PANEL, "label", "2024-06-01");
        assertThat(standing(b, "LP-1")).isEqualTo(UNPROVEN);
    }

    @Test
    void a_trace_older_than_the_modification_proves_nothing_and_says_so() {
        Verdict v = Verdicts.of(workshop().modified("MDP", "2024-09-01"), "LP-1");
        assertThat(v.standing()).isEqualTo(UNPROVEN);
        assertThat(v.reason()).isEqualTo("MDP/7 was traced to LP-1 only before MDP was last modified.");
    }

    @Test
    void a_blank_device_cannot_be_opened_so_points_are_sought_further_up() {
        Building b = workshop().feeder("LP-1", "", "CH-1").saw("LP-1", "", "feeds", "CH-1");
        assertThat(drawnPoints(b, "CH-1")).containsExactly("MDP/7");
        assertThat(standing(b, "CH-1")).isEqualTo(AGREES);
    }

    @Test
    void the_connection_without_a_device_has_to_be_traced_as_well() {
        Building b = workshop().feeder("LP-1", "", "CH-1");
        assertThat(standing(b, "CH-1")).isEqualTo(UNPROVEN);
    }

    @Test
    void a_row_without_a_circuit_beside_a_drawn_device_is_a_way_that_cannot_be_opened() {
        Verdict v = Verdicts.of(workshop().saw("MDP", "", "feeds", "LP-1"), "LP-1");
        assertThat(v.standing()).isEqualTo(FAILS);
        assertThat(v.path()).containsExactly("UTIL/M1", "MDP to LP-1 without a device");
    }

    @Test
    void a_drawn_point_traced_only_to_something_else_fails_though_the_real_supply_is_not_found() {
        Building b = drawnWorkshop().saw("MDP", "7", "feeds", "Recept rm 4", EquipmentKind.LOAD);
        assertThat(standing(b, "LP-1")).isEqualTo(FAILS);
        assertThat(foundPoints(b, "LP-1")).containsExactly("not known");
    }

    @Test
    void a_drawn_point_traced_to_nothing_or_missing_fails() {
        for (String relation : List.of("nothing", "no device"))
            assertThat(standing(drawnWorkshop().saw("MDP", "7", relation, ""), "LP-1"))
                    .isEqualTo(FAILS);
    }

    @Test
    void a_drawn_point_seen_not_to_feed_it_fails() {
        assertThat(standing(drawnWorkshop().saw("MDP", "7", "does not feed", "LP-1"), "LP-1"))
                .isEqualTo(FAILS);
    }

    @Test
    void a_device_that_feeds_two_things_is_no_conflict() {
        Building b = workshop().saw("MDP", "7", "feeds", "Recept rm 4", EquipmentKind.LOAD);
        assertThat(standing(b, "LP-1")).isEqualTo(AGREES);
    }

    @Test
    void feeds_and_does_not_feed_and_feeds_and_nothing_are_conflicts() {
        assertThat(standing(workshop().saw("MDP", "7", "does not feed", "LP-1"), "LP-1"))
                .isEqualTo(UNPROVEN);
        Verdict v = Verdicts.of(workshop().saw("MDP", "7", "nothing", ""), "LP-1");
        assertThat(v.standing()).isEqualTo(UNPROVEN);
        assertThat(v.reason()).contains("Observations of MDP/7 cannot all be true.");
    }

    @Test
    void traced_to_a_device_outside_the_drawn_points_fails() {
        Building b = workshop().saw("MDP", "11", "feeds", "LP-1");
        Verdict v = Verdicts.of(b, "LP-1");
        assertThat(v.standing()).isEqualTo(FAILS);
        assertThat(v.path()).containsExactly("UTIL/M1", "MDP/11");
        // both devices, or the one above them: the fewest
        assertThat(foundPoints(b, "LP-1")).containsExactly("UTIL/M1");
    }

    @Test
    void equipment_that_was_found_and_is_not_drawn_fails() {
        Verdict v = Verdicts.of(workshop().saw("MDP", "11", "feeds", "LP-9", EquipmentKind.PANEL), "LP-9");
        assertThat(v.standing()).isEqualTo(FAILS);
        assertThat(v.drawnPoints()).isEmpty();
        assertThat(v.reason()).startsWith("LP-9 was found and no drawing shows it.");
    }

    @Test
    void equipment_without_a_drawn_supply_fails_and_may_itself_be_a_source_for_others() {
        Building b = workshop()
                .equipment("LP-7", EquipmentKind.PANEL)
                .feeder("LP-7", "3", "CH-2")
                .saw("LP-7", "3", "feeds", "LP-1");
        assertThat(Verdicts.of(b, "LP-7").reason())
                .startsWith("The drawings give LP-7 no supply: what feeds it is not known.");
        assertThat(standing(b, "LP-7")).isEqualTo(FAILS);
        Verdict v = Verdicts.of(b, "LP-1");
        assertThat(v.standing()).isEqualTo(FAILS);
        assertThat(v.liveFrom()).contains("LP-7");
    }

    @Test
    void a_backfed_source_is_opened_at_the_point_nearer_to_the_equipment() {
        Building b = drawnWorkshop()
                .equipment("INV-1", EquipmentKind.INVERTER)
                .feeder("INV-1", "CB1", "LP-3")
                .panel("LP-3", "MDP-11", "38-40 SOLAR INVERTER INV-1");
        assertThat(drawnPoints(b, "LP-3")).containsExactly("LP-3/38", "MDP/11");
    }

    @Test
    void one_trace_of_two_devices_in_series_proves_one_of_them() {
        Building drawn = drawnWorkshop()
                .equipment("INV-1", EquipmentKind.INVERTER)
                .feeder("INV-1", "CB1", "LP-3")
                .panel("LP-3", "MDP-11", "38-40 SOLAR INVERTER INV-1")
                .saw("MDP", "11", "feeds", "LP-3");
        assertThat(standing(drawn.saw("INV-1", "CB1", "feeds", "LP-3"), "LP-3")).isEqualTo(UNPROVEN);
        assertThat(standing(drawn.saw("LP-3", "38", "fed by", "INV-1", EquipmentKind.INVERTER), "LP-3"))
                .isEqualTo(AGREES);
    }

    @Test
    void a_main_of_its_own_does_not_count_for_work_inside() {
        Building b = new Building()
                .equipment("UTIL", EquipmentKind.UTILITY)
                .feeder("UTIL", "", "MDP")
                .feeder("MDP", "7", "LP-1")
                .saw("MDP", "M1", "fed by", "UTIL", EquipmentKind.UTILITY);
        assertThat(foundPoints(b, "MDP")).containsExactly("not known");
        assertThat(standing(b, "MDP")).isNotEqualTo(AGREES);
    }

    @Test
    void a_ups_is_a_source_for_what_it_feeds() {
        Building b = workshop()
                .equipment("UPS-1", EquipmentKind.UPS)
                .feeder("MDP", "11", "UPS-1")
                .feeder("UPS-1", "", "IT-1");
        Verdict v = Verdicts.of(b, "IT-1");
        assertThat(v.standing()).isEqualTo(UNPROVEN);
        assertThat(v.reason()).startsWith("Nothing drawn parts IT-1 from UPS-1");
        assertThat(v.drawnPoints()).isEmpty();
    }

    @Test
    void nothing_parts_equipment_from_a_source_joined_without_a_device() {
        Building untraced =
                new Building().equipment("UTIL", EquipmentKind.UTILITY).feeder("UTIL", "", "MSB");
        assertThat(standing(untraced, "MSB")).isEqualTo(UNPROVEN);
        // a person traced that it is joined: it is live whatever is opened
        assertThat(standing(untraced.saw("UTIL", "", "feeds", "MSB"), "MSB")).isEqualTo(FAILS);
    }

    @Test
    void where_drawings_disagree_on_the_supply_all_count_and_it_never_agrees() {
        Building b =
                workshop().equipment("DP-2", EquipmentKind.PANEL, "UTIL CKT 2").panel("LP-1", "DP-2 CKT 9", "1 LTG");
        assertThat(drawnPoints(b, "LP-1")).containsExactly("DP-2/9", "MDP/7");
        assertThat(standing(b, "LP-1")).isEqualTo(UNPROVEN);
        b.saw("DP-2", "9", "feeds", "LP-1");
        Verdict v = Verdicts.of(b, "LP-1");
        assertThat(v.standing()).isEqualTo(UNPROVEN);
        assertThat(v.reason()).contains("Drawings name different supplies for LP-1: DP-2/9 and MDP/7.");
    }

    @Test
    void two_supplies_that_the_one_line_shows_side_by_side_are_two_points_and_no_disagreement() {
        assertThat(drawnPoints(tied(), "LP-1")).containsExactly("LP-2/12", "MDP/7");
        assertThat(drawnPoints(tied(), "LP-2")).containsExactly("LP-2/12", "UTIL-B/M2");
        assertThat(standing(tied(), "LP-1")).isEqualTo(UNPROVEN);
        assertThat(standing(tied().saw("LP-2", "12", "feeds", "LP-1"), "LP-1")).isEqualTo(AGREES);
    }

    /** LP-2 from a service of its own, and a tie to LP-1, which its schedule lists and the header of LP-1 leaves out. */
    private static Building tied() {
        return new Building()
                .equipment("UTIL", EquipmentKind.UTILITY)
                .equipment("UTIL-B", EquipmentKind.UTILITY)
                .feeder("UTIL", "M1", "MDP")
                .feeder("MDP", "7", "LP-1")
                .feeder("UTIL-B", "M2", "LP-2")
                .tie("LP-2", "12", "LP-1")
                .panel("LP-2", "UTIL-B M2", "12 LP-1")
                .panel("LP-1", "MDP CKT 7", "1 LTG")
                .saw("UTIL", "M1", "feeds", "MDP")
                .saw("UTIL-B", "M2", "feeds", "LP-2")
                .saw("MDP", "7", "feeds", "LP-1");
    }

    @Test
    void a_generator_found_on_a_panel_is_led_back_through_its_traced_feeder_though_a_header_names_another() {
        Building b = workshop()
                .equipment("DP-2", EquipmentKind.PANEL, "UTIL CKT 2")
                .panel("LP-1", "DP-2 CKT 9", "1 LTG")
                .equipment("GEN-9", EquipmentKind.GENERATOR)
                .saw("UTIL", "2", "feeds", "DP-2")
                .saw("DP-2", "9", "nothing", "")
                .saw("LP-1", "15", "fed by", "GEN-9");
        assertThat(drawnPoints(b, "MDP")).containsExactly("UTIL/M1");
        assertThat(standing(b, "MDP")).isEqualTo(FAILS);
    }

    @Test
    void what_is_live_behind_one_of_two_disputed_supplies_may_come_back_through_it() {
        Building b = workshop()
                .equipment("DP-2", EquipmentKind.PANEL, "UTIL CKT 2")
                .panel("LP-1", "DP-2 CKT 9", "1 LTG")
                .saw("UTIL", "2", "feeds", "DP-2");
        Verdict v = Verdicts.of(b, "MDP");
        assertThat(v.standing()).isEqualTo(UNPROVEN);
        assertThat(v.liveFrom()).containsExactly("UTIL");
    }

    @Test
    void a_feeder_traced_to_the_panel_beyond_a_drawn_transformer_is_as_drawn() {
        Building b = workshop()
                .equipment("T-1", EquipmentKind.TRANSFORMER)
                .feeder("MDP", "11", "T-1")
                .feeder("T-1", "", "RP-1")
                .saw("MDP", "11", "feeds", "RP-1");
        assertThat(drawnPoints(b, "RP-1")).containsExactly("MDP/11");
        assertThat(standing(b, "RP-1")).isEqualTo(AGREES);
        assertThat(standing(b, "T-1")).isEqualTo(AGREES);
    }

    @Test
    void a_transformers_own_device_still_has_to_be_traced() {
        Building b = workshop()
                .equipment("T-1", EquipmentKind.TRANSFORMER)
                .feeder("MDP", "11", "T-1")
                .feeder("T-1", "S1", "RP-1")
                .saw("MDP", "11", "feeds", "RP-1");
        assertThat(drawnPoints(b, "RP-1")).containsExactly("T-1/S1");
        assertThat(standing(b, "RP-1")).isEqualTo(UNPROVEN);
        assertThat(standing(b, "T-1")).isEqualTo(AGREES);
    }

    @Test
    void a_tie_drawn_open_can_be_closed() {
        Building b = workshop()
                .equipment("UTIL-B", EquipmentKind.UTILITY)
                .feeder("UTIL-B", "M1", "DP-2")
                .feeder("DP-2", "T", "MDP", true, true);
        assertThat(drawnPoints(b, "MDP")).containsExactly("DP-2/T", "UTIL/M1");
    }

    @Test
    void a_feeder_drawn_open_between_two_switchboards_is_a_tie() {
        Building b = new Building()
                .equipment("UTIL-A", EquipmentKind.UTILITY)
                .equipment("UTIL-B", EquipmentKind.UTILITY)
                .equipment("MSB-A", EquipmentKind.SWITCHBOARD)
                .equipment("MSB-B", EquipmentKind.SWITCHBOARD)
                .feeder("UTIL-A", "1", "MSB-A")
                .feeder("UTIL-B", "2", "MSB-B")
                .feeder("MSB-A", "9", "MSB-B", true, false);
        assertThat(drawnPoints(b, "MSB-A")).containsExactly("MSB-A/9", "UTIL-A/1");
    }

    @Test
    void a_directory_read_with_doubt_keeps_its_panel_and_what_it_feeds_from_agreeing() {
        Building b = workshop().panel("MDP", "UTIL/M1", 0.5, "7 LP-1", "9 LP-2");
        assertThat(standing(b, "MDP")).isEqualTo(UNPROVEN);
        assertThat(standing(b, "LP-1")).isEqualTo(UNPROVEN);
    }

    @Test
    void a_panel_traced_to_two_panels_makes_each_of_them_live_from_the_other() {
        Building b = workshop()
                .equipment("UTIL-B", EquipmentKind.UTILITY)
                .feeder("UTIL-B", "M2", "DP-2")
                .feeder("DP-2", "1", "LP-5")
                .saw("UTIL-B", "M2", "feeds", "DP-2")
                .saw("DP-2", "1", "feeds", "LP-5")
                .saw("MDP", "13", "feeds", "LP-5");
        Verdict v = Verdicts.of(b, "MDP");
        assertThat(v.standing()).isEqualTo(FAILS);
        assertThat(v.path()).containsExactly("UTIL-B/M2", "DP-2/1", "MDP/13");
    }

    @Test
    void a_drawings_verdict_is_the_worst_of_the_equipment_that_it_shows() {
        Building b = workshop()
                .panel("MDP", "UTIL/M1", "7 LP-1", "9 LP-2")
                .panel("LP-1", "MDP-7", "1 LTG")
                .panel("LP-2", "MDP-9", "1 LTG")
                .saw("MDP", "9", "does not feed", "LP-2");
        var network = b.network();
        assertThat(Isolation.drawingVerdicts(network, Isolation.verdicts(network)))
                .extracting(d -> d.file() + " " + d.standing().word() + " " + d.equipment())
                .containsExactly(
                        "drawings/LP-1.pdf agrees [LP-1]",
                        "drawings/LP-2.pdf unproven [LP-2]",
                        "drawings/MDP.pdf unproven [LP-1, LP-2, MDP]",
                        "one-line/equipment.csv unproven [UTIL]",
                        "one-line/feeders.csv unproven [LP-1, LP-2, MDP, UTIL]");
    }
}
