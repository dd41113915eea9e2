package asfound.sample.kestrel;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.drawing.schedule.ScheduleReader;
import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.model.Directory;
import asfound.model.Problem;
import asfound.recordset.Limits;
import asfound.recordset.NothingToDoException;
import asfound.recordset.RecordSet;
import asfound.recordset.RecordSets;
import asfound.recordset.Source;
import asfound.sample.kestrel.DrawnPanel.DrawnCircuit;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What two offices lettered on their sheets is read back circuit by circuit; the scan is said not to be readable. */
class KestrelDrawingsTest {

    private static final Map<String, Directory> READ = new TreeMap<>();
    private static final List<Problem> PROBLEMS = new ArrayList<>();

    @BeforeAll
    static void read() throws NothingToDoException {
        RecordSet set = RecordSets.open(Path.of("fixtures/kestrel-wharf"), Limits.usual());
        ScheduleReader reader = new ScheduleReader(set.settings(), Limits.usual());
        for (Source source : set.sources()) {
            if (source.kind() != Source.Kind.PDF) continue;
            ScheduleReading reading = reader.read(source);
            PROBLEMS.addAll(reading.problems());
            for (Directory directory : reading.directories())
                assertThat(READ.put(directory.panel(), directory))
                        .as(directory.panel())
                        .isNull();
        }
    }

    @Test
    void every_panel_but_the_scanned_one_is_read() {
        List<String> drawn =
                new KestrelDrawings().panels().stream().map(DrawnPanel::name).toList();

        assertThat(READ.keySet())
                .doesNotContain("RP-1")
                .hasSize(drawn.size() - 1)
                .isSubsetOf(drawn);
        assertThat(PROBLEMS)
                .singleElement()
                .satisfies(p -> assertThat(p.place().inWords()).isEqualTo("drawings/RP-1-scan.pdf, page 1"));
    }

    @Test
    void every_circuit_is_read_as_it_was_lettered() {
        for (DrawnPanel panel : new KestrelDrawings().panels())
            if (READ.containsKey(panel.name()))
                assertThat(READ.get(panel.name()).circuits().stream().map(KestrelDrawingsTest::inWords))
                        .as(panel.name())
                        .containsExactlyElementsOf(panel.circuits().stream()
                                .map(KestrelDrawingsTest::inWords)
                                .toList());
    }

    @Test
    void every_header_is_read_as_it_was_lettered() {
        READ.forEach((name, directory) -> {
            DrawnPanel panel = new KestrelDrawings().panel(name);
            Directory.Header header = directory.header();
            assertThat(header.location().or("")).as(name).isEqualTo(panel.location());
            assertThat(header.fedFrom().or("")).as(name).isEqualTo(panel.fedFrom());
            assertThat(header.voltage().value().orElseThrow().inWords())
                    .as(name)
                    .isEqualTo(panel.voltage());
            assertThat(header.phases().value()).as(name).hasValue(3);
            assertThat(header.wires().value()).as(name).hasValue(4);
            assertThat(header.busA().value()).as(name).hasValue(panel.busA());
            assertThat(header.mainA().value()).as(name).isEqualTo(panel.mainA());
            assertThat(header.mains().value())
                    .as(name)
                    .hasValue(panel.mainA().isPresent() ? Directory.Mains.BREAKER : Directory.Mains.LUGS);
            assertThat(header.interruptingKA().value()).as(name).hasValue((double) panel.interruptingKA());
            assertThat(header.mounting().or("")).as(name).isEqualTo(panel.mounting());
        });
    }

    @Test
    void every_sum_is_read_as_it_was_lettered() {
        READ.forEach((name, directory) -> {
            DrawnPanel panel = new KestrelDrawings().panel(name);
            assertThat(directory.totals().byPhaseVA().stream().map(v -> v.or(-1.0)))
                    .as(name)
                    .containsExactly((double) panel.phaseVA(0), (double) panel.phaseVA(1) + panel.printedB(), (double)
                            panel.phaseVA(2));
            assertThat(directory.totals().totalVA().or(-1.0)).as(name).isEqualTo(panel.totalVA() + panel.printedB());
            assertThat(directory.totals().amperes().or(-1.0)).as(name).isEqualTo(panel.amperes());
        });
    }

    private static String inWords(Directory.Circuit c) {
        String device = c.ratingA().value().map(a -> a + "/" + c.poles()).orElse("-");
        String text =
                c.use() == Directory.Use.LOAD ? c.description().or("") : c.use().name();
        return c.ref().inWords() + " " + device + " " + text + " "
                + Math.round(c.totalVA().or(0.0));
    }

    private static String inWords(DrawnCircuit c) {
        String device = c.isSpace() ? "-" : c.ratingA() + "/" + c.poles();
        int va = c.poleVA().stream().mapToInt(Integer::intValue).sum();
        return c.inWords() + " " + device + " " + c.description() + " " + va;
    }
}
