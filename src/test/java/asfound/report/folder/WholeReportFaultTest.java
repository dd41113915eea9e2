package asfound.report.folder;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.audit.Audit;
import asfound.recordset.Limits;
import asfound.sample.WhinfellAnnex;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The report as it really is, each step of writing it stopped in turn: a full disk, a kill, a folder that is not ours. */
class WholeReportFaultTest {

    @TempDir
    Path home;

    private Audit audit;
    private Path folder;

    @BeforeEach
    void an_earlier_report() throws IOException {
        audit = WhinfellAnnex.in(home.resolve("record set"));
        folder = home.resolve("out").resolve("whinfell");
        Files.createDirectories(folder.getParent());
        write(new Disk.Real());
    }

    private void write(Disk disk) throws IOException {
        OutputFolder.at(folder, home.resolve("record set"), disk, Duration.ofSeconds(1))
                .write(stage -> asfound.report.Reports.write(audit, Limits.usual(), stage, (what, done, of) -> {}));
    }

    /** Every file with its bytes. */
    private Map<String, String> bytes() throws IOException {
        Map<String, String> files = new TreeMap<>();
        if (!Files.exists(folder)) return files;
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path f : all.filter(Files::isRegularFile).toList())
                files.put(
                        folder.relativize(f).toString(),
                        new String(Files.readAllBytes(f), StandardCharsets.ISO_8859_1));
        }
        return files;
    }

    @Test
    void a_disk_that_is_full_at_any_step_leaves_the_earlier_report_byte_for_byte_and_says_what_to_do()
            throws IOException {
        Map<String, String> before = bytes();
        assertThat(before).containsKeys("index.html", "audit.json", "corrections.xlsx", "redlines/E-601.pdf");
        int refused = 0;
        for (int step = 0; ; step++) {
            FaultyDisk disk = new FaultyDisk(step, false);
            try {
                write(disk);
            } catch (CannotWriteException e) {
                refused++;
                assertThat(e.getMessage())
                        .as("step %d", step)
                        .contains(folder.toString(), "the disk is full. Free some space", "is unchanged")
                        .doesNotContain("\n");
            }
            assertThat(bytes()).as("step %d", step).isEqualTo(before);
            if (!disk.wasReached()) break;
        }
        assertThat(refused).as("steps at which writing was stopped").isGreaterThan(30);
    }

    @Test
    void a_kill_at_any_step_leaves_the_whole_report() throws IOException {
        Map<String, String> before = bytes();
        for (int step = 0; ; step++) {
            FaultyDisk disk = new FaultyDisk(step, true);
            try {
                write(disk);
            } catch (FaultyDisk.Killed e) {
                OutputFolder.recover(folder);
            }
            assertThat(bytes()).as("step %d", step).isEqualTo(before);
            if (!disk.wasReached()) return;
        }
    }

    @Test
    void a_folder_that_may_not_be_written_is_said_with_its_name_and_what_to_do() {
        CannotWriteException e = CannotWriteException.of(
                folder, new AccessDeniedException(folder.getParent().toString()));
        assertThat(e.getMessage())
                .isEqualTo("Could not write the report to " + folder + ": no permission to write at "
                        + folder.getParent()
                        + ". Give --out a folder you may write to. What was there before is unchanged.");
    }
}
