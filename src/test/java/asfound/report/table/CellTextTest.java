package asfound.report.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CellTextTest {

    // The characters are those of OWASP's page on CSV injection (from memory), with its full-width forms.
    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "+1",
                "-1",
                "@SUM(A1)",
                "\t=1",
                "\r=1",
                "\n=1",
                "  =1",
                "\uFF1D1",
                "\uFF0B1",
                "\uFF0D1",
                "\uFF20x",
                "=cmd|' /C calc'!A0",
                "- spare -",
                "'already",
                "''"
            })
    void text_that_a_spreadsheet_could_run_begins_with_an_apostrophe_and_reads_back_the_same(String text) {
        assertThat(CellText.guarded(text)).isEqualTo("'" + text);
        assertThat(CellText.plain(CellText.guarded(text))).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "RECEPT RM 204", "LP-2A", "7-9-11", "1=1", "(-)", "120/208V", "MEN'S ROOM"})
    void ordinary_text_stays_as_it_is(String text) {
        assertThat(CellText.guarded(text)).isEqualTo(text);
    }

    @Test
    void any_text_reads_back_the_same() {
        long seed = 4_180;
        Random random = new Random(seed);
        String signs = "='+-@\t\r\n \"',;aZ9\uFF1D\u202E";
        for (int n = 0; n < 5_000; n++) {
            StringBuilder text = new StringBuilder();
            for (int i = random.nextInt(6); i > 0; i--) text.append(signs.charAt(random.nextInt(signs.length())));
            String guarded = CellText.guarded(text.toString());
            assertThat(CellText.plain(guarded)).as("seed %d, case %d", seed, n).isEqualTo(text.toString());
            assertThat(guarded).as("seed %d, case %d", seed, n).doesNotMatch("(?s)^ *[=+\\-@\\t\\r\\n].*");
        }
    }
}
