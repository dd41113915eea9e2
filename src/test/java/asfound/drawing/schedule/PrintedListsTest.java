package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.model.Directory;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lists as a printer of one type width gives them: nothing parts the columns but a blank, or what is drawn with letters. */
class PrintedListsTest {

    @Test
    void one_blank_between_columns_parts_them() throws IOException {
        Directory d = typed(
                "CKT SERVES             AMP P    VA",
                "  1 LIGHTS NORTH HALL   20 1   900",
                "  2 SOCKETS STORES      20 1   540",
                "  3 ROOFTOP UNIT        60 3  9400",
                "  4 SPARE               20 1",
                "  5                           9400",
                "  6 SOCKETS WORKSHOP 11 20 1   720",
                "  7                           9400",
                "  8 DUST EXTRACTION FAN 30 1 11000",
                "  9 SPACE",
                " 10 SPACE");
        assertThat(Readings.circuits(d))
                .containsExactly(
                        "[1] LIGHTS NORTH HALL",
                        "[2] SOCKETS STORES",
                        "[3, 5, 7] ROOFTOP UNIT",
                        "[4] SPARE",
                        "[6] SOCKETS WORKSHOP 11",
                        "[8] DUST EXTRACTION FAN",
                        "[9] SPACE",
                        "[10] SPACE");
        assertThat(Readings.loads(d)).containsExactly(900.0, 540.0, 28200.0, 0.0, 720.0, 11000.0, 0.0, 0.0);
        assertThat(d.problems()).isEmpty();
    }

    @Test
    void a_room_behind_descriptions_of_one_length_stays_with_them() throws IOException {
        Directory d = typed(
                "CKT LOAD             BREAKER",
                "  1 LIGHTS 101          20/1",
                "  2 LIGHTS 102          20/1",
                "  3 LIGHTS 103          20/1",
                "  4 SPACE",
                "  5 LIGHTS 104          20/1",
                "  6 LIGHTS 105          20/1",
                "  7 SPACE",
                "  8 LIGHTS 106          20/1",
                "  9 LIGHTS 107          20/1",
                " 10 LIGHTS 108          20/1");
        assertThat(Readings.circuits(d)).contains("[1] LIGHTS 101", "[6] LIGHTS 105", "[10] LIGHTS 108");
    }

    @Test
    void the_full_stop_of_an_abbreviation_is_not_of_the_leader_behind_it() throws IOException {
        Directory d = typed(
                "CKT SERVES                        AMP P",
                "  1 MACHINE SHED LTS. ............ 20 1",
                "  2 WELL PUMP .................... 20 1",
                "  3 OFFICE RECEPTS................ 20 1",
                "  4 YARD LTS. . . . . . . . . . .  20 1",
                "  5 SPARE. . . . . . . . . . . . . 20 1",
                "  6 PUMP-OUT STA. ................ 20 1");
        assertThat(Readings.circuits(d))
                .containsExactly(
                        "[1] MACHINE SHED LTS.",
                        "[2] WELL PUMP",
                        "[3] OFFICE RECEPTS",
                        "[4] YARD LTS",
                        "[5] SPARE",
                        "[6] PUMP-OUT STA.");
        assertThat(d.problems()).isEmpty();
    }

    @Test
    void bars_and_dashes_are_the_rules_of_a_table() throws IOException {
        Directory d = typed(
                "+----+------------------+-------+",
                "|CKT | SERVES           | BKR   |",
                "+----+------------------+-------+",
                "|  1 | SAW              | 30/3  |",
                "|  2 | LIGHTS           | 20/1  |",
                "|  3 | -                | -     |",
                "|  4 | FAN 12           | 20/1  |",
                "|  5 | -                | -     |",
                "|  6 | SPARE            | 20/1  |",
                "+----+------------------+-------+");
        assertThat(Readings.circuits(d)).containsExactly("[1, 3, 5] SAW", "[2] LIGHTS", "[4] FAN 12", "[6] SPARE");
        assertThat(d.problems()).isEmpty();
    }

    @Test
    void dots_lead_from_a_description_to_its_device() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 30, "PANEL LP-9");
            String[] loads = {"Lights north hall", "Sockets room 4", "Circulating pump", "SPACE", "Kitchen fan"};
            for (int i = 0; i < loads.length; i++) {
                s.text(40, 60 + 14 * i, "" + (i + 1));
                int dots = (int) ((200 - DrawnSheet.width(loads[i])) / DrawnSheet.width("."));
                s.text(60, 60 + 14 * i, loads[i] + ".".repeat(dots));
                s.text(262, 60 + 14 * i, i == 3 ? "-" : "1P20");
            }
            Directory d = s.directory();
            assertThat(Readings.circuits(d))
                    .containsExactly(
                            "[1] Lights north hall",
                            "[2] Sockets room 4",
                            "[3] Circulating pump",
                            "[4] SPACE",
                            "[5] Kitchen fan");
            assertThat(d.circuits().get(2).ratingA().value()).contains(20);
        }
    }

    @Test
    void a_list_goes_on_on_the_next_page_where_what_kind_of_list_it_is_stands_again() throws IOException {
        for (String kind :
                List.of("CIRCUIT DIRECTORY LISTING", "CIRCUIT DIRECTORY REPORT", "PANEL SCHEDULE PRINTOUT")) {
            Directory d = Readings.only(onTwoPages(kind, "PANEL EAST 4   (CONTINUED)"));
            assertThat(d.panel()).isEqualTo("EAST 4");
            assertThat(Readings.circuits(d)).hasSize(16);
            assertThat(d.problems()).isEmpty();
        }
    }

    @Test
    void a_list_that_begins_where_the_page_before_ends_and_has_another_name_and_no_more_is_told() throws IOException {
        ScheduleReading read = onTwoPages("CIRCUIT DIRECTORY", "PANEL: 2A");
        assertThat(read.directories()).extracting(Directory::panel).containsExactly("EAST 4", "2A");
        assertThat(Readings.said(read.problems()))
                .contains(
                        "The directory '2A' begins at position 9, behind the last of 'EAST 4' on the page before, and nothing"
                                + " but its name is said of it.");
    }

    private static ScheduleReading onTwoPages(String kind, String second) throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.typed(
                    30,
                    kind + "                         PAGE   1",
                    "RUN 14-NOV-2022 07:42",
                    "",
                    "PANEL ..........: EAST 4");
            s.typed(70, "FED FROM .......: EDP", "MAIN ...........: LUGS ONLY", "")
                    .typed(110, rows(1));
            s.nextPage().typed(30, kind + "                         PAGE   2", "RUN 14-NOV-2022 07:42", "", second);
            return s.typed(80, rows(9)).read();
        }
    }

    private static String[] rows(int first) {
        String[] loads = {
            "LOCKERS EWC-6",
            "BELL SYSTEM",
            "DISH MACHINE",
            "SPARE",
            "KITCHEN FAN",
            "STAGE RECEPTS",
            "SITE LIGHTS",
            "SCOREBOARD"
        };
        String[] out = new String[loads.length + 1];
        out[0] = " CKT DESCRIPTION                  AMPS POLES    VA";
        for (int i = 0; i < loads.length; i++)
            out[i + 1] = String.format(" %3d %-30s  20     1 %s", first + i, loads[i], i == 3 ? "" : "  900");
        return out;
    }

    private static Directory typed(String... lines) throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            return s.typed(30, "PANEL: LP-9").typed(60, lines).directory();
        }
    }
}
