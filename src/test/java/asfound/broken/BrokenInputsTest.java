package asfound.broken;

import static asfound.broken.BrokenFiles.ascii;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import asfound.recordset.Limit;
import asfound.recordset.Limits;
import asfound.recordset.RecordSets;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The table of broken inputs: each has its message, and the sound file beside it is read all the same. */
class BrokenInputsTest {

    private static final String SURVEY = "panel,circuit,relation,found,method\nMDP,7,feeds,LP-2A,opened\n";
    private static final Path FIXTURE = Path.of("fixtures/kestrel-wharf/drawings/LP-1A.pdf");
    private static final int MB = 1 << 20;

    @TempDir
    Path folder;

    private static Limits small() {
        return Limits.usual()
                .with(Limit.FILE_MB, 8 * MB)
                .with(Limit.PAGES, 50)
                .with(Limit.PAGE_SECONDS, 5_000)
                .with(Limit.FILE_SECONDS, 10_000)
                .with(Limit.ROWS, 1_000)
                .with(Limit.COLUMNS, 40)
                .with(Limit.FIELD_CHARS, 1_000)
                .with(Limit.EXPANDED_MB, 2 * MB);
    }

    static Stream<Arguments> broken() throws IOException {
        byte[] sound = Files.readAllBytes(FIXTURE);
        String page = "BT /F1 10 Tf 40 700 Td (PANEL) Tj ET";
        return Stream.of(
                // drawings
                arguments("zero.pdf", new byte[0], "The file is empty (0 bytes)"),
                arguments("letter.pdf", ascii("Dear Sirs, please find enclosed"), "was not understood"),
                arguments(
                        "half.pdf",
                        java.util.Arrays.copyOf(sound, sound.length / 2),
                        "breaks off: its end mark is missing"),
                arguments("head.pdf", ascii("%PDF-1.7\n"), "breaks off: its end mark is missing"),
                arguments(
                        "noise.pdf",
                        ascii("%PDF-1.7\n" + "\u0001\u00ff\u0000x".repeat(900) + "%%EOF"),
                        "is damaged and cannot be opened"),
                arguments("locked.pdf", BrokenFiles.encrypted(), "is locked with a password"),
                arguments("cycle.pdf", BrokenFiles.cyclicPages(), "No panel schedule was recognised"),
                arguments("many.pdf", BrokenFiles.pages(10_000), "Only the first 50 of 10000 pages were read"),
                arguments(
                        "claims.pdf",
                        BrokenFiles.pdf("/Length 4294967296", ascii(page)),
                        "No panel schedule was recognised"),
                arguments(
                        "negative.pdf",
                        BrokenFiles.pdf("/Length -5", ascii(page)),
                        "claims|No panel schedule|No readable|damaged"),
                arguments(
                        "bomb.pdf",
                        BrokenFiles.pdf("/Length 9/Filter/FlateDecode", BrokenFiles.deflatedZeros(3 * MB)),
                        "expands to more than 2097152 bytes"),
                arguments(
                        "flipped.pdf",
                        BrokenFiles.pdf(
                                "/Filter/FlateDecode/Length 90",
                                BrokenFiles.flipped(BrokenFiles.deflatedZeros(MB / 4), 60)),
                        "fails its check sum"),
                arguments("blank.pdf", BrokenFiles.pages(1), "page 1: No panel schedule was recognised on this page"),
                arguments("large.pdf", ascii("%PDF-1.7" + " ".repeat(9 * MB)), "more than the limit of 8388608"),
                // workbooks
                arguments("cut.xlsx", java.util.Arrays.copyOf(BrokenFiles.workbook(), 900), "The workbook is damaged"),
                arguments(
                        "bomb.xlsx",
                        BrokenFiles.zip("xl/worksheets/sheet1.xml", new byte[3 * MB]),
                        "expands to more than 2097152 bytes"),
                arguments(
                        "entity.xlsx",
                        BrokenFiles.zip(
                                "xl/sharedStrings.xml",
                                ascii("<!DOCTYPE a [<!ENTITY b SYSTEM 'file:///etc/passwd'>]>")),
                        "declares a document type"),
                arguments(
                        "utf16entity.xlsx",
                        BrokenFiles.zip("xl/sharedStrings.xml", "<!DOCTYPE a []>".getBytes(StandardCharsets.UTF_16)),
                        "declares a document type"),
                arguments(
                        "empty.xlsx",
                        BrokenFiles.zip("xl/worksheets/sheet1.xml", new byte[0]),
                        "The workbook could not be read"),
                arguments(
                        "lost.xlsx",
                        BrokenFiles.renamed(BrokenFiles.workbook(), "xl/sharedStrings.xml"),
                        "its part xl/sharedStrings.xml is missing"),
                arguments("letters.zip", BrokenFiles.zip("a.txt", ascii("x")), "The workbook could not be read"),
                arguments(
                        "old.xls",
                        new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, 1, 2},
                        "an old or encrypted Office file"),
                // tables
                arguments("nul.csv", ascii(SURVEY + "MDP,9,feeds,LP\u0000-3,tone\n"), "row 3: The row holds NUL bytes"),
                arguments(
                        "steering.csv",
                        ascii(SURVEY + "MDP,9,feeds,\u001b[31mLP-3\u001b[0m,tone\n"),
                        "row 3: The row holds control characters or marks that turn the direction"),
                arguments(
                        "turned.csv",
                        (SURVEY + "MDP,9,feeds,\u202e3-PL,tone\n").getBytes(StandardCharsets.UTF_8),
                        "row 3: The row holds control characters or marks that turn the direction"),
                arguments(
                        "quote.csv",
                        ascii(SURVEY + "MDP,9,feeds,\"LP-3,tone\nMDP,11,feeds,LP-4,tone\n"),
                        "row 3: A quotation mark in this row is not closed"),
                arguments(
                        "long.csv",
                        ascii(SURVEY + "MDP,9,feeds," + "x".repeat(1_000_000) + ",tone\n"),
                        "row 3: A field has 1000000 characters"),
                arguments(
                        "endless.csv",
                        ascii(SURVEY + "MDP,9,feeds," + "x".repeat(6 * MB / 2) + "," + "y".repeat(3 * MB / 2) + "\n"),
                        "row 3: The line is longer than 4194304 bytes"),
                arguments(
                        "wide.csv",
                        ascii(SURVEY + "MDP,9,feeds,LP-3,tone" + ",x".repeat(500) + "\n"),
                        "row 3: The row has more than 40 columns"),
                arguments(
                        "tall.csv",
                        ascii(SURVEY + "MDP,9,feeds,LP-3,tone\n".repeat(2_000)),
                        "longer than the limit of 1000 rows"),
                arguments(
                        "mixed.csv",
                        ascii(SURVEY + "MDP,9,feeds,Caf\u00c3\u00a9,tone\nMDP,11,feeds,Caf\u00e9,tone\n"),
                        "mixes encodings"),
                arguments("column.csv", ascii("panel,found,method\nMDP,LP-2A,tone\n"), "no column for 'circuit'"),
                arguments(
                        "torn.csv",
                        ascii(
                                "CKT,DESCRIPTION,POLES,TRIP\n1,RECEPT,1,20\n2,LIGHTING,1,20\n3ON,POLES,TRIP\n1,RECEPT,1,20\n"
                                        + "2,LIGHTING,1,20\n3,EF-1,1,15\n4,SPARE,1,20\n"),
                        "Two directories on this sheet were both read as 'torn'"),
                arguments("words.csv", ascii("to whom it may concern\n"), "was not understood"),
                arguments(
                        "bytes.csv",
                        ascii("\u0001\u0002\u0003\u0004\u0000\u0005".repeat(400)),
                        "is not a text, PDF or workbook"),
                // settings
                arguments("record.yaml", ascii("same: [[A, B]\nbuilding: }"), "The settings could not be read"),
                arguments(
                        "record.yaml",
                        ascii("a: &a [x,x,x]\nb: &b [*a,*a,*a]\nc: [*b,*b]\n"),
                        "The key 'a' is not known"),
                arguments("record.yaml", ascii("same: " + "[".repeat(5_000)), "The settings could not be read"),
                arguments("record.yaml", ascii("modified: {LP-1: 2024-02-31}"), "'2024-02-31' is no date"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("broken")
    void a_broken_file_is_told_and_the_sound_one_beside_it_is_read(String name, byte[] content, String message)
            throws Exception {
        Files.write(folder.resolve(name), content);
        Files.writeString(folder.resolve("sound.csv"), SURVEY);
        WholeReading reading = WholeReading.of(RecordSets.open(folder, small()), small());
        List<String> told =
                reading.problems().stream().filter(p -> p.startsWith(name)).toList();
        assertThat(told)
                .anyMatch(p -> p.matches("(?s).*("
                        + (message.contains("|") ? message : java.util.regex.Pattern.quote(message)) + ").*"));
        assertThat(reading.values())
                .contains("sound.csv SURVEY")
                .anyMatch(v -> v.contains("file=sound.csv") && v.contains("LP-2A"));
    }

    @org.junit.jupiter.api.Test
    void a_page_that_takes_too_long_is_given_up_and_told() throws Exception {
        Files.copy(FIXTURE, folder.resolve("LP-1A.pdf"));
        Limits impatient = Limits.usual().with(Limit.PAGE_SECONDS, 0);
        WholeReading reading = WholeReading.of(RecordSets.open(folder, impatient), impatient);
        assertThat(reading.problems())
                .anyMatch(p -> p.startsWith("LP-1A.pdf, page 1: The page holds more than can be read in 0 s"));
    }

    @org.junit.jupiter.api.Test
    void a_page_that_is_read_in_time_and_cannot_be_explained_in_time_is_given_up_and_told() throws Exception {
        StringBuilder content = new StringBuilder("BT /F1 5 Tf\n");
        for (int column = 0; column < 150; column++)
            for (int row = 0; row < 250; row++)
                content.append("1 0 0 1 %d %d Tm (%d) Tj\n".formatted(10 + column * 14, 1990 - row * 7, row + 1));
        byte[] page = BrokenFiles.pdf("/Length " + content.length(), ascii(content + "ET"));
        Files.write(folder.resolve("dense.pdf"), page);
        Files.writeString(folder.resolve("sound.csv"), SURVEY);
        Limits limits = Limits.usual().with("page-seconds", 2);
        WholeReading reading = WholeReading.of(RecordSets.open(folder, limits), limits);
        assertThat(reading.problems())
                .anyMatch(p -> p.startsWith("dense.pdf, page 1: The page holds more than can be read in 2 s"));
        assertThat(reading.values()).anyMatch(v -> v.contains("file=sound.csv") && v.contains("LP-2A"));
    }
}
