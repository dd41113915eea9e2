package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory.Header;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A panel is fed from a thing whose words announce the panel's own main elsewhere: what stands around them tells. */
class SuppliesInWordsTest {

    private static final String TABLE = "\nCkt,Poles,Trip,Description\n1,1,20,Recept rm 101\n2,1,20,Recept rm 102\n"
            + "3,1,20,Recept rm 103\n4,1,20,Recept rm 104\n";

    @ParameterizedTest
    @ValueSource(strings = {"Main switchgear", "Main disconnect", "Main switch", "Main breaker", "Mains"})
    void in_the_cell_beside_the_label_of_the_supply_they_are_what_feeds_it(String supply) throws IOException {
        Header h = Readings.table("Panel:,DPW-1,,Location:,Garage\nFed from:," + supply
                        + ",,Voltage:,208Y/120 V\nMain:,400 A breaker,,Bus:,400 A\n" + TABLE)
                .header();
        assertThat(h.fedFrom().or("")).isEqualTo(supply);
        assertThat(h.mainA().or(0)).isEqualTo(400);
    }

    @Test
    void labels_need_no_mark_where_each_has_its_value_beside_it() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "PANEL")
                    .text(100, 30, "DP-2")
                    .text(300, 30, "LOCATION")
                    .text(380, 30, "MCC room");
            s.text(40, 42, "VOLTS")
                    .text(100, 42, "208Y/120V")
                    .text(300, 42, "FED FROM")
                    .text(380, 42, "Main switchgear");
            s.text(40, 54, "BUS").text(100, 54, "600 A").text(300, 54, "MAIN").text(380, 54, "400 A breaker");
            s.twoSided(80);
            Header h = s.directory().header();
            assertThat(h.fedFrom().or("")).isEqualTo("Main switchgear");
            assertThat(h.mainA().or(0)).isEqualTo(400);
        }
    }

    @Test
    void with_a_value_of_their_own_they_are_the_label_of_the_main() throws IOException {
        for (String row : new String[] {
            "Fed from:,,,Main breaker,400 A",
            "Fed from:,Main breaker,400 A",
            "Fed from:,Main breaker 400 A",
            "Fed from: ____ Main breaker 400 A"
        }) {
            Header h = Readings.table("Panel:,DPW-1,,Location:,Garage\n" + row + "\nBus:,600 A\n" + TABLE)
                    .header();
            assertThat(h.fedFrom().isStated()).as(row).isFalse();
            assertThat(h.mainA().or(0)).as(row).isEqualTo(400);
        }
    }

    @Test
    void in_a_row_of_labels_each_has_its_value_below() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "PANEL")
                    .text(150, 30, "FED FROM")
                    .text(260, 30, "MAIN BREAKER")
                    .text(380, 30, "BUS");
            s.text(40, 40, "DP-2").text(260, 40, "400 A").text(380, 40, "600 A");
            s.twoSided(70);
            Header h = s.directory().header();
            assertThat(h.fedFrom().isStated()).isFalse();
            assertThat(h.mainA().or(0)).isEqualTo(400);
        }
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "PANEL")
                    .text(150, 30, "FED FROM")
                    .text(260, 30, "MAIN BREAKER")
                    .text(380, 30, "BUS");
            s.text(40, 40, "DP-2")
                    .text(150, 40, "MAIN SWITCHGEAR")
                    .text(260, 40, "400 A")
                    .text(380, 40, "600 A");
            s.twoSided(70);
            Header h = s.directory().header();
            assertThat(h.fedFrom().or("")).isEqualTo("MAIN SWITCHGEAR");
            assertThat(h.mainA().or(0)).isEqualTo(400);
        }
    }

    @Test
    void a_breaking_capacity_is_labelled_with_the_kind_of_its_current() throws IOException {
        for (String label : new String[] {"A.I.C. SYM", "AIC RMS SYM", "Int. rating (sym. A)", "SCCR RMS SYM AMPS"}) {
            try (DrawnSheet s = new DrawnSheet()) {
                s.text(40, 20, "PANEL")
                        .text(40, 30, "DP-2")
                        .text(150, 20, label)
                        .text(150, 30, "22,000");
                s.text(260, 20, "MAIN")
                        .text(260, 30, "LUGS ONLY")
                        .text(380, 20, "BUS")
                        .text(380, 30, "225");
                s.twoSided(60);
                Header h = s.directory().header();
                assertThat(h.interruptingKA().or(0.0)).as(label).isEqualTo(22);
                assertThat(h.busA().or(0)).as(label).isEqualTo(225);
            }
        }
    }
}
