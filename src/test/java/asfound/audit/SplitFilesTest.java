package asfound.audit;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.drawing.Drawings;
import asfound.finding.Finding;
import asfound.isolation.Isolation;
import asfound.isolation.RandomBuilding;
import asfound.isolation.Verdict;
import asfound.model.Observation;
import asfound.model.Problem;
import asfound.network.Network;
import asfound.recordset.Limits;
import asfound.recordset.RecordSets;
import asfound.sample.RecordSetFiles;
import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * How someone divided a record set among files says nothing about the building: the same rows in one table or in several, in
 * any folder, order and separator, give the same verdicts and findings. The seed stands in each message.
 */
class SplitFilesTest {

    @TempDir
    Path folder;

    @Test
    void rows_divided_among_files_give_the_same_verdicts() throws Exception {
        verdicts(LongStream.range(0, 500));
    }

    @Test
    @Tag("long")
    void rows_divided_among_files_give_the_same_verdicts_at_length() throws Exception {
        verdicts(LongStream.range(5_000_000, 5_020_000));
    }

    @Test
    void rows_divided_among_files_give_the_same_findings() throws Exception {
        findings(LongStream.range(0, 10));
    }

    @Test
    @Tag("long")
    void rows_divided_among_files_give_the_same_findings_at_length() throws Exception {
        findings(LongStream.range(1_000, 1_500));
    }

    private void verdicts(LongStream seeds) throws Exception {
        int unlike = 0;
        for (long seed : seeds.toArray()) {
            var building = new RandomBuilding(seed).build();
            if (building.survey().isEmpty()
                    && building.drawings().oneLine().feeders().isEmpty()) continue;
            Audit whole = audit(
                    building.drawings(), building.survey(), building.settings().modified(), -1);
            Audit split = audit(
                    building.drawings(), building.survey(), building.settings().modified(), seed);
            Network inMemory = building.network();
            assertThat(facts(split.verdicts())).as("seed %d", seed).isEqualTo(facts(whole.verdicts()));
            assertThat(facts(whole.verdicts()))
                    .as("read from files, seed %d", seed)
                    .isEqualTo(facts(Isolation.verdicts(inMemory)));
            assertThat(findings(split.findings())).as("seed %d", seed).isEqualTo(findings(whole.findings()));
            if (whole.inputs().size() != split.inputs().size()) unlike++;
        }
        assertThat(unlike).as("buildings that were divided at all").isPositive();
    }

    private void findings(LongStream seeds) throws Exception {
        for (long seed : seeds.toArray()) {
            var building =
                    asfound.sample.RandomBuilding.withEveryKind(seed, 14, 0.7).building();
            Audit whole = audit(
                    building.drawings(), building.survey(), building.settings().modified(), -1);
            Audit split = audit(
                    building.drawings(), building.survey(), building.settings().modified(), seed);
            assertThat(problems(whole))
                    .as("seed %d", seed)
                    .allMatch(p -> p.contains("belongs to two entries")); // a planted clash of positions
            assertThat(whole.findings()).as("seed %d", seed).isNotEmpty();
            assertThat(findings(split.findings())).as("seed %d", seed).isEqualTo(findings(whole.findings()));
            assertThat(facts(split.verdicts())).as("seed %d", seed).isEqualTo(facts(whole.verdicts()));
        }
    }

    /** What is concluded, without where it was read. */
    private static List<List<Object>> facts(List<Verdict> verdicts) {
        return verdicts.stream()
                .map(v -> List.<Object>of(
                        v.equipment(),
                        v.standing(),
                        v.drawnPoints(),
                        v.foundPoints(),
                        v.otherSets(),
                        new TreeSet<>(v.liveFrom()),
                        new TreeSet<>(v.alsoDark()),
                        v.reason()))
                .toList();
    }

    /** Findings by their identity, with what they say apart from where it stands. */
    private static Map<String, List<Object>> findings(List<Finding> findings) {
        Map<String, List<Object>> byId = new TreeMap<>();
        for (Finding f : findings)
            byId.put(f.id(), List.of(f.kind(), f.severity(), f.equipment(), f.circuit(), f.others(), f.correction()));
        assertThat(byId).as("one identity each").hasSameSizeAs(findings);
        return byId;
    }

    private static List<String> problems(Audit audit) {
        return audit.inputs().stream()
                .flatMap(i -> i.problems().stream())
                .map(Problem::toString)
                .toList();
    }

    /** Written, audited and taken away again; whole where {@code seed} is below zero. */
    private Audit audit(Drawings drawings, List<Observation> survey, Map<String, LocalDate> modified, long seed)
            throws Exception {
        Path root = folder.resolve("set");
        if (seed < 0) RecordSetFiles.whole(root, drawings, survey, modified);
        else RecordSetFiles.split(root, drawings, survey, modified, seed);
        try {
            return Audits.of(RecordSets.open(root, Limits.usual()), Limits.usual(), (s, done, of) -> {});
        } finally {
            clear(root);
        }
    }

    private static void clear(Path root) throws IOException {
        Files.walkFileTree(root, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                Files.delete(file);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path dir, IOException e) throws IOException {
                Files.delete(dir);
                return FileVisitResult.CONTINUE;
            }
        });
    }
}
