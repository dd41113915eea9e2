package asfound.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Files that an output must equal to the byte. {@code -Dasfound.golden=write} writes them anew, to be looked at and committed. */
final class Golden {

    private static final Path FOLDER = Path.of("src/test/resources/asfound/report");

    private Golden() {}

    static void assertSame(byte[] actual, String name) throws IOException {
        Path file = FOLDER.resolve(name);
        if ("write".equals(System.getProperty("asfound.golden"))) {
            Files.createDirectories(FOLDER);
            Files.write(file, actual);
        }
        assertThat(new String(actual, StandardCharsets.UTF_8)).isEqualTo(Files.readString(file));
    }
}
