package asfound.trust;

import static asfound.model.Observation.Method.LABEL;
import static asfound.model.Observation.Method.OPENED;
import static asfound.model.Observation.Method.TONE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import asfound.model.EquipmentKind;
import asfound.network.Network;
import asfound.network.Standing;
import asfound.recordset.Settings;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CoveragesTest {

    private static final Settings SAYS_NOTHING = Settings.none();

    @Test
    void a_spare_is_an_entry_and_an_empty_space_is_none() {
        Coverage coverage = Coverages.of(
                new Wiring()
                        .circuit("LP-1/1", "RECEPT RM 1", TONE, "Recept rm 1")
                        .circuit("LP-1/3", "SPARE", OPENED, "")
                        .circuit("LP-1/5", "SPACE", OPENED, "")
                        .network(),
                SAYS_NOTHING);

        assertThat(coverage.building().drawn()).isEqualTo(2);
        assertThat(coverage.building().traced()).isEqualTo(2);
        assertThat(coverage.building().wrong()).isZero();
    }

    @Test
    void a_read_label_traces_nothing() {
        Coverage coverage = Coverages.of(
                new Wiring()
                        .circuit("LP-1/1", "RECEPT RM 1", LABEL, "Recept rm 1")
                        .network(),
                SAYS_NOTHING);

        assertThat(coverage.building().traced()).isZero();
        assertThat(coverage.building().share()).isZero();
        assertThat(coverage.statement()).contains("Nothing was traced, so nothing is known of any entry.");
    }

    @Test
    void a_spare_in_use_a_dead_circuit_and_another_load_are_wrong_entries() {
        Coverage coverage = Coverages.of(
                new Wiring()
                        .circuit("LP-1/1", "SPARE", TONE, "Exhaust fan EF-4")
                        .circuit("LP-1/3", "RECEPT RM 1", OPENED, "")
                        .circuit("LP-1/5", "RECEPT RM 1", TONE, "Recept rm 9")
                        .circuit("LP-1/7", "RECEPT RM 2", TONE, "Recept rm 2")
                        .network(),
                SAYS_NOTHING);

        assertThat(coverage.building().wrong()).isEqualTo(3);
    }

    @Test
    void a_feeder_traced_to_another_panel_is_a_wrong_entry_and_one_traced_as_drawn_is_not() {
        Coverage coverage = Coverages.of(
                new Wiring()
                        .is(EquipmentKind.PANEL, "MDP", "LP-1", "LP-2", "LP-3")
                        .feedsOther("MDP/1", "LP-1", "LP-2")
                        .feeder("MDP/3", "LP-3", Standing.CONFIRMED)
                        .network(),
                SAYS_NOTHING);

        assertThat(coverage.building().traced()).isEqualTo(2);
        assertThat(coverage.building().wrong()).isEqualTo(1);
    }

    @Test
    void panels_stand_in_natural_order_and_add_up_to_the_building() {
        Coverage coverage = Coverages.of(
                new Wiring()
                        .circuit("LP-10/1", "RECEPT RM 1", TONE, "Recept rm 1")
                        .untraced("LP-2/1", "RECEPT RM 2")
                        .untraced("LP-2/3", "SPARE")
                        .network(),
                SAYS_NOTHING);

        assertThat(coverage.panels()).extracting(Coverage.Share::panel).containsExactly("LP-2", "LP-10");
        assertThat(coverage.panels()).extracting(Coverage.Share::drawn).containsExactly(2, 1);
        assertThat(coverage.building().drawn()).isEqualTo(3);
        assertThat(coverage.building().traced()).isEqualTo(1);
    }

    @Test
    void methods_and_years_of_the_traces_are_counted() {
        Coverage coverage = Coverages.of(
                new Wiring()
                        .circuit("LP-1/1", "RECEPT RM 1", TONE, "Recept rm 1")
                        .circuit("LP-1/3", "RECEPT RM 2", OPENED, "Recept rm 2")
                        .circuit("LP-1/5", "RECEPT RM 3", OPENED, "Recept rm 3")
                        .circuit("LP-1/7", "RECEPT RM 4", LABEL, "Recept rm 4")
                        .network(),
                SAYS_NOTHING);

        assertThat(coverage.byMethod()).containsExactly(entry("opened", 2), entry("tone", 1), entry("visual", 0));
        assertThat(coverage.byYear()).containsExactly(entry("2025", 3));
    }

    @Test
    void a_survey_of_unknown_or_chosen_circuits_bounds_nothing() {
        Coverage unknown = Coverages.of(oneWrongInTwentyOf42(), SAYS_NOTHING);
        Coverage targeted = Coverages.of(oneWrongInTwentyOf42(), chosen(Settings.Chosen.TARGETED));

        assertThat(unknown.building().bound95()).isEmpty();
        assertThat(unknown.panels()).allSatisfy(p -> assertThat(p.bound95()).isEmpty());
        assertThat(unknown.statement()).contains("How the traced circuits were chosen is not recorded");
        assertThat(targeted.building().bound95()).isEmpty();
        assertThat(targeted.statement()).contains("chosen by someone, not at random");
    }

    /** One wrong in 20 of 42: at most 7 wrong in all with 95 % confidence, so 6 of the 22 untraced (hypergeometric). */
    @Test
    void a_random_survey_bounds_what_is_wrong_among_the_untraced() {
        Coverage coverage = Coverages.of(oneWrongInTwentyOf42(), chosen(Settings.Chosen.RANDOM));

        assertThat(coverage.building().bound95()).hasValue(6 / 22.0);
        assertThat(coverage.statement())
                .contains("20 of the 42 drawn entries traced, 1 of them wrong.")
                .contains("at most 6 of the 22 untraced entries (27.3 %) are wrong too")
                .contains("only where none of them was chosen for a reason, as by a plan of traces")
                .contains("No figure replaces a trace");
    }

    private static Network oneWrongInTwentyOf42() {
        Wiring wiring = new Wiring();
        for (int i = 1; i <= 20; i++)
            wiring.circuit("LP-1/" + i, "RECEPT RM " + i, TONE, "Recept rm " + (i == 7 ? 99 : i));
        for (int i = 21; i <= 42; i++) wiring.untraced("LP-1/" + i, "RECEPT RM " + i);
        return wiring.network();
    }

    private static Settings chosen(Settings.Chosen chosen) {
        return new Settings(
                Optional.empty(),
                Map.of(),
                List.of(),
                List.of(),
                Map.of(),
                Map.of(),
                Optional.empty(),
                List.of(),
                Optional.of(chosen));
    }
}
