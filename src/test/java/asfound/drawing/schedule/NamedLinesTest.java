package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory;
import asfound.model.Directory.Header;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lines that say name, place and supply one after the other, and what stands between two directories. */
class NamedLinesTest {

    @Test
    void name_place_and_supply_stand_in_one_line_with_signs_between() throws IOException {
        for (String sign : List.of("·", "|", "•", "/", "–", "—", "-"))
            try (DrawnSheet s = new DrawnSheet()) {
                s.text(40, 40, "DB/C/GF " + sign + " Riser C, ground " + sign + " fed from MDP/C 3");
                s.twoSided(60);
                Header h = s.directory().header();
                assertThat(h.designation().or("-")).as(sign).isEqualTo("DB/C/GF");
                assertThat(h.location().or("-")).as(sign).isEqualTo("Riser C, ground");
                assertThat(h.fedFrom().or("-")).as(sign).isEqualTo("MDP/C 3");
            }
    }

    @Test
    void a_sentence_close_below_a_directory_is_not_the_next_ones() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            String[] names = {"DB/C/GF", "DB/C/01"}, supplies = {"MDP/C 3", "MDP/C 4"};
            int[] mains = {80, 100}, bus = {125, 160};
            for (int i = 0; i < 2; i++) {
                double y = 40 + 130 * i;
                s.text(40, y, names[i] + " · Riser C · fed from " + supplies[i]);
                s.twoSided(y + 16);
                s.text(
                        40,
                        y + 84,
                        "Incoming supply 400/230 V three phase four wire. Incomer " + mains[i]
                                + " A MCB. Pan assembly rated " + bus[i] + " A. Fault rating 10 kA.");
            }
            List<Directory> read = s.read().directories();
            assertThat(read).extracting(Directory::panel).containsExactly(names);
            for (int i = 0; i < 2; i++) {
                Header h = read.get(i).header();
                assertThat(h.location().or("-")).isEqualTo("Riser C");
                assertThat(h.fedFrom().or("-")).isEqualTo(supplies[i]);
                assertThat(h.mainA().value()).contains(mains[i]);
                assertThat(h.busA().value()).contains(bus[i]);
                assertThat(h.interruptingKA().value()).contains(10.0);
                assertThat(h.wires().value()).contains(4);
            }
        }
    }

    @Test
    void what_a_note_tells_of_other_equipment_is_not_said_of_the_panel() throws IOException {
        for (String note : List.of(
                "EF-3 - fed from MCC-1",
                "EF-3 is fed from MCC-1.",
                "Panel RP-9 is fed from circuit 5.",
                "PANEL RP-9 FED FROM MDP",
                "Panelboard RP-9, located in roof plant room",
                "RP-9 | Roof plant room | fed from MDP",
                "RP-9 supplied by MDP"))
            for (boolean above : new boolean[] {true, false})
                try (DrawnSheet s = new DrawnSheet()) {
                    s.text(40, 40, "PANEL LP-1");
                    s.text(40, above ? 54 : 160, note);
                    s.twoSided(76);
                    Header h = s.directory().header();
                    assertThat(h.designation().or("-")).as(note).isEqualTo("LP-1");
                    assertThat(h.location().or("-")).as(note).isEqualTo("-");
                    assertThat(h.fedFrom().or("-")).as(note).isEqualTo("-");
                }
    }

    @Test
    void what_a_line_tells_of_the_panel_itself_is_taken_wherever_it_is_named() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL LP-1");
            s.twoSided(60);
            s.text(40, 160, "LP-1 is fed from DP-2.");
            assertThat(s.directory().header().fedFrom().or("-")).isEqualTo("DP-2");
        }
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL LP-1");
            s.twoSided(60);
            s.text(40, 160, "Panel LP-1 is fed from DP-2.");
            assertThat(s.directory().header().fedFrom().or("-")).isEqualTo("DP-2");
        }
    }

    @Test
    void a_line_about_something_below_a_directory_does_not_name_it() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "120/208V 3PH 4W");
            s.twoSided(60);
            s.text(40, 160, "RP-9 - fed from MDP");
            assertThat(s.directory().header().designation().isStated()).isFalse();
        }
    }

    @Test
    void a_main_device_that_is_fed_from_somewhere_is_no_name() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL LP-1");
            s.text(40, 54, "225A fed from DP-2");
            s.twoSided(76);
            assertThat(s.directory().header().fedFrom().or("-")).isEqualTo("DP-2");
        }
    }

    @Test
    void the_place_of_another_panel_is_not_that_of_this_one() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL LP-1");
            s.twoSided(60);
            s.text(40, 160, "PANEL DP-3 at roof plant room");
            assertThat(s.directory().header().location().or("-")).isEqualTo("-");
        }
    }
}
