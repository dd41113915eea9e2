package asfound.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code asfound isolate} as a person at the electrical room's door uses it, on a small boat yard. */
class IsolateTest {

    @TempDir
    private Path yard;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @BeforeEach
    void writeRecords() throws IOException {
        file(
                "one-line/equipment.csv",
                "name,kind",
                "UTIL,utility",
                "MDP,switchboard",
                "LP-1,panel",
                "LP-2,panel",
                "EM-1,panel");
        file("one-line/feeders.csv", "from,device,to", "UTIL,M1,MDP", "MDP,7,LP-1", "MDP,9,LP-2", "LP-2,1,EM-1");
        file(
                "survey/slip.csv",
                "panel,circuit,relation,found,kind,method,by,date",
                "UTIL,M1,feeds,MDP,,visual,A. Sorel,2024-05-02",
                "MDP,7,feeds,LP-2,panel,opened,A. Sorel,2024-05-02",
                "MDP,9,feeds,Panel LP-1,panel,opened,A. Sorel,2024-05-02");
    }

    private void file(String name, String... lines) throws IOException {
        Path file = yard.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, String.join("\n", lines) + "\n");
    }

    private int isolate(String... arguments) {
        String[] all = new String[arguments.length + 2];
        all[0] = "isolate";
        all[1] = yard.toString();
        System.arraycopy(arguments, 0, all, 2, arguments.length);
        return Main.run(new PrintWriter(out), new PrintWriter(err), all);
    }

    @Test
    void the_verdict_comes_first_then_points_evidence_and_cautions() {
        assertThat(isolate("LP-1")).isZero();
        assertThat(out.toString().lines())
                .startsWith("LP-1: FAILS. DO NOT ISOLATE BY THE DRAWING.")
                .contains(
                        "Drawn points   MDP/7",
                        "Found points   MDP/9",
                        "Live from      UTIL",
                        "by way of      UTIL/M1 > MDP/9",
                        "MDP/7          feeds LP-2; opened, 2024-05-02, A. Sorel (survey/slip.csv, row 3)",
                        "Drawing        one-line/feeders.csv: FAILS")
                .anyMatch(line -> line.startsWith("Also dark      EM-1 [life safety], LP-2"))
                .anyMatch(line -> line.startsWith("Test for absence of voltage"));
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void what_agrees_is_never_called_dead_or_safe() {
        assertThat(isolate("mdp")).isZero();
        assertThat(out.toString())
                .startsWith("MDP: agrees. Drawing and survey agree; test before touch.")
                .contains("It never means that the equipment");
    }

    @Test
    void equipment_is_found_by_another_way_in_which_it_is_written() {
        assertThat(isolate("panel lp-1")).isZero();
        assertThat(out.toString()).startsWith("LP-1: FAILS.");
    }

    @Test
    void an_unknown_name_ends_with_what_there_is() {
        assertThat(isolate("LP-9")).isEqualTo(2);
        assertThat(err.toString())
                .isEqualToIgnoringNewLines("No equipment of this record set goes by the name 'LP-9'."
                        + " Its equipment: EM-1, LP-1, LP-2, MDP.");
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void a_source_has_no_points() {
        assertThat(isolate("UTIL")).isEqualTo(2);
        assertThat(err.toString()).startsWith("UTIL is a source of supply");
    }

    @Test
    void the_sheet_to_print_is_written_beside_and_never_over_another_file() throws IOException {
        Path sheet = yard.resolve("lp-1.pdf");
        assertThat(isolate("LP-1", "--pdf", sheet.toString())).isZero();
        assertThat(Files.readAllBytes(sheet)).startsWith("%PDF".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
        assertThat(isolate("LP-2", "--pdf", sheet.toString())).isEqualTo(2);
        assertThat(err.toString()).contains("is there already");
    }

    @Test
    void the_sheet_is_on_the_paper_that_was_asked_for() throws IOException {
        for (String[] paper : new String[][] {{"letter", "612 x 792"}, {"a4", "595 x 842"}}) {
            Path sheet = yard.resolve(paper[0] + ".pdf");
            assertThat(isolate("LP-1", "--pdf", sheet.toString(), "--paper", paper[0]))
                    .isZero();
            try (PDDocument document = Loader.loadPDF(sheet.toFile())) {
                PDRectangle box = document.getPage(0).getMediaBox();
                assertThat(Math.round(box.getWidth()) + " x " + Math.round(box.getHeight()))
                        .isEqualTo(paper[1]);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"letter", "a4"})
    void a_long_way_of_supply_turns_the_sheet_lengthwise_and_still_is_one_page(String paper) throws IOException {
        Path sheet = yard.resolve("ELP-1.pdf");
        err.getBuffer().setLength(0);
        int status = Main.run(
                new PrintWriter(out),
                new PrintWriter(err),
                "isolate",
                "fixtures/kestrel-wharf",
                "ELP-1",
                "--pdf",
                sheet.toString(),
                "--paper",
                paper);
        assertThat(status).as(err.toString()).isZero();
        try (PDDocument document = Loader.loadPDF(sheet.toFile())) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            assertThat(document.getPage(0).getMediaBox().getWidth())
                    .isGreaterThan(document.getPage(0).getMediaBox().getHeight());
            assertThat(new PDFTextStripper().getText(document))
                    .contains("THE DRAWING MAY NOT BE USED FOR ISOLATION")
                    .contains("Ways of supply")
                    .contains("INV-2")
                    .contains("Tester proven before / after")
                    .contains("One page.");
        }
    }
}
