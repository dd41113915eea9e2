package asfound.isolation;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.audit.Audit;
import asfound.isolation.Verdict.Standing;
import asfound.report.terminal.IsolationText;
import asfound.sample.WrittenRecords;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An air handler, drawn and traced at one breaker, that a circuit of another panel names (common practice). */
class NamedElsewhereTest {

    @TempDir
    Path folder;

    private Audit audit(String drawn, String found) throws Exception {
        return new WrittenRecords(folder)
                .file("one-line/feeders.csv", "from,device,to", "UTILITY,S,MDP", "MDP,1,LP-1", "MDP,13,AHU-9")
                .file(
                        "one-line/equipment.csv",
                        "name,kind",
                        "UTILITY,utility",
                        "MDP,switchboard",
                        "LP-1,panel",
                        "AHU-9,motor")
                .file(
                        "drawings/lp-1.csv",
                        "Panel,LP-1",
                        "Fed from,MDP/1",
                        "",
                        "Circuit,Poles,Amps,Description",
                        "10,1,20,Copier",
                        "12,1,20," + drawn)
                .file(
                        "survey/may.csv",
                        "panel,circuit,found,method",
                        "UTILITY,S,MDP,opened",
                        "MDP,1,LP-1,opened",
                        "MDP,13,AHU-9,opened",
                        "LP-1,12," + found + ",opened")
                .audit();
    }

    private static Verdict verdict(Audit audit) {
        return audit.verdicts().stream()
                .filter(v -> v.equipment().equals("AHU-9"))
                .findFirst()
                .orElseThrow();
    }

    private static String named(Audit audit) {
        return NamedElsewhere.inWords(new NamedElsewhere(audit.network()).of(verdict(audit)));
    }

    @Test
    void a_circuit_that_names_it_in_other_words_is_told_beside_its_verdict() throws Exception {
        Audit audit = audit("AHU-9 CONTROLS", "AHU-9 control power");
        assertThat(named(audit)).isEqualTo("LP-1/12 (AHU-9 CONTROLS; AHU-9 control power)");
        assertThat(String.join(" ", IsolationText.of(audit, verdict(audit), StandardCharsets.UTF_8))
                        .replaceAll("\\s+", " "))
                .contains(
                        "Names it too LP-1/12 (AHU-9 CONTROLS; AHU-9 control power): see whether it brings supply into it");
    }

    @Test
    void control_power_from_a_circuit_that_is_none_of_its_points_leaves_it_unproven() throws Exception {
        Verdict verdict = verdict(audit("AHU-9 CONTROLS", "AHU-9 control power"));
        assertThat(verdict.standing()).isEqualTo(Standing.UNPROVEN);
        assertThat(verdict.reason())
                .isEqualTo(
                        "Its controls are fed from elsewhere: LP-1/12 (AHU-9 CONTROLS; AHU-9 control power) is none of the"
                                + " points drawn.");
        assertThat(verdict(audit("Sump alarm", "Sump alarm")).standing()).isEqualTo(Standing.AGREES);
    }

    @Test
    void a_light_that_is_named_after_it_is_told_and_changes_no_verdict() throws Exception {
        Audit audit = audit("AHU-9 LIGHT", "AHU-9 light");
        assertThat(named(audit)).isEqualTo("LP-1/12 (AHU-9 LIGHT; AHU-9 light)");
        assertThat(verdict(audit).standing()).isEqualTo(Standing.AGREES);
    }

    @Test
    void another_name_that_begins_or_ends_with_its_own_is_none() throws Exception {
        assertThat(named(audit("AHU-91 CONTROLS", "EAHU-9 fan"))).isEmpty();
        assertThat(named(audit("AHU-9-2 CONTROLS", "Sump alarm"))).isEmpty();
    }
}
