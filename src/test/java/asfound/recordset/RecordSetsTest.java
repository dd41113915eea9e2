package asfound.recordset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import asfound.model.Problem;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecordSetsTest {

    @TempDir
    Path temp;

    private Path set() throws IOException {
        return Files.createDirectories(temp.resolve("North Annex"));
    }

    private void put(String name, String content) throws IOException {
        TableFiles.text(set(), name, content);
    }

    private RecordSet open() throws Exception {
        return RecordSets.open(set(), Limits.usual());
    }

    private static List<String> said(RecordSet set) {
        return set.problems().stream().map(Problem::inWords).toList();
    }

    @Test
    void what_a_file_is_is_told_from_its_content_not_from_its_name_or_folder() throws Exception {
        put("survey/drawing.csv", "%PDF-1.7\n");
        put("drawings/a.pdf", "panel,circuit,found,method\nMDP,7,LP-2A,tone\n");
        put("one-line/b/c/deep.txt", "from,device,to\nMDP,7,LP-2A\n");
        put("e.csv", "name,kind,fed_from\nMDP,switchboard,UTILITY\n");
        put("f.csv", "Panel,Ckt,Description,Poles,Trip,VA\nLP-1,1,Recept rm 1,1,20,500\n");
        put("g.csv", "PANEL SCHEDULE,,\nName,LP-2,\nFed from,MDP,\nCKT,DESCRIPTION,POLES\n1,Ltg,1\n");
        try (OutputStream out = Files.newOutputStream(set().resolve("h.csv"));
                Workbook book = new Workbook(out, "t", "1.0")) {
            Worksheet sheet = book.newWorksheet("LP-1");
            sheet.value(0, 0, "PANEL LP-1");
        }
        RecordSet record = open();
        assertThat(said(record)).isEmpty();
        assertThat(record.sources().stream().map(s -> s.file() + " " + s.kind()))
                .containsExactly(
                        "drawings/a.pdf SURVEY",
                        "e.csv EQUIPMENT",
                        "f.csv SCHEDULE_TABLE",
                        "g.csv SCHEDULE_TABLE",
                        "h.csv WORKBOOK",
                        "one-line/b/c/deep.txt FEEDERS",
                        "survey/drawing.csv PDF");
    }

    @Test
    void a_directory_whose_descriptions_are_headed_feeds_is_no_survey() throws Exception {
        put("b.csv", "Ckt,Feeds,A,Method\n1,Recept rm 1,20,tone\n");
        try (OutputStream out = Files.newOutputStream(set().resolve("c.xlsx"));
                Workbook book = new Workbook(out, "t", "1.0")) {
            Worksheet sheet = book.newWorksheet("1A");
            String[] head = {"#", "Feeds", "A", "P", "VA A", "VA B", "VA C"};
            for (int c = 0; c < head.length; c++) sheet.value(0, c, head[c]);
        }
        assertThat(open().sources().stream().map(s -> s.file() + " " + s.kind()))
                .containsExactly("b.csv SURVEY", "c.xlsx WORKBOOK");
    }

    @Test
    void a_source_carries_its_size_and_hash() throws Exception {
        put("a.csv", "abc");
        // FIPS 180-4 example: SHA-256("abc")
        assertThat(open().sources().get(0).sha256())
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
        assertThat(open().sources().get(0).bytes()).isEqualTo(3);
    }

    @Test
    void what_is_not_understood_is_said_and_the_rest_is_read() throws Exception {
        put("a.csv", "from,to\nMDP,LP-1\n");
        put("b.txt", "Dear Sirs\nplease find enclosed\n");
        put("c.dwg", "AC1032 drawing");
        put("d.pdf", "");
        RecordSet record = open();
        assertThat(record.sources()).hasSize(4);
        assertThat(said(record)).hasSize(3);
        assertThat(said(record).get(0))
                .startsWith("b.txt: The file was not understood")
                .contains("Dear Sirs");
        assertThat(said(record).get(1)).contains("c.dwg: The file is a CAD drawing (DWG), which is not read.");
        assertThat(said(record).get(2)).contains("d.pdf: The file is empty (0 bytes).");
    }

    @Test
    void photos_are_told_once_for_each_folder() throws Exception {
        put("s.csv", "panel,circuit,found,method\nMDP,7,LP-2A,tone\n");
        for (int i = 0; i < 30; i++)
            TableFiles.bytes(
                    set(), "survey/photos/" + i + ".jpg", new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, 1});
        assertThat(said(open())).singleElement().asString().contains("survey/photos holds 30 pictures");
    }

    @Test
    void links_out_of_the_record_set_are_refused_and_hidden_files_passed_over() throws Exception {
        put("a.csv", "from,to\nMDP,LP-1\n");
        put(".git/b.csv", "from,to\nMDP,LP-2\n");
        put("~$a.xlsx", "x");
        Path outside = Files.writeString(temp.resolve("secret.csv"), "from,to\nMDP,LP-9\n");
        Files.createSymbolicLink(set().resolve("link.csv"), outside);
        Files.createSymbolicLink(set().resolve("up"), temp);
        Files.createSymbolicLink(set().resolve("again.csv"), set().resolve("a.csv"));
        Files.createSymbolicLink(set().resolve("broken.csv"), set().resolve("none.csv"));
        RecordSet record = open();
        assertThat(record.sources()).extracting(Source::file).containsExactly("a.csv");
        assertThat(said(record))
                .containsExactly(
                        "broken.csv: This symbolic link leads nowhere. Put the file itself into the record set.",
                        "link.csv: This symbolic link leads out of the record set and was not followed. Put the file itself"
                                + " into the record set.",
                        "up: This symbolic link leads out of the record set and was not followed. Put the file itself into"
                                + " the record set.");
    }

    @Test
    void an_earlier_report_in_the_record_set_is_not_an_input() throws Exception {
        put("a.csv", "from,to\nMDP,LP-1\n");
        put("report/audit.json", "{\"schema\": \"asfound-audit/1\"}");
        put("report/corrections.csv", "from,to\nMDP,LP-1\n");
        RecordSet record = open();
        assertThat(record.sources()).extracting(Source::file).containsExactly("a.csv");
        assertThat(said(record)).singleElement().asString().contains("report: The folder holds an earlier report");
    }

    @Test
    void a_report_is_known_by_its_list_of_hashes_wherever_it_lies_and_another_folder_with_such_a_name_is_read()
            throws Exception {
        put("a.csv", "from,to\nMDP,LP-1\n");
        put("survey/march/asfound.sha256", "# asfound report; to check it: sha256sum -c asfound.sha256\n");
        put("survey/march/retrace.csv", "rank,panel,circuit,expect,method\n1,MDP,7,LP-1,tone\n");
        put("one-line/asfound.sha256", "not ours\n");
        put("one-line/b.csv", "from,to\nMDP,LP-2\n");
        RecordSet record = open();
        assertThat(record.sources())
                .extracting(Source::file)
                .containsExactly("a.csv", "one-line/asfound.sha256", "one-line/b.csv");
        assertThat(said(record)).anyMatch(p -> p.startsWith("survey/march: The folder holds an earlier report"));
    }

    @Test
    void a_hidden_file_that_is_named_like_a_drawing_is_told() throws Exception {
        put("a.csv", "from,to\nMDP,LP-1\n");
        put(".LP-2.pdf", "%PDF-1.7");
        put("..\\..\\evil.csv", "from,to\nMDP,LP-2\n");
        put("._a.csv", "litter of a system");
        put(".~lock.a.csv#", "litter of an office program");
        put(".DS_Store", "litter of a system");
        assertThat(said(open()))
                .containsExactly(
                        "..\\..\\evil.csv: The file is hidden, its name begins with a dot, and was not read. Give it another"
                                + " name if it belongs to the records.",
                        ".LP-2.pdf: The file is hidden, its name begins with a dot, and was not read. Give it another"
                                + " name if it belongs to the records.");
    }

    @Test
    void control_characters_in_names_are_not_passed_on() throws Exception {
        put("a\u001b[31m\u202e.csv", "from,to\nMDP,LP-1\n");
        assertThat(open().sources().get(0).file()).isEqualTo("a?[31m?.csv");
    }

    @Test
    void nothing_to_do_is_said_with_what_to_do() throws Exception {
        Path none = temp.resolve("none");
        assertThatThrownBy(() -> RecordSets.open(none, Limits.usual()))
                .isInstanceOf(NothingToDoException.class)
                .hasMessageContaining("There is no folder " + none)
                .hasMessageContaining("Give the folder");
        set();
        assertThatThrownBy(this::open)
                .isInstanceOf(NothingToDoException.class)
                .hasMessageContaining("is empty. Put the");
        Path file = Files.writeString(temp.resolve("f"), "x");
        assertThatThrownBy(() -> RecordSets.open(file, Limits.usual()))
                .isInstanceOf(NothingToDoException.class)
                .hasMessageContaining("is a file, not a folder");
    }

    @Test
    void settings_are_read_and_names_stay_texts() throws Exception {
        put("record.yaml", """
                building: North Annex
                columns: {Tableau: panel, "CKT (new)": circuit}
                same: [[LP-2A, L2A], [2E1, 02E1]]
                distinct:
                  - [T-1, XFMR 1]
                abbreviations: {WH: water heater}
                modified: {LP-2A: 2024-05-02, 2E1: 2024-06-30}
                numbering: down
                life_safety: [LS-1]
                chosen: random
                """);
        RecordSet record = open();
        assertThat(said(record)).isEmpty();
        Settings s = record.settings();
        assertThat(record.building()).isEqualTo("North Annex");
        assertThat(s.columns()).isEqualTo(Map.of("Tableau", "panel", "CKT (new)", "circuit"));
        assertThat(s.same()).containsExactly(List.of("LP-2A", "L2A"), List.of("2E1", "02E1"));
        assertThat(s.distinct()).containsExactly(List.of("T-1", "XFMR 1"));
        assertThat(s.abbreviations()).containsEntry("WH", "water heater");
        assertThat(s.modified()).containsEntry("2E1", LocalDate.of(2024, 6, 30));
        assertThat(s.numbering()).contains(Settings.Numbering.DOWN);
        assertThat(s.lifeSafety()).containsExactly("LS-1");
        assertThat(s.chosen()).contains(Settings.Chosen.RANDOM);
        assertThat(record.sources().get(0).kind()).isEqualTo(Source.Kind.SETTINGS);
    }

    @Test
    void a_mistake_in_the_settings_costs_its_own_key_alone() throws Exception {
        put("record.yaml", """
                building: North Annex
                modifed: {LP-1: 2024-05-02}
                modified: {LP-2A: 2024-13-02, LP-3: 2024-05-02}
                numbering: sideways
                columns: {Tableau: panneau}
                same: [[LP-2A], [A, B]]
                """);
        RecordSet record = open();
        assertThat(record.building()).isEqualTo("North Annex");
        assertThat(record.settings().modified())
                .containsEntry("LP-3", LocalDate.of(2024, 5, 2))
                .containsEntry("LP-2A", SettingsReader.NOT_YET);
        assertThat(record.settings().same()).containsExactly(List.of("A", "B"));
        assertThat(said(record)).hasSize(5);
        assertThat(said(record).get(0)).contains("row 2", "'modifed' is not known");
        assertThat(said(record).get(1)).contains("row 3", "'2024-13-02' is no date");
        assertThat(said(record).get(2)).contains("row 4", "numbering: sideways", "across or down");
        assertThat(said(record).get(3)).contains("row 5", "'panneau', which is no column");
        assertThat(said(record).get(4)).contains("row 6", "fewer than two names");
    }

    @Test
    void settings_that_are_no_yaml_are_said_and_the_rest_is_read() throws Exception {
        put("record.yaml", "building: [unclosed\nsame: }\n");
        put("a.csv", "from,to\nMDP,LP-1\n");
        RecordSet record = open();
        assertThat(record.sources()).hasSize(2);
        assertThat(said(record)).singleElement().asString().contains("record.yaml, row", "could not be read");
    }

    @Test
    void a_workbook_that_expands_too_far_or_declares_entities_is_refused() throws Exception {
        zip("bomb.xlsx", "xl/worksheets/sheet1.xml", new byte[3 << 20]);
        zip(
                "entity.xlsx",
                "xl/sharedStrings.xml",
                "<?xml version=\"1.0\"?><!DOCTYPE x [<!ENTITY a SYSTEM \"file:///etc/passwd\">]><sst/>"
                        .getBytes(StandardCharsets.UTF_8));
        Limits small = Limits.usual().with(Limit.EXPANDED_MB, 1 << 20);
        RecordSet record = RecordSets.open(set(), small);
        List<String> problems = record.sources().stream()
                .flatMap(s -> Grids.read(s, small).problems().stream())
                .map(Problem::inWords)
                .toList();
        assertThat(problems.get(0)).contains("bomb.xlsx: The workbook expands to more than 1048576 bytes");
        assertThat(problems.get(1))
                .contains("entity.xlsx: The workbook's part xl/sharedStrings.xml declares a document type");
    }

    private void zip(String name, String part, byte[] content) throws IOException {
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(set().resolve(name)))) {
            zip.putNextEntry(new ZipEntry("xl/workbook.xml"));
            zip.putNextEntry(new ZipEntry(part));
            zip.write(content);
        }
    }

    @Test
    void a_workbook_gives_numbers_and_days_as_people_write_them() throws Exception {
        try (OutputStream out = Files.newOutputStream(set().resolve("s.xlsx"));
                Workbook book = new Workbook(out, "t", "1.0")) {
            Worksheet sheet = book.newWorksheet("Survey");
            String[] header = {"panel", "circuit", "found", "method", "rating_a", "date"};
            for (int c = 0; c < header.length; c++) sheet.value(2, c, header[c]);
            sheet.value(4, 0, "MDP");
            sheet.value(4, 1, 7);
            sheet.value(4, 2, "LP-2A");
            sheet.value(4, 3, "tone");
            sheet.value(4, 4, 100.0);
            sheet.value(4, 5, LocalDate.of(2024, 5, 2));
            sheet.style(4, 5).format("yyyy-mm-dd").set();
        }
        RecordSet record = open();
        assertThat(record.sources().get(0).kind()).isEqualTo(Source.Kind.SURVEY);
        Table table = Tables.read(record.sources().get(0), record.settings(), Limits.usual())
                .tables()
                .get(0);
        GridRow row = table.rows().get(0);
        assertThat(row.cells()).containsExactly("MDP", "7", "LP-2A", "tone", "100", "2024-05-02");
        assertThat(table.place(row).inWords()).isEqualTo("s.xlsx, sheet Survey, row 5");
    }
}
