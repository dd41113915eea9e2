package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory;
import asfound.recordset.Source;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Directories as offices keep them in spreadsheets: side by side, with notes beside, with rows in an order of their own. */
class SpreadsheetTablesTest {

    @TempDir
    private Path folder;

    private ScheduleReading read(String csv) throws IOException {
        Path file = folder.resolve("sheet.csv");
        Files.writeString(file, csv);
        return Readings.of(file, Source.Kind.SCHEDULE_TABLE);
    }

    private static List<String> inWords(Directory d) {
        return d.circuits().stream()
                .map(c -> c.positions() + " " + c.ratingA().or(0) + "A "
                        + c.description().or("") + " "
                        + c.loadVA().stream().map(l -> Math.round(l.or(0.0))).toList())
                .toList();
    }

    /** A short figure leaves more blank beside it than a column that holds nothing is wide. */
    @Test
    void of_two_panels_side_by_side_each_keeps_its_outermost_column() throws IOException {
        ScheduleReading read = read("PANEL: LP-1,,,,,,PANEL LP-2 IN THE CORRIDOR OF THE EAST WING,,,\n"
                + "Ckt,Load,Trip,P,VA,,Located in,Corridor 118,,,\n"
                + "1,Lights,20,1,400,,VA,Trip,Load,Ckt\n"
                + "2,Copier,20,1,900,,700,20,Fan,1\n"
                + "3,Oven,30,1,800,,,20,Spare,2\n"
                + "4,Sign,20,1,,,600,15,Gate,3\n"
                + "5,Pump,20,1,100,,,20,Spare,4\n");
        assertThat(read.directories()).hasSize(2);
        assertThat(inWords(read.directories().get(0)))
                .containsExactly(
                        "[1] 20A Lights [400]",
                        "[2] 20A Copier [900]",
                        "[3] 30A Oven [800]",
                        "[4] 20A Sign []",
                        "[5] 20A Pump [100]");
        assertThat(inWords(read.directories().get(1)))
                .containsExactly("[1] 20A Fan [700]", "[2] 20A Spare []", "[3] 15A Gate [600]", "[4] 20A Spare []");
    }

    @Test
    void numbers_of_notes_that_nothing_heads_are_no_loads() throws IOException {
        Directory d = Readings.table("PANEL RP-6\nCkt,Load,Trip,Poles,Load (VA),,\n1,Lights,20.0,1.0,400.0,,\n"
                + "2,Copier,20.0,1.0,900.0,,2.0\n3,Oven,30.0,1.0,800.0,,\n4,Sign,20.0,1.0,250.0,,11.0\n"
                + "5,Pump,20.0,1.0,100.0,,3.0\n");
        assertThat(inWords(d))
                .containsExactly(
                        "[1] 20A Lights [400]",
                        "[2] 20A Copier [900]",
                        "[3] 30A Oven [800]",
                        "[4] 20A Sign [250]",
                        "[5] 20A Pump [100]");
    }

    @Test
    void above_the_even_positions_stand_the_further_poles_of_the_last_odd_device() throws IOException {
        Directory d = Readings.table("PANEL K3\nCkt,Load,Breaker,VA\n1,Lights,20A 1P,700\n3,Sign,20A 1P,300\n"
                + "5,Copier,20A 1P,350\n7,Kiln,30A 3P,500\n,Kiln,30A 3P,500\n,Kiln,30A 3P,500\n2,Fan,20A 1P,250\n"
                + "4,Gate,20A 1P,400\n6,Oven,40A 2P,900\n,Oven,40A 2P,900\n10,Door,20A 1P,100\n12,Saw,20A 1P,150\n");
        assertThat(inWords(d))
                .containsExactly(
                        "[1] 20A Lights [700]",
                        "[2] 20A Fan [250]",
                        "[3] 20A Sign [300]",
                        "[4] 20A Gate [400]",
                        "[5] 20A Copier [350]",
                        "[6, 8] 40A Oven [1800]",
                        "[7, 9, 11] 30A Kiln [1500]",
                        "[10] 20A Door [100]",
                        "[12] 20A Saw [150]");
        assertThat(d.problems()).isEmpty();
    }

    @Test
    void in_a_short_column_of_odd_and_then_even_positions_further_poles_are_two_apart() throws IOException {
        Directory d =
                Readings.table("PANEL K4\nCkt,Load,P,Trip,VA\n1,Washer,1,30,2080\n3,SPARE,3,80,\n-,-,-,-,\n-,-,-,-,\n"
                        + "9,Site lights,1,20,1580\n11,Copier,1,20,1960\n2,Exhaust fan,1,20,620\n4,Task lights,1,20,660\n"
                        + "6,Nurse call,1,20,1800\n8,Dryer,3,80,1300\n-,-,-,-,1300\n-,-,-,-,1300\n");
        assertThat(inWords(d)).contains("[8, 10, 12] 80A Dryer [3900]", "[9] 20A Site lights [1580]");
        assertThat(d.problems()).isEmpty();
    }
}
