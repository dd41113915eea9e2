package asfound.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import asfound.audit.Audit;
import asfound.model.Observation;
import asfound.recordset.Limits;
import asfound.recordset.Settings;
import asfound.recordset.Source;
import asfound.sample.WhinfellAnnex;
import asfound.survey.SurveyReader;
import asfound.survey.SurveyReading;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is printed for the door, for isolation and for the field, read back by another part of the PDF library. */
class SheetTest {

    @TempDir
    Path folder;

    private Audit audit;

    @BeforeEach
    void auditTheAnnex() throws IOException {
        audit = WhinfellAnnex.in(folder);
    }

    private interface Writing {
        void to(OutputStream out) throws IOException;
    }

    private static byte[] written(Writing writing) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        writing.to(out);
        return out.toByteArray();
    }

    private byte[] card(String panel, Paper paper) throws IOException {
        return written(out -> DoorCard.write(audit, panel, paper, out));
    }

    private byte[] isolation(String equipment) throws IOException {
        return written(out -> IsolationSheet.write(audit, equipment, out));
    }

    /** Each size of type on a page with the text set in it. */
    private static List<Object[]> sizes(byte[] pdf, int page) throws IOException {
        List<Object[]> sizes = new ArrayList<>();
        try (PDDocument document = Written.open(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void writeString(String text, List<TextPosition> positions) {
                    sizes.add(new Object[] {(double) positions.get(0).getFontSizeInPt(), text});
                }
            };
            stripper.setStartPage(page);
            stripper.setEndPage(page);
            stripper.getText(document);
        }
        return sizes;
    }

    private static double sizeOf(byte[] pdf, int page, String phrase) throws IOException {
        return sizes(pdf, page).stream()
                .filter(s -> s[1].toString().contains(phrase))
                .mapToDouble(s -> (double) s[0])
                .findFirst()
                .orElseThrow(() -> new AssertionError("not on the page: " + phrase));
    }

    @Test
    void the_card_shows_what_was_traced_and_keeps_what_was_not() throws IOException {
        String card = Written.text(card("LP-2A", Paper.LETTER), 1);
        assertThat(card)
                .contains("Recept rm 214")
                .contains("Dock leveller")
                .contains("FED BY INV-1 (backfeed)")
                .contains("IN CONFLICT: drawn EXHAUST FAN EF-115; seen feeds VAV box 99, does not feed VAV box 99")
                .contains("RECEPT RM 121")
                .doesNotContain("LTG CORRIDOR 109")
                .doesNotContain("RECEPT GFI 103")
                .doesNotContain("UNIT HEATER UH-124");
    }

    /** NFPA 70, 408.4(B): a board that is fed by a feeder is marked with where its supply originates. */
    @Test
    void the_card_says_where_the_supply_originates_as_found_and_that_there_are_two() throws IOException {
        assertThat(Written.text(card("LP-2A", Paper.LETTER), 1))
                .contains("FED FROM INV-1, by circuit 41 of this panel")
                .contains("MSB, circuit 9")
                .contains("MORE THAN ONE SUPPLY")
                .doesNotContain("MSB/7");
    }

    @Test
    void entries_are_told_apart_by_a_sign_and_corrected_in_rating() throws IOException {
        List<CardEntry> entries = CorrectedDirectory.of(audit, Named.find(audit.network(), "lp-2a"));
        assertThat(entries).hasSize(42);
        assertThat(entries.stream()
                        .filter(e -> e.state() == CardEntry.State.TRACED)
                        .map(CardEntry::lowest))
                .containsExactly(1, 3, 8, 13, 41);
        assertThat(entries.stream()
                        .filter(e -> e.state() == CardEntry.State.DOUBTFUL)
                        .map(CardEntry::lowest))
                .containsExactly(5);
        assertThat(entries.get(12))
                .isEqualTo(new CardEntry(List.of(13), "", "Dock leveller", "30", CardEntry.State.TRACED));
        assertThat(entries.get(7).text()).isEqualTo("SPARE");
    }

    @Test
    void forty_two_circuits_stand_on_one_card_in_type_for_arms_length_on_both_papers() throws IOException {
        for (Paper paper : Paper.values()) {
            byte[] pdf = card("LP-2A", paper);
            try (PDDocument document = Written.open(pdf)) {
                assertThat(document.getNumberOfPages()).as("card and back").isEqualTo(2);
                assertThat(document.getPage(0).getMediaBox().getWidth()).isEqualTo((float) paper.width());
            }
            for (String entry : List.of("RECEPT RM 121", "Dock leveller", "COPIER RM 116", "RECEPT RM 106"))
                assertThat(sizeOf(pdf, 1, entry)).isGreaterThanOrEqualTo(9.5);
        }
    }

    @Test
    void the_back_of_the_card_names_the_row_behind_every_traced_entry() throws IOException {
        assertThat(Written.text(card("LP-2A", Paper.A4), 2))
                .contains("42 entries: 5 traced, 36 drawn and not traced, 1 in doubt")
                .contains("tone, 2026-03-08, R. Okafor survey/march.csv, row 4");
    }

    @Test
    void an_entry_that_no_drawing_shows_is_on_the_card() throws IOException {
        assertThat(Written.text(card("LP-EM", Paper.A4), 1)).contains("Fire pump controller");
    }

    @Test
    void a_panel_that_is_not_there_is_named_in_the_error_with_those_that_are() {
        assertThatThrownBy(() -> card("LP-9", Paper.A4))
                .isInstanceOf(NoSuchElementException.class)
                .hasMessage("No equipment of this record set is named 'LP-9'. Its equipment: ATS-1, EG-1, INV-1, LP-2A,"
                        + " LP-2B, LP-EM, MSB, Utility.");
        assertThatThrownBy(() -> isolation("Utility")).hasMessageContaining("is a source of supply");
    }

    @Test
    void where_the_verdict_is_not_agrees_the_largest_type_says_that_the_drawing_may_not_be_used() throws IOException {
        for (String equipment : List.of("LP-2A", "LP-EM", "ATS-1")) {
            byte[] pdf = isolation(equipment);
            double banner = sizeOf(pdf, 1, "THE DRAWING MAY NOT BE");
            for (Object[] text : sizes(pdf, 1)) {
                boolean ofTheBanner = List.of("THE DRAWING MAY NOT BE", "USED FOR ISOLATION").stream()
                        .anyMatch(b -> text[1].toString().contains(b));
                if (!ofTheBanner)
                    assertThat((double) text[0]).as(text[1].toString()).isLessThan(banner);
            }
        }
        assertThat(Written.text(isolation("MSB")))
                .doesNotContain("MAY NOT BE")
                .contains("It never means that the equipment is safe or dead.");
    }

    @Test
    void the_isolation_sheet_is_one_page_with_points_evidence_sources_blanks_and_cautions() throws IOException {
        byte[] pdf = isolation("LP-2A");
        try (PDDocument document = Written.open(pdf)) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
        }
        assertThat(Written.text(pdf))
                .contains("Drawn: MSB/7. Found: LP-2A/41 and MSB/9.")
                .contains("feeds LP-2A; opened, 2026-03-07, R. Okafor (march.csv, row 3)")
                .contains("drawn only: it alone does not isolate")
                .contains("FOUND, the drawings miss it")
                .contains("Still reach it with the drawn points open: INV-1, Utility.")
                .contains("Also loses supply with the drawn points open: LP-2B.")
                .contains("Lock Tag Tested")
                .contains("Tester proven before / after")
                .contains("It is no procedure and no permit.")
                .contains("Test for absence of voltage")
                .contains("Release stored energy");
    }

    @Test
    void the_picture_holds_every_way_of_supply_and_no_mere_load() {
        SupplyPaths paths = SupplyPaths.of(audit.network(), "LP-EM");
        assertThat(paths.layers().stream()
                        .map(l -> l.stream().map(e -> e.name()).toList()))
                .containsExactly(
                        List.of("LP-EM"),
                        List.of("ATS-1"),
                        List.of("EG-1", "MSB"),
                        List.of("LP-2A", "Utility"),
                        List.of("INV-1"));
        assertThat(paths.sources().stream().map(e -> e.name())).containsExactly("EG-1", "Utility", "INV-1");
        assertThat(paths.notShown()).isZero();
        assertThat(SupplyPaths.of(audit.network(), "LP-EM", 3).notShown()).isEqualTo(4);
    }

    @Test
    void sheets_of_the_same_audit_have_the_same_bytes() throws IOException {
        assertThat(card("LP-2A", Paper.A4)).isEqualTo(card("LP-2A", Paper.A4));
        assertThat(isolation("LP-EM")).isEqualTo(isolation("LP-EM"));
        assertThat(written(out -> SurveySheet.writePdf(audit, 9, out)))
                .isEqualTo(written(out -> SurveySheet.writePdf(audit, 9, out)));
    }

    @Test
    void the_survey_sheet_groups_the_plan_by_place_and_says_when_it_is_not_all() throws IOException {
        String all = Written.text(written(out -> SurveySheet.writePdf(audit, 100, out)));
        assertThat(all).contains("All 4 planned traces").contains("Test for absence of voltage");
        assertThat(all.indexOf("Generator yard")).isLessThan(all.indexOf("Electrical room 104"));
        assertThat(all.indexOf("Electrical room 104")).isLessThan(all.indexOf("Place not known"));
        assertThat(Written.text(written(out -> SurveySheet.writePdf(audit, 2, out))))
                .contains("The first 2 of 4 planned traces")
                .doesNotContain("Place not known");
    }

    private SurveyReading read(String csv) throws IOException {
        Path file = folder.resolve("sheet.csv");
        Files.writeString(file, csv);
        Source source =
                new Source("survey/sheet.csv", file, Source.Kind.SURVEY, Files.size(file), WhinfellAnnex.sha256(file));
        return SurveyReader.read(source, Settings.none(), Limits.usual());
    }

    @Test
    void an_unfilled_survey_table_is_read_as_no_observation_at_all() throws IOException {
        String csv = new String(written(out -> SurveySheet.writeCsv(audit, 100, out)), StandardCharsets.UTF_8);
        assertThat(csv).contains("EXHAUST FAN EF-115");
        assertThat(read(csv).observations()).isEmpty();
    }

    @Test
    void a_filled_row_is_read_as_what_was_seen_and_never_as_what_was_drawn() throws IOException {
        String csv = new String(written(out -> SurveySheet.writeCsv(audit, 100, out)), StandardCharsets.UTF_8);
        String filled = csv.replace(
                "ATS-1,L,,,,,,,,,,Electrical room 104,,,,,",
                "ATS-1,L,feeds,LP-7,panel,opened,3,100,,,," + "Electrical room 104,R. Okafor,2026-04-01,,,");
        assertThat(filled).isNotEqualTo(csv);
        List<Observation> seen = read(filled).observations();
        assertThat(seen).hasSize(1);
        assertThat(seen.get(0).panel().or("")).isEqualTo("ATS-1");
        assertThat(seen.get(0).circuit().value().orElseThrow().inWords()).isEqualTo("L");
        assertThat(seen.get(0).found().or("")).isEqualTo("LP-7");
        assertThat(seen.get(0).method()).isEqualTo(Observation.Method.OPENED);
        assertThat(seen.get(0).ratingA().or(0)).isEqualTo(100);
        assertThat(seen.get(0).location().or("")).isEqualTo("Electrical room 104");
    }
}
