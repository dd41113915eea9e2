package asfound.broken;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.audit.Audit;
import asfound.audit.Audits;
import asfound.recordset.Limits;
import asfound.recordset.NothingToDoException;
import asfound.recordset.RecordSets;
import asfound.report.Reports;
import asfound.report.folder.OutputFolder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A whole record set with a few places changed at random, by fixed seeds: cells exchanged for others and for strange ones,
 * rows doubled, files left out, bytes turned. The audit ends with a report, or says that nothing could be read.
 */
class AuditFuzzTest {

    private static final Path FIXTURE = Path.of("fixtures/kestrel-wharf");
    private static final List<String> FILES = List.of(
            "drawings/LP-1A.pdf",
            "one-line/feeders.csv",
            "one-line/equipment.csv",
            "survey/okafor-electrical-room.csv",
            "survey/lindqvist-floors.csv",
            "record.yaml");
    private static final Limits LIMITS =
            Limits.usual().with("page-seconds", 5).with("file-seconds", 10).with("expanded-mb", 64);
    private static final String[] STRANGE = {
        "",
        " ",
        "0",
        "-1",
        "1-3-5",
        "1-2-3-4-5-6",
        "999",
        "7-999",
        "123456789012",
        "9".repeat(400),
        "F5",
        "M1",
        "1L1",
        "\u0663",
        "LP-2\u0391",
        "\u202e7",
        "\u0000",
        "=1+1",
        "<b>x</b>",
        "NaN",
        "1e9",
        "2147483648",
        "208Y/120V",
        "480Y/0",
        "nothing",
        "no device",
        "does not feed",
        "fed by",
        "tie",
        "open",
        "utility",
        "transfer switch",
        "MDP",
        "LP-1A",
        "Spare",
        "2026-02-30",
        "9999-12-31",
        "-999999999-01-01",
        "9 sets (500) kcmil",
        "0 X (",
        "#3 Cu",
        "/",
        "-",
        ",,,"
    };

    @TempDir
    Path temp;

    @Test
    void whatever_stands_in_the_files_the_audit_ends_with_a_report() throws Exception {
        run(0, 15);
    }

    @Test
    @Tag("long")
    void whatever_stands_in_the_files_the_audit_ends_with_a_report_a_thousand_times() throws Exception {
        run(1_000, 1_000);
    }

    private void run(long first, int cases) throws Exception {
        TreeMap<String, byte[]> sound = new TreeMap<>();
        for (String file : FILES) sound.put(file, Files.readAllBytes(FIXTURE.resolve(file)));
        Path set = temp.resolve("set");
        int reports = 0;
        for (long seed = first; seed < first + cases; seed++) {
            Random random = new Random(seed);
            String what = "";
            for (String file : FILES) {
                Path path = set.resolve(file);
                Files.createDirectories(path.getParent());
                Files.deleteIfExists(path);
                if (random.nextInt(8) == 0) {
                    what += " without " + file;
                    continue;
                }
                byte[] bytes = sound.get(file);
                if (random.nextInt(6) == 0) {
                    Mutation m = Mutation.of(bytes, random);
                    bytes = m.bytes();
                    what += " " + file + ": " + m.what();
                } else if (file.endsWith(".csv") && random.nextInt(3) > 0) {
                    bytes = cellsChanged(bytes, random);
                    what += " " + file + ": cells changed";
                }
                Files.write(path, bytes);
            }
            try {
                if (hasReport(set)) reports++;
            } catch (RuntimeException | IOException | Error e) {
                throw new AssertionError("seed " + seed + what, e);
            }
        }
        assertThat(reports).as("audits that ended with a report").isGreaterThan(cases * 3 / 4);
    }

    private boolean hasReport(Path set) throws IOException {
        try {
            Audit audit = Audits.of(RecordSets.open(set, LIMITS), LIMITS, (stage, done, of) -> {});
            OutputFolder.at(temp.resolve("report"), set)
                    .write(stage -> Reports.write(audit, LIMITS, stage, (s, done, of) -> {}));
            return true;
        } catch (NothingToDoException nothing) {
            return false;
        }
    }

    private static byte[] cellsChanged(byte[] csv, Random random) {
        List<String[]> rows = new ArrayList<>();
        for (String line : new String(csv, StandardCharsets.UTF_8).split("\r?\n")) rows.add(line.split(",", -1));
        int changes = 1 + random.nextInt(rows.size());
        for (int i = 0; i < changes; i++) {
            String[] row = rows.get(random.nextInt(rows.size())), other = rows.get(random.nextInt(rows.size()));
            int at = random.nextInt(row.length);
            switch (random.nextInt(4)) {
                case 0 -> row[at] = STRANGE[random.nextInt(STRANGE.length)];
                case 1 -> row[at] = other[Math.min(at, other.length - 1)];
                case 2 -> row[at] = other[random.nextInt(other.length)];
                default -> rows.add(1 + random.nextInt(rows.size()), Arrays.copyOf(other, other.length));
            }
        }
        StringBuilder text = new StringBuilder();
        for (String[] row : rows) text.append(String.join(",", row)).append('\n');
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }
}
