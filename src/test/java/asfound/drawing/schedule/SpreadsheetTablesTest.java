package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.drawing.schedule.sheet.ScheduleReading;
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

    private static final String DATES = "PANEL RP-2\nCkt,Load,Poles,Trip\n%s,Kiln,2,40\n2,Lights,1,20\n%s,Oven,3,60\n"
            + "4,Sign,1,20\n6,Gate,1,20\n";

    @Test
    void positions_that_a_spreadsheet_took_for_days_are_put_back_and_told() throws IOException {
        for (List<String> written : List.of(
                List.of("03-Jan", "9-Jul-11"),
                List.of("2026-01-03", "2011-09-07"),
                List.of("3. Jan", "7.9.2011"),
                List.of("1/3/2026", "9/7/2011"),
                List.of("Jan-3", "Sep-7-2011"))) {
            ScheduleReading read = read(String.format(DATES, written.get(0), written.get(1)));
            Directory d = Readings.only(read);
            assertThat(inWords(d))
                    .as(written.toString())
                    .containsExactly(
                            "[1, 3] 40A Kiln []",
                            "[2] 20A Lights []",
                            "[4] 20A Sign []",
                            "[6] 20A Gate []",
                            "[7, 9, 11] 60A Oven []");
            assertThat(Readings.said(read.problems()))
                    .containsExactly("Positions that a spreadsheet took for a day or a fraction were put back, as '"
                            + written.get(0) + "' to 1-3: rows 3, 5.");
        }
    }

    @Test
    void a_day_that_no_list_of_positions_becomes_is_told_as_unread() throws IOException {
        ScheduleReading read =
                read("PANEL RP-2\nCkt,Load,Poles,Trip\n1,Kiln,1,40\n2,Lights,1,20\n2026-05-05,Oven,1,60\n"
                        + "4,Sign,1,20\n5,Gate,1,20\n");
        assertThat(Readings.said(read.problems()))
                .contains("A day or fraction stands where positions should, and is none that positions became, as "
                        + "'2026-05-05': row 5.");
    }

    @Test
    void two_positions_that_became_a_fraction_are_put_back_and_told() throws IOException {
        ScheduleReading read =
                read("PANEL RP-2\nCkt,Load,Poles,Trip\n1.3,Kiln,2,40\n2,Lights,1,20\n18.2,Oven,2,60\n21,Sign,1,20\n");
        assertThat(inWords(Readings.only(read)))
                .containsExactly("[1, 3] 40A Kiln []", "[2] 20A Lights []", "[18, 20] 60A Oven []", "[21] 20A Sign []");
        assertThat(Readings.said(read.problems()))
                .containsExactly(
                        "Positions that a spreadsheet took for a day or a fraction were put back, as '1.3' to 1,3: "
                                + "rows 3, 5.");
    }

    @Test
    void the_first_line_may_name_the_delimiter() throws IOException {
        ScheduleReading read = read(
                "sep=;\nPANEL RP-2, FIRST FLOOR\nCkt;Load;Trip\n1;Lamps, east;20\n2;Lamps, west;20\n3;Lamps, yard;20\n");
        assertThat(inWords(Readings.only(read)))
                .containsExactly("[1] 20A Lamps, east []", "[2] 20A Lamps, west []", "[3] 20A Lamps, yard []");
        assertThat(Readings.only(read).circuits().get(0).place().rowNumber()).isEqualTo(4);
    }

    private static final String FIRST_PAGE =
            "PANEL RP-7,,,\n,Load,,\nCkt,Served,P,Trip\n1,Lights,1,20\n2,Sign,1,20\n3,Kiln,2,40\n";
    private static final String HEADINGS = ",Load,,\nCkt,Served,P,Trip\n";

    @Test
    void headings_that_come_again_with_the_panel_s_name_part_no_table() throws IOException {
        ScheduleReading read =
                read(FIRST_PAGE + "\nPANEL RP-7 (CONTINUED),,,\n" + HEADINGS + "4,,,\n5,Gate,1,20\n6,Door,1,15\n");
        Directory d = Readings.only(read);
        assertThat(d.panel()).isEqualTo("RP-7");
        assertThat(inWords(d))
                .containsExactly(
                        "[1] 20A Lights []",
                        "[2] 20A Sign []",
                        "[3, 4] 40A Kiln []",
                        "[5] 20A Gate []",
                        "[6] 15A Door []");
        assertThat(d.problems()).isEmpty();
        assertThat(read.problems()).isEmpty();
        assertThat(d.circuits().get(3).place().rowNumber()).isEqualTo(12);
    }

    @Test
    void headings_that_come_again_below_another_panel_s_name_begin_its_table() throws IOException {
        ScheduleReading read =
                read(FIRST_PAGE + "4,,,\n\nPANEL RP-8,,,\n" + HEADINGS + "1,Saw,1,20\n2,Lathe,1,30\n3,Drill,1,20\n");
        assertThat(read.directories().stream().map(Directory::panel)).containsExactly("RP-7", "RP-8");
        assertThat(inWords(read.directories().get(1)))
                .containsExactly("[1] 20A Saw []", "[2] 30A Lathe []", "[3] 20A Drill []");
    }

    @Test
    void below_positions_written_together_each_pole_may_have_its_row() throws IOException {
        Directory d = Readings.table("PANEL RP-9\nCkt,Load,P,Trip,VA,Ckt,Load,P,Trip,VA\n"
                + "\"1,3,5\",Kiln,3,60,900,\"2,4\",Oven,2,40,700\n"
                + ",,,,900,,,,,700\n"
                + ",,,,900,6,Sign,1,20,150\n"
                + "7,Gate,1,20,300,8,Spare,1,20,\n");
        assertThat(inWords(d))
                .containsExactly(
                        "[1, 3, 5] 60A Kiln [2700]",
                        "[2, 4] 40A Oven [1400]",
                        "[6] 20A Sign [150]",
                        "[7] 20A Gate [300]",
                        "[8] 20A Spare []");
        assertThat(d.problems()).isEmpty();
    }

    @Test
    void a_bus_of_100_amperes_is_no_system_of_100_volts() throws IOException {
        Directory d = Readings.table("PANEL RP-4,,\nBUS AMPS,100,\nLOCATION,Stair 4,\n\nCkt,Load,Trip\n1,Lights,20\n"
                + "2,Sign,20\n3,Kiln,40\n");
        assertThat(d.header().busA().or(0)).isEqualTo(100);
        assertThat(d.header().voltage().isStated()).isFalse();
    }

    @Test
    void each_mark_at_the_head_of_a_page_is_told_where_nothing_above_it_can_be_carried_on() throws IOException {
        Directory d =
                Readings.table("PANEL RP-5\nCkt,Load,Trip\n31,\"\"\"\",\"\"\"\"\n32,Space,\n33,\"\"\"\",\"\"\"\"\n"
                        + "34,Lights,20\n35,Pump,20\n36,Fan,20\n");
        assertThat(Readings.said(d.problems()))
                .contains(
                        "Position 31 could not be read in full: a mark carries on a device that begins elsewhere.",
                        "Position 33 could not be read in full: a mark carries on a device that begins elsewhere.");
    }

    @Test
    void a_column_that_says_whether_a_position_is_used_is_no_description() throws IOException {
        Directory d =
                Readings.table("Breaker list for panel H2\n\nckt,use,amps,p,what\n1,load,15,1,Fan\n2,spare,20,1,\n"
                        + "3,space,,,\n4,load,40,1,Oven\n5,spare,30,1,Pump\n");
        assertThat(d.panel()).isEqualTo("H2");
        assertThat(d.circuits().stream()
                        .map(c -> c.position() + " " + c.use() + " "
                                + c.description().or("")))
                .containsExactly("1 LOAD Fan", "2 SPARE ", "3 SPACE ", "4 LOAD Oven", "5 LOAD Pump");
        assertThat(Readings.said(d.problems()))
                .containsExactly("Position 5 could not be read in full: its use is written as 'spare'.");
    }

    @Test
    void positions_behind_the_name_of_the_panel_that_the_row_names_are_positions_of_it() throws IOException {
        ScheduleReading read =
                read("Panel\tCircuit\tBreaker\tServes\nLP1\tLP1-1\t30A/1P\tKiln\nLP1\tLP1-2\t20A/1P\tLights\n"
                        + "LP1\tLP1-3,5\t30A/2P\tOven\nRP-3\tRP-3-1\t20A/1P\tSaw\nRP-3\tRP-3-2,4\t40A/2P\tLathe\n");
        assertThat(read.directories().stream().map(Directory::panel)).containsExactly("LP1", "RP-3");
        assertThat(inWords(read.directories().get(0)))
                .containsExactly("[1] 30A Kiln []", "[2] 20A Lights []", "[3, 5] 30A Oven []");
        assertThat(inWords(read.directories().get(1))).containsExactly("[1] 20A Saw []", "[2, 4] 40A Lathe []");
    }

    @Test
    void loads_with_a_point_below_a_heading_of_positions_further_up_stay_loads() throws IOException {
        ScheduleReading read = read(
                "PANEL RP-1,,,\nCkt,Load,Trip,\n1,Lights,20,\n2,Copier,20,\n3,Sign,20,\n\n\nPANEL RP-2,,,\n"
                        + "Load (kVA),Load Served,Trip,Ckt\n1.5,Fan motor,20,1\n2.4,Gate motor,20,2\n0.6,Door lock,20,3\n");
        assertThat(read.directories().get(1).circuits().stream()
                        .map(c -> Math.round(c.totalVA().or(0.0))))
                .containsExactly(1500L, 2400L, 600L);
        assertThat(read.problems()).isEmpty();
    }

    @Test
    void a_table_of_which_no_position_is_understood_is_told_beside_one_that_was_read() throws IOException {
        ScheduleReading read = read("PANEL RP-1,,\nCkt,Load,Trip\n1,Lights,20\n2,Copier,20\n3,Sign,20\n\n\n,,\n"
                + "Ckt,Load,Trip\nQ-7-1,Fan,20\nQ-7-2,Gate,20\nQ-7-3,Door,20\n");
        assertThat(read.directories()).hasSize(1);
        assertThat(Readings.said(read.problems()))
                .contains(
                        "This looks like a schedule and could not be explained: below 'Ckt' stand no positions that were "
                                + "understood.");
    }

    @Test
    void headings_that_come_again_beside_another_table_s_rows_make_the_sheet_doubtful() throws IOException {
        ScheduleReading read = read("PANEL RP-1,,,,PANEL RP-2,,\nCkt,Load,Trip,,,,\n1,Lights,20,,Ckt,Load,Trip\n"
                + "2,Copier,20,,1,Fan,20\n3,Sign,20,,2,Gate,20\nCkt,Load,Trip,,3,Door,20\n4,Oven,20,,4,Saw,20\n"
                + "5,Kiln,20,,5,Lathe,20\n");
        assertThat(read.directories()).isNotEmpty().allMatch(Directory::isDoubtful);
    }

    @Test
    void a_fraction_alone_below_headings_that_come_again_is_put_back_as_those_above_them() throws IOException {
        ScheduleReading read = read("PANEL L1A\nCircuit,Load,Amps\n1,Copier,20\n2.3,Pump,30\n4,Sign,20\n5,Oven,20\n"
                + "Circuit,Load,Amps\n6.7,Lights,20\n");
        assertThat(Readings.circuits(read.directories().get(0)))
                .containsExactly("[1] Copier", "[2, 3] Pump", "[4] Sign", "[5] Oven", "[6, 7] Lights");
    }

    @Test
    void dashes_of_further_poles_do_not_keep_a_fraction_from_being_put_back() throws IOException {
        Directory d =
                read("PANEL RP-3\nCkt,Load,Device\n\"4, 6, 8\",UPS,80A/3P\n-,-,-\n-,-,-\n\"10, 12, 14\",Cooler,100A/3P\n"
                                + "-,-,-\n-,-,-\n16.18,Heater,30A/2P\n-,-,-\n")
                        .directories()
                        .get(0);
        assertThat(d.circuits().get(2).positions()).containsExactly(16, 18);
    }

    @Test
    void a_blank_row_before_the_marks_of_the_last_device_is_no_pole_of_it() throws IOException {
        Directory d = Readings.table(
                "PANEL RP-4\nCkt,Load,A,P\n1,Lights,20,1\n2,Sign,20,1\n3,Fan,30,2\n-,-,-,-\n5,Clock,20,1\n"
                        + "6,Pump,30,2\n-,-,-,-\n8,Spare,40,3\n,,,\n-,-,-,-\n-,-,-,-\n");
        assertThat(inWords(d)).hasSize(6).last().isEqualTo("[8, 9, 10] 40A Spare []");
    }
}
