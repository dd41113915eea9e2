package asfound.audit;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.isolation.DrawingVerdict;
import asfound.isolation.Verdict.Standing;
import asfound.report.terminal.Summary;
import asfound.sample.WrittenRecords;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A drawing whose equipment is all as surveyed, while circuits on it were traced elsewhere. */
class DangersTest {

    @TempDir
    Path folder;

    /** MDP feeds LP-2A as drawn; the receptacles of its positions 1 and 3 are found as given. */
    private Audit audit(String first, String second) throws Exception {
        return records(first, second).audit();
    }

    private WrittenRecords records(String first, String second) throws Exception {
        return new WrittenRecords(folder)
                .file("one-line/feeders.csv", "from,device,to", "UTILITY,S,MDP", "MDP,1,LP-2A")
                .file("one-line/equipment.csv", "name,kind", "UTILITY,utility", "MDP,switchboard", "LP-2A,panel")
                .file(
                        "drawings/lp-2a.csv",
                        "Panel,LP-2A",
                        "Fed from,MDP/1",
                        "",
                        "Circuit,Poles,Amps,Description",
                        "1,1,20,Recept Rm 201",
                        "2,1,20,Recept Rm 202",
                        "3,1,20,Recept Rm 203",
                        "4,1,20,Recept Rm 204")
                .file(
                        "survey/march.csv",
                        "panel,circuit,found,method",
                        "UTILITY,S,MDP,opened",
                        "MDP,1,LP-2A,opened",
                        "LP-2A,1,Recept Rm " + first + ",opened",
                        "LP-2A,3,Recept Rm " + second + ",opened");
    }

    private static DrawingVerdict schedule(Audit audit) {
        return audit.drawingVerdicts().stream()
                .filter(d -> d.file().equals("drawings/lp-2a.csv"))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> summary(Audit audit) {
        return Summary.of(audit, "report", List.of(), StandardCharsets.UTF_8);
    }

    @Test
    void the_drawing_of_circuits_that_changed_places_says_so_though_its_equipment_agrees() throws Exception {
        Audit audit = audit("203", "201");
        assertThat(schedule(audit).standing()).isEqualTo(Standing.AGREES);
        assertThat(schedule(audit).reasons())
                .containsExactly("1 finding of danger against what it shows: crossed-feeds at LP-2A/1."
                        + " Do not isolate by these entries.");
        assertThat(summary(audit).get(0)).startsWith("DO NOT ISOLATE CIRCUITS BY THE DRAWING: 1 finding of danger");
        assertThat(summary(audit)).contains("Drawings     0 not for isolation, 0 not proven, 3 agree (1 with danger)");
    }

    @Test
    void a_drawing_whose_circuits_are_as_traced_has_nothing_against_it() throws Exception {
        Audit audit = audit("201", "203");
        assertThat(schedule(audit).reasons()).isEmpty();
        assertThat(summary(audit).get(0)).startsWith("Nothing was found that fails");
        assertThat(summary(audit)).contains("Drawings     0 not for isolation, 0 not proven, 3 agree");
    }

    @Test
    void what_may_not_be_what_is_drawn_is_counted_on_the_first_page() throws Exception {
        Audit audit = records("201", "203")
                .file(
                        "drawings/lp-3a.csv",
                        "Panel,LP-3A",
                        "",
                        "Circuit,Poles,Amps,Description",
                        "1,1,20,Lights hall",
                        "2,1,20,Sump alarm")
                .file("survey/april.csv", "panel,circuit,found,method", "LP-3A,1,Lights room 11,opened")
                .audit();
        assertThat(summary(audit)).contains("To decide    1 device traced to what may not be what is drawn: LP-3A/1");
    }
}
