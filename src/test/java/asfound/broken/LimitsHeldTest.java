package asfound.broken;

import static asfound.broken.BrokenFiles.ascii;
import static org.assertj.core.api.Assertions.assertThat;

import asfound.command.Main;
import asfound.recordset.Limit;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Each limit of README's table, by the program as a user runs it: what goes beyond is told with the file and the limit's
 * name, the rest is audited, and {@code --allow} as the message says it lets the same input through.
 */
class LimitsHeldTest {

    private static final String SURVEY = "panel,circuit,relation,found,method,note\nMDP,7,feeds,LP-2A,opened,\n";

    /**
     * An input beyond a lowered limit.
     *
     * @param file by whose name it is told
     * @param says what is told of it
     * @param low the limit as lowered, in the user's unit
     * @param high the limit as raised again
     */
    private record Beyond(String file, byte[] content, String says, int low, int high) {}

    @TempDir
    Path temp;

    private static Beyond beyond(Limit limit) throws IOException {
        int mb = 1 << 20;
        return switch (limit) {
            case FILE_MB ->
                new Beyond("big.csv", ascii(SURVEY + "\n".repeat(mb)), "more than the limit of 1048576", 1, 2);
            case PAGES -> new Beyond("long.pdf", BrokenFiles.pages(9), "Only the first 3 of 9 pages were read", 3, 9);
            case PAGE_SECONDS ->
                new Beyond("dense.pdf", dense(150, 250), "The page holds more than can be read in 1 s", 1, 3);
            case PAGE_OBJECTS ->
                new Beyond("full.pdf", letters(5_000), "more than 2000 letters or ruled lines", 2_000, 20_000);
            case FILE_SECONDS -> new Beyond("dense.pdf", dense(150, 250), "the file takes longer than 1 s", 1, 3);
            case EXPANDED_MB ->
                new Beyond(
                        "bomb.xlsx",
                        BrokenFiles.zip("xl/worksheets/sheet1.xml", new byte[3 * mb]),
                        "expands to more than 2097152 bytes",
                        2,
                        4);
            case PARTS -> new Beyond("parts.xlsx", manyParts(30), "has 31 parts, more than the limit of 20", 20, 100);
            case ROWS ->
                new Beyond(
                        "tall.csv",
                        ascii(SURVEY + "MDP,9,feeds,LP-3,tone,\n".repeat(60)),
                        "longer than the limit of 40 rows",
                        40,
                        100);
            case COLUMNS ->
                new Beyond(
                        "wide.csv",
                        ascii(SURVEY.replace("note", "note" + ",".repeat(30) + "photo") + "MDP,9,feeds,LP-3,tone"
                                + ",".repeat(31) + "p.jpg\n"),
                        "more than 20 columns",
                        20,
                        64);
            case FIELD_CHARS ->
                new Beyond(
                        "talk.csv",
                        ascii(SURVEY + "MDP,9,feeds,LP-3,tone," + "word ".repeat(50) + "\n"),
                        "A field has 250 characters",
                        100,
                        300);
            case FIELD_LINES ->
                new Beyond(
                        "lines.csv",
                        ascii(SURVEY + "MDP,9,feeds,LP-3,tone,\"" + "word\n".repeat(9) + "\"\n"),
                        "A quotation mark in this row is not closed",
                        5,
                        20);
            case JOINED_CELLS ->
                new Beyond("joined.xlsx", joined(9), "more than 5 blocks of joined cells, the limit", 5, 10);
            case LINE_MB ->
                new Beyond(
                        "line.csv",
                        ascii(SURVEY + "MDP,9,feeds,LP-3,tone," + " ".repeat(2 * mb) + "\n"),
                        "longer than 1048576 bytes",
                        1,
                        4);
            case SETTINGS_MB ->
                new Beyond(
                        "record.yaml",
                        ascii("building: North Annex\n" + "# nothing\n".repeat(500_000)),
                        "The settings are larger than 4194304 bytes",
                        4,
                        6);
            case FILES -> new Beyond("sound.csv", ascii(SURVEY), "more than 1 files", 1, 10);
            case FOLDERS -> new Beyond("a/b", new byte[0], "nested deeper than 2 levels", 2, 9);
            case REPORT_MB -> new Beyond("audit.json", new byte[0], "is larger than 1048576 bytes", 1, 4);
        };
    }

    @ParameterizedTest
    @EnumSource
    void what_goes_beyond_is_told_by_its_name_and_let_through_where_the_limit_is_raised(Limit limit) throws Exception {
        Beyond beyond = beyond(limit);
        if (limit == Limit.REPORT_MB) {
            assertThatReportsAreBounded(limit, beyond);
            return;
        }
        Path set = Files.createDirectories(temp.resolve("set"));
        Files.writeString(set.resolve("sound.csv"), SURVEY);
        if (limit == Limit.FOLDERS) {
            Files.createDirectories(set.resolve("a/b/c"));
            Files.writeString(set.resolve("a/b/c/deep.csv"), SURVEY);
        } else if (limit == Limit.FILES) Files.writeString(set.resolve("another.csv"), SURVEY);
        else Files.write(set.resolve(beyond.file()), beyond.content());

        String low = audited(set, limit, beyond.low());
        List<String> lines = low.lines().filter(l -> l.contains(" says: ")).toList();
        assertThat(lines)
                .anyMatch(l -> (limit == Limit.FILES || l.startsWith(beyond.file()))
                        && l.contains(beyond.says())
                        && (l.contains("--allow " + limit.inWords() + "=NUMBER (usual: " + limit.usual() + ")")
                                || limit == Limit.FIELD_LINES));
        assertThat(low).as("the rest is audited").contains("found LP-2A");

        String high = audited(set, limit, beyond.high());
        assertThat(high.lines().filter(l -> l.contains(" says: ")).filter(l -> l.contains(beyond.says())))
                .isEmpty();
        assertThat(high).contains("found LP-2A");
    }

    /** The problems and what was found, by {@code audit.json}. */
    private String audited(Path set, Limit limit, int value) throws Exception {
        Path report = temp.resolve("report-" + value);
        StringWriter err = new StringWriter();
        int status =
                run(err, "audit", set.toString(), "--out", report.toString(), "--allow", limit.inWords() + "=" + value);
        assertThat(status).as(err.toString()).isZero();
        var audit = new com.fasterxml.jackson.databind.ObjectMapper()
                .readTree(report.resolve("audit.json").toFile());
        List<String> lines = new ArrayList<>();
        audit.findValues("problems")
                .forEach(all ->
                        all.forEach(p -> lines.add((p.path("file").asText() + " says: " + p).replace("\\\"", "'"))));
        audit.get("inputs")
                .forEach(i ->
                        i.get("problems").forEach(p -> lines.add(i.get("file").asText() + " says: " + p)));
        if (audit.toString().contains("\"LP-2A\"")) lines.add("found LP-2A");
        return String.join("\n", lines);
    }

    private static int run(StringWriter err, String... command) {
        return Main.run(new PrintWriter(new StringWriter()), new PrintWriter(err), command);
    }

    private void assertThatReportsAreBounded(Limit limit, Beyond beyond) throws Exception {
        Path set = Files.createDirectories(temp.resolve("set"));
        Files.writeString(set.resolve("sound.csv"), SURVEY);
        Path report = temp.resolve("report");
        assertThat(run(new StringWriter(), "audit", set.toString(), "--out", report.toString()))
                .isZero();
        Path padded = temp.resolve("audit.json");
        Files.writeString(padded, Files.readString(report.resolve("audit.json")) + " ".repeat(1 << 20));
        StringWriter low = new StringWriter();
        assertThat(run(
                        low,
                        "since",
                        padded.toString(),
                        padded.toString(),
                        "--allow",
                        limit.inWords() + "=" + beyond.low()))
                .isEqualTo(2);
        assertThat(low.toString()).contains(padded.toString(), beyond.says(), "--allow " + limit.inWords() + "=NUMBER");
        assertThat(run(
                        new StringWriter(),
                        "since",
                        padded.toString(),
                        padded.toString(),
                        "--allow",
                        limit.inWords() + "=" + beyond.high()))
                .isZero();
    }

    /** So many small numbers on one page that explaining it takes long. */
    static byte[] dense(int columns, int rows) throws IOException {
        StringBuilder content = new StringBuilder("BT /F1 5 Tf\n");
        for (int column = 0; column < columns; column++)
            for (int row = 0; row < rows; row++)
                content.append("1 0 0 1 %d %d Tm (%d) Tj\n".formatted(10 + column * 14, 1990 - row * 7, row + 1));
        return BrokenFiles.pdf("/Length " + content.length(), ascii(content + "ET"));
    }

    private static byte[] letters(int count) throws IOException {
        String content = "BT /F1 5 Tf 1 0 0 1 10 1000 Tm (" + "x".repeat(count) + ") Tj ET";
        return BrokenFiles.pdf("/Length " + content.length(), ascii(content.replace("5 Tf", "0.7 Tf")));
    }

    private static byte[] manyParts(int count) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.putNextEntry(new ZipEntry("xl/workbook.xml"));
            for (int i = 0; i < count; i++) {
                zip.putNextEntry(new ZipEntry("xl/part" + i + ".xml"));
                zip.write("<x/>".getBytes(StandardCharsets.UTF_8));
            }
        }
        return out.toByteArray();
    }

    private static byte[] joined(int blocks) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook book = new Workbook(out, "asfound", "1.0")) {
            Worksheet sheet = book.newWorksheet("LP-9");
            for (int i = 0; i < blocks; i++) {
                sheet.value(i, 0, "text " + i);
                sheet.range(i, 0, i, 2).merge();
            }
        }
        return out.toByteArray();
    }
}
