package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** Headings no further apart than words, lines of forms, and loads in columns by their class. */
class TightHeadingsTest {

    @Test
    void a_heading_over_the_numbers_is_parted_from_the_one_beside_it() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "PANEL TX-1")
                    .text(40, 50, "CKT LOAD")
                    .text(150, 50, "AMP")
                    .text(190, 50, "P");
            double[] at = {40, 58, 150, 190};
            for (int r = 1; r < 5; r++) s.line(50 + 12 * r, at, "" + r, "Oven " + r, "20", "1");
            assertThat(Readings.circuits(s.directory()))
                    .containsExactly("[1] Oven 1", "[2] Oven 2", "[3] Oven 3", "[4] Oven 4");
        }
    }

    @Test
    void a_ditto_written_upon_the_line_of_a_form_carries_the_device_on() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "PANEL LC-2");
            double[] at = {40, 70, 110, 230, 260, 300};
            s.line(50, at, "CKT", "AMPS", "LOAD", "CKT", "AMPS", "LOAD");
            s.line(64, at, "1", "30A", "Lobby ______", "2", "30A", "Mezz ______");
            s.line(78, at, "3", "40A", "Charger ____", "4", "20A", "Kitchen ___");
            s.line(92, at, "5", "___", "", "6", "20A", "Copier ____")
                    .text(114, 91, "\"")
                    .text(110, 92, "__________");
            s.line(106, at, "7", "20A", "Alarm ______", "8", "20A", "Sign ______");
            assertThat(Readings.circuits(s.directory()))
                    .containsExactly(
                            "[1] Lobby",
                            "[2] Mezz",
                            "[3, 5] Charger",
                            "[4] Kitchen",
                            "[6] Copier",
                            "[7] Alarm",
                            "[8] Sign");
        }
    }

    @Test
    void loads_by_class_are_no_loads_of_phases() throws IOException {
        Directory d = Readings.table(
                "PANEL CL-1\nCKT,DESCRIPTION,TRIP,POLES,LTG,REC,MISC\n1,Lights,20,1,120,,\n2,Copier,20,1,,240,\n"
                        + "3,Water heater,20,1,,,360\n4,Sump pump,20,1,,,480\n5,Sign,20,1,840,,\n");
        assertThat(Readings.loads(d)).containsExactly(120.0, 240.0, 360.0, 480.0, 840.0);
        assertThat(d.circuits()).allMatch(c -> c.loadVA().size() == 1);
        assertThat(Readings.said(d.problems())).isEmpty();
    }

    @Test
    void loads_of_one_class_alone_are_not_the_loads_of_the_circuits() throws IOException {
        Directory d = Readings.table("PANEL CL-1\nCKT,DESCRIPTION,TRIP,POLES,LTG\n1,Lights,20,1,120\n2,Copier,20,1,\n"
                + "3,Water heater,20,1,\n4,Corridor,20,1,480\n5,Sign,20,1,840\n");
        assertThat(Readings.loads(d)).containsOnly(0.0);
        assertThat(Readings.said(d.problems())).contains("A column was not understood: 'LTG', with '120'.");
    }
}
