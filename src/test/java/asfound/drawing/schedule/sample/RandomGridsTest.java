package asfound.drawing.schedule.sample;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.drawing.schedule.ScheduleReader;
import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.recordset.Limits;
import asfound.recordset.Settings;
import asfound.recordset.Source;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Random panels in randomly composed workbooks and text tables come back exactly, or with a word about what is in doubt. */
class RandomGridsTest {

    @TempDir
    private Path folder;

    @Test
    void a_hundred_random_tables_are_never_read_silently_wrong() throws IOException {
        never_silently_wrong(1, 100);
    }

    @Test
    @Tag("long")
    void two_thousand_random_tables_are_never_read_silently_wrong() throws IOException {
        never_silently_wrong(10_001, 2_000);
    }

    /** Every file is looked at before anything is said, so that one run tells of all seeds that are wrong. */
    private void never_silently_wrong(long first, int count) throws IOException {
        Map<String, List<String>> silent = new TreeMap<>();
        for (long seed = first; seed < first + count; seed++) {
            Path file = folder.resolve("table" + GridSheets.ending(seed));
            GridSheets.Drawn drawn = GridSheets.draw(seed, file);
            List<String> wrong = GridCheck.of(drawn, read(file)).silent();
            if (!wrong.isEmpty()) silent.put("seed " + seed + ", " + drawn.layout() + ", " + drawn.habits(), wrong);
        }
        assertThat(silent).as("%d of %d tables", silent.size(), count).isEmpty();
    }

    static ScheduleReading read(Path file) throws IOException {
        Source.Kind kind = file.toString().endsWith(".xlsx") ? Source.Kind.WORKBOOK : Source.Kind.SCHEDULE_TABLE;
        Source source = new Source(file.getFileName().toString(), file, kind, Files.size(file), "");
        return new ScheduleReader(Settings.none(), Limits.usual()).read(source);
    }
}
