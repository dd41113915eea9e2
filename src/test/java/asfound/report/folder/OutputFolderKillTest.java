package asfound.report.folder;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same with real processes: two write into one folder at once, and are killed as {@code kill -9} kills. */
class OutputFolderKillTest {

    private static final long SEED = 20_261_125;

    @TempDir
    Path home;

    @Test
    void two_processes_that_write_at_once_and_are_killed_leave_one_whole_report() throws Exception {
        writeAndKill(2);
    }

    @Tag("long")
    @Test
    void and_so_a_hundred_times() throws Exception {
        writeAndKill(100);
    }

    private void writeAndKill(int rounds) throws Exception {
        Random random = new Random(SEED);
        Path folder = home.resolve("wharf");
        OutputFolder.at(folder, home.resolve("record set")).write(Reports.saying("left0"));
        for (int round = 0; round < rounds; round++) {
            List<Process> writers = List.of(start(folder, "left"), start(folder, "right"));
            try {
                for (Process writer : writers)
                    assertThat(writer.inputReader().readLine()).isEqualTo("ready");
                Thread.sleep(150 + random.nextInt(250));
                for (Process writer : writers)
                    assertThat(writer.isAlive())
                            .as("a writer stopped by itself")
                            .isTrue();
            } finally {
                for (Process writer : writers) writer.destroyForcibly();
                for (Process writer : writers) writer.waitFor();
            }
            OutputFolder.recover(folder);
            assertThat(Manifest.standsAsWritten(folder))
                    .as("round %d, seed %d", round, SEED)
                    .isTrue();
            Map<String, String> files = Reports.read(folder);
            String word = files.get("index.html").substring("<p>".length());
            assertThat(word).matches("(left|right)[01]");
            assertThat(files.get("audit.json")).isEqualTo(word.repeat(100_000));
            assertThat(files.get("redlines/E-101.pdf")).isEqualTo("%PDF " + word);
        }
        OutputFolder.at(folder, home.resolve("record set")).write(Reports.saying("last"));
        assertThat(Reports.names(home)).containsExactly("wharf");
    }

    private static Process start(Path folder, String word) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-Xshare:auto", "-XX:TieredStopAtLevel=1", "-Xmx64m"));
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), EndlessWriter.class.getName()));
        command.addAll(List.of(folder.toString(), word));
        return new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }
}
