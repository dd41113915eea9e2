package asfound.broken;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.recordset.Limits;
import asfound.recordset.RecordSets;
import asfound.sample.PrintedSchedule;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Sound files of every format with one place changed at random, by fixed seeds: reading ends in time with values or a
 * message, writes nothing, and what changed in what was read is in the changed place or was told.
 */
class FuzzTest {

    private static final Duration LONGEST = Duration.ofSeconds(20);
    private static final Limits LIMITS = Limits.usual()
            .with("file-mb", 8)
            .with("pages", 20)
            .with("page-seconds", 5)
            .with("file-seconds", 10)
            .with("rows", 10_000)
            .with("columns", 100)
            .with("field-chars", 2_000)
            .with("expanded-mb", 16);

    private record Sample(String name, byte[] bytes) {}

    @TempDir
    Path temp;

    @Test
    void no_changed_file_is_misread_silently() throws Exception {
        run(0, 500);
    }

    @Test
    void headings_that_lost_their_meaning_are_told() throws Exception {
        run(1_002_515, 1);
        run(1_012_259, 1);
    }

    @Test
    void rows_below_a_damaged_one_are_told_where_they_are_not_read() throws Exception {
        for (long seed : new long[] {1_010_901, 1_013_267, 1_014_961, 1_017_502}) run(seed, 1);
    }

    @Test
    @Tag("long")
    void no_changed_file_of_twenty_thousand_is_misread_silently() throws Exception {
        run(1_000_000, 20_000);
    }

    private void run(long firstSeed, int cases) throws Exception {
        List<Sample> samples = samples();
        List<WholeReading> sound = new ArrayList<>();
        for (Sample s : samples) sound.add(read(s.name(), s.bytes()));
        for (int i = 0; i < samples.size(); i++)
            assertThat(sound.get(i).values()).as(samples.get(i).name()).hasSizeGreaterThan(1);
        List<String> misread = new ArrayList<>();
        for (long seed = firstSeed; seed < firstSeed + cases; seed++) {
            int k = (int) (seed % samples.size());
            Sample sample = samples.get(k);
            Mutation mutation = Mutation.of(sample.bytes(), new Random(seed));
            String about = "seed " + seed + ", " + sample.name() + ": " + mutation.what();
            long start = System.nanoTime();
            WholeReading reading;
            try {
                reading = read(sample.name(), mutation.bytes());
            } catch (RuntimeException | Error e) {
                throw new AssertionError(about, e);
            }
            assertThat(Duration.ofNanos(System.nanoTime() - start)).as(about).isLessThan(LONGEST);
            if (!check(sample, mutation, sound.get(k), reading))
                misread.add(about + ": " + difference(sound.get(k), reading));
            if (misread.size() >= 10) break;
        }
        assertThat(misread).isEmpty();
    }

    private WholeReading read(String name, byte[] bytes) throws Exception {
        Path set = Files.createDirectories(temp.resolve("set"));
        Path file = set.resolve(name);
        Files.write(file, bytes);
        try {
            WholeReading reading = WholeReading.of(RecordSets.open(set, LIMITS), LIMITS);
            try (Stream<Path> left = Files.walk(temp)) {
                assertThat(left.filter(Files::isRegularFile)).containsExactly(file);
            }
            return reading;
        } finally {
            Files.delete(file);
        }
    }

    /** Read as before, or told. In a text, what stands in untouched rows is read as before, wherever they stand now. */
    private static boolean check(Sample sample, Mutation mutation, WholeReading sound, WholeReading now) {
        boolean told = !sound.problems().containsAll(now.problems());
        if (told || sample.name().endsWith(".yaml")) return true;
        if (!sample.name().endsWith(".csv")) return plain(now.values()).equals(plain(sound.values()));
        return lost(sound, now).size() <= touchedRows(sample.bytes(), mutation);
    }

    private static List<String> lost(WholeReading sound, WholeReading now) {
        List<String> lost = new ArrayList<>(plain(sound.values()));
        plain(now.values()).forEach(lost::remove);
        return lost;
    }

    private static String difference(WholeReading sound, WholeReading now) {
        return "lost " + lost(sound, now) + " for " + lost(now, sound);
    }

    /** Without row numbers. */
    private static List<String> plain(List<String> values) {
        return values.stream().map(v -> v.replaceAll("row=\\d+", "row")).toList();
    }

    private static int touchedRows(byte[] sound, Mutation m) {
        int rows = 2;
        for (int i = Math.max(0, m.from() - 1); i < Math.min(sound.length, m.to() + 1); i++)
            if (sound[i] == '\n') rows++;
        return rows;
    }

    private List<Sample> samples() throws IOException {
        Path fixture = Path.of("fixtures/kestrel-wharf");
        byte[] survey = Files.readAllBytes(fixture.resolve("survey/okafor-electrical-room.csv"));
        return List.of(
                new Sample("survey.csv", head(survey, 25)),
                new Sample("feeders.csv", Files.readAllBytes(fixture.resolve("one-line/feeders.csv"))),
                new Sample("equipment.csv", Files.readAllBytes(fixture.resolve("one-line/equipment.csv"))),
                new Sample("schedule.csv", BrokenFiles.ascii(SCHEDULE)),
                new Sample("record.yaml", BrokenFiles.ascii(SETTINGS)),
                new Sample("schedule.xlsx", BrokenFiles.workbook()),
                new Sample("drawing.pdf", drawing()));
    }

    private static byte[] head(byte[] bytes, int lines) {
        int at = 0;
        for (int n = 0; n < lines && at < bytes.length; at++) if (bytes[at] == '\n') n++;
        return Arrays.copyOf(bytes, at);
    }

    private static byte[] drawing() throws IOException {
        PrintedSchedule printed = new PrintedSchedule();
        List<PrintedSchedule.Entry> entries = new ArrayList<>();
        for (int p = 1; p <= 12; p++) entries.add(new PrintedSchedule.Entry(p, "20", "RECEPT RM " + (200 + p)));
        printed.page("LP-7", "MDP-7", entries, 0, 0, 0);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        printed.document().save(out);
        return out.toByteArray();
    }

    private static final String SCHEDULE = "PANEL LP-8,,,\nCKT,DESCRIPTION,POLES,TRIP\n"
            + "1,RECEPT RM 101,1,20\n2,LIGHTING RM 102,1,20\n3,EF-1,1,15\n4,SPARE,1,20\n5,COPIER RM 103,1,20\n6,WH-1,1,30\n";

    private static final String SETTINGS = """
            building: North Annex
            columns: {Tableau: panel}
            same: [[LP-2A, L2A]]
            distinct: [[LP-1, LP-01]]
            modified: {LP-2A: 2024-05-02}
            numbering: across
            """;
}
