package asfound.report;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.audit.Audit;
import asfound.audit.Stages;
import asfound.command.Main;
import asfound.finding.Finding;
import asfound.isolation.Isolation;
import asfound.isolation.Verdict;
import asfound.network.Network;
import asfound.recordset.Limits;
import asfound.recordset.RecordSet;
import asfound.report.folder.OutputFolder;
import asfound.sample.Building;
import asfound.sample.RandomBuilding;
import asfound.trust.Coverages;
import asfound.trust.Plans;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The same record set gives the same report, byte for byte, whoever runs it and wherever. */
@Isolated("it changes the locale and the time zone")
class SameBytesTest {

    private static final Path DEMO = Path.of("fixtures/kestrel-wharf");

    @TempDir
    Path temp;

    /** Every file of a report; none of them differs, and the list of hashes is one of them. */
    private static void assertSame(Path one, Path other) throws IOException {
        Map<String, byte[]> a = files(one), b = files(other);
        assertThat(a).containsKeys("index.html", "audit.json", "corrections.xlsx", "asfound.sha256");
        assertThat(b.keySet()).isEqualTo(a.keySet());
        assertThat(a.keySet().stream().filter(f -> !Arrays.equals(a.get(f), b.get(f))))
                .as("files that differ")
                .isEmpty();
    }

    private static Map<String, byte[]> files(Path folder) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList())
                files.put(folder.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
        }
        return files;
    }

    private static void audit(Path set, Path report, String... options) throws Exception {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of(options));
        command.addAll(List.of("-Xmx512m", "-cp", System.getProperty("java.class.path"), Main.class.getName()));
        command.addAll(List.of("audit", set.toString(), "--out", report.toString()));
        Process run = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(run.getInputStream().readAllBytes());
        assertThat(run.waitFor()).as(said).isZero();
    }

    /** The same files in another folder of that name, made in the opposite order. */
    private Path copied(Path set) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(set)) {
            files = new ArrayList<>(all.filter(Files::isRegularFile).sorted().toList());
        }
        Collections.reverse(files);
        Path copy = temp.resolve("elsewhere").resolve(set.getFileName());
        for (Path file : files) {
            Path to = copy.resolve(set.relativize(file).toString());
            Files.createDirectories(to.getParent());
            Files.copy(file, to);
        }
        return copy;
    }

    @Test
    void the_demo_in_another_folder_language_time_zone_and_encoding() throws Exception {
        audit(DEMO, temp.resolve("here"), "-Duser.language=en", "-Duser.timezone=America/New_York");
        audit(
                copied(DEMO),
                temp.resolve("there"),
                "-Duser.language=tr",
                "-Duser.country=TR",
                "-Duser.timezone=Asia/Kathmandu",
                "-Dfile.encoding=ISO-8859-9",
                "-Djava.util.concurrent.ForkJoinPool.common.parallelism=1",
                "-XX:ActiveProcessorCount=1",
                "-XX:+UnlockExperimentalVMOptions",
                "-XX:hashCode=2");
        assertSame(temp.resolve("here"), temp.resolve("there"));
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void random_buildings_in_languages_with_other_digits_and_letters(long seed) throws Exception {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            write(seed, temp.resolve("one"));
            Locale.setDefault(Locale.forLanguageTag(seed % 2 == 0 ? "tr-TR" : "ar-EG-u-nu-arab"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
            write(seed, temp.resolve("two"));
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
        assertSame(temp.resolve("one"), temp.resolve("two"));
    }

    private void write(long seed, Path folder) throws Exception {
        Building b = RandomBuilding.withEveryKind(seed, 14, 0.7).building();
        Network network = b.network();
        List<Verdict> verdicts = b.verdicts();
        List<Finding> findings = b.findings();
        assertThat(findings).as("seed %d", seed).isNotEmpty();
        Audit audit = new Audit(
                new RecordSet("random", temp, b.settings(), List.of(), List.of()),
                List.of(),
                b.drawings(),
                b.survey(),
                network,
                verdicts,
                Isolation.drawingVerdicts(network, verdicts),
                findings,
                List.of(),
                b.unclear(),
                Coverages.of(network, b.settings()),
                Plans.of(network, verdicts, findings, b.settings()));
        OutputFolder.at(folder, temp.resolve("set"))
                .write(stage -> Reports.write(audit, Limits.usual(), stage, Stages.SILENT));
    }
}
