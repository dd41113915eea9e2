package asfound.report.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class ProgressTest {

    private long now;

    @Test
    void it_writes_stage_and_count_over_one_line_and_clears_it_at_the_end() {
        StringWriter err = new StringWriter();
        try (Progress progress = Progress.on(new PrintWriter(err), () -> now)) {
            progress.at("reading drawings", 1, 40);
            now += 200_000_000;
            progress.at("reading drawings", 2, 40);
            progress.at("judging", 0, 0);
        }
        assertThat(err)
                .hasToString("\rreading drawings 1 of 40\rreading drawings 2 of 40\rjudging" + " ".repeat(17) + "\r"
                        + " ".repeat(7) + "\r");
    }

    @Test
    void it_does_not_write_more_than_ten_times_a_second_but_always_the_last() {
        StringWriter err = new StringWriter();
        Progress progress = Progress.on(new PrintWriter(err), () -> now);
        for (int n = 1; n <= 1_000; n++) {
            now += 1_000_000;
            progress.at("reading", n, 1_000);
        }
        assertThat(err.toString().split("\r")).hasSizeBetween(10, 14).endsWith("reading 1000 of 1000");
    }

    @Test
    void it_never_writes_more_than_a_line_nor_what_a_file_name_smuggles_in() {
        StringWriter err = new StringWriter();
        Progress.on(new PrintWriter(err), () -> now).at("reading \u001B[2J" + "x".repeat(200), 1, 2);
        assertThat(err.toString().substring(1)).hasSize(79).doesNotContain("\u001B");
    }

    @Test
    void it_is_silent_where_standard_error_is_no_terminal() {
        StringWriter err = new StringWriter();
        // under the build standard error is a pipe or a file
        try (Progress progress = Progress.on(new PrintWriter(err))) {
            if (System.console() == null) progress.at("reading", 1, 2);
        }
        assertThat(err).hasToString("");
        try (Progress progress = Progress.silent()) {
            progress.at("reading", 1, 2);
        }
    }
}
