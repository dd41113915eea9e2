package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory.Header;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The labels that offices write before a panel's values: before them on their line, in the cell beside, or in the cell above;
 * common practice.
 */
class LabelsOfOfficesTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "location; ELEC RM 104; LOCATION, LOC., ROOM #, BUILDING/ROOM, Location of panel, Board Location, LOCATED AT, SITUATED, Room/Space",
                "fedFrom; MDP-2; FED FROM, FED FRM, UPSTREAM PANEL, SUPPLY BOARD, SOURCE OF POWER, PANEL FED FROM, FDR. SOURCE, Derived from, FEEDS FROM",
                "phases; 3; PHASE, PH., NO. OF PHASES, # PHASE",
                "wires; 4; WIRE, WIRES, NUMBER OF WIRES",
                "busA; 225; BUS, BUSS RATING, BUS AMPACITY, RATED AMPS, CONT. CURRENT RATING",
                "mainA; 150; MAIN, MAIN BKR, MAIN C/B, INCOMER, MAIN O.C.P., MAIN TRIP",
                "interruptingKA; 22; AIC, A.I.C. RATING, INT. RATING, MIN. AIC, SHORT CIRCUIT RATING, SYM. AIC"
            })
    void the_value_of_the_label_is_read_wherever_it_stands(String field, String value, String labels)
            throws IOException {
        String written = field.equals("interruptingKA") ? "22 KAIC" : field.endsWith("A") ? value + "A" : value;
        List<String> wrong = new ArrayList<>();
        for (String label : labels.split(",\\s*"))
            for (int way = 0; way < 3; way++) {
                String read = value(field, header(label, written, way));
                if (!read.equals(value)) wrong.add(label + " in way " + way + " as " + read);
            }
        assertThat(wrong).isEmpty();
    }

    private static Header header(String label, String value, int way) throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "PANEL LP-1");
            switch (way) {
                case 0 -> s.text(40, 54, label + ": " + value).text(260, 54, "ENCLOSURE: NEMA 1");
                case 1 -> s.line(54, new double[] {40, 160, 260, 340}, label, value, "ENCLOSURE", "NEMA 1");
                default -> {
                    double[] at = {40, 160, 300};
                    s.line(54, at, label, "ENCLOSURE", "NOTES").line(65, at, value, "NEMA 1", "NONE");
                }
            }
            return s.twoSided(100).directory().header();
        }
    }

    private static String value(String field, Header h) {
        return switch (field) {
            case "location" -> h.location().or("-");
            case "fedFrom" -> h.fedFrom().or("-");
            case "phases" -> h.phases().or(0).toString();
            case "wires" -> h.wires().or(0).toString();
            case "busA" -> h.busA().or(0).toString();
            case "mainA" -> h.mainA().or(0).toString();
            default -> h.interruptingKA().or(0.0).toString().replace(".0", "");
        };
    }
}
