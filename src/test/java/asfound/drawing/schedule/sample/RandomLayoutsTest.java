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

/** Random panels in randomly composed layouts come back exactly, or with a word about what is in doubt. */
class RandomLayoutsTest {

    @TempDir
    private Path folder;

    @Test
    void a_hundred_random_sheets_are_never_read_silently_wrong() throws IOException {
        never_silently_wrong(1, 100);
    }

    /** Last words below each other, a blank column beside a single entry, the last phase of the panel to the left. */
    @Test
    void sheets_that_were_once_misread_without_a_word_are_not_again() throws IOException {
        for (long seed : new long[] {20_173, 21_267, 21_683}) never_silently_wrong(seed, 1);
    }

    @Test
    @Tag("long")
    void two_thousand_random_sheets_are_never_read_silently_wrong() throws IOException {
        never_silently_wrong(10_001, 2_000);
    }

    /** Every sheet is looked at before anything is said, so that one run tells of all seeds that are wrong. */
    private void never_silently_wrong(long first, int count) throws IOException {
        Map<String, List<String>> silent = new TreeMap<>();
        for (long seed = first; seed < first + count; seed++) {
            SampleSheets.Drawn drawn = SampleSheets.draw(seed, folder.resolve("sheet.pdf"));
            List<String> wrong = SampleCheck.silentDifferences(drawn, read(folder.resolve("sheet.pdf")));
            if (!wrong.isEmpty()) silent.put("seed " + seed + ", " + drawn.layout(), wrong);
        }
        assertThat(silent).as("%d of %d sheets", silent.size(), count).isEmpty();
    }

    static ScheduleReading read(Path file) throws IOException {
        Source source = new Source(file.getFileName().toString(), file, Source.Kind.PDF, Files.size(file), "");
        return new ScheduleReader(Settings.none(), Limits.usual()).read(source);
    }
}
