package asfound.report;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.audit.Audit;
import asfound.audit.Audits;
import asfound.audit.Stages;
import asfound.isolation.Verdict;
import asfound.recordset.Limits;
import asfound.recordset.RecordSets;
import asfound.report.terminal.IsolationText;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An air handler with its control power from another panel (common practice). */
class NamedElsewhereTest {

    @TempDir
    Path folder;

    private Audit audit(String drawn, String found) throws Exception {
        write("one-line/feeders.csv", "from,device,to\nUTILITY,S,MDP\nMDP,1,LP-1\nMDP,13,AHU-9\n");
        write("one-line/equipment.csv", "name,kind\nUTILITY,utility\nMDP,switchboard\nLP-1,panel\nAHU-9,motor\n");
        write(
                "drawings/lp-1.csv",
                "Panel,LP-1\nFed from,MDP/1\n\nCircuit,Poles,Amps,Description\n10,1,20,Copier\n12,1,20," + drawn
                        + "\n");
        write(
                "survey/may.csv",
                "panel,circuit,found,method\nUTILITY,S,MDP,opened\nMDP,1,LP-1,opened\nMDP,13,AHU-9,opened\nLP-1,12,"
                        + found + ",opened\n");
        return Audits.of(RecordSets.open(folder, Limits.usual()), Limits.usual(), Stages.SILENT);
    }

    private void write(String file, String text) throws Exception {
        Path path = folder.resolve(file);
        Files.createDirectories(path.getParent());
        Files.writeString(path, text);
    }

    private static Verdict verdict(Audit audit) {
        return audit.verdicts().stream()
                .filter(v -> v.equipment().equals("AHU-9"))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> named(Audit audit) {
        return new NamedElsewhere(audit).of(verdict(audit));
    }

    @Test
    void a_circuit_that_names_it_in_other_words_is_told_beside_its_verdict() throws Exception {
        Audit audit = audit("AHU-9 CONTROLS", "AHU-9 control power");
        assertThat(named(audit)).containsExactly("LP-1/12 (AHU-9 CONTROLS; AHU-9 control power)");
        assertThat(String.join(" ", IsolationText.of(audit, verdict(audit), StandardCharsets.UTF_8))
                        .replaceAll("\\s+", " "))
                .contains(
                        "Names it too LP-1/12 (AHU-9 CONTROLS; AHU-9 control power): see whether it brings supply into it");
    }

    @Test
    void another_name_that_begins_or_ends_with_its_own_is_none() throws Exception {
        assertThat(named(audit("AHU-91 CONTROLS", "EAHU-9 fan"))).isEmpty();
        assertThat(named(audit("AHU-9-2 CONTROLS", "Sump alarm"))).isEmpty();
    }
}
