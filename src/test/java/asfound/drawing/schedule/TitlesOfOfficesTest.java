package asfound.drawing.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The many ways in which offices write a panel's name over its directory: whatever is said around the name, the name alone is
 * read. The ways are listed in {@code titles.txt}, a bar where the line has a wide gap; common practice.
 */
class TitlesOfOfficesTest {

    @ParameterizedTest
    @ValueSource(strings = {"LP-1", "2LA-3", "MDP", "A", "K-107", "PH-H", "DB/L2/03"})
    void the_name_alone_is_read_however_the_title_is_written(String name) throws Exception {
        List<String> wrong = new ArrayList<>();
        for (String title : titles()) {
            String read = named(title.replace("%N", name));
            if (!read.equals(name)) wrong.add(title + " as " + read);
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void a_name_in_capitals_alone_may_have_words_of_its_own_behind_a_dash() throws IOException {
        assertThat(named("PANEL LP-1 - Kitchen")).isEqualTo("LP-1");
        assertThat(named("PANEL MDB - Tower A")).isEqualTo("MDB - Tower A");
    }

    @Test
    void by_words_and_numbers_in_brackets_two_panels_may_differ() throws IOException {
        assertThat(named("PANEL LP (101)")).isEqualTo("LP (101)");
        assertThat(named("PANEL HP (NORMAL)")).isEqualTo("HP (NORMAL)");
        assertThat(named("PANEL LC-1 (TYP. UNIT A)")).isEqualTo("LC-1 (TYP. UNIT A)");
        assertThat(named("PANEL LC-1 (TYP.)")).isEqualTo("LC-1");
    }

    @Test
    void a_note_that_speaks_of_another_panel_names_none() throws IOException {
        assertThat(named("CIRCUITS IN PANEL LP-3 ARE EXISTING")).isEqualTo("-");
        assertThat(named("SEE DETAIL 4, PANEL LP-3")).isEqualTo("-");
        assertThat(named("HVAC LOAD SCHEDULE")).isEqualTo("-");
        assertThat(named("FIRE ALARM PANEL FA")).isEqualTo("-");
    }

    @Test
    void who_typed_a_directory_is_no_panel() throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            s.twoSided(60).text(40, 150, "Directory typed by").text(140, 150, "R. Dunne");
            assertThat(s.directory().header().designation().isBlank()).isTrue();
        }
    }

    private static List<String> titles() throws IOException, URISyntaxException {
        return Files.readAllLines(
                Path.of(TitlesOfOfficesTest.class.getResource("titles.txt").toURI()));
    }

    private static String named(String title) throws IOException {
        try (DrawnSheet s = new DrawnSheet()) {
            double x = 40;
            for (String part : title.split("\\|")) {
                s.text(x, 40, part);
                x += DrawnSheet.width(part) + 30;
            }
            s.text(40, 54, "LOCATION: ELEC 104").text(200, 54, "VOLTS: 208Y/120");
            s.text(40, 66, "FED FROM: MDP-2").text(200, 66, "MAINS: MLO");
            return s.twoSided(100).directory().header().designation().or("-");
        }
    }
}
