package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Directory;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** What is said of a sheet whose columns are not sure. */
class OfficeDoubtsTest {

    @Test
    void figures_under_an_unknown_heading_are_told() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.text(40, 40, "PANEL M-3");
            double[] at = {40, 70, 170, 220};
            s.line(60, at, "NO", "SERVES", "CB", "XYZ");
            for (int r = 1; r < 6; r++) s.line(60 + 12 * r, at, "" + r, "Oven " + r, "20/1", "" + 310 * r);
            assertThat(Readings.said(s.directory().problems()))
                    .contains("The column 'XYZ' was taken for loads by its figures alone.");
        }
    }

    @Test
    void a_side_whose_ratings_were_not_found_is_told_with_its_positions() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double[] at = {40, 70, 200, 240, 280};
            s.text(40, 40, "PANEL K-5");
            s.line(60, at, "CKT", "LOAD", "BKR", "CKT", "LOAD");
            for (int r = 0; r < 4; r++)
                s.line(
                        74 + 14 * r,
                        at,
                        "" + (2 * r + 1),
                        "Lights room " + r,
                        "20/1",
                        "" + (2 * r + 2),
                        "Sockets room " + r);
            assertThat(Readings.said(s.directory().problems()))
                    .contains("No column of ratings was found beside positions 2 to 8.");
        }
    }

    @Test
    void a_column_of_ratings_that_holds_something_else_is_told() throws IOException {
        Directory d = Readings.table("PANEL,K-1\nCkt,Description,Trip,Poles\n1,Lights,see E2,1\n2,Pump,see E3,1\n"
                + "3,Fan,see E2,1\n4,Sign,see E4,1\n");
        assertThat(Readings.said(d.problems()))
                .contains("The column 'Trip' was not read: its entries are not of the kind, as 'see E2'.");
    }

    @Test
    void an_entry_with_letters_that_could_not_be_told_is_not_read_in_full() throws IOException {
        Directory d = Readings.table("PANEL,K-1\nCkt,Description,Trip,Poles\n1,Lights o\uFFFDce,20,1\n2,Pump,30,1\n"
                + "3,Fan,20,1\n4,Sign,20,1\n");
        assertThat(Readings.said(d.problems()))
                .contains("Position 1 could not be read in full: letters of 'Lights o\uFFFDce' could not be told.");
        assertThat(d.unread()).containsExactly(1);
    }
}
