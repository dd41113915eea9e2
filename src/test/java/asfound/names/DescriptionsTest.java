package asfound.names;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.recordset.Settings;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DescriptionsTest {

    /** A line of the labelled list. */
    private record Pair(Sameness label, String one, String other) {

        static Pair of(String line) {
            String[] parts = line.split("\\|", -1);
            return new Pair(
                    Sameness.valueOf(parts[0].strip().toUpperCase(Locale.ROOT)), parts[1].strip(), parts[2].strip());
        }
    }

    private final Descriptions descriptions = Descriptions.of(Settings.none());

    private static List<Pair> pairs() throws IOException {
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                DescriptionsTest.class.getResourceAsStream("description-pairs.txt"), StandardCharsets.UTF_8))) {
            return lines.lines()
                    .filter(l -> !l.isBlank() && !l.startsWith("#"))
                    .map(Pair::of)
                    .toList();
        }
    }

    @Test
    void nothing_that_differs_is_called_the_same() throws IOException {
        assertThat(pairs().stream()
                        .filter(p -> p.label() != Sameness.SAME)
                        .filter(p -> descriptions.compare(p.one(), p.other()) == Sameness.SAME))
                .isEmpty();
    }

    @Test
    void nothing_that_is_the_same_or_unclear_raises_an_alarm() throws IOException {
        assertThat(pairs().stream()
                        .filter(p -> p.label() != Sameness.DIFFERENT)
                        .filter(p -> descriptions.compare(p.one(), p.other()) == Sameness.DIFFERENT))
                .isEmpty();
    }

    @Test
    void at_least_95_of_100_labelled_pairs_are_answered_as_an_electrician_would() throws IOException {
        List<Pair> pairs = pairs();
        assertThat(pairs).hasSizeGreaterThanOrEqualTo(300);
        List<Pair> wrong = pairs.stream()
                .filter(p -> descriptions.compare(p.one(), p.other()) != p.label())
                .toList();
        assertThat(wrong).as("wrong").hasSizeLessThanOrEqualTo(pairs.size() * 5 / 100);
    }

    @Test
    void it_does_not_matter_which_comes_first() throws IOException {
        assertThat(pairs().stream()
                        .filter(p ->
                                descriptions.compare(p.one(), p.other()) != descriptions.compare(p.other(), p.one())))
                .isEmpty();
    }

    @Test
    void case_punctuation_and_spaces_do_not_matter() throws IOException {
        for (Pair p : pairs()) {
            String plain =
                    "  " + p.one().toLowerCase(Locale.ROOT).replace(" - ", " ").replace(",", " , ") + " ";
            assertThat(descriptions.compare(plain, p.other()))
                    .as(p.toString())
                    .isEqualTo(descriptions.compare(p.one(), p.other()));
        }
    }

    @Test
    void every_description_is_the_same_as_itself_unless_it_says_nothing() throws IOException {
        for (Pair p : pairs()) {
            Sameness self = descriptions.compare(p.one(), p.one());
            assertThat(self)
                    .as(p.one())
                    .isEqualTo(descriptions.parse(p.one()).saysNothing() ? Sameness.UNCLEAR : Sameness.SAME);
        }
    }

    @Test
    void a_record_set_adds_its_own_abbreviations() {
        Settings none = Settings.none();
        Descriptions own = Descriptions.of(new Settings(
                none.building(),
                Map.of(),
                List.of(),
                List.of(),
                Map.of("WZ", "water heater", "BLX", "blast chiller"),
                Map.of(),
                none.numbering(),
                List.of(),
                none.chosen()));
        assertThat(own.compare("WZ RM 204", "Water htr room 204")).isEqualTo(Sameness.SAME);
        assertThat(own.compare("WZ-3", "WATER HEATER 3")).isEqualTo(Sameness.SAME);
        assertThat(own.compare("BLX RM 204", "Blast chiller 204")).isEqualTo(Sameness.SAME);
        assertThat(own.compare("BLX RM 204", "LIGHTING RM 204")).isEqualTo(Sameness.DIFFERENT);
        assertThat(descriptions.compare("WZ RM 204", "Water htr room 204")).isNotEqualTo(Sameness.SAME);
    }

    @ParameterizedTest
    @CsvSource({
        "RECEIVE,RECIEVE,true",
        "LIGHT,LIGHTS,true",
        "ABC,ABD,true",
        "ABC,ADE,false",
        "LIGHTING,LIGHTING,true",
        "AB,ABCD,false"
    })
    void a_slip_is_one_letter(String a, String b, boolean slip) {
        assertThat(Vocabulary.isOneSlip(a, b)).isEqualTo(slip);
    }
}
