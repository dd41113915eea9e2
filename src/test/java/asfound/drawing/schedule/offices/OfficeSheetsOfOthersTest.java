package asfound.drawing.schedule.offices;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Sheets drawn by other hands than those that wrote the reader, in invented buildings, with what a person reads there. The reader is
 * not perfect on them; what it does not read as printed, told or without a word, is kept in {@code shortfalls.txt}, so that each change of the reader shows
 * what it mends and what it breaks. {@code -Dasfound.golden=write} writes that list anew, to be looked at and committed.
 */
class OfficeSheetsOfOthersTest {

    private static final Path SHORTFALLS = OfficeSheets.KEPT.resolve("shortfalls.txt");
    private static Map<String, OfficeCheck.Result> read;

    @BeforeAll
    static void read_all() throws IOException {
        read = OfficeSheets.read(OfficeSheets.KEPT);
    }

    @Test
    void what_is_not_read_as_printed_is_what_the_list_of_shortfalls_says() throws IOException {
        StringBuilder list = new StringBuilder();
        read.forEach((name, result) -> {
            result.silent().forEach(d -> list.append(name + ": without a word: " + d + "\n"));
            result.told().forEach(d -> list.append(name + ": told: " + d + "\n"));
        });
        if ("write".equals(System.getProperty("asfound.golden"))) Files.writeString(SHORTFALLS, list);
        assertThat(list.toString()).isEqualTo(Files.readString(SHORTFALLS));
    }
}
