package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory;
import asfound.model.Directory.Header;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** Labels that tell more of their value in brackets. */
class LabelsInBracketsTest {

    @Test
    void a_label_says_its_unit_or_kind_in_brackets() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 130, 250, 340};
            s.line(40, at, "Panel:", "KP-1", "A.I.C. (sym.):", "22,000 A");
            s.line(52, at, "Location (room):", "Kitchen", "Bus (copper):", "400 A");
            s.twoSided(80);
            Header h = s.directory().header();
            assertThat(h.interruptingKA().value()).contains(22.0);
            assertThat(h.location().or("-")).isEqualTo("Kitchen");
            assertThat(h.busA().value()).contains(400);
        }
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 130, 250, 340};
            s.line(40, at, "DB REF.", "DB-R3", "BUSBAR (A)", "100");
            s.line(52, at, "INCOMER MCCB (A)", "80", "FAULT LEVEL (kA)", "10");
            s.twoSided(80);
            Header h = s.directory().header();
            assertThat(h.mainA().value()).contains(80);
            assertThat(h.mains().value()).contains(Directory.Mains.BREAKER);
        }
    }
}
