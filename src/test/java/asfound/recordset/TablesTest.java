package asfound.recordset;

import static java.nio.charset.StandardCharsets.UTF_16BE;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Problem;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TablesTest {

    private static final String SURVEY = "panel,circuit,relation,found,method\nMDP,7,feeds,LP-2A,opened\n";

    @TempDir
    Path folder;

    private TableReading read(String content) throws IOException {
        return Tables.read(TableFiles.text(folder, "survey/s.csv", content), Settings.none(), Limits.usual());
    }

    private TableReading read(byte[] content) throws IOException {
        return Tables.read(TableFiles.bytes(folder, "survey/s.csv", content), Settings.none(), Limits.usual());
    }

    private static Table only(TableReading reading) {
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.tables()).hasSize(1);
        return reading.tables().get(0);
    }

    private static String cells(Table table, String column) {
        return String.join(
                "|", table.rows().stream().map(r -> table.cell(r, column)).toList());
    }

    private static List<String> said(TableReading reading) {
        return reading.problems().stream().map(Problem::inWords).toList();
    }

    @Test
    void a_table_is_read_in_every_usual_encoding() throws IOException {
        String accented = SURVEY.replace("LP-2A", "Réception 2½");
        assertThat(cells(only(read(accented)), "found")).isEqualTo("Réception 2½");
        assertThat(cells(only(read("\uFEFF" + accented)), "found")).isEqualTo("Réception 2½");
        assertThat(cells(only(read(accented.getBytes(Charset.forName("windows-1252")))), "found"))
                .isEqualTo("Réception 2½");
        assertThat(cells(only(read(("\uFEFF" + accented).getBytes(UTF_16LE))), "found"))
                .isEqualTo("Réception 2½");
        assertThat(cells(only(read(("\uFEFF" + accented).getBytes(UTF_16BE))), "found"))
                .isEqualTo("Réception 2½");
    }

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t"})
    void the_delimiter_is_seen_from_the_rows(String delimiter) throws IOException {
        Table table = only(read(SURVEY.replace(",", delimiter) + "MDP" + delimiter + "\"9" + delimiter + "11\""
                + delimiter + delimiter + "RP-1" + delimiter + "tone\n"));
        assertThat(cells(table, "circuit")).isEqualTo("7|9" + delimiter + "11");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void lines_end_in_every_usual_way(String end) throws IOException {
        Table table = only(read(SURVEY.replace("\n", end) + end + "MDP,9,feeds,LP-3,tone" + end));
        assertThat(table.rows()).extracting(GridRow::number).containsExactly(2, 4);
    }

    @Test
    void titles_and_blank_rows_above_the_header_are_passed_over_and_rows_keep_their_numbers() throws IOException {
        Table table =
                only(read("FIELD SURVEY\n\nBuilding:,North Wing,,,\n" + SURVEY + "\n,,,,\nMDP,9,feeds,LP-3,tone\n"));
        assertThat(table.rows()).extracting(GridRow::number).containsExactly(5, 8);
        assertThat(table.place(table.rows().get(0)).inWords()).isEqualTo("survey/s.csv, row 5");
    }

    @Test
    void header_names_are_told_without_case_spaces_and_punctuation_and_with_their_synonyms() throws IOException {
        Table table = only(read("PANEL,CKT #,Found ,How Traced,Rating (A),Surveyed By\nMDP,7,LP-2A,tone,100,JS\n"));
        assertThat(table.columns()).containsExactly("panel", "circuit", "found", "method", "rating_a", "by");
        Table feeders = only(read("Source;Load;Breaker;Length (ft)\nMDP;LP-2A;7;120\n"));
        assertThat(feeders.kind()).isEqualTo(Source.Kind.FEEDERS);
        assertThat(feeders.columns()).containsExactly("from", "to", "device", "length_ft");
        Table equipment = only(read("Equipment,Type,Bus (A),MCB,Fed From\nLP-2A,panel,225,,MDP-7\n"));
        assertThat(equipment.kind()).isEqualTo(Source.Kind.EQUIPMENT);
        assertThat(equipment.columns()).containsExactly("name", "kind", "bus_a", "main_a", "fed_from");
    }

    @Test
    void the_users_column_names_come_first() throws IOException {
        Source source = TableFiles.text(folder, "s.csv", "Tableau,Départ,Trouvé,Comment\nMDP,7,LP-2A,ok\n");
        TableReading reading = Tables.read(
                source,
                TableFiles.columns(
                        Map.of("Tableau", "panel", "Départ", "circuit", "trouvé", "found", "Comment", "method")),
                Limits.usual());
        assertThat(only(reading).columns()).containsExactly("panel", "circuit", "found", "method");
    }

    @Test
    void a_missing_column_is_said_with_the_columns_seen_and_what_to_do() throws IOException {
        TableReading reading = read("panel,place,found,method\nMDP,here,LP-2A,tone\n");
        assertThat(reading.tables()).isEmpty();
        assertThat(said(reading))
                .containsExactly(
                        "survey/s.csv, row 1: The table has no column for 'circuit'. Its columns are: panel, place,"
                                + " found, method. Rename a column, or name it under 'columns' in record.yaml; the table was not"
                                + " read.");
    }

    @Test
    void a_header_in_the_middle_begins_a_new_table() throws IOException {
        TableReading reading =
                read("from,device,to\nMDP,7,LP-2A\n\nname,kind\nMDP,switchboard\n\nfrom,device,to\nMDP,9,LP-3\n");
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.tables())
                .extracting(Table::kind)
                .containsExactly(Source.Kind.FEEDERS, Source.Kind.EQUIPMENT, Source.Kind.FEEDERS);
        assertThat(reading.rows()).isEqualTo(3);
    }

    @Test
    void an_unclosed_quotation_mark_costs_no_other_row() throws IOException {
        TableReading reading =
                read(SURVEY + "MDP,9,feeds,\"LP-3,tone\nMDP,11,feeds,\"LP-4\",tone\nMDP,13,feeds,LP-5,tone\n");
        assertThat(cells(reading.tables().get(0), "found")).isEqualTo("LP-2A|\"LP-3|LP-4|LP-5");
        assertThat(said(reading)).singleElement().asString().contains("row 3", "quotation mark");
        TableReading last = read(SURVEY + "MDP,9,feeds,\"LP-3,tone\nMDP,13,feeds,LP-5,tone");
        assertThat(cells(last.tables().get(0), "found")).isEqualTo("LP-2A|\"LP-3|LP-5");
    }

    @Test
    void a_field_over_two_lines_is_one_field() throws IOException {
        Table table = only(read(SURVEY + "MDP,9,feeds,\"LP-3\n(2nd floor)\",tone\nMDP,11,feeds,LP-4,tone\n"));
        assertThat(cells(table, "found")).isEqualTo("LP-2A|LP-3\n(2nd floor)|LP-4");
        assertThat(table.rows()).extracting(GridRow::number).containsExactly(2, 3, 5);
    }

    @Test
    void nul_bytes_are_left_out_and_said() throws IOException {
        TableReading reading = read(SURVEY + "MDP,9,feeds,LP\0-3,tone\n");
        assertThat(cells(reading.tables().get(0), "found")).isEqualTo("LP-2A|LP-3");
        assertThat(said(reading)).singleElement().asString().contains("row 3", "NUL bytes");
    }

    @Test
    void a_field_of_a_million_characters_is_cut_and_said() throws IOException {
        TableReading reading =
                read(SURVEY + "MDP,9,feeds," + "x".repeat(1_000_000) + ",tone\nMDP,11,feeds,LP-4,tone\n");
        assertThat(reading.tables().get(0).rows()).hasSize(3);
        assertThat(said(reading)).singleElement().asString().contains("row 3", "1000000 characters", "32000");
    }

    @Test
    void mixed_encodings_are_said() throws IOException {
        byte[] utf8 = (SURVEY + "MDP,9,feeds,Réception,tone\n").getBytes(UTF_8);
        byte[] windows = "MDP,11,feeds,Entrée,tone\n".getBytes(Charset.forName("windows-1252"));
        byte[] both = java.util.Arrays.copyOf(utf8, utf8.length + windows.length);
        System.arraycopy(windows, 0, both, utf8.length, windows.length);
        TableReading reading = read(both);
        assertThat(cells(reading.tables().get(0), "found")).isEqualTo("LP-2A|Réception|Entrée");
        assertThat(said(reading)).singleElement().asString().contains("mixes encodings", "row 3 is UTF-8, row 4");
    }

    @Test
    void short_and_long_rows_are_said_and_kept() throws IOException {
        TableReading reading = read(SURVEY + "MDP,9\nMDP,11,feeds,Recept, rm 204,tone\nMDP,13,feeds,LP-4,tone\n");
        assertThat(reading.tables().get(0).rows()).hasSize(4);
        assertThat(said(reading)).hasSize(2);
        assertThat(said(reading).get(0)).contains("row 3", "2 fields");
        assertThat(said(reading).get(1)).contains("row 4", "more fields");
    }

    @Test
    void of_many_like_problems_the_true_count_is_told() throws IOException {
        TableReading reading = read(SURVEY + "MDP,9\n".repeat(500));
        assertThat(reading.tables().get(0).rows()).hasSize(501);
        assertThat(reading.problems()).hasSize(51);
        assertThat(said(reading).get(50)).contains("500 rows with too few fields in all");
    }

    @Test
    void rows_past_the_limit_are_said_with_the_row_where_reading_ended() throws IOException {
        Limits few = Limits.usual().with(Limit.ROWS, 10);
        TableReading reading = Tables.read(
                TableFiles.text(folder, "s.csv", SURVEY + "MDP,9,feeds,LP-3,tone\n".repeat(50)), Settings.none(), few);
        assertThat(said(reading)).singleElement().asString().contains("row 11", "limit of 10 rows");
    }

    @Test
    void two_columns_of_one_meaning_are_said() throws IOException {
        TableReading reading = read("panel,circuit,ckt,found\nMDP,7,8,LP-2A\n");
        assertThat(cells(reading.tables().get(0), "circuit")).isEqualTo("7");
        assertThat(said(reading)).singleElement().asString().contains("Two columns mean 'circuit'");
    }

    /** Reference: Apache Commons CSV, RFC 4180. Random tables with quotes, delimiters and line ends in their fields. */
    @Test
    void random_tables_read_as_the_reference_library_reads_them() throws IOException {
        for (long seed = 1; seed <= 150; seed++) {
            Random random = new Random(seed);
            String text = randomTable(random);
            List<List<String>> expected = new ArrayList<>();
            for (CSVRecord r : CSVFormat.RFC4180.builder().get().parse(new StringReader(text)))
                expected.add(r.stream().map(TablesTest::unguarded).toList());
            GridReading reading = Grids.read(TableFiles.text(folder, "r.csv", text), Limits.usual());
            assertThat(reading.grids().get(0).rows().stream()
                            .map(GridRow::cells)
                            .toList())
                    .as("seed " + seed)
                    .isEqualTo(expected);
            assertThat(reading.problems()).as("seed " + seed).isEmpty();
        }
    }

    /** The reference library knows nothing of the apostrophe that guards a cell. */
    private static String unguarded(String cell) {
        return cell.matches("(?s)'('| *[=+@\\n-]).*") ? cell.substring(1) : cell;
    }

    private static String randomTable(Random random) throws IOException {
        String[] bits = {"LP-2A", "a\"b", "\"", "x,y", "two\nlines", " ", "7", "é", ";", "'", "=1", "Recept rm 204"};
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
            printer.printRecord("panel", "circuit", "relation", "found", "method", "note");
            for (int r = 0; r < 40; r++) {
                List<String> row = new ArrayList<>(List.of("P" + r));
                for (int c = 0; c < 5; c++)
                    row.add(bits[random.nextInt(bits.length)]
                            + (random.nextBoolean() ? bits[random.nextInt(bits.length)] : ""));
                printer.printRecord(row);
            }
        }
        return text.toString();
    }
}
