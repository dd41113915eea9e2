package asfound.names;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.CircuitRef;
import asfound.model.Place;
import asfound.recordset.Settings;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SupplyTextTest {

    private final NameBook names = NameBook.of(
            Stream.of("MDP", "T-1", "T-2", "LP-2", "LP-27", "DP-1", "GEN-1", "ATS-1")
                    .map(n -> Written.drawn(n, Place.row("one-line/feeders.csv", 2)))
                    .toList(),
            Settings.none());

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "MDP                        | MDP",
                "MDP CKT 7                  | MDP/7",
                "MDP-7                      | MDP/7",
                "MDP/7,9,11                 | MDP/7-9-11",
                "MDP-7,9,11                 | MDP/7-9-11",
                "MDP 7-9-11                 | MDP/7-9-11",
                "FED FROM MDP, BKR 7        | MDP/7",
                "FED FROM: MDP              | MDP",
                "Panel MDP, Circuit No. 7   | MDP/7",
                "MDP (CKT 7)                | MDP/7",
                "MDP (7)                    | MDP/7",
                "MDP [7,9,11]               | MDP/7-9-11",
                "CKT 7 OF MDP               | MDP/7",
                "MDP #7                     | MDP/7",
                "MDP CKT #7,9,11            | MDP/7-9-11",
                "MDP CB-7                   | MDP/7",
                "MDP/M1                     | MDP/M1",
                "MDP CB M1                  | MDP/M1",
                "MAIN DIST PANEL MDP CKT 7  | MDP/7",
                "XFMR T-2                   | T-2",
                "T-1 VIA MDP-5              | T-1 < MDP/5",
                "MDP-5 VIA T-1              | T-1 < MDP/5",
                "MDP CKT 5 THRU XFMR T1     | T-1 < MDP/5",
                "MDP-5 VIA ATS-1            | ATS-1 < MDP/5",
                "MDP 7 100A/3P              | MDP/7",
                "LP-27                      | LP-27",
                "LP-2-7                     | LP-2/7",
                "LP-2 CKT 7                 | LP-2/7",
                "LP-28                      | ?LP-28",
                "LP-9 CKT 7                 | ?LP-9/7",
                "DP-1-3                     | DP-1/3",
                "DP-1                       | DP-1",
                "UNKNOWN                    | ?UNKNOWN",
            })
    void a_fed_from_text_names_equipment_and_device(String text, String expected) {
        assertThat(inWords(SupplyText.of(text, names))).isEqualTo(expected);
    }

    @Test
    void a_blank_says_nothing() {
        assertThat(SupplyText.of("  ", names).steps()).isEmpty();
    }

    private static String inWords(SupplyText text) {
        List<SupplyText.Step> steps = text.steps();
        return steps.stream()
                .map(s -> s.name().orElse("?" + s.text())
                        + s.device().map(CircuitRef::inWords).map(d -> "/" + d).orElse(""))
                .collect(Collectors.joining(" < "));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "G 1   | ?G 1",
                "G-1   | ?G-1",
                "GEN 1 | GEN-1",
                "GENERATOR 1 | GEN-1",
                "G CKT 1 | G/1",
                "G     | G",
                "G 3   | G/3",
            })
    void a_short_name_of_a_generator_that_is_also_a_circuit_of_panel_g_is_neither(String raw, String steps) {
        NameBook both = NameBook.of(
                Stream.of("G", "GEN-1")
                        .map(n -> Written.drawn(n, Place.row("one-line/feeders.csv", 2)))
                        .toList(),
                Settings.none());
        assertThat(inWords(SupplyText.of(raw, both))).isEqualTo(steps);
    }
}
