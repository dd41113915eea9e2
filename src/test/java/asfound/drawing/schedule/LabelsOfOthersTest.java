package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory;
import asfound.model.Directory.Header;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** Values that stand near a label and are no value of it: another label, the entry of a list, what a tester measured. */
class LabelsOfOthersTest {

    @Test
    void labels_in_two_languages_side_by_side_have_their_values_below() throws IOException {
        String[][] labels = {
            {"Panel / Panneau", "Location / Emplacement", "Fed from / Alimenté de"},
            {"Panel", "Location / Lokalizacja", "Fed from / Zasilanie z"},
            {"Panel", "Ubicación / Location", "Alimentado de / Fed from"}
        };
        for (String[] row : labels)
            try (DrawnSheet s = new DrawnSheet()) {
                double[] at = {40, 200, 360};
                s.line(40, at, row).line(50, at, "P-3B", "Local 3-108", "PD-1").twoSided(80);
                Header h = s.directory().header();
                assertThat(h.designation().or("")).as(row[1]).isEqualTo("P-3B");
                assertThat(h.location().or("")).as(row[1]).isEqualTo("Local 3-108");
                assertThat(h.fedFrom().or("")).as(row[1]).isEqualTo("PD-1");
            }
    }

    @Test
    void a_place_in_two_languages_is_a_place() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 200, 360};
            s.line(40, at, "Panel / Panneau", "Location / Emplacement", "Fed from / Alimenté de");
            s.line(50, at, "P-3B", "SALLE ÉLEC. / ELEC. ROOM", "PD-1").twoSided(80);
            assertThat(s.directory().header().location().or("")).isEqualTo("SALLE ÉLEC. / ELEC. ROOM");
        }
    }

    @Test
    void what_ends_in_a_colon_is_no_value_though_its_label_is_unknown() throws IOException {
        Directory d = Readings.table(
                "Panel:,LP-2\nRoom:,\nHome of the spare key:,Gate house\n"
                        + "CKT,LOAD,BKR\n1,Lights room 1,20/1\n2,Lights room 2,20/1\n3,Lights room 3,20/1\n4,Lights room 4,20/1\n");
        assertThat(d.header().location().or("")).isEmpty();
    }

    @Test
    void the_normal_source_of_a_panel_is_what_feeds_it() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL: EL-1").text(40, 52, "NORMAL SOURCE: MDP-6").twoSided(80);
            assertThat(s.directory().header().fedFrom().or("")).isEqualTo("MDP-6");
        }
    }

    @Test
    void a_second_source_of_a_panel_is_told() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL: EL-1").text(40, 52, "NORMAL SOURCE: MDP-6");
            s.text(240, 52, "EMERGENCY SOURCE: EDP-1").twoSided(80);
            Directory d = s.directory();
            assertThat(d.header().fedFrom().or("")).isEqualTo("MDP-6");
            assertThat(Readings.said(d.problems()))
                    .containsExactly("The header was not understood here: 'EDP-1' as fed from.");
        }
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL: EL-1").text(40, 52, "FED FROM: MDP-6").text(240, 52, "FEED: BOTTOM");
            assertThat(Readings.said(s.twoSided(80).directory().problems())).isEmpty();
        }
    }

    @Test
    void pairs_spread_over_the_columns_of_a_worksheet_belong_together_however_wide_a_note_makes_these()
            throws IOException {
        String note =
                "Note: check the interrupting rating against the letter of the utility before anything is ordered";
        Directory d =
                Readings.table("Panel: HOUSE-1\n\nLocation,,Unit 4C\nFed From,,3SH1\nMounting,,Flush\n\nCKT,LOAD,BKR\n"
                        + "1,Recepts of the long corridor in the north wing,20/1\n2,Lights room 2,20/1\n"
                        + "3,Lights room 3,20/1\n4,Lights room 4,20/1\n\n" + note + "\n");
        assertThat(d.header().location().or("")).isEqualTo("Unit 4C");
        assertThat(d.header().fedFrom().or("")).isEqualTo("3SH1");
        assertThat(d.header().mounting().or("")).isEqualTo("Flush");
    }

    @Test
    void a_heading_in_the_middle_over_entries_at_the_left_is_one_of_its_list() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.twoSided(60).text(40, 160, "PANEL LP-2, 208Y/120V, 3PH, 4W");
            double[] at = {40, 100, 160, 240, 300};
            double[] heads = {45, 105, 165, 260, 305};
            s.line(220, heads, "UNIT", "HP", "VOLTS", "PH", "STARTER");
            s.line(240, at, "EF-1", "1/2", "120", "1", "MAN.");
            s.line(260, at, "EF-2", "3/4", "208", "3", "FVNR 1");
            s.line(280, at, "EF-3", "3/4", "208", "3", "FVNR 1");
            assertThat(s.directory().header().phases().value()).contains(3);
        }
    }

    @Test
    void a_fault_current_that_was_measured_or_calculated_is_no_interrupting_rating() throws IOException {
        for (String label : new String[] {"Prospective fault current", "PSCC", "Ipf", "Available fault current"})
            for (double x : new double[] {0, 160})
                try (DrawnSheet s = new DrawnSheet()) {
                    s.text(40, 40, "PANEL LP-2");
                    if (x == 0) s.text(40, 54, label + ": 1.2 kA");
                    else s.text(40, 54, label + ":").text(x, 54, "1.2 kA");
                    s.twoSided(80);
                    assertThat(s.directory().header().interruptingKA().isBlank())
                            .as(label)
                            .isTrue();
                }
    }
}
