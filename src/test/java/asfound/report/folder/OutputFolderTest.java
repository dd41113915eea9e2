package asfound.report.folder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class OutputFolderTest {

    @TempDir
    Path home;

    private OutputFolder at(Path folder) throws CannotWriteException {
        return OutputFolder.at(folder, home.resolve("record set"));
    }

    @Test
    void a_report_is_written_with_the_list_of_its_hashes_and_nothing_is_left_beside_it() throws IOException {
        OutputFolder.Written written = at(home.resolve("reports/wharf")).write(Reports.saying("new"));

        assertThat(written.kept()).isEmpty();
        assertThat(Reports.names(home)).containsExactly("reports");
        assertThat(Reports.names(home.resolve("reports"))).containsExactly("wharf");
        assertThat(Reports.read(home.resolve("reports/wharf")))
                .containsOnlyKeys("index.html", "audit.json", "redlines/E-101.pdf", "asfound.sha256")
                .containsEntry("index.html", "<p>new");
        // SHA-256 of "abc", FIPS 180-2 appendix B.1
        at(home.resolve("hash")).write(stage -> Reports.put(stage, "abc.txt", "abc"));
        assertThat(Files.readAllLines(home.resolve("hash/asfound.sha256")).get(1))
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad  abc.txt");
    }

    @Test
    void a_later_report_replaces_an_earlier_one_wholly() throws IOException {
        Path folder = home.resolve("wharf");
        at(folder).write(stage -> Reports.put(stage, "only-in-the-earlier.csv", "old"));
        at(folder).write(Reports.saying("new"));
        assertThat(Reports.read(folder))
                .containsEntry("index.html", "<p>new")
                .doesNotContainKey("only-in-the-earlier.csv");
        assertThat(Reports.names(home)).containsExactly("wharf");
    }

    @Test
    void an_empty_folder_is_written_to_and_keeps_its_permissions() throws IOException {
        Path folder = Files.createDirectory(home.resolve("wharf"));
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
        at(folder).write(Reports.saying("new"));
        assertThat(Reports.read(folder)).hasSize(4);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder)))
                .isEqualTo("rwx------");
        assertThat(Reports.names(home)).containsExactly("wharf");
    }

    @Test
    void a_folder_that_is_no_report_is_refused_and_left_as_it_is() throws IOException {
        Path folder = Files.createDirectory(home.resolve("site"));
        Files.writeString(folder.resolve("index.html"), "a page of the user's");
        assertThatThrownBy(() -> at(folder))
                .isInstanceOf(CannotWriteException.class)
                .hasMessageContaining("holds other things than a report of asfound (index.html)")
                .hasMessageContaining("--out");
        assertThat(Reports.read(folder)).containsOnlyKeys("index.html");
        assertThat(Reports.names(home)).containsExactly("site");
    }

    @Test
    void a_file_in_the_place_of_the_folder_is_refused() throws IOException {
        Path file = Files.writeString(home.resolve("wharf"), "mine");
        assertThatThrownBy(() -> at(file)).hasMessageContaining("is a file");
        assertThatThrownBy(() -> at(file.resolve("deeper"))).hasMessageContaining("would lie inside a file");
        assertThat(file).hasContent("mine");
    }

    @Test
    void the_record_set_itself_and_a_folder_around_it_are_refused() throws IOException {
        Path records = Files.createDirectories(home.resolve("record set"));
        assertThatThrownBy(() -> at(records)).hasMessageContaining("holds the record set itself");
        assertThatThrownBy(() -> at(home)).hasMessageContaining("holds the record set itself");
    }

    @Test
    void the_folder_that_the_user_works_in_is_refused() {
        assertThatThrownBy(() -> at(Path.of("."))).hasMessageContaining("is the folder that you work in");
        // the folder above may hold this test's record set as well, and is then refused for that
        assertThatThrownBy(() -> at(Path.of("..")))
                .hasMessageMatching(".*(is the folder that you work in|holds the record set itself).*");
    }

    @Test
    void a_mounted_disk_is_refused_before_any_work_is_done() throws IOException {
        Path shared = Path.of("/dev/shm"); // on most Linux systems a disk in memory
        assumeThat(Files.isDirectory(shared)).isTrue();
        assumeThat(Files.getFileStore(shared).equals(Files.getFileStore(shared.getParent())))
                .isFalse();
        assertThatThrownBy(() -> at(shared)).hasMessageContaining("is a mounted disk");
    }

    static Stream<Arguments> whatCanGoWrong() {
        return Stream.of(
                arguments(new IOException("No space left on device"), "the disk is full. Free some space"),
                arguments(new IOException("There is not enough space on the disk"), "the disk is full"),
                arguments(new IOException("Disk quota exceeded"), "the disk quota is used up"),
                arguments(new AccessDeniedException("/srv/reports"), "no permission to write at /srv/reports"),
                arguments(new IOException("Read-only file system"), "the disk can only be read"),
                arguments(new IOException("Device or resource busy"), "it is a mounted disk"),
                arguments(new IOException("Input/output error"), "Input/output error"));
    }

    @ParameterizedTest
    @MethodSource("whatCanGoWrong")
    void what_goes_wrong_is_one_line_that_says_why_and_what_to_do(IOException cause, String why) {
        assertThatThrownBy(() -> at(home.resolve("wharf")).write(stage -> {
                    throw cause;
                }))
                .isInstanceOf(CannotWriteException.class)
                .hasMessageStartingWith("Could not write the report to " + home)
                .hasMessageContaining(why)
                .hasMessageContaining("--out")
                .hasMessageEndingWith("What was there before is unchanged.")
                .message()
                .doesNotContain("\n");
    }

    @Test
    void a_link_is_followed_and_one_that_leads_nowhere_is_refused() throws IOException {
        Path folder = Files.createDirectory(home.resolve("wharf"));
        Path link = Files.createSymbolicLink(home.resolve("latest"), folder);
        at(link).write(Reports.saying("new"));
        assertThat(link).isSymbolicLink();
        assertThat(Reports.read(folder)).hasSize(4);
        Path broken = Files.createSymbolicLink(home.resolve("broken"), home.resolve("nowhere"));
        assertThatThrownBy(() -> at(broken)).hasMessageContaining("leads nowhere");
    }

    @Test
    void a_report_with_a_file_of_the_users_in_it_is_kept_beside_the_new_one() throws IOException {
        Path folder = home.resolve("wharf");
        at(folder).write(Reports.saying("old"));
        Files.writeString(folder.resolve("notes.txt"), "LP-2A: ask Ines");

        OutputFolder.Written written = at(folder).write(Reports.saying("new"));

        assertThat(written.kept()).containsExactly(home.toRealPath().resolve("wharf-kept-1"));
        assertThat(Reports.read(home.resolve("wharf-kept-1")))
                .containsEntry("notes.txt", "LP-2A: ask Ines")
                .containsEntry("index.html", "<p>old");
        assertThat(Reports.read(folder)).containsEntry("index.html", "<p>new").doesNotContainKey("notes.txt");
    }

    @Test
    void a_list_with_the_drafters_ticks_in_it_is_kept_and_never_overwritten() throws IOException {
        Path folder = home.resolve("wharf");
        for (String tick : List.of("first ticks", "second ticks")) {
            at(folder).write(Reports.saying("old"));
            Files.writeString(folder.resolve("audit.json"), tick);
        }
        at(folder).write(Reports.saying("new"));
        assertThat(home.resolve("wharf-kept-1/audit.json")).hasContent("first ticks");
        assertThat(home.resolve("wharf-kept-2/audit.json")).hasContent("second ticks");
    }

    @Test
    void what_file_browsers_leave_behind_is_no_change_by_hand() throws IOException {
        Path folder = home.resolve("wharf");
        at(folder).write(Reports.saying("old"));
        Files.writeString(folder.resolve(".DS_Store"), "x");
        Files.writeString(folder.resolve("redlines/Thumbs.db"), "x");
        assertThat(at(folder).write(Reports.saying("new")).kept()).isEmpty();
        assertThat(Reports.names(home)).containsExactly("wharf");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../outside.txt",
                "a/../../outside.txt",
                "/outside.txt",
                "",
                "a//b",
                "./a",
                "a\\b",
                "C:evil",
                "a\u0000b",
                "con",
                "NUL.txt",
                " a",
                "a.",
                ".hidden",
                "a\u202Eb",
                "asfound.sha256"
            })
    void a_name_cannot_leave_the_folder(String name) throws IOException {
        Path folder = home.resolve("wharf");
        at(folder).write(Reports.saying("old"));
        assertThatThrownBy(() -> at(folder).write(stage -> Reports.put(stage, name, "x")))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(Reports.read(folder)).hasSize(4).containsEntry("index.html", "<p>old");
        assertThat(Reports.names(home)).containsExactly("wharf");
    }

    @Test
    void two_files_of_one_name_are_refused_even_where_only_the_case_differs() throws IOException {
        OutputFolder output = at(home.resolve("wharf"));
        assertThatThrownBy(() -> output.write(stage -> {
                    Reports.put(stage, "redlines/E-1.pdf", "a");
                    Reports.put(stage, "redlines/e-1.PDF", "b");
                }))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(home.resolve("wharf")).doesNotExist();
    }

    @Test
    void a_file_left_open_is_not_a_whole_report() throws IOException {
        OutputFolder output = at(home.resolve("wharf"));
        assertThatThrownBy(
                        () -> output.write(stage -> stage.create("index.html").write(1)))
                .isInstanceOf(CannotWriteException.class)
                .hasMessageContaining("index.html");
        assertThat(home.resolve("wharf")).doesNotExist();
    }

    @Test
    void a_second_run_waits_and_then_says_that_another_is_writing() throws IOException {
        Path folder = home.resolve("wharf");
        at(folder).write(Reports.saying("old"));
        at(folder).write(stage -> {
            assertThatThrownBy(
                            () -> OutputFolder.at(folder, home.resolve("x"), new Disk.Real(), Duration.ofMillis(120)))
                    .isInstanceOf(CannotWriteException.class)
                    .hasMessageContaining("another run of asfound is writing");
            Reports.saying("new").writeTo(stage);
        });
        assertThat(Reports.read(folder)).containsEntry("index.html", "<p>new");
    }

    @ParameterizedTest
    @ValueSource(strings = {"E-101.pdf", "Schedule, level 2 (rev. B).pdf", "LP-2Ä"})
    void an_ordinary_name_stays_as_it_is(String name) {
        assertThat(FileNames.of(name)).isEqualTo(name);
    }

    @ParameterizedTest
    @ValueSource(strings = {"../../etc/passwd", "a/b\\c", "\u202Efdp.exe", "aux.pdf", "", "...", " . ", "x\ny"})
    void any_text_gives_a_name_that_is_fit(String text) {
        String name = FileNames.of(text);
        FileNames.check(name);
        assertThat(name).doesNotContain("/");
    }

    @Test
    void an_endless_name_is_cut_to_a_fit_one() {
        String name = FileNames.of("⚡".repeat(500));
        FileNames.check(name);
        assertThat(name).matches("⚡{66}"); // three bytes each
    }
}
