package asfound.broken;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.audit.Audit;
import asfound.audit.Audits;
import asfound.audit.Stages;
import asfound.model.Problem;
import asfound.recordset.Limits;
import asfound.recordset.RecordSet;
import asfound.recordset.RecordSets;
import asfound.report.Reports;
import asfound.report.folder.OutputFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** An input that vanishes or changes while the run goes on is told by name with what to do, and the rest is audited. */
class ChangingInputsTest {

    private static final Path FIXTURE = Path.of("fixtures/kestrel-wharf");
    private static final String PDF = "drawings/LP-1A.pdf";

    @TempDir
    Path temp;

    private Path root;

    private interface Act {
        void on(Path file) throws IOException;
    }

    @BeforeEach
    void a_record_set_of_each_kind_of_file() throws IOException {
        root = temp.resolve("wharf");
        for (String name : List.of(PDF, "one-line/feeders.csv", "one-line/equipment.csv", "record.yaml")) copy(name);
        copy("survey/okafor-electrical-room.csv");
        copy("survey/lindqvist-floors.csv");
        Files.write(root.resolve("drawings/LP-9.xlsx"), BrokenFiles.workbook());
        text("drawings/LP-8.csv", "PANEL LP-8,,,\nCKT,DESCRIPTION,POLES,TRIP\n1,EF-1,1,20\n2,EF-2,1,20\n3,EF-3,1,20\n");
        text("accepted.yaml", "accepted: []\n");
    }

    private void copy(String name) throws IOException {
        Files.createDirectories(root.resolve(name).getParent());
        Files.copy(FIXTURE.resolve(name), root.resolve(name), StandardCopyOption.REPLACE_EXISTING);
    }

    private void text(String name, String content) throws IOException {
        Files.writeString(root.resolve(name), content);
    }

    /** The audit, while something is done to a file as soon as a stage of that name begins. */
    private Audit audit(String stage, String file, Act act) throws Exception {
        RecordSet set = RecordSets.open(root, Limits.usual());
        return Audits.of(set, Limits.usual(), at(stage, file, act));
    }

    private Stages at(String stage, String file, Act act) {
        return (what, done, of) -> {
            try {
                if (what.equals(stage)) act.on(root.resolve(file));
            } catch (IOException e) {
                throw new AssertionError(e);
            }
        };
    }

    private static List<String> told(Audit audit, String file) {
        return Stream.concat(
                        audit.inputs().stream().flatMap(i -> i.problems().stream()),
                        audit.recordSet().problems().stream())
                .filter(p -> p.place().file().equals(file))
                .map(Problem::inWords)
                .toList();
    }

    /** How many values were read of each file but one. */
    private static List<String> readOfOthers(Audit audit, String file) {
        List<String> read = new ArrayList<>();
        audit.drawings().directories().forEach(d -> read.add(d.place().file()));
        audit.drawings().oneLine().feeders().forEach(f -> read.add(f.place().file()));
        audit.drawings().oneLine().equipment().forEach(e -> read.add(e.place().file()));
        audit.survey().forEach(o -> read.add(o.place().file()));
        read.removeIf(file::equals);
        return read;
    }

    private static final String WAIT = "Wait until whatever writes it has ended, and run again.";
    private static final String CHECK = "Check that it is there and may be read, and run again.";

    @ParameterizedTest
    @ValueSource(
            strings = {
                PDF,
                "drawings/LP-8.csv",
                "drawings/LP-9.xlsx",
                "one-line/feeders.csv",
                "one-line/equipment.csv",
                "survey/okafor-electrical-room.csv"
            })
    void a_file_that_vanishes_or_changes_is_told_and_nothing_of_it_is_used(String file) throws Exception {
        Audit calm = audit("never", file, f -> {});
        assertThat(told(calm, file)).noneMatch(p -> p.contains("Nothing of it") || p.contains("nothing of it"));
        assertThat(readOfOthers(calm, "")).contains(file);
        byte[] whole = Files.readAllBytes(root.resolve(file));

        Audit gone = audit("reading " + file, file, Files::delete);
        assertThat(told(gone, file))
                .singleElement()
                .asString()
                .isEqualTo(
                        file + ": The file has vanished since the folder was listed. Nothing of it is used. " + CHECK);
        assertThat(readOfOthers(gone, "")).isEqualTo(readOfOthers(calm, file));

        Files.write(root.resolve(file), whole);
        Audit other = audit("reading " + file, file, f -> Files.write(f, changed(whole)));
        assertThat(told(other, file))
                .singleElement()
                .asString()
                .isEqualTo(file + ": The file changed while it was read; nothing of it is used. " + WAIT);
        assertThat(readOfOthers(other, "")).isEqualTo(readOfOthers(calm, file));

        Files.write(root.resolve(file), whole);
        Audit cut = audit("reading " + file, file, f -> Files.write(f, new byte[0]));
        assertThat(told(cut, file)).singleElement().asString().contains("changed while it was read");
    }

    /** Still readable, and another file: a line end more. */
    private static byte[] changed(byte[] whole) {
        byte[] more = java.util.Arrays.copyOf(whole, whole.length + 1);
        more[whole.length] = '\n';
        return more;
    }

    @ParameterizedTest
    @ValueSource(strings = {"record.yaml", "accepted.yaml"})
    void settings_that_change_or_vanish_during_the_run_are_told(String file) throws Exception {
        String said = "The file changed during the run";
        assertThat(told(audit("never", file, f -> {}), file)).isEmpty();
        assertThat(told(audit("findings", file, f -> Files.writeString(f, "\n")), file))
                .anyMatch(p -> p.contains(said) && p.endsWith("Run again."));
        assertThat(told(audit("findings", file, Files::delete), file))
                .anyMatch(p -> p.contains("has vanished") && p.endsWith(CHECK));
    }

    @Test
    void a_drawing_that_vanishes_before_it_is_marked_costs_its_own_pages_alone_and_the_report_is_written()
            throws Exception {
        Audit audit = audit("never", PDF, f -> {});
        OutputFolder.Written written = OutputFolder.at(temp.resolve("report"), root)
                .write(stage -> {
                    List<String> notes =
                            Reports.write(audit, Limits.usual(), stage, at("marking " + PDF, PDF, Files::delete));
                    assertThat(notes)
                            .singleElement()
                            .asString()
                            .startsWith(PDF + ": The drawing vanished while it was audited")
                            .endsWith("Put it back and run the audit again.");
                });
        assertThat(written.folder().resolve("redlines/LP-1A.pdf")).isNotEmptyFile();
        assertThat(written.folder().resolve("index.html")).isNotEmptyFile();
    }
}
