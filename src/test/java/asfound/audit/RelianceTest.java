package asfound.audit;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.finding.Finding;
import asfound.recordset.Limits;
import asfound.recordset.RecordSets;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who is told when a drawing is corrected: 29 CFR 1910.147(c)(6)-(7) stands behind the question, and answers no case. */
class RelianceTest {

    @TempDir
    private Path folder;

    @Test
    void crossed_feeders_touch_the_lockout_records_and_cards_of_both_panels_and_of_the_board() throws Exception {
        Audit audit = audit("""
                from,device,to
                UTIL,M,MDP
                MDP,1,LP-1
                MDP,3,LP-2
                MDP,5,LP-3
                """, """
                panel,circuit,relation,found,method
                MDP,1,feeds,LP-2,opened
                MDP,3,feeds,LP-1,opened
                MDP,5,feeds,LP-3,opened
                """);

        ToBeTold told = told(audit, "crossed-feeds");

        assertThat(told.equipment()).containsExactly("LP-1", "LP-2");
        assertThat(told.devices()).containsExactly("MDP/1", "MDP/3");
        assertThat(told.drawings()).containsExactly("one-line/feeders.csv");
        assertThat(told.cards())
                .as("no directory was read, so no door has a card of it")
                .isEmpty();
    }

    @Test
    void the_directories_of_the_board_and_of_what_it_feeds_are_cards_on_doors() throws Exception {
        Files.createDirectories(folder.resolve("drawings"));
        for (String panel : List.of("MDP", "LP-1", "LP-2", "LP-3"))
            Files.writeString(folder.resolve("drawings/" + panel + ".csv"), schedule(panel));
        Audit audit = audit(
                "from,device,to\nUTIL,M,MDP\nMDP,1,LP-1\nMDP,3,LP-2\nMDP,5,LP-3\n",
                "panel,circuit,relation,found,method\nMDP,1,feeds,LP-2,opened\nMDP,3,feeds,LP-1,opened\n");

        assertThat(told(audit, "crossed-feeds").cards()).containsExactly("LP-1", "LP-2", "MDP");
    }

    @Test
    void a_source_that_no_drawing_shows_touches_the_records_of_all_that_it_holds_live() throws Exception {
        Audit audit = audit("""
                from,device,to
                UTIL,M,MDP
                MDP,1,LP-1
                LP-1,2,LP-9
                """, """
                panel,circuit,relation,found,kind,method
                MDP,1,feeds,LP-1,panel,opened
                LP-1,2,feeds,LP-9,panel,opened
                LP-1,30,fed by,INV-7,inverter,opened
                """);

        assertThat(told(audit, "undocumented-source").equipment()).contains("LP-1", "INV-7");
        assertThat(told(audit, "undocumented-source").devices()).containsExactly("LP-1/30");
    }

    @Test
    void a_vague_entry_touches_a_card_and_a_drawing_and_no_lockout_record() throws Exception {
        Files.createDirectories(folder.resolve("drawings"));
        Files.writeString(folder.resolve("drawings/LP-1.csv"), schedule("LP-1").replace("RECEPT RM 205", "MISC"));
        Audit audit = audit(
                "from,device,to\nUTIL,M,MDP\nMDP,1,LP-1\n",
                "panel,circuit,relation,found,method\nMDP,1,feeds,LP-1,opened\n");

        ToBeTold told = told(audit, "vague-entry");

        assertThat(told.leavesLockout()).isTrue();
        assertThat(told.cards()).containsExactly("LP-1");
        assertThat(told.drawings()).containsExactly("drawings/LP-1.csv");
    }

    private static String schedule(String panel) {
        return "panel,circuit,description,rating_a,poles\n" + panel + ",31,RECEPT RM 205,20,1\n" + panel
                + ",33,LIGHTING RM 206,20,1\n" + panel + ",35,EXHAUST FAN EF-3,20,1\n" + panel + ",37,SPARE,20,1\n";
    }

    private static ToBeTold told(Audit audit, String kind) {
        List<Finding> all =
                audit.findings().stream().filter(f -> f.kind().equals(kind)).toList();
        assertThat(all)
                .as("findings of kind %s among %s", kind, audit.findings())
                .hasSize(1);
        return Reliance.of(audit).of(all.get(0));
    }

    private Audit audit(String feeders, String survey) throws Exception {
        write("one-line/feeders.csv", feeders);
        write("survey/walk.csv", survey);
        return Audits.of(RecordSets.open(folder, Limits.usual()), Limits.usual(), (stage, done, of) -> {});
    }

    private void write(String file, String text) throws IOException {
        Files.createDirectories(folder.resolve(file).getParent());
        Files.writeString(folder.resolve(file), text);
    }
}
