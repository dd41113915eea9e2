package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory.Header;
import asfound.model.Directory.Mains;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** Headers that stand in a column beside their directories. */
class HeadersBesideTest {

    @Test
    void a_header_longer_than_its_short_directory_is_read_to_its_foot() throws IOException {
        String[] lines = {
            "LOCATION",
            "CLOSET 3",
            "FED FROM",
            "MDP",
            "BUS AMPS",
            "225",
            "MAIN",
            "LUGS ONLY",
            "A.I.C. SYM",
            "22,000",
            "MOUNTING",
            "SURFACE"
        };
        double[] at = {200, 230, 360, 400};
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "PANEL LP-7");
            for (int i = 0; i < lines.length; i++) s.text(40 + 4 * (i % 2), 46 + 10 * i, lines[i]);
            s.rule(196, 37, 196, 98)
                    .rule(420, 37, 420, 98)
                    .rule(196, 37, 420, 37)
                    .rule(196, 98, 420, 98);
            s.line(46, at, "CKT", "LOAD DESCRIPTION", "AMP", "P");
            for (int r = 1; r < 5; r++) s.line(46 + 12 * r, at, r + "", "LIGHTS ROOM " + r, "20", "1");
            Header h = s.directory().header();
            assertThat(h.mains().value()).contains(Mains.LUGS);
            assertThat(h.interruptingKA().or(0.0)).isEqualTo(22);
            assertThat(h.mounting().or("")).isEqualTo("SURFACE");
            assertThat(h.busA().or(0)).isEqualTo(225);
        }
    }
}
