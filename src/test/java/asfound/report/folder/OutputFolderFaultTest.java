package asfound.report.folder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every step of writing is stopped in turn: what was there before stays whole, byte for byte. */
class OutputFolderFaultTest {

    private static final int MANY = 1_000;

    @TempDir
    Path home;

    private Map<String, String> before;
    private Map<String, String> after;

    @BeforeEach
    void how_both_reports_look() throws IOException {
        write(home.resolve("a"), new Disk.Real(), "old");
        write(home.resolve("b"), new Disk.Real(), "new");
        before = Reports.read(home.resolve("a"));
        after = Reports.read(home.resolve("b"));
    }

    private void write(Path folder, Disk disk, String word) throws IOException {
        OutputFolder.at(folder, home.resolve("record set"), disk, Duration.ofSeconds(1))
                .write(Reports.saying(word));
    }

    private Path freshFolder(int step) throws IOException {
        Path folder = home.resolve("case-" + step).resolve("wharf");
        write(folder, new Disk.Real(), "old");
        return folder;
    }

    @Test
    void after_an_error_at_any_step_the_earlier_report_is_whole_without_any_repair() throws IOException {
        int refused = 0;
        for (int step = 0; step < MANY; step++) {
            Path folder = freshFolder(step);
            FaultyDisk disk = new FaultyDisk(step, false);
            try {
                write(folder, disk, "new");
                assertThat(Reports.read(folder)).as("error at step %d", step).isEqualTo(after);
            } catch (CannotWriteException e) {
                refused++;
                assertThat(e.getMessage()).contains("the disk is full").doesNotContain("\n");
                assertThat(Reports.read(folder)).as("error at step %d", step).isEqualTo(before);
            }
            write(folder, new Disk.Real(), "new");
            assertThat(Reports.names(folder.getParent()))
                    .as("left over by step %d", step)
                    .containsExactly("wharf");
            if (!disk.wasReached()) {
                assertThat(refused).as("steps at which the run was stopped").isGreaterThan(15);
                return;
            }
        }
        throw new AssertionError("more steps than " + MANY);
    }

    @Test
    void after_a_kill_at_any_step_the_next_start_finds_one_whole_report_and_clears_up() throws IOException {
        int outOfPlace = 0;
        for (int step = 0; step < MANY; step++) {
            Path folder = freshFolder(step);
            FaultyDisk disk = new FaultyDisk(step, true);
            try {
                write(folder, disk, "new");
            } catch (FaultyDisk.Killed e) {
                assertThat(Reports.read(folder)).as("killed at step %d", step).isIn(before, after, Map.of());
                if (!Files.exists(folder)) outOfPlace++;
                OutputFolder.recover(folder);
            }
            assertThat(Reports.read(folder)).as("killed at step %d", step).isIn(before, after);
            OutputFolder.at(folder, home.resolve("record set"));
            assertThat(Reports.names(folder.getParent()))
                    .as("left over by step %d", step)
                    .containsExactly("wharf");
            if (!disk.wasReached()) {
                assertThat(outOfPlace).as("kills between the two renames").isEqualTo(1);
                return;
            }
        }
        throw new AssertionError("more steps than " + MANY);
    }

    @Test
    void a_report_changed_by_hand_survives_a_kill_at_any_step() throws IOException {
        for (int step = 0; step < MANY; step++) {
            Path folder = freshFolder(step);
            Files.writeString(folder.resolve("notes.txt"), "mine");
            FaultyDisk disk = new FaultyDisk(step, true);
            try {
                write(folder, disk, "new");
            } catch (FaultyDisk.Killed e) {
                OutputFolder.at(folder, home.resolve("record set"));
            }
            Map<String, String> all = new TreeMap<>(Reports.read(folder));
            all.putAll(Reports.read(folder.resolveSibling("wharf-kept-1")));
            assertThat(all).as("killed at step %d", step).containsEntry("notes.txt", "mine");
            if (!disk.wasReached()) return;
        }
        throw new AssertionError("more steps than " + MANY);
    }

    @Test
    void a_first_report_is_there_whole_or_not_at_all() throws IOException {
        for (int step = 0; step < MANY; step++) {
            Path folder = home.resolve("first-" + step);
            FaultyDisk disk = new FaultyDisk(step, true);
            try {
                write(folder, disk, "new");
            } catch (FaultyDisk.Killed e) {
                assertThat(Reports.read(folder)).as("killed at step %d", step).isIn(after, Map.of());
            }
            if (!disk.wasReached()) return;
        }
        throw new AssertionError("more steps than " + MANY);
    }

    @Test
    void an_earlier_report_out_of_place_is_not_given_up_for_an_empty_or_a_strange_folder() throws IOException {
        Path folder = freshFolder(0);
        Path work = Files.createDirectory(folder.resolveSibling(".wharf.asfound"));
        Files.move(folder, work.resolve("earlier"));
        Files.createDirectory(folder);
        OutputFolder.recover(folder);
        assertThat(Reports.read(folder)).isEqualTo(before);

        Files.createDirectories(work);
        Files.move(folder, work.resolve("earlier"));
        Files.createDirectory(folder);
        Files.writeString(folder.resolve("strange.txt"), "the user's");
        assertThatThrownBy(() -> OutputFolder.at(folder, home.resolve("record set")))
                .isInstanceOf(CannotWriteException.class);
        assertThat(Reports.read(folder.resolveSibling("wharf-kept-1"))).isEqualTo(before);
        assertThat(Reports.read(folder)).containsOnlyKeys("strange.txt");
    }
}
