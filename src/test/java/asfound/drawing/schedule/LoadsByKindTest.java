package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.model.Directory;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** Loads in columns by their kinds: what stands in a row is its circuit's load. */
class LoadsByKindTest {

    private static final double[] AT = {40, 80, 220, 260, 300, 350, 400, 450};

    private static DrawnSheet sheet(String... kinds) throws IOException {
        DrawnSheet s = new DrawnSheet();
        s.text(40, 30, "PANEL: LP-4").text(200, 30, "VOLTAGE: 208Y/120V, 3PH, 4W");
        String[] head = new String[4 + kinds.length];
        head[0] = "CKT";
        head[1] = "DESCRIPTION";
        head[2] = "TRIP";
        head[3] = "POLES";
        System.arraycopy(kinds, 0, head, 4, kinds.length);
        return s.line(70, AT, head);
    }

    @Test
    void the_sum_of_a_row_is_its_load() throws IOException {
        try (DrawnSheet s = sheet("LTG", "REC", "MOT", "OTH")) {
            s.line(84, AT, "1", "Lights corridor", "20", "1", "700", "", "", "");
            s.line(98, AT, "2", "Lights and fan", "20", "1", "700", "", "480", "");
            s.line(112, AT, "3", "Sump pump", "20", "1", "", "", "1,060", "");
            s.line(126, AT, "4", "Sockets office", "20", "1", "", "540", "", "");
            s.line(140, AT, "5", "Camera rack", "20", "1", "", "", "", "250");
            s.line(154, AT, "6", "Spare", "20", "1", "", "", "", "");
            ScheduleReading read = s.read();
            assertThat(Readings.loads(Readings.only(read))).containsExactly(700.0, 1180.0, 1060.0, 540.0, 250.0, 0.0);
            assertThat(Readings.said(Readings.only(read).problems())).isEmpty();
        }
    }

    @Test
    void a_column_of_the_whole_wins() throws IOException {
        try (DrawnSheet s = sheet("LTG", "REC", "MOT", "TOTAL VA")) {
            s.line(84, AT, "1", "Lights corridor", "20", "1", "700", "", "", "700");
            s.line(98, AT, "2", "Lights and fan", "20", "1", "700", "", "480", "1180");
            s.line(112, AT, "3", "Sump pump", "20", "1", "", "", "1060", "1060");
            s.line(126, AT, "4", "Sockets office", "20", "1", "", "540", "", "540");
            assertThat(Readings.loads(s.directory())).containsExactly(700.0, 1180.0, 1060.0, 540.0);
        }
    }

    @Test
    void outlets_that_are_counted_by_their_kinds_are_no_loads() throws IOException {
        try (DrawnSheet s = sheet("LTG", "REC", "MOTOR")) {
            s.line(84, AT, "1", "Lights corridor", "20", "1", "7", "", "");
            s.line(98, AT, "2", "Lights and fan", "20", "1", "12", "", "1");
            s.line(112, AT, "3", "Sump pump", "20", "1", "", "", "1");
            s.line(126, AT, "4", "Sockets office", "20", "1", "", "6", "");
            assertThat(Readings.loads(s.directory())).containsOnly(0.0);
        }
    }

    @Test
    void heating_and_cooling_do_not_run_at_once() throws IOException {
        try (DrawnSheet s = sheet("LTG", "HEAT", "COOL")) {
            s.line(84, AT, "1", "Lights corridor", "20", "1", "700", "", "");
            s.line(98, AT, "2", "Fan coil 1", "20", "1", "", "1500", "900");
            s.line(112, AT, "3", "Fan coil 2", "20", "1", "", "1500", "900");
            s.line(126, AT, "4", "Lights office", "20", "1", "840", "", "");
            Directory d = s.directory();
            assertThat(Readings.loads(d)).doesNotContain(2400.0);
            assertThat(Readings.said(d.problems())).isNotEmpty();
        }
    }

    @Test
    void loads_in_kilowatts_are_told_by_their_headings() throws IOException {
        Directory d = Readings.table("Panel:,LP-4,,Voltage:,208Y/120 V\n\n"
                + "Ckt,Description,Trip,Poles,Ltg kW,Power kW\n1,Lights,20,1,0.7,\n2,Pump,20,1,,1.5\n"
                + "3,Lights and fan,20,1,0.3,0.4\n4,Spare,20,1,,\n");
        assertThat(Readings.loads(d)).containsExactly(700.0, 1500.0, 700.0, 0.0);
    }

    @Test
    void the_heading_over_all_kinds_stands_over_the_middle_one_and_is_none_of_its_own() throws IOException {
        try (DrawnSheet s = sheet("LTG", "RECP", "MISC")) {
            s.text(240, 58, "LOAD (VA)");
            for (double x : new double[] {215, 255, 295, 345}) s.rule(x, 62, x, 144);
            s.line(84, AT, "1", "Lights corridor", "20", "1", "", "", "700");
            s.line(98, AT, "2", "Rack", "20", "1", "", "", "480");
            s.line(112, AT, "3", "Sump pump", "20", "1", "", "", "1060");
            s.line(126, AT, "4", "Sockets office", "20", "1", "", "540", "");
            s.line(140, AT, "5", "Desk", "20", "1", "", "540", "100");
            Directory d = s.directory();
            assertThat(Readings.loads(d)).containsExactly(700.0, 480.0, 1060.0, 540.0, 640.0);
            assertThat(Readings.said(d.problems())).isEmpty();
        }
    }

    @Test
    void of_kinds_that_are_named_twice_in_the_middle_the_left_half_is_of_the_left_side() throws IOException {
        Directory d = Readings.table("Panel:,LP-4,,Voltage:,208Y/120 V\n\n"
                + "Ckt,Trip,Description,Ltg,Rec,Misc,Misc,Rec,Ltg,Description,Trip,Ckt\n"
                + "1,20,Lights,700,,,,540,,Desks,20,2\n3,20,Pump,,,1500,,,,Spare,20,4\n"
                + "5,20,Spare,,,,900,,,Fan,20,6\n7,20,Sockets,,360,,,,250,Lights roof,20,8\n");
        assertThat(Readings.loads(d)).containsExactly(700.0, 540.0, 1500.0, 0.0, 0.0, 900.0, 360.0, 250.0);
        assertThat(Readings.said(d.problems())).isEmpty();
    }
}
