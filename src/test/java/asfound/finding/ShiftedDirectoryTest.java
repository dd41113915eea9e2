package asfound.finding;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.sample.Building;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A card whose entries stand at the wrong places is one event, and is told apart from devices that changed places. */
class ShiftedDirectoryTest {

    private final List<String> lines = new ArrayList<>();

    private List<Finding> findings() {
        return Building.of(lines.toArray(String[]::new)).findings();
    }

    private List<String> told() {
        return findings().stream().map(f -> f.kind() + ": " + f.message()).toList();
    }

    @Test
    void four_neighbours_that_changed_places_in_a_ring_are_crossed_and_no_card_was_shifted() {
        for (int p = 1; p <= 7; p += 2) {
            lines.add("MDP/" + p + " PANEL LP-" + p);
            lines.add("MDP/" + p + " feeds LP-" + (p == 7 ? 1 : p + 2));
        }
        assertThat(findings()).extracting(Finding::kind).containsExactly("crossed-feeds");
    }

    @Test
    void five_entries_one_row_off_are_a_shifted_card_even_if_the_last_stands_first() {
        for (int p = 1; p <= 9; p += 2) {
            lines.add("LP-1/" + p + " RECEPT RM " + (100 + p));
            lines.add("LP-1/" + p + " feeds Recept rm " + (p == 9 ? 101 : 102 + p));
        }
        assertThat(told())
                .containsExactly(
                        "shifted-directory: Entries of LP-1 stand one row below where they were traced, on the odd "
                                + "side: 4 entries of positions 1, 3, 5, 7 and 9.");
    }

    @Test
    void two_runs_on_two_sides_are_two_events_where_their_rows_differ() {
        for (int p = 1; p <= 24; p++) lines.add("LP-1/" + p + " RECEPT RM " + (100 + p));
        for (int p = 1; p <= 24; p++) {
            boolean shifted = p % 2 == 1 ? p >= 3 && p <= 19 : p >= 4 && p <= 10;
            if (shifted) lines.add("LP-1/" + p + " feeds Recept rm " + (98 + p));
            else lines.add("LP-1/" + p + " feeds Recept rm " + (100 + p));
        }
        assertThat(told())
                .containsExactly(
                        "shifted-directory: Entries of LP-1 stand one row above where they were traced, on the odd side: "
                                + "8 entries of positions 3, 5, 7, 9, 11, 13, 15, 17 and 19.",
                        "shifted-directory: Entries of LP-1 stand one row above where they were traced, on the even side: "
                                + "3 entries of positions 4, 6, 8 and 10.");
    }

    @Test
    void sides_are_exchanged_only_as_far_as_the_rows_say_so() {
        for (int p = 1; p <= 20; p++) lines.add("LP-1/" + p + " RECEPT RM " + (100 + p));
        for (int p = 1; p <= 8; p++) lines.add("LP-1/" + p + " feeds Recept rm " + (p % 2 == 1 ? 101 + p : 99 + p));
        for (int p = 9; p <= 20; p++)
            if (p != 13 && p != 14 && p != 19) lines.add("LP-1/" + p + " feeds Recept rm " + (100 + p));
        lines.add("LP-1/13 feeds Recept rm 119");
        lines.add("LP-1/14 feeds Recept rm 113");
        lines.add("LP-1/19 feeds Recept rm 114");
        assertThat(findings()).extracting(Finding::kind).containsExactly("shifted-directory", "crossed-feeds");
        assertThat(findings().get(1).event().parts())
                .extracting(Finding.Part::inWords)
                .containsExactly("LP-1/13", "LP-1/19", "LP-1/14");
    }

    @Test
    void the_cards_of_two_panels_that_were_exchanged_are_one_event() {
        for (int p = 1; p <= 6; p++) {
            lines.add("LP-2A/" + p + " RECEPT RM " + (200 + p));
            lines.add("LP-2B/" + p + " RECEPT RM " + (250 + p));
            lines.add("LP-2A/" + p + " feeds Plugs " + (250 + p));
            lines.add("LP-2B/" + p + " feeds Plugs " + (200 + p));
        }
        assertThat(told())
                .containsExactly(
                        "shifted-directory: The directories of LP-2A and LP-2B have changed places: 12 entries were "
                                + "traced at the same position of another of these panels.");
    }

    @Test
    void a_card_of_the_neighbour_is_told_from_the_traced_panel_alone() {
        for (int p = 1; p <= 6; p++) {
            lines.add("LP-2A/" + p + " RECEPT RM " + (200 + p));
            lines.add("LP-2B/" + p + " RECEPT RM " + (250 + p));
            if (p < 6) lines.add("LP-2B/" + p + " feeds Plugs " + (200 + p));
        }
        assertThat(findings()).extracting(Finding::kind).containsExactly("shifted-directory");
        assertThat(findings().get(0).message()).startsWith("The directory of LP-2B is not its own");
    }

    @Test
    void a_copy_of_the_neighbours_card_is_told_where_the_neighbour_has_it_rightly() {
        for (int p = 1; p <= 6; p++) {
            lines.add("LP-2A/" + p + " RECEPT RM " + (200 + p));
            lines.add("LP-2B/" + p + " RECEPT RM " + (200 + p));
            lines.add("LP-2A/" + p + " feeds Plugs " + (200 + p));
            lines.add("LP-2B/" + p + " feeds Plugs " + (250 + p));
        }
        assertThat(findings()).extracting(Finding::kind).containsExactly("shifted-directory");
        assertThat(findings().get(0).message()).startsWith("The directory of LP-2B is not its own");
    }

    @Test
    void flats_whose_cards_read_alike_have_each_their_own() {
        for (int p = 1; p <= 6; p++) {
            lines.add("LP-2A/" + p + " RECEPT RM " + p);
            lines.add("LP-2B/" + p + " RECEPT RM " + p);
            lines.add("LP-2A/" + p + " feeds Recept rm " + p);
        }
        for (int p = 4; p <= 6; p++) lines.add("LP-2B/" + p + " feeds Recept rm " + p);
        for (int p = 1; p <= 3; p++) lines.add("LP-2B/" + p + " feeds Recept rm " + (p + 30));
        assertThat(findings()).extracting(Finding::kind).containsExactly("feeds-other", "feeds-other", "feeds-other");
    }

    @Test
    void of_two_explanations_as_good_the_plainer_is_told_and_the_other_named() {
        for (int p = 1; p <= 10; p++) lines.add("LP-1/" + p + " RECEPT RM " + (100 + p));
        // three rows' entries, each traced across the panel: one position on, or on the other side
        for (int p = 1; p <= 5; p += 2) lines.add("LP-1/" + (p + 1) + " feeds Recept rm " + (100 + p));
        assertThat(told())
                .containsExactly(
                        "shifted-directory: Entries of LP-1 stand on the opposite side from where they were traced "
                                + "(odd and even exchanged): 3 entries of positions 2, 4 and 6. It may as well be that they "
                                + "stand one position above where they were traced: trace more of them to tell.");
    }
}
