package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.model.Directory;
import asfound.recordset.Source;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Numbered lists that speak of panels and are no directory of one: none is made of them, and that is said. */
class OtherListsTest {

    @Test
    void the_sizes_of_a_list_of_feeders_under_a_directory_are_no_positions_of_it() throws IOException {
        double[] at = {40, 70, 200, 240};
        try (DrawnSheet s = new DrawnSheet().text(40, 40, "PANEL DP-1, 208Y/120V, 3PH, 4W")) {
            s.line(60, at, "CKT", "LOAD SERVED", "POLES", "TRIP");
            for (int i = 0; i < 8; i++)
                s.line(74 + 14 * i, at, 3 * i + 1 + "," + (3 * i + 3), "PUMP P-" + i, "2", "100");
            s.text(40, 196, "FEEDER SCHEDULE").line(208, at, "FEEDER", "CONDUCTORS", "GND", "AMPS");
            int[] sizes = {100, 150, 200, 225, 400};
            for (int i = 0; i < 5; i++)
                s.line(222 + 14 * i, at, "" + sizes[i], "4#1/0 IN 2 IN CONDUIT", "#6", "" + sizes[i]);
            assertThat(s.directory().circuits()).hasSize(8);
        }
    }

    @Test
    void positions_of_a_further_section_are_numbered_anew_by_the_hundred() throws IOException {
        double[] at = {40, 70, 200};
        try (DrawnSheet s = new DrawnSheet().text(40, 40, "PANEL DP-1, 208Y/120V, 3PH, 4W")) {
            s.line(60, at, "CKT", "LOAD SERVED", "BKR");
            for (int i = 0; i < 8; i++) s.line(74 + 14 * i, at, "" + (i + 1), "PUMP P-" + i, "20A-1P");
            s.text(40, 196, "EMERGENCY SECTION");
            for (int i = 0; i < 6; i++) s.line(216 + 14 * i, at, "" + (101 + i), "FAN F-" + i, "20A-1P");
            assertThat(Readings.circuits(s.directory())).hasSize(14).contains("[106] FAN F-5");
        }
    }

    @Test
    void a_check_list_of_a_panel_is_no_directory_of_it() throws IOException {
        assertNone(
                "CHECK LIST PANEL LP-1\n#,Description\n1,Panel clean\n2,Bus torque checked\n3,Breaker 1 exercised\n4,Doors shut\n",
                "The table headed 'CHECK LIST PANEL LP-1' was not taken for a panel's directory.");
    }

    @Test
    void a_bill_of_material_with_ratings_and_poles_is_no_directory() throws IOException {
        assertNone(
                "Panel LP-2 rebuild\nItem,Description,Qty,Amps,Poles\n1,Breaker,12,20,1\n2,Breaker,2,30,2\n3,Interior,1,100,3\n4,Filler,6,,\n",
                "The table with a column 'Qty' was not taken for a panel's directory.");
    }

    @Test
    void readings_of_meters_under_a_panels_name_are_no_directory() throws IOException {
        assertNone(
                "Panel LP-1\nNo,Tenant,Multiplier,kWh\n1,Dentist,1,410\n2,Bakery,20,3300\n3,Florist,1,201\n4,Tailor,1,98\n",
                "The table with a column 'Tenant' was not taken for a panel's directory.");
    }

    @Test
    void a_list_of_boards_with_the_number_of_their_ways_is_no_directory_of_each() throws IOException {
        assertNone(
                "No,Board,Ways,Rating A,Description\n1,DB-1,12,63,Lights ground\n2,DB-2,18,100,Power ground\n3,DB-3,24,125,Kitchen\n"
                        + "4,DB-4,30,63,Plant room\n5,DB-5,36,63,Lights first\n",
                "A list that names each panel once was not taken for their directories.",
                "This looks like a schedule and could not be explained: a column of positions without descriptions or ratings"
                        + " beside it.");
    }

    @Test
    void circuits_with_their_devices_are_a_directory_though_dates_and_tests_stand_beside_them() throws IOException {
        Directory d = Readings.table("Schedule of test results\nBoard,DB-4\n"
                + "Circuit no,Description,Rating A,Poles,Zs ohms,Date,Result\n1,Lights ground,10,1,0.8,3 May,Pass\n"
                + "2,Sockets ground,32,1,0.4,3 May,Pass\n3,Cooker,32,1,0.3,3 May,Pass\n4,Spare,16,1,,,\n");
        assertThat(Readings.circuits(d))
                .containsExactly("[1] Lights ground", "[2] Sockets ground", "[3] Cooker", "[4] Spare");
    }

    @Test
    void described_circuits_with_their_devices_are_a_directory_though_their_numbers_have_a_plain_heading()
            throws IOException {
        Directory d =
                Readings.table("PANEL DP-4\nNo,Circuit description,Amps,Poles,Date,By\n1,Lights lobby,20,1,3 May,JT\n"
                        + "2,Copier,20,1,3 May,JT\n3,Oven,30,1,4 May,RO\n4,Spare,20,1,,\n");
        assertThat(Readings.circuits(d)).containsExactly("[1] Lights lobby", "[2] Copier", "[3] Oven", "[4] Spare");
    }

    @Test
    void a_list_of_cables_with_the_devices_that_protect_them_is_no_directory() throws IOException {
        assertNone(
                "Cables of DB-4\nNo,From,To,Circuit description,Cores,Amps\n1,DB-4,Pump,Supply to pump,3,16\n2,DB-4,Fan,Supply to fan,3,20\n"
                        + "3,DB-4,Lift,Supply to lift,4,32\n4,DB-4,Boiler,Supply to boiler,3,16\n",
                "The table with a column 'From' was not taken for a panel's directory.");
    }

    @Test
    void a_door_card_of_numbers_and_descriptions_is_a_directory() throws IOException {
        Directory d = Readings.table(
                "PANEL DP-2\nNO.,DESCRIPTION\n1,Lights lobby\n2,Copier\n3,Spare\n4,Exhaust fan EF-1\n5,Sign\n");
        assertThat(Readings.circuits(d))
                .containsExactly("[1] Lights lobby", "[2] Copier", "[3] Spare", "[4] Exhaust fan EF-1", "[5] Sign");
    }

    private static void assertNone(String csv, String... said) throws IOException {
        Path file = Files.createTempFile("list", ".csv");
        try {
            Files.writeString(file, csv);
            ScheduleReading read = Readings.of(file, Source.Kind.SCHEDULE_TABLE);
            assertThat(read.directories()).isEmpty();
            assertThat(Readings.said(read.problems())).containsExactly(said);
        } finally {
            Files.delete(file);
        }
    }
}
