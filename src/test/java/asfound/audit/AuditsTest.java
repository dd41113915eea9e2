package asfound.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import asfound.isolation.Verdict;
import asfound.model.Problem;
import asfound.recordset.Limits;
import asfound.recordset.NothingToDoException;
import asfound.recordset.RecordSets;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Record sets that lack something: the rest is audited, and what is lacking is said. */
class AuditsTest {

    private static final String CARD = """
            Panel,Circuit,Description,Poles,Rating
            LP-4,1,RECEPT RM 12,1,20
            LP-4,2,LTG RM 12,1,20
            LP-4,3,SPARE,1,20
            """;
    private static final String FEEDERS = """
            from,device,to
            UTILITY,M1,MSB
            MSB,F4,LP-4
            """;
    private static final String SURVEY = """
            panel,circuit,found,method,date
            UTILITY,M1,MSB,visual,2026-02-03
            MSB,F4,LP-4,opened,2026-02-03
            LP-4,1,Plugs 12,tone,2026-02-03
            """;

    @TempDir
    Path folder;

    @Test
    void paper_and_survey_that_agree_say_so_and_nothing_else() throws Exception {
        file("drawings/LP-4.csv", CARD);
        file("one-line/feeders.csv", FEEDERS);
        file("survey/rows.csv", SURVEY);
        Audit audit = audit();
        assertThat(audit.findings()).isEmpty();
        assertThat(problems(audit)).isEmpty();
        assertThat(audit.verdicts())
                .extracting(v -> v.equipment() + " " + v.standing().word() + " " + v.drawnPoints())
                .containsExactly("LP-4 agrees [MSB/F4]", "MSB agrees [UTILITY/M1]");
    }

    @Test
    void the_same_panel_on_two_drawings_is_said_with_both_places() throws Exception {
        file("drawings/LP-4.csv", CARD);
        file("drawings/old/LP 4.csv", CARD);
        file("one-line/feeders.csv", FEEDERS);
        file("survey/rows.csv", SURVEY);
        assertThat(problems(audit()))
                .containsExactly("drawings/old/LP 4.csv, row 2: LP-4 has a second directory here; another is in"
                        + " drawings/LP-4.csv, row 2. Both were compared with the survey. Take the one that is no longer"
                        + " valid out of the record set.");
    }

    @Test
    void a_two_sided_directory_as_a_table_is_read_for_what_it_is() throws Exception {
        file("drawings/LP-9.csv", """
                PANEL LP-9,,,,,,,
                CKT,DESCRIPTION,P,TRIP,TRIP,P,DESCRIPTION,CKT
                1,RECEPT RM 101,1,20,20,1,LTG RM 101,2
                3,RECEPT RM 102,1,20,20,1,LTG RM 102,4
                5,SPARE,1,20,30,1,EF-1,6
                """);
        file("drawings/tools.csv", "tool,drawer\nhammer,3\npliers,4\n");
        file("survey/rows.csv", SURVEY);
        Audit audit = audit();
        assertThat(audit.drawings().directories())
                .extracting(d -> d.panel() + " " + d.circuits().size())
                .containsExactly("LP-9 6");
        assertThat(problems(audit)).singleElement().asString().startsWith("drawings/tools.csv");
    }

    @Test
    void without_a_survey_nothing_agrees() throws Exception {
        file("drawings/LP-4.csv", CARD);
        file("one-line/feeders.csv", FEEDERS);
        Audit audit = audit();
        assertThat(audit.verdicts()).extracting(Verdict::standing).containsOnly(Verdict.Standing.UNPROVEN);
        assertThat(problems(audit)).singleElement().asString().contains("No survey could be read");
    }

    @Test
    void without_a_drawing_all_that_was_found_fails() throws Exception {
        file("survey/rows.csv", SURVEY);
        Audit audit = audit();
        assertThat(audit.verdicts()).extracting(Verdict::standing).containsOnly(Verdict.Standing.FAILS);
        assertThat(problems(audit)).singleElement().asString().contains("No drawing could be read");
    }

    @Test
    void where_nothing_can_be_read_nothing_is_done_and_it_says_what_to_do() throws Exception {
        file("notes.txt", "call the electrician");
        assertThatThrownBy(this::audit)
                .isInstanceOf(NothingToDoException.class)
                .hasMessageContaining("No drawing and no survey could be read")
                .hasMessageContaining("drawings/");
    }

    private void file(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    private Audit audit() throws NothingToDoException {
        return Audits.of(RecordSets.open(folder, Limits.usual()), Limits.usual(), Stages.SILENT);
    }

    private static List<String> problems(Audit audit) {
        return audit.recordSet().problems().stream().map(Problem::inWords).toList();
    }
}
