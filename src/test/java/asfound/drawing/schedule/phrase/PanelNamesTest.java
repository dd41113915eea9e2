package asfound.drawing.schedule.phrase;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What titles call a panel (common practice). */
class PanelNamesTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "EXISTING PANEL \"2A\" - REVISED | 2A",
                "PANEL 12A | 12A",
                "Panel MCC-LP. 208Y/120 V, 3 phase, 4 wire | MCC-LP",
                "Table 4 – Panel LP-B. | LP-B",
                "SCHEDULE OF LIGHTING DISTRIBUTION BOARD LDB-02 | LDB-02",
                "DB 5 – SPORTS HALL | DB 5",
                "Tableau TD-RDC – Repérage des départs | TD-RDC",
                "CÉDULE DU PANNEAU PE-3 | PE-3",
                "TABLERO TAB-B | TAB-B",
                "MDP - MAIN DISTRIBUTION PANEL | MDP",
                "Unterverteilung UV-1 | UV-1"
            })
    void a_title_names_its_panel(String title, String name) {
        assertThat(Titles.nameIn(title)).contains(name);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "PANEL 60A",
                "DISTRIBUTION BOARD 12 WAY",
                "DB 12 WAY TP&N",
                "4. Panel directory",
                "3.2 Panel schedules",
                "Tableau de charges"
            })
    void a_rating_or_the_number_of_a_section_names_none(String text) {
        assertThat(Titles.nameIn(text)).isEmpty();
    }
}
