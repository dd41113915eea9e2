package asfound.names;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Place;
import asfound.model.Problem;
import asfound.recordset.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NameBookTest {

    private static NameBook drawn(String... names) {
        return with(Settings.none(), names);
    }

    private static NameBook with(Settings settings, String... names) {
        List<Written> written = new ArrayList<>();
        for (String n : names) written.add(Written.drawn(n, Place.row("one-line/feeders.csv", written.size() + 2)));
        return NameBook.of(written, settings);
    }

    private static Settings settings(List<List<String>> same, List<List<String>> distinct) {
        Settings none = Settings.none();
        return new Settings(
                none.building(),
                Map.of(),
                same,
                distinct,
                Map.of(),
                Map.of(),
                none.numbering(),
                List.of(),
                none.chosen());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "LP-2A",
                "Panel LP2A",
                "LP 2-A",
                "PNL. LP-2A",
                "\"LP2A\"",
                "Lp 2a",
                "LP-2A (2nd floor)",
                "PANEL: LP-2A",
                "LP2-A",
                "LP_2A",
                "LP–2A",
                "LP—2A",
                "ＬＰ－２Ａ",
                "LP\u00A02A",
                "LP-2A PANEL",
                "PANELBOARD LP-2A",
                "Panel Board LP-2A",
                "LP-2A, 2nd floor elec rm",
                "LP-2A @ ELEC RM 204",
                "LP-2A 225A",
                "LP-2A 208Y/120V",
                "(E) LP-2A",
                "LP-2A (existing)",
                "EXISTING PANEL LP-2A",
                "FEEDER TO LP-2A",
                "LP-2A FEEDER",
                "LIGHTING PANEL LP-2A",
                "2ND FLOOR PANEL LP-2A",
                "LP-2A VIA T-3",
                "SUB-PANEL LP-2A",
                "lp.2a",
                "LP-2A MLO",
                "LIGHTING PANEL 2A",
                "L\u200BP-2A",
                "LP (2A)",
            })
    void one_panel_is_written_in_many_ways(String text) {
        assertThat(drawn("LP-2A", "LP-2B", "MDP", "T-3").nameOf(text)).contains("LP-2A");
    }

    @ParameterizedTest
    @CsvSource({
        "MDP,MAIN DIST PANEL MDP",
        "MDP,MAIN DISTRIBUTION PANEL",
        "MDP,SWBD MDP",
        "MDP,MDP (MAIN)",
        "DP-1,DISTRIBUTION PANEL DP-1",
        "DP-1,DISTRIBUTION PANEL 1",
        "T-1,XFMR T1",
        "T-1,TRANSFORMER T-1",
        "T-1,XFMR-1",
        "T-1,T1 75KVA",
        "GEN-1,GENERATOR GEN-1",
        "GEN-1,GENERATOR",
        "GEN-1,Emergency Generator",
        "GEN-1,GENERATOR #1",
        "ATS-1,AUTOMATIC TRANSFER SWITCH ATS-1",
        "ATS-1,ATS 1",
        "ATS-1,Transfer Switch ATS-1",
        "ATS-1,TRANSFER SWITCH 1",
        "UTILITY,UTILITY SERVICE",
        "UTILITY,Utility",
        "UTILITY,UTILITY CO.",
        "UTILITY,Service Entrance",
        "EF-1,EXHAUST FAN EF-1",
        "EF-1,EF 1",
        "AHU-1,AIR HANDLER AHU-1",
        "RTU-1,ROOFTOP UNIT RTU-1",
        "INV-1,SOLAR INVERTER INV-1",
        "INV-1,INVERTER 1",
        "UPS-1,UPS 1",
        "EF-1,EF-1 DISC",
    })
    void other_equipment_is_known_by_its_words_as_well(String name, String text) {
        assertThat(drawn("MDP", "DP-1", "T-1", "GEN-1", "ATS-1", "UTILITY", "EF-1", "AHU-1", "RTU-1", "INV-1", "UPS-1")
                        .nameOf(text))
                .contains(name);
    }

    @ParameterizedTest
    @CsvSource({
        "LP-2A,LP-2B",
        "EF-1,EF-11",
        "LP-2,LP-12",
        "LP-2,LP-02",
        "LP-21,LP-2-1",
        "LP-2,LP-2 SEC 2",
        "LP-2A,XFMR LP-2A",
        "T-1,PANEL T-1",
        "UPS-1,PANEL UPS-1",
        "GEN-1,GEN-1 PANEL",
        "LP-1,RP-1",
        "MDP,MDP-2",
        "MDP NORTH,MDP SOUTH",
        "EF-1,EF-1 CONTROL",
        "P-1,P-1 VFD",
        "LP-2A,LP-2A & LP-2B",
        "LP-2A,RECEPT BY LP-2A",
        "MDP,MDP/7",
        "LP-2A,LP-2Α",
        "LP-2A,LР-2A",
        "LP-2,LP-2²",
        "A,B",
        "PANEL A,PANEL B",
        "UTILITY 1,UTILITY 2",
        "TRANSFORMER 1,PANEL 1",
        "UTILITY,UTILITY TRANSFORMER",
        "LIGHTING RM 204,LIGHTING RM 206",
        "GEN-1,GEN-2",
    })
    void names_that_are_two_things_are_never_one(String one, String other) {
        NameBook book = drawn(one, other);
        assertThat(book.nameOf(one)).isPresent().isNotEqualTo(book.nameOf(other));
        assertThat(drawn(one).nameOf(other)).isEmpty();
        assertThat(drawn(other).nameOf(one)).isEmpty();
    }

    @Test
    void the_one_name_is_the_drawings_plain_way_and_the_others_are_kept() {
        NameBook book = NameBook.of(
                List.of(
                        Written.surveyed("LP2A", Place.row("survey/a.csv", 2)),
                        Written.surveyed("LP2A", Place.row("survey/a.csv", 3)),
                        Written.drawn("PANEL LP-2A", Place.page("drawings/a.pdf", 1)),
                        Written.described("Lighting panel 2A", Place.page("drawings/b.pdf", 1)),
                        Written.surveyed("RP1", Place.row("survey/a.csv", 4))),
                Settings.none());
        assertThat(book.names()).containsExactly("LP-2A", "RP1");
        assertThat(book.alsoWritten("LP-2A")).containsExactly("LP2A", "Lighting panel 2A", "PANEL LP-2A");
        assertThat(book.problems()).isEmpty();
    }

    @Test
    void a_name_is_the_same_in_whatever_order_the_rows_come() {
        List<Written> all = new ArrayList<>();
        for (String n : List.of("LP-2A", "LP2A", "Panel LP-2A", "T1", "XFMR T-1", "GENERATOR", "GEN-1", "A", "PANEL A"))
            all.add(Written.drawn(n, Place.row("f" + all.size() + ".csv", 2)));
        NameBook book = NameBook.of(all, Settings.none());
        java.util.Collections.reverse(all);
        assertThat(NameBook.of(all, Settings.none()).names()).isEqualTo(book.names());
        assertThat(book.names()).containsExactly("A", "GEN-1", "LP-2A", "T1");
    }

    @Test
    void what_could_be_two_things_is_neither_and_is_said() {
        NameBook book = NameBook.of(
                List.of(
                        Written.drawn("GEN-1", Place.row("f.csv", 2)),
                        Written.drawn("GEN-2", Place.row("f.csv", 3)),
                        Written.described("GENERATOR", Place.row("s.csv", 9))),
                Settings.none());
        assertThat(book.nameOf("GENERATOR")).isEmpty();
        assertThat(messages(book))
                .containsExactly("s.csv, row 9: 'GENERATOR' could mean GEN-1 or GEN-2, and is taken for neither."
                        + " Write the name in full, or name it under 'same' in record.yaml.");
    }

    @Test
    void a_bare_letter_on_two_floors_is_said_and_not_guessed() {
        NameBook book = drawn("PANEL A 2ND FLOOR", "PANEL A (3RD FLOOR)", "PANEL A");
        assertThat(book.names()).hasSize(3);
        assertThat(messages(book)).singleElement().asString().contains("'PANEL A' could mean");
        assertThat(drawn("PANEL A").nameOf("PANEL A, 2ND FLOOR")).contains("PANEL A");
    }

    @Test
    void a_bare_letter_with_and_without_word_and_room_is_one_panel_where_there_is_no_other() {
        NameBook book = drawn("A", "PANELBOARD A", "Panel A (Rm 337)", "PNL. A, Rm 337", "PNL A MLO", "B", "Panel B");
        assertThat(book.names()).containsExactly("A", "B");
        assertThat(book.problems()).isEmpty();
        NameBook two = drawn("A", "Panel A (Rm 337)", "Panel A (Rm 204)");
        assertThat(two.nameOf("Panel A (Rm 337)")).isNotEqualTo(two.nameOf("Panel A (Rm 204)"));
        assertThat(drawn("A", "PANEL A", "XFMR A").names()).containsExactly("A", "XFMR A");
    }

    @Test
    void a_switchboard_and_a_panel_of_one_bare_letter_are_two() {
        NameBook book = drawn("SWBD-A", "SWBD-B", "PANEL A", "A", "PNL. B");
        assertThat(book.names()).containsExactly("A", "PNL. B", "SWBD-A", "SWBD-B");
        assertThat(book.nameOf("Switchboard A")).contains("SWBD-A");
        assertThat(book.nameOf("Panel A (Rm 108)")).contains("A");
        assertThat(drawn("SWBD DP-1", "PANEL DP-1").names()).hasSize(1);
        assertThat(drawn("SWBD-A").nameOf("A")).contains("SWBD-A");
    }

    @Test
    void a_letter_of_another_script_is_said_and_not_matched() {
        NameBook book = drawn("LP-2A", "LP-2\u0391");
        assertThat(book.nameOf("LP-2\u0391")).contains("LP-2\u0391");
        assertThat(messages(book))
                .singleElement()
                .asString()
                .contains("one-line/feeders.csv, row 3", "greek capital letter alpha", "looks like LP-2A");
    }

    @Test
    void the_users_word_comes_first() {
        NameBook book = with(
                settings(
                        List.of(List.of("LP-2A", "L2A"), List.of("LP-02", "LP-2")),
                        List.of(List.of("T-1", "XFMR 1"), List.of("DP-1", "DP 1"))),
                "LP-2A",
                "L2A",
                "LP-02",
                "LP-2",
                "T-1",
                "XFMR 1",
                "DP-1",
                "DP 1");
        assertThat(book.nameOf("Panel L-2A")).contains("LP-2A").isEqualTo(book.nameOf("LP2A"));
        assertThat(book.nameOf("LP-02")).isEqualTo(book.nameOf("LP-2")).isPresent();
        assertThat(book.nameOf("T-1")).isPresent().isNotEqualTo(book.nameOf("XFMR 1"));
        assertThat(book.nameOf("DP-1")).isPresent().isNotEqualTo(book.nameOf("DP 1"));
        assertThat(book.problems()).isEmpty();
    }

    @Test
    void same_and_distinct_that_contradict_are_said_and_kept_apart() {
        NameBook book =
                with(settings(List.of(List.of("LP-1", "LP-2")), List.of(List.of("LP-1", "LP-2"))), "LP-1", "LP-2");
        assertThat(book.nameOf("LP-1")).isNotEqualTo(book.nameOf("LP-2"));
        assertThat(messages(book)).singleElement().asString().contains("both under 'same' and 'distinct'");
    }

    @Test
    void a_leading_zero_counts_and_is_said() {
        assertThat(messages(drawn("LP-2", "LP-02"))).singleElement().asString().contains("leading zero");
    }

    @Test
    void a_description_makes_no_name() {
        NameBook book =
                NameBook.of(List.of(Written.described("RECEPT RM 204", Place.row("s.csv", 2))), Settings.none());
        assertThat(book.names()).isEmpty();
        assertThat(book.nameOf("RECEPT RM 204")).isEqualTo(Optional.empty());
    }

    private static List<String> messages(NameBook book) {
        return book.problems().stream().map(Problem::inWords).toList();
    }
}
