package asfound.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code asfound card}, from two tables to a card for the door. */
class CardTest {

    @TempDir
    Path folder;

    private Path set;
    private final StringWriter said = new StringWriter();
    private final StringWriter complained = new StringWriter();

    @BeforeEach
    void aSmallRecordSet() throws IOException {
        set = folder.resolve("mill");
        Files.createDirectories(set.resolve("drawings"));
        Files.createDirectories(set.resolve("survey"));
        Files.writeString(
                set.resolve("drawings/LP-4.csv"),
                "panel,circuit,poles,trip,description\nLP-4,1,1,20,RECEPT RM 101\nLP-4,2,1,20,LTG RM 101\n"
                        + "LP-4,3,1,20,SPARE\n");
        Files.writeString(
                set.resolve("survey/walk.csv"),
                "panel,circuit,relation,found,method,by,date\nLP-4,3,feeds,Sump pump SP-1,opened,R. Okafor,2026-03-04\n");
    }

    private int run(String... args) {
        return Main.run(new PrintWriter(said), new PrintWriter(complained), args);
    }

    @Test
    void the_card_holds_what_was_traced_beside_what_is_drawn() throws IOException {
        Path card = folder.resolve("lp-4.pdf");
        assertThat(run("card", set.toString(), "lp-4", "--paper", "a4", "--out", card.toString()))
                .as(complained.toString())
                .isZero();
        assertThat(said.toString().strip()).isEqualTo(card.toString());
        try (PDDocument document = Loader.loadPDF(card.toFile())) {
            assertThat(document.getPage(0).getMediaBox().getHeight()).isBetween(841f, 842f);
            String text = new PDFTextStripper().getText(document);
            assertThat(text).contains("RECEPT RM 101", "LTG RM 101");
            assertThat(text.toLowerCase()).contains("sump pump sp-1");
        }
    }

    @Test
    void a_panel_that_no_record_names_is_an_error_with_the_names_that_there_are() {
        assertThat(run(
                        "card",
                        set.toString(),
                        "LP-9",
                        "--out",
                        folder.resolve("x.pdf").toString()))
                .isEqualTo(2);
        assertThat(complained.toString())
                .contains("No equipment of this record set is named 'LP-9'")
                .contains("LP-4");
        assertThat(folder.resolve("x.pdf")).doesNotExist();
    }

    @Test
    void no_card_is_written_into_the_record_set_or_over_another_file() throws IOException {
        assertThat(run(
                        "card",
                        set.toString(),
                        "LP-4",
                        "--out",
                        set.resolve("card.pdf").toString()))
                .isEqualTo(2);
        assertThat(set.resolve("card.pdf")).doesNotExist();
        Path there = Files.writeString(folder.resolve("there.pdf"), "mine");
        assertThat(run("card", set.toString(), "LP-4", "--out", there.toString()))
                .isEqualTo(2);
        assertThat(there).hasContent("mine");
    }
}
