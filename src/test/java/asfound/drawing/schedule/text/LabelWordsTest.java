package asfound.drawing.schedule.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The list of labels, which anyone may add to. */
class LabelWordsTest {

    @Test
    void everyLabelIsWrittenAsTheReaderLooksForIt() {
        assertThat(LabelWords.read().keySet())
                .allSatisfy(l -> assertThat(Labels.plain(l)).isEqualTo(l));
    }

    @Test
    void noLabelStandsInTheListTwice() throws IOException {
        assertThat(labels()).doesNotHaveDuplicates().hasSize(LabelWords.read().size());
    }

    @Test
    void everyFieldHasALabel() {
        assertThat(LabelWords.read().values()).contains(Field.values());
    }

    private static List<String> labels() throws IOException {
        try (InputStream in = LabelWords.class.getResourceAsStream("labels.txt")) {
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
