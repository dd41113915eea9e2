package asfound.drawing.schedule.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The lists of labels and headings, which anyone may add to. */
class VocabularyTest {

    private static final Map<String, Field> LABELS = Vocabulary.read("labels.txt", Field::valueOf);
    private static final Map<String, Role> HEADINGS = Vocabulary.read("headings.txt", Role::valueOf);

    @Test
    void everyLabelIsWrittenAsTheReaderLooksForIt() {
        assertThat(LABELS.keySet()).allSatisfy(l -> assertThat(Labels.plain(l)).isEqualTo(l));
    }

    @Test
    void everyHeadingIsWrittenAsTheReaderLooksForIt() {
        assertThat(HEADINGS.keySet())
                .allSatisfy(h -> assertThat(Headings.plain(h)).isEqualTo(h));
    }

    @ParameterizedTest
    @ValueSource(strings = {"labels.txt", "headings.txt"})
    void noWordStandsInAListTwice(String file) throws IOException {
        assertThat(words(file)).doesNotHaveDuplicates();
    }

    @Test
    void everyFieldAndEveryRoleHasAWord() {
        assertThat(LABELS.values()).contains(Field.values());
        assertThat(HEADINGS.values()).contains(Role.POSITION, Role.DESCRIPTION, Role.RATING, Role.POLES, Role.LOAD);
    }

    @Test
    void accentsMayBeLeftOut() {
        assertThat(Headings.weight("Descripción", Role.DESCRIPTION)).isEqualTo(1);
        assertThat(Headings.weight("DESCRIPCION", Role.DESCRIPTION)).isEqualTo(1);
    }

    private static List<String> words(String file) throws IOException {
        try (InputStream in = Vocabulary.class.getResourceAsStream(file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(l -> l.startsWith(" "))
                    .flatMap(l -> Stream.of(l.split("\\|")))
                    .map(String::strip)
                    .filter(l -> !l.isEmpty())
                    .toList();
        }
    }
}
