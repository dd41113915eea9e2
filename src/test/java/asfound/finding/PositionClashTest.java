package asfound.finding;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.sample.Building;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Positions that a device cannot have. */
class PositionClashTest {

    private static List<String> told(int size, String... further) {
        List<String> lines = new ArrayList<>();
        for (int p = 1; p <= size; p++) if (p != 41) lines.add("LP-1/" + p + " RECEPT RM " + (100 + p));
        lines.addAll(List.of(further));
        return Building.of(lines.toArray(String[]::new)).findings().stream()
                .map(f -> f.kind() + ": " + f.message())
                .toList();
    }

    @Test
    void a_three_pole_device_in_the_last_row_reaches_past_the_panel() {
        assertThat(told(42, "LP-1/41-43-45 AHU-1"))
                .containsExactly("position-clash: LP-1/41-43-45 (AHU-1) reaches past the panel's 42 positions.");
    }

    @Test
    void a_position_after_a_gap_stands_past_the_panel() {
        assertThat(told(42, "LP-1/41 RECEPT RM 141", "LP-1/44 AHU-1"))
                .containsExactly("position-clash: LP-1/44 (AHU-1) stands past the panel's 42 positions.");
    }

    @Test
    void a_panel_of_54_positions_has_its_41_43_45() {
        assertThat(told(54, "LP-1/41-43-45 AHU-1").stream().filter(f -> f.contains("past")))
                .isEmpty();
    }

    @Test
    void a_card_whose_last_rows_belong_to_multi_pole_devices_on_both_sides_ends_with_them() {
        assertThat(told(37, "LP-1/39-41 EF-1", "LP-1/38-40-42 AHU-1")).isEmpty();
    }

    @Test
    void what_is_listed_in_part_has_no_size() {
        assertThat(told(27, "LP-1/35 AHU-1")).isEmpty();
    }

    @Test
    void a_row_left_out_near_the_end_of_a_42_position_panel_does_not_make_it_one_of_40() {
        assertThat(told(39, "LP-1/38-40-42 AHU-1").stream().filter(f -> f.contains("past")))
                .isEmpty();
        assertThat(told(18, "LP-1/15-17-19 AHU-1", "LP-1/18-20-22 AHU-2").stream()
                        .filter(f -> f.contains("past")))
                .isEmpty();
    }
}
