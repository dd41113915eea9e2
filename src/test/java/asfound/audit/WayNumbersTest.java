package asfound.audit;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.finding.Finding;
import asfound.model.Problem;
import asfound.sample.WrittenRecords;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A board of eight ways with three phases each, of which a surveyor writes plain numbers (IEC boards; common practice). */
class WayNumbersTest {

    @TempDir
    Path folder;

    private Audit audit(String... rows) throws Exception {
        StringBuilder board = new StringBuilder("Panel,DB-1\nFed from,MSB/4\n\nWay,Phase,Rating A,Poles,Description\n");
        for (int way = 1; way <= 7; way++)
            for (int phase = 1; phase <= 3; phase++)
                board.append(way + ",L" + phase + ",10,1,Lights zone " + way + phase + "\n");
        board.append("8,L1,63,3,Spare\n8,L2,,,\n8,L3,,,");
        return new WrittenRecords(folder)
                .file("drawings/db-1.csv", board.toString())
                .file("one-line/feeders.csv", "from,device,to,poles", "DNO,Q0,MSB,4", "MSB,4,DB-1,3")
                .file("survey/may.csv", "panel,circuit,found,method,poles,phase", String.join("\n", rows))
                .audit();
    }

    private static List<String> messages(Audit audit) {
        return audit.findings().stream().map(Finding::message).toList();
    }

    private static List<String> told(Audit audit) {
        return audit.network().problems().stream().map(Problem::message).toList();
    }

    @Test
    void a_plain_number_with_three_poles_is_that_of_the_way() throws Exception {
        Audit audit = audit("DB-1,8,DB-2,opened,3,");
        assertThat(messages(audit))
                .anyMatch(m -> m.startsWith("DB-1/22 is drawn as spare; it was traced and feeds DB-2."));
        assertThat(messages(audit)).noneMatch(m -> m.contains("Lights zone 32"));
        assertThat(told(audit)).isEmpty();
    }

    @Test
    void a_way_in_words_is_that_way() throws Exception {
        assertThat(messages(audit("DB-1,way 8,DB-2,opened,,")))
                .anyMatch(m -> m.startsWith("DB-1/22 is drawn as spare; it was traced and feeds DB-2."));
    }

    @Test
    void another_plain_number_is_taken_for_the_position_counted_across_the_ways_and_told() throws Exception {
        assertThat(told(audit("DB-1,5,Lights zone 22,opened,1,")))
                .containsExactly(
                        "Circuit '5' of DB-1, a board with ways and phases, was taken for its position 5 counted"
                                + " across the ways, 2L2.");
    }

    @Test
    void whoever_counts_further_than_there_are_ways_counts_positions() throws Exception {
        assertThat(told(audit("DB-1,5,Lights zone 22,opened,1,", "DB-1,13,Lights zone 51,opened,1,")))
                .isEmpty();
    }

    @Test
    void a_phase_seen_is_held_against_the_phase_that_the_position_names() throws Exception {
        assertThat(messages(audit("DB-1,3L1,Lights zone 31,opened,1,L3")))
                .contains("DB-1/7 is drawn as phase A and was seen as phase C.");
        assertThat(messages(audit("DB-1,3L1,Lights zone 31,opened,1,L1"))).noneMatch(m -> m.contains("phase"));
    }
}
