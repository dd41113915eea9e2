package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.model.Directory;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** Which tables stand on an office's sheet, and which panels they are of. */
class OfficeSheetsTest {

    private static final double[] LIST = {40, 80, 260, 320};

    @Test
    void panels_in_two_rows_of_two_keep_their_own_positions() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            for (int k = 0; k < 4; k++) {
                double x = 30 + 290 * (k % 2), y = 40 + 130 * (k / 2);
                s.text(x, y, "PANEL K" + k + "   FED FROM: MDP");
                double[] at = {x, x + 22, x + 100, x + 140, x + 162, x + 240};
                s.line(y + 14, at, "#", "LOAD", "CB", "#", "LOAD", "CB");
                for (int r = 0; r < 5; r++)
                    s.line(
                            y + 28 + 12 * r,
                            at,
                            "" + (2 * r + 1),
                            "Lights " + k + r,
                            "20/1",
                            "" + (2 * r + 2),
                            "Oven " + k + r,
                            "30/1");
            }
            ScheduleReading read = s.read();
            assertThat(read.directories().stream().map(Directory::panel)).containsExactly("K0", "K1", "K2", "K3");
            assertThat(read.directories()).allMatch(d -> d.circuits().size() == 10);
            assertThat(read.directories().get(2).circuits().get(0).description().or(""))
                    .isEqualTo("Lights 20");
        }
    }

    @Test
    void a_right_side_that_is_listed_below_the_left_one_belongs_to_the_same_panel() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "Panel GP-2");
            for (int half = 0; half < 2; half++) {
                double y = 60 + 120 * half;
                s.text(40, y, half == 0 ? "Left side" : "Right side");
                s.line(y + 14, LIST, "Circuit", "Description", "Breaker", "Poles");
                for (int r = 0; r < 5; r++)
                    s.line(y + 28 + 14 * r, LIST, "" + (2 * r + 1 + half), "Load " + r + " of " + half, "20", "1");
            }
            Directory d = s.directory();
            assertThat(d.panel()).isEqualTo("GP-2");
            assertThat(d.circuits().stream().map(Directory.Circuit::position))
                    .containsExactly(1, 2, 3, 4, 5, 6, 7, 8, 9, 10);
            assertThat(d.problems()).isEmpty();
        }
    }

    @Test
    void a_plain_directory_from_a_panels_door_is_read_and_its_missing_ratings_told() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(250, 40, "Panel LP-B");
            for (int r = 0; r < 6; r++) {
                s.toTheRight(60, 70 + 20 * r, Integer.toString(2 * r + 1)).text(72, 70 + 20 * r, "Lights room " + r);
                s.toTheRight(320, 70 + 20 * r, Integer.toString(2 * r + 2)).text(332, 70 + 20 * r, "Sockets room " + r);
            }
            Directory d = s.directory();
            assertThat(d.panel()).isEqualTo("LP-B");
            assertThat(d.circuits()).hasSize(12);
            assertThat(d.circuits()).allMatch(c -> c.ratingA().isBlank());
            assertThat(Readings.said(d.problems())).contains("Most circuits were read without a rating.");
        }
    }

    @Test
    void a_schedule_of_fixtures_is_no_panel_and_is_told() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL BP-1");
            s.twoSided(60);
            s.text(40, 200, "LIGHTING FIXTURE SCHEDULE");
            double[] at = {40, 80, 130, 300, 360};
            s.line(214, at, "NO.", "TYPE", "DESCRIPTION", "LAMPS", "VA");
            for (int i = 1; i <= 6; i++)
                s.line(214 + 14 * i, at, "" + i, "A" + i, "Troffer type " + i, "LED", "" + (30 + i));
            ScheduleReading read = s.read();
            assertThat(Readings.only(read).panel()).isEqualTo("BP-1");
            assertThat(Readings.said(read.problems()))
                    .containsExactly(
                            "The table headed 'LIGHTING FIXTURE SCHEDULE' was not taken for a panel's directory.");
        }
    }

    @Test
    void sections_below_and_beside_each_other_are_one_panel() throws IOException {
        for (boolean beside : new boolean[] {false, true})
            try (DrawnSheet s = new DrawnSheet()) {
                s.text(30, 30, "PANEL RPB   TWO SECTIONS   FED FROM: MDP");
                for (int k = 0; k < 2; k++) {
                    double x = beside ? 30 + 290 * k : 30, y = beside ? 50 : 50 + 140 * k;
                    s.text(x, y, "SECTION " + (k + 1));
                    double[] at = {x, x + 22, x + 100, x + 140, x + 162, x + 240};
                    s.line(y + 14, at, "#", "LOAD", "CB", "#", "LOAD", "CB");
                    for (int r = 0; r < 5; r++)
                        s.line(
                                y + 28 + 12 * r,
                                at,
                                "" + (10 * k + 2 * r + 1),
                                "Lights " + k + r,
                                "20/1",
                                "" + (10 * k + 2 * r + 2),
                                "Oven " + k + r,
                                "30/1");
                }
                Directory d = s.directory();
                assertThat(d.panel()).isEqualTo("RPB");
                assertThat(d.circuits().stream().map(Directory.Circuit::position))
                        .containsExactly(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20);
                assertThat(d.problems()).isEmpty();
            }
    }

    @Test
    void outlets_of_a_telecom_rack_are_no_circuits() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "TELECOM OUTLETS - RACK 2 PANEL P1");
            double[] at = {40, 70, 130, 250, 300, 330, 390, 500};
            s.line(60, at, "PORT", "OUTLET", "ROOM", "CABLE", "PORT", "OUTLET", "ROOM", "CABLE");
            for (int r = 0; r < 8; r++) {
                String left = "D-" + (200 + r), right = "D-" + (300 + r);
                s.line(
                        74 + 14 * r,
                        at,
                        "" + (2 * r + 1),
                        left,
                        "Lobby " + r,
                        "CAT6",
                        "" + (2 * r + 2),
                        right,
                        "Library " + r,
                        "CAT6");
            }
            assertThat(s.read().directories()).isEmpty();
        }
    }

    @Test
    void a_panels_title_without_a_directory_below_it_is_told() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL LA-1");
            s.twoSided(60);
            s.text(40, 240, "PANEL LA-2");
            s.text(40, 260, "see sheet E-602");
            assertThat(Readings.said(s.read().problems()))
                    .containsExactly(
                            "The title 'PANEL LA-2' stands on the sheet, and no directory of that name was read.");
        }
    }
}
