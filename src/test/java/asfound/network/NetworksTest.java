package asfound.network;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.EquipmentKind;
import asfound.network.DeviceRecord.Tracing;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What paper and survey say, joined. Each connection is written {@code MDP [MDP/7] LP-2A FEEDER drawn CONFIRMED}. */
class NetworksTest {

    /** A small clinic: a service, a distribution panel, two lighting panels. */
    private static Building clinic() {
        return new Building()
                .equipment("UTIL", EquipmentKind.UTILITY)
                .feeder("UTIL", "M1", "MDP")
                .panel("MDP", "UTIL", "7-9-11 LP-2A", "8-10-12 LP-2B", "13 SPARE", "14 RECEPT LOBBY")
                .panel("LP-2A", "MDP-7", "1 RECEPT RM 204")
                .panel("LP-2B", "MDP CKT 8,10,12", "1 LTG RM 210");
    }

    private static List<String> connections(Building building) {
        return building.network().connections().stream()
                .map(NetworksTest::inWords)
                .toList();
    }

    private static String inWords(Connection c) {
        return c.from() + " " + c.devices() + " " + c.to() + " " + c.flow() + (c.drawn() ? " drawn" : "")
                + (c.disputed() ? " disputed" : "") + " " + c.standing();
    }

    private static Equipment equipment(Building building, String name) {
        return building.network().equipment().stream()
                .filter(e -> e.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static DeviceRecord device(Building building, String label) {
        return building.network().devices().stream()
                .filter(d -> d.device().label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void schedule_and_header_that_name_the_same_feeder_are_one_connection() {
        assertThat(connections(clinic()))
                .containsExactly(
                        "MDP [MDP/7] LP-2A FEEDER drawn UNTRACED",
                        "MDP [MDP/8] LP-2B FEEDER drawn UNTRACED",
                        "UTIL [UTIL/M1] MDP FEEDER drawn UNTRACED");
    }

    /** Without the one-line's device, {@code MSB F1} may as well be the name of another board. */
    @Test
    void a_supply_written_with_the_name_of_a_device_drawn_there_is_that_device() {
        Building drawn = new Building()
                .equipment("MSB", EquipmentKind.SWITCHBOARD)
                .feeder("MSB", "F1", "HDP")
                .equipment("HDP", EquipmentKind.PANEL, "MSB F1")
                .panel("HDP", "MSB-F1", "1 RECEPT LOBBY");
        assertThat(connections(drawn)).containsExactly("MSB [MSB/F1] HDP FEEDER drawn UNTRACED");

        Building unknown =
                new Building().equipment("MSB", EquipmentKind.SWITCHBOARD).panel("HDP", "MSB-F1", "1 RECEPT LOBBY");
        assertThat(connections(unknown)).containsExactly("MSB-F1 [] HDP FEEDER drawn UNTRACED");
    }

    @Test
    void loads_that_are_mere_descriptions_are_no_equipment() {
        assertThat(clinic().network().equipment().stream().map(Equipment::name))
                .containsExactly("LP-2A", "LP-2B", "MDP", "UTIL");
    }

    @Test
    void an_observation_of_any_pole_belongs_to_the_device() {
        Building b = clinic().saw("MDP", "9", "feeds", "LP-2A")
                .saw("MDP", "7-9-11", "feeds", "Panel LP2A")
                .saw("MDP", "7", "feeds", "LP 2A");
        assertThat(device(b, "MDP/7").sightings()).hasSize(3);
        assertThat(device(b, "MDP/7").tracing()).isEqualTo(Tracing.TRACED);
        assertThat(connections(b)).contains("MDP [MDP/7] LP-2A FEEDER drawn CONFIRMED");
    }

    @Test
    void a_device_traced_to_something_else_contradicts_the_drawing_and_is_found() {
        Building b = clinic().saw("MDP", "7", "feeds", "LP-2B");
        assertThat(connections(b))
                .contains(
                        "MDP [MDP/7] LP-2A FEEDER drawn CONTRADICTED",
                        "MDP [MDP/7] LP-2B FEEDER FOUND",
                        "MDP [MDP/8] LP-2B FEEDER drawn UNTRACED");
    }

    @Test
    void a_label_traces_nothing() {
        Building b = clinic().saw("MDP", "7", "feeds", "LP-2B", EquipmentKind.PANEL, "label", "2024-06-01");
        assertThat(connections(b)).isEqualTo(connections(clinic()));
        assertThat(device(b, "MDP/7").tracing()).isEqualTo(Tracing.NOT_TRACED);
        assertThat(equipment(b, "LP-2B").found()).isFalse();
    }

    @Test
    void two_feeds_rows_on_one_device_are_no_conflict() {
        Building b = clinic().saw("MDP", "7", "feeds", "LP-2A").saw("MDP", "7", "feeds", "LP-2B");
        assertThat(connections(b))
                .contains("MDP [MDP/7] LP-2A FEEDER drawn CONFIRMED", "MDP [MDP/7] LP-2B FEEDER FOUND");
        assertThat(device(b, "MDP/7").tracing()).isEqualTo(Tracing.TRACED);
    }

    @Test
    void feeds_and_does_not_feed_are_a_conflict_and_so_are_feeds_and_nothing() {
        Building no = clinic().saw("MDP", "7", "feeds", "LP-2A").saw("MDP", "7", "does not feed", "LP-2A");
        Building nothing = clinic().saw("MDP", "7", "feeds", "LP-2A").saw("MDP", "7", "nothing", "");
        for (Building b : List.of(no, nothing)) {
            assertThat(connections(b)).contains("MDP [MDP/7] LP-2A FEEDER drawn IN_CONFLICT");
            assertThat(device(b, "MDP/7").tracing()).isEqualTo(Tracing.CONFLICT);
        }
    }

    @Test
    void an_observation_before_the_modification_is_stale() {
        Building b = clinic().modified("Panel MDP", "2024-07-01").saw("MDP", "7", "feeds", "LP-2A");
        assertThat(connections(b)).contains("MDP [MDP/7] LP-2A FEEDER drawn STALE");
        assertThat(device(b, "MDP/7").tracing()).isEqualTo(Tracing.STALE);
    }

    @Test
    void an_observation_on_the_day_of_the_modification_holds() {
        Building b = clinic().modified("MDP", "2024-06-01").saw("MDP", "7", "feeds", "LP-2A");
        assertThat(connections(b)).contains("MDP [MDP/7] LP-2A FEEDER drawn CONFIRMED");
    }

    @Test
    void an_undated_observation_of_modified_equipment_is_stale() {
        Building b = clinic().modified("MDP", "2024-06-01")
                .saw("MDP", "7", "feeds", "LP-2A", EquipmentKind.PANEL, "opened", "");
        assertThat(connections(b)).contains("MDP [MDP/7] LP-2A FEEDER drawn STALE");
    }

    @Test
    void schedule_and_one_line_that_name_two_supplies_dispute_both() {
        Building b = clinic().equipment("DP-2", EquipmentKind.PANEL, "UTIL").feeder("DP-2", "9", "LP-2A");
        assertThat(connections(b))
                .contains(
                        "DP-2 [DP-2/9] LP-2A FEEDER drawn disputed UNTRACED",
                        "MDP [MDP/7] LP-2A FEEDER drawn disputed UNTRACED",
                        "MDP [MDP/8] LP-2B FEEDER drawn UNTRACED");
    }

    @Test
    void one_line_and_schedule_that_name_two_devices_of_one_panel_dispute_both() {
        Building b = clinic().feeder("MDP", "15", "LP-2A");
        assertThat(connections(b))
                .contains(
                        "MDP [MDP/7] LP-2A FEEDER drawn disputed UNTRACED",
                        "MDP [MDP/15] LP-2A FEEDER drawn disputed UNTRACED");
    }

    @Test
    void a_header_that_names_one_of_two_drawn_supplies_disputes_nothing() {
        Building b = new Building()
                .equipment("ATS-1", EquipmentKind.TRANSFER_SWITCH)
                .feeder("MDP", "3", "ATS-1")
                .feeder("GEN-1", "CB1", "ATS-1")
                .feeder("ATS-1", "", "LP-EM")
                .panel("LP-EM", "ATS-1", "1 EXIT LTG")
                .panel("MDP", "UTILITY", "3 ATS-1");
        assertThat(connections(b))
                .containsExactly(
                        "ATS-1 [] LP-EM FEEDER drawn UNTRACED",
                        "GEN-1 [GEN-1/CB1] ATS-1 ONE_WAY drawn UNTRACED",
                        "MDP [MDP/3] ATS-1 ONE_WAY drawn UNTRACED",
                        "UTILITY [] MDP FEEDER drawn UNTRACED");
        assertThat(equipment(b, "GEN-1").kind()).isEqualTo(EquipmentKind.GENERATOR);
        assertThat(equipment(b, "UTILITY").kind()).isEqualTo(EquipmentKind.UTILITY);
    }

    /** A distribution panel, a transformer, a receptacle panel behind it. */
    private static Building behindTransformer() {
        return new Building()
                .feeder("DP-1", "5", "T-1")
                .feeder("T-1", "", "RP-1")
                .panel("DP-1", "UTILITY", "5-7-9 XFMR T-1")
                .panel("RP-1", "T-1 VIA DP-1-5", "1 RECEPT RM 1");
    }

    @Test
    void a_feeder_traced_to_the_panel_beyond_a_drawn_transformer_confirms_the_drawing() {
        Building b = behindTransformer().saw("DP-1", "5", "feeds", "RP-1");
        assertThat(connections(b))
                .containsExactly(
                        "DP-1 [DP-1/5] T-1 FEEDER drawn CONFIRMED",
                        "T-1 [] RP-1 FEEDER drawn CONFIRMED",
                        "UTILITY [] DP-1 FEEDER drawn UNTRACED");
    }

    @Test
    void a_drawing_that_names_the_panel_beyond_the_transformer_disputes_nothing() {
        Building b = new Building()
                .feeder("DP-1", "5", "T-1")
                .feeder("T-1", "", "RP-1")
                .panel("DP-1", "UTILITY", "5-7-9 PANEL RP-1")
                .panel("RP-1", "DP-1 CKT 5", "1 RECEPT RM 1");
        assertThat(connections(b))
                .containsExactly(
                        "DP-1 [DP-1/5] T-1 FEEDER drawn UNTRACED",
                        "T-1 [] RP-1 FEEDER drawn UNTRACED",
                        "UTILITY [] DP-1 FEEDER drawn UNTRACED");
    }

    @Test
    void an_entry_that_names_a_source_is_a_backfed_device_in_series_with_the_sources_own() {
        Building b = clinic().equipment("INV-1", EquipmentKind.INVERTER)
                .feeder("INV-1", "CB1", "LP-2C")
                .panel("LP-2C", "MDP-15", "38-40 SOLAR INVERTER INV-1");
        assertThat(connections(b)).contains("INV-1 [INV-1/CB1, LP-2C/38] LP-2C FEEDER drawn UNTRACED");
        assertThat(connections(b.saw("LP-2C", "38", "fed by", "INV-1", EquipmentKind.INVERTER)))
                .contains("INV-1 [INV-1/CB1, LP-2C/38] LP-2C FEEDER drawn CONFIRMED");
    }

    @Test
    void a_backfed_device_found_in_the_field_is_in_series_with_the_supplys_own_device() {
        Building b = clinic().saw("LP-2A", "2", "fed by", "MDP");
        assertThat(connections(b))
                .contains("MDP [MDP/7] LP-2A FEEDER drawn UNTRACED", "MDP [MDP/7, LP-2A/2] LP-2A FEEDER FOUND");
    }

    @Test
    void a_source_found_on_a_panel_that_no_drawing_shows_is_equipment() {
        Building b = clinic().saw("LP-2A", "40", "fed by", "INV-9", EquipmentKind.INVERTER);
        assertThat(connections(b)).contains("INV-9 [LP-2A/40] LP-2A FEEDER FOUND");
        assertThat(equipment(b, "INV-9").drawn()).isFalse();
        assertThat(equipment(b, "INV-9").found()).isTrue();
    }

    @Test
    void equipment_of_a_kind_found_on_no_drawing_is_listed_as_not_drawn() {
        Building b = clinic().saw("LP-2A", "5", "feeds", "LP-9", EquipmentKind.PANEL);
        assertThat(equipment(b, "LP-9").drawn()).isFalse();
        assertThat(connections(b)).contains("LP-2A [LP-2A/5] LP-9 FEEDER FOUND");
    }

    @Test
    void a_load_found_is_no_equipment_and_still_contradicts_the_drawing() {
        Building b = clinic().saw("MDP", "7", "feeds", "Recept rm 12", EquipmentKind.LOAD);
        assertThat(b.network().equipment()).hasSize(4);
        assertThat(connections(b)).contains("MDP [MDP/7] LP-2A FEEDER drawn CONTRADICTED");
    }

    @Test
    void a_tie_is_one_device_whichever_board_the_surveyor_counts_it_to() {
        Building b = new Building()
                .feeder("UTIL-A", "", "MSB-A")
                .feeder("UTIL-B", "", "MSB-B")
                .tie("MSB-A", "TIE", "MSB-B")
                .saw("MSB-B", "TIE", "feeds", "MSB-A");
        assertThat(connections(b)).contains("MSB-A [MSB-A/TIE] MSB-B TIE drawn CONFIRMED");
    }

    @Test
    void a_row_without_a_circuit_traces_a_connection_without_a_device() {
        Building b = clinic().saw("MDP", "", "feeds", "LP-2A");
        assertThat(connections(b)).contains("MDP [] LP-2A FEEDER FOUND", "MDP [MDP/7] LP-2A FEEDER drawn UNTRACED");
    }

    @Test
    void equipment_named_only_by_does_not_feed_rows_was_not_found_by_them() {
        Building b = clinic().saw("MDP", "7", "does not feed", "LP-2A");
        assertThat(equipment(b, "LP-2A").found()).isFalse();
        assertThat(connections(b)).contains("MDP [MDP/7] LP-2A FEEDER drawn CONTRADICTED");
    }

    @Test
    void nothing_at_a_device_and_no_device_there_contradict_what_is_drawn() {
        for (String relation : List.of("nothing", "no device"))
            assertThat(connections(clinic().saw("MDP", "7", relation, "")))
                    .contains("MDP [MDP/7] LP-2A FEEDER drawn CONTRADICTED");
    }

    @Test
    void the_order_of_rows_and_directories_changes_nothing() {
        Building b = clinic().saw("MDP", "7", "feeds", "LP-2B")
                .saw("MDP", "8", "feeds", "LP-2A")
                .saw("LP-2A", "2", "fed by", "MDP");
        var turned = new java.util.ArrayList<>(b.drawings().directories());
        java.util.Collections.reverse(turned);
        var survey = new java.util.ArrayList<>(b.survey());
        java.util.Collections.reverse(survey);
        var other =
                Networks.build(new asfound.drawing.Drawings(turned, b.drawings().oneLine()), survey, b.settings());
        assertThat(other).isEqualTo(b.network());
    }
}
