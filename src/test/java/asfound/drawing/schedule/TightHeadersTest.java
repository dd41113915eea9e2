package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory.Header;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Headers of panels side by side, whose lines leave no more than a space between them. */
class TightHeadersTest {

    private static final String[] ROWS = {
        "CKT  LOAD SERVED        AMPS  POLES        CKT  LOAD SERVED        AMPS  POLES",
        "1    NURSE CALL         20    1            1    FUME HOOD          20    1",
        "2    UNIT HEATER        30    2            2    SPARE              20    1",
        "3                                          3    COPY MACHINE       20    1",
        "4    DOCK LIGHTS        20    1            4    TEA KITCHEN        20    1",
        "5    SPARE              20    1            5    UNIT HEATER        25    1"
    };

    @Test
    void what_stands_before_the_next_panels_label_belongs_to_the_panel_on_the_left() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.typed(
                    40,
                    "PANEL: LP-1         LOCATION: CORRIDOR 118 PANEL: LP-2         LOCATION: CLOSET E3",
                    "SOURCE: MDP         VOLTAGE: 208Y/120V     SOURCE: EMDP        VOLTAGE: 480Y/277V",
                    "PHASES: 3           WIRES: 4               PHASES: 3           WIRES: 4");
            s.typed(80, ROWS);
            List<Header> headers =
                    s.read().directories().stream().map(d -> d.header()).toList();
            assertThat(headers).extracting(h -> h.designation().or("-")).containsExactly("LP-1", "LP-2");
            assertThat(headers).extracting(h -> h.location().or("-")).containsExactly("CORRIDOR 118", "CLOSET E3");
            assertThat(headers).extracting(h -> h.fedFrom().or("-")).containsExactly("MDP", "EMDP");
        }
    }

    @Test
    void labels_in_turn_on_the_lines_of_one_header_stay_its_own() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.typed(40, "PANEL: LP-1  LOCATION: CORRIDOR 118", "BUS: 225 A   MAIN: 100 A MCB", "AIC: 22 kA");
            s.twoSided(80);
            Header h = s.directory().header();
            assertThat(h.location().or("-")).isEqualTo("CORRIDOR 118");
            assertThat(h.busA().or(0)).isEqualTo(225);
            assertThat(h.mainA().or(0)).isEqualTo(100);
        }
    }
}
