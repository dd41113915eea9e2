package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Columns that the trade knows beside those of a device and its load, and those that are written in ways of their own. */
class TradeColumnsTest {

    private static List<String> ratings(Directory d) {
        return d.circuits().stream()
                .map(c -> c.positions() + " " + c.ratingA().or(0) + "A")
                .toList();
    }

    @Test
    void a_rating_in_frame_and_trip_is_that_of_the_trip() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANELBOARD PB-2");
            double[] at = {40, 80, 200, 250, 330};
            s.line(60, at, "", "", "", "FRAME/TRIP", "LOAD");
            s.line(70, at, "WAY", "OUTGOING CIRCUIT", "POLES", "(A)", "(kW)");
            s.line(86, at, "1", "Riser to level 1", "TP", "250/200", "77");
            s.line(100, at, "2", "Boiler house", "TP", "100/63", "49");
            s.line(114, at, "3", "Boiler house", "TP", "100/100", "41");
            s.line(128, at, "4", "Lift", "TP", "160/125", "32");
            s.line(142, at, "5", "Chiller", "TP", "160/160", "45");
            Directory d = s.directory();
            assertThat(ratings(d)).containsExactly("[1] 200A", "[2] 63A", "[3] 100A", "[4] 125A", "[5] 160A");
            assertThat(d.circuits())
                    .extracting(c -> c.ratingA().raw())
                    .containsExactly("250/200", "100/63", "100/100", "160/125", "160/160");
            assertThat(d.problems()).isEmpty();
        }
    }

    @Test
    void a_trip_above_its_frame_is_told() throws IOException {
        Directory d = Readings.table("PANEL,K-1\nCkt,Description,Frame/Trip,Poles\n1,Lights,100/63,3\n2,Pump,63/100,3\n"
                + "3,Fan,100/80,3\n4,Sign,250/200,3\n");
        assertThat(Readings.said(d.problems())).contains("Position 2 could not be read in full: rating '63/100'.");
    }

    @Test
    void a_word_under_a_heading_beside_the_loads_is_no_part_of_one() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL RP-1");
            double[] at = {40, 70, 100, 130, 160, 300, 332};
            s.line(60, at, "CKT", "BKR", "POLE", "RELAY", "LOAD", "WATTS", "LOCK");
            s.line(74, at, "1", "20", "1", "K1", "Cyc lights", "", "");
            s.toTheRight(323, 74, "1150");
            s.line(88, at, "2", "20", "1", "-", "Floor pocket", "", "yes");
            s.toTheRight(323, 88, "800");
            s.line(102, at, "3", "20", "1", "K3", "Work lights", "", "");
            s.toTheRight(323, 102, "1100");
            s.line(116, at, "4", "20", "1", "K4", "Box boom", "", "");
            s.toTheRight(323, 116, "2650");
            Directory d = s.directory();
            assertThat(Readings.loads(d)).containsExactly(1150.0, 800.0, 1100.0, 2650.0);
            assertThat(d.problems()).isEmpty();
        }
    }

    @Test
    void loads_under_the_phases_r_y_and_b_stand_beside_ways_that_count_the_rows_once_more() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "DISTRIBUTION BOARD LDB-2");
            double[] at = {40, 75, 120, 250, 290, 330, 370, 410};
            s.text(355, 58, "LOAD IN WATTS");
            s.line(70, at, "WAY", "CKT NO", "DESCRIPTION", "MCB (A)", "POLE", "R", "Y", "B");
            String[] phases = {"R", "Y", "B"};
            for (int r = 0; r < 9; r++) {
                double y = 86 + 14 * r;
                if (r % 3 == 1) s.text(44, y, "" + (r / 3 + 1));
                s.line(y, at, "", phases[r % 3] + (r / 3 + 1), "Lights room " + r, "10", "SP", "", "", "");
                s.text(at[5 + r % 3], y, "" + (500 + 10 * r));
            }
            assertThat(Readings.loads(s.directory()))
                    .containsExactly(500.0, 510.0, 520.0, 530.0, 540.0, 550.0, 560.0, 570.0, 580.0);
            assertThat(s.read().problems()).isEmpty();
        }
    }

    @Test
    void classes_of_loads_kinds_of_devices_and_demands_need_no_word() throws IOException {
        Directory d = Readings.table("PANEL,K-1\nCkt,Load served,Cl,Device,A,Conn VA,Dem VA,Receptacle\n"
                + "1,Lights,L,MCB,20,900,900,L6-30R\n2,Pump,M,RCBO,30,1200,960,L6-30R\n3,Fan,M,MCB,20,700,560,5-20R\n"
                + "4,Sign,L,MCB,20,400,400,5-20R\n");
        assertThat(Readings.loads(d)).containsExactly(900.0, 1200.0, 700.0, 400.0);
        assertThat(d.problems()).isEmpty();
    }

    @Test
    void loads_by_their_class_are_told_all_the_same() throws IOException {
        Directory d = Readings.table("PANEL,K-1\nCkt,Load served,A,P,Receptacle\n1,Lights,20,1,360\n2,Pump,30,1,540\n"
                + "3,Fan,20,1,720\n4,Sign,20,1,180\n");
        assertThat(Readings.said(d.problems())).contains("A column was not understood: 'Receptacle', with '360'.");
    }

    @Test
    void points_served_in_two_lines_describe_nothing() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL DB-1");
            double[] at = {40, 80, 200, 250};
            s.line(60, at, "", "", "", "Points");
            s.line(70, at, "Way", "Description", "A", "served");
            for (int r = 1; r < 6; r++) s.line(72 + 14 * r, at, "" + r, "Sockets room " + r, "20", "" + (r + 5));
            assertThat(s.directory().problems()).isEmpty();
        }
    }

    /** Three names of one length in type of one width leave a blank before their last words. */
    @Test
    void last_words_below_each_other_are_no_column() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL EM-3");
            double[] at = {40, 70, 240, 280};
            s.line(60, at, "CKT", "DESCRIPTION", "TRIP", "P");
            String[] names = {"Exam", "Pump", "Lobby sign", "Fan", "Gate", "Copier", "Oven", "Mixer", "Dryer"};
            for (int r = 0; r < names.length; r++) s.line(74 + 14 * r, at, "" + (r + 1), names[r], "20", "1");
            double y = 74 + 14 * names.length, end = 70 + DrawnSheet.width("Lights for stair no.");
            for (int r = 0; r < 3; r++) {
                s.line(y + 14 * r, at, "" + (names.length + r + 1), "Lights for stair no.", "20", "1");
                s.text(end + 4.5, y + 14 * r, "" + (185 + r));
            }
            assertThat(Readings.circuits(s.directory()))
                    .endsWith(
                            "[10] Lights for stair no. 185",
                            "[11] Lights for stair no. 186",
                            "[12] Lights for stair no. 187");
        }
    }

    @Test
    void of_two_headings_over_one_blank_column_and_one_entry_that_is_the_nearer_s() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL CP8");
            double[] at = {45, 90, 130, 170, 260, 295, 330, 425, 465, 505};
            s.line(60, at, "Cable", "Poles", "Rating", "Load", "Cct", "Cct", "Load", "Rating", "Poles", "Cable");
            s.line(74, at, "#8", "2", "40", "Kitchen hood", "7", "8", "Spare", "60", "3", "");
            s.line(88, at, "", "", "", "", "9", "10", "", "", "", "");
            s.line(102, at, "#12", "1", "20", "Fan", "11", "12", "", "", "", "");
            assertThat(s.directory().circuits().stream().map(c -> c.positions() + " " + c.poles() + "P"))
                    .containsExactly("[7, 9] 2P", "[8, 10, 12] 3P", "[11] 1P");
        }
    }
}
