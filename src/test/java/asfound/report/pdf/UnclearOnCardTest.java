package asfound.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.audit.Audit;
import asfound.sample.WrittenRecords;
import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A circuit traced to what may or may not be what is drawn: until a person says so, the card gives both and relies on neither. */
class UnclearOnCardTest {

    @TempDir
    Path folder;

    @Test
    void the_card_gives_both_and_marks_the_entry_as_in_doubt() throws Exception {
        Audit audit = new WrittenRecords(folder)
                .file(
                        "drawings/lp-3.csv",
                        "Panel,LP-3",
                        "",
                        "Circuit,Poles,Amps,Description",
                        "1,1,20,Lights hall",
                        "2,1,20,Sump alarm")
                .file(
                        "survey/april.csv",
                        "panel,circuit,found,method",
                        "LP-3,1,Lights room 11,opened",
                        "LP-3,2,Sump alarm,opened")
                .audit();
        ByteArrayOutputStream card = new ByteArrayOutputStream();
        DoorCard.write(audit, "LP-3", Paper.A4, card);
        assertThat(Written.text(card.toByteArray(), 1).replaceAll("\\s+", " "))
                .contains("DRAWN Lights hall; TRACED Lights room 11")
                .contains("Sump alarm")
                .doesNotContain("DRAWN Sump");
        assertThat(Written.text(card.toByteArray(), 2)).contains("1 in doubt");
    }
}
