package asfound.broken;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.command.Main;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The whole program on a record set full of hostile files: the sound ones are audited, each of the others is told. */
class HostileSetTest {

    /** Controls but tab and line ends, and marks that turn the direction of writing. */
    private static final Pattern STEERING =
            Pattern.compile("[\\x00-\\x08\\x0b\\x0c\\x0e-\\x1f\\x7f-\\x9f\\u202a-\\u202e\\u2066-\\u2069]");

    @TempDir
    Path temp;

    @Test
    void sound_files_are_audited_hostile_ones_told_and_nothing_is_written_elsewhere() throws Exception {
        Map<String, String> told = HostileSet.in(temp.resolve("set"), 40);
        TreeSet<String> before = files();
        StringWriter out = new StringWriter(), err = new StringWriter();
        Path report = temp.resolve("report");
        int status = Main.run(
                new PrintWriter(out),
                new PrintWriter(err),
                "audit",
                temp.resolve("set").toString(),
                "--allow",
                "expanded-mb=32",
                "--allow",
                "pages=200",
                "--out",
                report.toString());
        assertThat(status).as(err.toString()).isZero();
        assertThat(STEERING.matcher(out + "" + err).find())
                .as("steers the terminal")
                .isFalse();

        JsonNode audit =
                new ObjectMapper().readTree(report.resolve("audit.json").toFile());
        List<String> problems = Stream.concat(
                        all(audit.get("problems"))
                                .map(p -> p.get("file").asText() + " "
                                        + p.get("message").asText()),
                        all(audit.get("inputs"))
                                .flatMap(i -> all(i.get("problems"))
                                        .map(p -> i.get("file").asText() + " "
                                                + p.get("message").asText())))
                .toList();
        told.forEach((file, message) ->
                assertThat(problems).as(file).anyMatch(p -> p.startsWith(file + " ") && p.contains(message)));

        assertThat(all(audit.get("directories")).map(d -> d.get("file").asText()))
                .contains("drawings/LP-1A.pdf");
        assertThat(all(audit.get("isolation"))
                        .map(v -> v.get("equipment").asText() + " "
                                + v.get("verdict").asText()))
                .as("what the sound one-line and survey say")
                .contains("LP-2A fails", "LP-1A unproven");
        assertThat(Files.readString(report.resolve("audit.json"))).doesNotContain("SECRET");

        for (String file : List.of("index.html", "audit.json", "corrections.csv", "isolation.csv", "retrace.csv")) {
            String text = Files.readString(report.resolve(file));
            assertThat(STEERING.matcher(text).find()).as(file).isFalse();
            if (file.endsWith(".html")) assertThat(text).doesNotContain(HostileSet.SCRIPT);
        }
        TreeSet<String> after = files();
        after.removeAll(before);
        assertThat(after).isNotEmpty().allMatch(f -> f.startsWith("report/"));
    }

    private static Stream<JsonNode> all(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false);
    }

    private TreeSet<String> files() throws IOException {
        try (Stream<Path> all = Files.walk(temp)) {
            TreeSet<String> files = new TreeSet<>();
            all.filter(p -> !Files.isDirectory(p))
                    .forEach(p -> files.add(temp.relativize(p).toString()));
            return files;
        }
    }
}
