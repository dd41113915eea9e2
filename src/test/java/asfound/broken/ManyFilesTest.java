package asfound.broken;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.recordset.Limits;
import asfound.recordset.RecordSets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Record sets of very many or very deep folders and files: each file is read or told by its name. */
class ManyFilesTest {

    private static final String SURVEY = "panel,circuit,relation,found,method\nMDP,7,feeds,%s,opened\n";

    @TempDir
    Path folder;

    @Test
    void of_ten_thousand_small_files_each_is_read_or_told() throws Exception {
        List<String> sound = new ArrayList<>(), broken = new ArrayList<>();
        for (int i = 0; i < 10_000; i++) {
            String name = "t%05d.csv".formatted(i);
            String content = switch (i % 10) {
                case 0 -> SURVEY.formatted("LP-" + i);
                case 1 -> "";
                default -> "x";
            };
            Files.writeString(folder.resolve(name), content);
            (i % 10 == 0 ? sound : broken).add(name);
        }
        WholeReading reading = WholeReading.of(RecordSets.open(folder, Limits.usual()), Limits.usual());
        assertThat(reading.problems().stream()
                        .map(p -> p.replaceFirst("[:,].*", ""))
                        .distinct()
                        .toList())
                .containsExactlyInAnyOrderElementsOf(broken);
        assertThat(reading.values().stream().filter(v -> v.endsWith(" SURVEY")).map(v -> v.replace(" SURVEY", "")))
                .containsExactlyElementsOf(sound);
    }

    @Test
    void what_lies_sixty_folders_deep_is_told_and_the_rest_is_read() throws Exception {
        Path deep = folder;
        for (int i : IntStream.range(0, 60).toArray()) deep = deep.resolve("d" + i);
        Files.createDirectories(deep);
        Files.writeString(deep.resolve("deep.csv"), SURVEY.formatted("LP-9"));
        Files.writeString(folder.resolve("sound.csv"), SURVEY.formatted("LP-2A"));
        WholeReading reading = WholeReading.of(RecordSets.open(folder, Limits.usual()), Limits.usual());
        assertThat(reading.problems())
                .singleElement()
                .asString()
                .startsWith("d0/d1/")
                .contains("nested deeper than 40 levels");
        assertThat(reading.values()).anyMatch(v -> v.contains("LP-2A")).noneMatch(v -> v.contains("LP-9"));
    }
}
