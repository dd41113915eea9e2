package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory;
import asfound.model.Directory.Mains;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Headers of boards and panels as sheets met later write them. */
class BoardHeadersTest {

    private static Directory below(String... lines) throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            for (int i = 0; i < lines.length; i++) s.text(40, 30 + 14 * i, lines[i]);
            s.twoSided(50 + 14 * lines.length);
            return s.directory();
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "DISTRIBUTION BOARD DB-01 (12 WAY TP&N); DB-01",
                "PANEL \"LP-1\" — Located in Corridor 114. 208Y/120V, 3Ø, 4W, 225A bus.; LP-1",
                "BRANCH CIRCUIT PANEL CL-A; CL-A",
                "SHOP-P1 CIRCUIT LIST; SHOP-P1",
            })
    void how_large_a_board_is_and_where_it_hangs_are_no_part_of_its_name(String title, String name) throws IOException {
        assertThat(below(title).panel()).isEqualTo(name);
    }

    @Test
    void the_device_that_protects_a_board_is_not_the_board() throws IOException {
        Directory d = below(
                "Distribution board designation: DB3",
                "Supply to distribution board from: Main LV switchboard",
                "Overcurrent device for DB: BS 88-2 160 A");
        assertThat(d.panel()).isEqualTo("DB3");
        assertThat(d.header().fedFrom().or("")).isEqualTo("Main LV switchboard");
    }

    @ParameterizedTest
    @CsvSource({"Isolator: 100A DP", "Main isolator: 100 A", "Incomer: 125A TP&N switch disconnector"})
    void an_isolator_is_no_main_breaker(String line) throws IOException {
        Directory.Header h = below("Board DB-7", line).header();
        assertThat(h.mains().isBlank()).isTrue();
        assertThat(h.mainA().isBlank()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"Main isolator: 80 A circuit breaker,80", "Incomer: 100A MCCB,100", "Main switch: 100 A MCB,100"})
    void a_breaker_is_one_whatever_its_label(String line, int amperes) throws IOException {
        Directory.Header h = below("Board DB-7", line).header();
        assertThat(h.mains().value()).contains(Mains.BREAKER);
        assertThat(h.mainA().value()).contains(amperes);
    }

    @Test
    void a_line_of_sentences_says_what_the_busbars_carry_and_not_what_the_isolator_does() throws IOException {
        Directory.Header h = below(
                        "Distribution board SPN-1",
                        "Location: Entrance hall. Supply: 230V single phase. Busbar chamber: 100A. Isolator: 80A DP")
                .header();
        assertThat(h.busA().value()).contains(100);
        assertThat(h.mainA().isBlank()).isTrue();
        assertThat(h.fedFrom().isStated()).isFalse();
        assertThat(h.location().or("")).isEqualTo("Entrance hall");
    }

    @Test
    void the_interrupting_rating_may_have_stops_in_its_label() throws IOException {
        assertThat(below("PANEL K-2", "K.A.I.C.: 10").header().interruptingKA().value())
                .contains(10.0);
    }

    @Test
    void a_label_in_two_languages_is_known_by_the_one_that_is() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 180, 300, 430};
            s.line(30, at, "Verteiler / Board", "UV-1", "Location / Einbauort", "Basement");
            s.line(44, at, "Einspeisung / Fed from", "HV-1", "Spannung / Voltage", "400/230 V");
            s.twoSided(80);
            Directory d = s.directory();
            assertThat(d.panel()).isEqualTo("UV-1");
            assertThat(d.header().location().or("")).isEqualTo("Basement");
            assertThat(d.header().fedFrom().or("")).isEqualTo("HV-1");
            assertThat(d.header().voltage().isStated()).isTrue();
        }
    }
}
