package asfound.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.audit.Audits;
import asfound.audit.Stages;
import asfound.recordset.Limits;
import asfound.recordset.RecordSets;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A circuit traced to what may or may not be what is drawn: until a person says so, the card gives both and relies on neither. */
class UnclearOnCardTest {

    @TempDir
    Path folder;

    @Test
    void the_card_gives_both_and_marks_the_entry_as_in_doubt() throws Exception {
        write(
                "drawings/lp-3.csv",
                "Panel,LP-3\n\nCircuit,Poles,Amps,Description\n1,1,20,Lights hall\n2,1,20,Sump alarm\n");
        write(
                "survey/april.csv",
                "panel,circuit,found,method\nLP-3,1,Lights room 11,opened\nLP-3,2,Sump alarm,opened\n");
        var audit = Audits.of(RecordSets.open(folder, Limits.usual()), Limits.usual(), Stages.SILENT);
        ByteArrayOutputStream card = new ByteArrayOutputStream();
        DoorCard.write(audit, "LP-3", Paper.A4, card);
        assertThat(Written.text(card.toByteArray(), 1).replaceAll("\\s+", " "))
                .contains("DRAWN Lights hall; TRACED Lights room 11")
                .contains("Sump alarm")
                .doesNotContain("DRAWN Sump");
        assertThat(Written.text(card.toByteArray(), 2)).contains("1 in doubt");
    }

    private void write(String file, String text) throws Exception {
        Path path = folder.resolve(file);
        Files.createDirectories(path.getParent());
        Files.writeString(path, text);
    }
}
