package asfound.report.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShownTest {

    private static final Shown UTF_8 = Shown.in(StandardCharsets.UTF_8);
    private static final Shown ASCII = Shown.in(StandardCharsets.US_ASCII);

    @ParameterizedTest
    @CsvSource({
        "LP\u001B[2J2A, LP<U+001B>[2J2A", // clears the screen
        "LP-2\u0007A, LP-2<U+0007>A",
        "LP-\u202EA2, LP-<U+202E>A2", // reads from the right
        "LP-2\u200BA, LP-2<U+200B>A", // shows nothing
        "LP-2\u2066A, LP-2<U+2066>A",
        "LP-2\u009B2A, LP-2<U+009B>2A", // a control sequence in one character
        "LP-2\u2028A, LP-2<U+2028>A",
        "Ä LP-2A, Ä LP-2A"
    })
    void what_would_move_the_cursor_or_deceive_the_eye_is_shown_as_its_number(String text, String line) {
        assertThat(UTF_8.line(text)).isEqualTo(line);
    }

    @Test
    void a_letter_that_the_terminal_lacks_is_never_shown_as_another() {
        assertThat(ASCII.line("LP-2\u0391")).isEqualTo("LP-2<U+0391>"); // Greek capital alpha
        assertThat(UTF_8.line("LP-2\u0391")).isEqualTo("LP-2\u0391");
        assertThat(Shown.in(StandardCharsets.ISO_8859_1).line("Küche \u0391")).isEqualTo("Küche <U+0391>");
    }

    @Test
    void line_breaks_and_tabs_are_spaces() {
        assertThat(UTF_8.line("a\tb\r\nc")).isEqualTo("a b  c");
    }

    @Test
    void lines_are_parted_at_spaces_and_no_word_is_lost() {
        assertThat(UTF_8.wrapped("open MDP/9 before work in LP-2A", 12))
                .containsExactly("open MDP/9", "before work", "in LP-2A");
        assertThat(UTF_8.wrapped("", 10)).containsExactly("");
    }

    @Test
    void no_line_is_wider_than_asked_whatever_the_text() {
        long seed = 80;
        Random random = new Random(seed);
        String letters = "ab \u6F22\u0301\uD83D\uDE00\u202Ez-";
        for (int n = 0; n < 2_000; n++) {
            StringBuilder text = new StringBuilder();
            for (int i = random.nextInt(60); i > 0; i--) text.append(letters.charAt(random.nextInt(letters.length())));
            int width = 12 + random.nextInt(20);
            List<String> lines = UTF_8.wrapped(text.toString(), width);
            assertThat(lines).as("seed %d, case %d", seed, n).allMatch(line -> Shown.columns(line) <= width);
            assertThat(String.join("", lines).replace(" ", ""))
                    .as("seed %d, case %d", seed, n)
                    .isEqualTo(UTF_8.line(text.toString()).replace(" ", ""));
            assertThat(Shown.columns(UTF_8.cut(text.toString(), width))).isLessThanOrEqualTo(width);
        }
    }

    @Test
    void a_cut_line_says_that_there_is_more() {
        assertThat(UTF_8.cut("LP-1, LP-2, LP-3", 12)).isEqualTo("LP-1, LP-...");
        assertThat(UTF_8.cut("LP-1", 12)).isEqualTo("LP-1");
    }

    @Test
    void wide_letters_take_two_columns_and_marks_none() {
        assertThat(Shown.columns("\u6F22\u5B57")).isEqualTo(4);
        assertThat(Shown.columns("e\u0301")).isEqualTo(1);
    }
}
