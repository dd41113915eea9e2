package asfound.broken;

import static asfound.broken.BrokenFiles.ascii;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import asfound.command.Main;
import asfound.recordset.Limit;
import asfound.recordset.Limits;
import asfound.recordset.RecordSets;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.DeflaterOutputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Content of a drawing that cannot be unpacked or followed is told as what it is: a page that was not read is no blank page. */
class LostContentTest {

    private static final byte[] SCHEDULE = PdfObjects.schedule();
    private static final String DAMAGED = "page 1: The page's content is damaged or not all there (";
    private static final String UNPACKED = DAMAGED + "a part of its content cannot be unpacked)";
    private static final String FORM = DAMAGED + "a form drawn on it cannot be unpacked)";
    private static final String TWICE = "/Filter[/FlateDecode/FlateDecode]";

    @TempDir
    Path folder;

    @TempDir
    Path out;

    static Stream<Arguments> lost() throws IOException {
        byte[] flipped = BrokenFiles.flipped(deflated(SCHEDULE), 60);
        String middle = new String(SCHEDULE, StandardCharsets.US_ASCII);
        int half = middle.indexOf("(RECEPT RM 206)");
        return Stream.of(
                arguments("packed twice", content(TWICE, deflated(deflated(SCHEDULE))), UNPACKED),
                arguments("packed twice, the inner one damaged", content(TWICE, deflated(flipped)), UNPACKED),
                arguments(
                        "packed twice, the inner one cut off",
                        content(TWICE, deflated(Arrays.copyOf(deflated(SCHEDULE), 90))),
                        UNPACKED),
                arguments(
                        "damaged below another layer",
                        content("/Filter[/ASCIIHexDecode/FlateDecode]", hex(flipped)),
                        UNPACKED),
                arguments("packed as a picture", content("/Filter/DCTDecode", SCHEDULE), UNPACKED),
                arguments("packed in an unknown way", content("/Filter/Wonder", SCHEDULE), UNPACKED),
                arguments("noise", content("/Filter/LZWDecode", noise()), "instructions that PDF does not know"),
                arguments(
                        "dictionaries within dictionaries",
                        content("", ascii("<</a ".repeat(100_000) + middle)),
                        "page 1: The page's content is damaged"),
                arguments("missing", new PdfObjects().without(4), DAMAGED + "a part of its content is missing"),
                arguments("a number", new PdfObjects().with(4, "17"), DAMAGED + "a part of its content is no content"),
                arguments(
                        "in three parts, the second missing",
                        new PdfObjects()
                                .with(4, "[7 0 R 8 0 R 9 0 R]").stream(7, "", Arrays.copyOf(SCHEDULE, 400)).stream(
                                        9, "", ascii("\n")),
                        "a part of its content is missing from the file"),
                arguments(
                        "a text that is not closed",
                        content("", ascii(middle.substring(0, half) + "(" + middle.substring(half))),
                        DAMAGED + "a text, list or dictionary in its content is not closed)"),
                arguments(
                        "lists within lists",
                        content("", ascii("[".repeat(100_000) + middle)),
                        "page 1: The page's content is damaged"),
                arguments("a damaged form", content("", ascii("/X1 Do")).form(6, TWICE, deflated(flipped)), FORM),
                arguments("a missing form", content("", ascii("/X1 Do")), DAMAGED + "an instruction ('Do')"),
                arguments(
                        "a damaged form field",
                        content("", ascii(" "))
                                .form(6, TWICE, deflated(flipped))
                                .page("/Annots[<</Type/Annot/Subtype/Widget/Rect[0 0 612 792]/AP<</N 6 0 R>>>>]"),
                        FORM),
                arguments("a missing font", new PdfObjects().without(5), DAMAGED + "a font is missing)"),
                arguments(
                        "a font with a damaged table of letters",
                        new PdfObjects()
                                .with(5, "<</Type/Font/Subtype/Type1/BaseFont/Helvetica/ToUnicode 6 0 R>>").stream(
                                        6, TWICE, deflated(flipped)),
                        DAMAGED + "a font's table of letters cannot be unpacked)"),
                arguments(
                        "a list of pages that leads to nothing",
                        new PdfObjects().with(2, "<</Type/Pages/Kids[3 0 R 9 0 R]/Count 2>>"),
                        "The PDF's list of its pages leads to nothing once"),
                arguments(
                        "more pages than it says",
                        new PdfObjects()
                                .with(2, "<</Type/Pages/Kids[3 0 R 9 0 R]/Count 1>>")
                                .with(9, "<</Type/Page/Parent 2 0 R/MediaBox[0 0 612 792]/Contents 4 0 R>>"),
                        "The PDF says that it has 1 page and holds 2: not all of them were read"),
                arguments(
                        "a list of pages that leads back down",
                        new PdfObjects().with(2, "<</Type/Pages/Kids[3 0 R 2 0 R]/Count 1>>"),
                        "The PDF's list of its pages leads back into itself"),
                arguments(
                        "a list of pages that leads back up",
                        loopUp(),
                        "The PDF's list of its pages leads back into itself"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("lost")
    void a_page_whose_content_is_lost_is_told_as_such(String what, PdfObjects pdf, String message) throws Exception {
        WholeReading reading = read(pdf.bytes(), Limits.usual());
        assertThat(reading.problems()).anyMatch(p -> p.startsWith("drawing.pdf") && p.contains(message));
        if (message.contains(DAMAGED) && reading.values().toString().contains("RECEPT"))
            assertThat(reading.problems()).as("what is read all the same").anyMatch(p -> p.endsWith("read with doubt"));
    }

    @Test
    void the_same_drawing_unbroken_is_read_without_a_word() throws Exception {
        for (PdfObjects sound : List.of(
                new PdfObjects(),
                content("/Filter/FlateDecode", deflated(SCHEDULE)),
                content("/Filter[/ASCIIHexDecode/FlateDecode]", hex(deflated(SCHEDULE))),
                content("", ascii("/X1 Do")).form(6, "/Filter/FlateDecode", deflated(SCHEDULE)),
                content("", picture()))) {
            WholeReading reading = read(sound.bytes(), Limits.usual());
            assertThat(reading.problems()).isEmpty();
            assertThat(reading.values()).anyMatch(v -> v.contains("RECEPT RM 212"));
        }
    }

    @Test
    void forms_drawn_within_each_other_deeper_than_fifty_are_told() throws Exception {
        assertThat(read(nested(60).bytes(), Limits.usual()).problems())
                .anyMatch(
                        p -> p.contains("page 1: Parts of the page are drawn within each other deeper than they are"));
        WholeReading within = read(nested(40).bytes(), Limits.usual());
        assertThat(within.problems()).isEmpty();
        assertThat(within.values()).anyMatch(v -> v.contains("RECEPT RM 212"));
    }

    @Test
    void a_page_whose_parts_together_unpack_to_too_much_is_told() throws Exception {
        PdfObjects many = new PdfObjects()
                .with(4, "[" + "7 0 R ".repeat(2_000) + "]").stream(
                        7, "/Filter/FlateDecode", BrokenFiles.deflatedZeros(1 << 20));
        assertThat(read(many.bytes(), Limits.usual().with(Limit.EXPANDED_MB, 8 << 20))
                        .problems())
                .anyMatch(p -> p.contains("page 1: The page's content expands to more than 8388608 bytes"));
    }

    @Test
    void a_drawing_whose_list_of_pages_leads_back_is_marked_by_its_summary_alone_at_once() throws Exception {
        Files.write(folder.resolve("drawing.pdf"), loopUp().bytes());
        Path report = out.resolve("report");
        StringWriter said = new StringWriter();
        int status = Main.run(
                new PrintWriter(said), new PrintWriter(said), "audit", folder.toString(), "--out", report.toString());
        assertThat(status).as(said.toString()).isZero();
        List<Path> marked;
        try (Stream<Path> files = Files.walk(report)) {
            marked = files.filter(f -> f.getFileName().toString().endsWith(".pdf")
                            && f.getFileName().toString().contains("drawing"))
                    .toList();
        }
        assertThat(marked).hasSize(1);
        try (PDDocument copy = Loader.loadPDF(marked.get(0).toFile())) {
            assertThat(new PDFTextStripper().getText(copy).replaceAll("\\s+", " "))
                    .contains("cannot be copied (its list of pages leads back into itself)");
        }
    }

    @Test
    void a_font_whose_table_of_letters_is_huge_costs_its_page_at_most_the_time_of_a_page() throws Exception {
        String whole = "1 beginbfrange\n<0000> <ffff> <0041>\nendbfrange\n";
        byte[] table = deflated(ascii("/CIDInit /ProcSet findresource begin 12 dict begin begincmap /CMapName /A def\n"
                + "1 begincodespacerange <0000> <ffff> endcodespacerange\n" + whole.repeat(2_000) + "endcmap"));
        PdfObjects pdf = new PdfObjects()
                .with(5, "<</Type/Font/Subtype/Type1/BaseFont/Helvetica/ToUnicode 6 0 R>>").stream(
                        6, "/Filter/FlateDecode", table);
        assertThat(read(pdf.bytes(), Limits.usual().with(Limit.PAGE_SECONDS, 300))
                        .problems())
                .containsExactly(
                        "drawing.pdf, page 1: The page holds more than can be read in 0 s. Check this page by hand,"
                                + " export it once more, or raise the limit with --allow page-seconds=NUMBER (usual: 20).");
    }

    @Test
    void too_many_letters_in_a_form_are_told_as_those_of_a_page_are() throws Exception {
        byte[] letters = ascii("BT /F1 1 Tf 10 700 Td (" + "x".repeat(5_000) + ") Tj ET");
        PdfObjects form = content("", ascii("/X1 Do")).form(6, "", letters);
        assertThat(read(form.bytes(), Limits.usual().with(Limit.PAGE_OBJECTS, 1_000))
                        .problems())
                .anyMatch(p -> p.contains("page 1: The page holds more than 1000 letters"));
    }

    private WholeReading read(byte[] pdf, Limits limits) throws Exception {
        Files.write(folder.resolve("drawing.pdf"), pdf);
        return WholeReading.of(RecordSets.open(folder, limits), limits);
    }

    private static PdfObjects content(String dictionary, byte[] content) {
        return new PdfObjects().stream(4, dictionary, content);
    }

    private static PdfObjects nested(int deep) {
        PdfObjects pdf = content("", ascii("/X1 Do"));
        for (int i = 6; i < 6 + deep; i++) pdf.form(i, "", ascii("/X1 Do"));
        return pdf.form(6 + deep, "", SCHEDULE);
    }

    static PdfObjects loopUp() {
        return new PdfObjects()
                .with(2, "<</Type/Pages/Parent 7 0 R/Kids[3 0 R]/Count 1>>")
                .with(7, "<</Type/Pages/Parent 2 0 R/Kids[2 0 R]/Count 1>>");
    }

    /** A picture within the content, whose bytes look like an open text and an open list. */
    private static byte[] picture() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(ascii(
                "q 9 0 0 9 500 20 cm /P <</A <41>/B <<>>>> DP BI /W 2 /H 2 /BPC 8 /CS /G ID (([[ EI Q % a remark (\n"));
        out.writeBytes(SCHEDULE);
        return out.toByteArray();
    }

    private static byte[] deflated(byte[] content) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (DeflaterOutputStream deflate = new DeflaterOutputStream(out)) {
            deflate.write(content);
        }
        return out.toByteArray();
    }

    private static byte[] noise() {
        byte[] bytes = new byte[3_000];
        new java.util.Random(1).nextBytes(bytes);
        return bytes;
    }

    private static byte[] hex(byte[] content) {
        return ascii(java.util.HexFormat.of().formatHex(content) + ">");
    }
}
