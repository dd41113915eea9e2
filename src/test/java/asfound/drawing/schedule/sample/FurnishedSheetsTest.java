package asfound.drawing.schedule.sample;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What else stands on a sheet changes nothing of the circuits on it, or something is said. Of headers {@link SheetScore} tells. */
class FurnishedSheetsTest {

    private static final Pattern OF_CIRCUITS = Pattern.compile(" at \\d+: | is missing$");

    @TempDir
    private Path folder;

    @Test
    void thirty_furnished_sheets_are_never_read_silently_wrong() throws IOException {
        never_silently_wrong(1, 30);
    }

    /** Loads of the last device's further poles below its number, loads that a list was drawn over. */
    @Test
    void sheets_that_were_once_misread_without_a_word_are_not_again() throws IOException {
        for (long seed : new long[] {10_167, 10_174}) never_silently_wrong(seed, 1);
    }

    @Test
    @Tag("long")
    void five_hundred_furnished_sheets_are_never_read_silently_wrong() throws IOException {
        never_silently_wrong(20_001, 500);
    }

    private void never_silently_wrong(long first, int count) throws IOException {
        Path file = folder.resolve("sheet.pdf");
        Map<String, List<String>> silent = new TreeMap<>();
        for (long seed = first; seed < first + count; seed++) {
            SampleSheets.Drawn drawn = FurnishedSheet.draw(seed, file);
            List<String> wrong = SampleCheck.silentDifferences(drawn, RandomLayoutsTest.read(file)).stream()
                    .filter(d -> OF_CIRCUITS.matcher(d).find())
                    .toList();
            if (!wrong.isEmpty()) silent.put("seed " + seed + ", " + drawn.layout(), wrong);
        }
        assertThat(silent).as("%d of %d sheets", silent.size(), count).isEmpty();
    }
}
