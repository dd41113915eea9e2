package asfound.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where the report cannot go, the command says so in one line, with the place and what to do, before any work is done. */
class AuditOutTest {

    @TempDir
    Path temp;

    private String refused(Path out) throws IOException {
        Path set = Files.createDirectories(temp.resolve("set"));
        Files.writeString(set.resolve("s.csv"), "panel,circuit,found,method\nMDP,7,LP-2A,opened\n");
        StringWriter err = new StringWriter();
        int status = Main.run(
                new PrintWriter(new StringWriter()),
                new PrintWriter(err),
                "audit",
                set.toString(),
                "--out",
                out.toString());
        assertThat(status).as(err.toString()).isEqualTo(Main.NOTHING_DONE);
        assertThat(err.toString().strip())
                .contains(out.toString(), "Give --out")
                .doesNotContain("\n");
        return err.toString();
    }

    @Test
    void a_file_in_its_place_or_above_it() throws IOException {
        Path file = Files.writeString(temp.resolve("notes.txt"), "mine");
        assertThat(refused(file)).contains("is a file");
        assertThat(refused(file.resolve("report"))).contains("would lie inside a file");
        assertThat(file).hasContent("mine");
    }

    @Test
    void a_disk_of_the_system_that_takes_no_folders() throws IOException {
        assumeTrue(Files.isDirectory(Path.of("/proc/self")), "only where there is such a disk");
        assertThat(refused(Path.of("/proc/asfound-report"))).contains("nothing can be made at /proc");
    }

    @Test
    void a_folder_that_the_user_may_not_write_to() throws IOException {
        Path locked = Files.createDirectory(temp.resolve("locked"));
        assumeTrue(Files.getFileStore(locked).supportsFileAttributeView("posix"));
        Files.setPosixFilePermissions(locked, PosixFilePermissions.fromString("r-xr-xr-x"));
        try {
            assumeTrue(!Files.isWritable(locked), "the superuser may write anywhere");
            assertThat(refused(locked.resolve("report"))).contains("no permission to write at " + locked);
        } finally {
            Files.setPosixFilePermissions(locked, PosixFilePermissions.fromString("rwxr-xr-x"));
        }
    }
}
