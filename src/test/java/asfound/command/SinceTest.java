package asfound.command;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.report.AuditJson;
import asfound.sample.OspreyYard;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

class SinceTest {

    @TempDir
    Path home;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private Path earlier;

    @BeforeEach
    void an_earlier_audit() throws IOException {
        earlier = home.resolve("earlier").resolve("audit.json");
        Files.createDirectories(earlier.getParent());
        try (OutputStream file = Files.newOutputStream(earlier)) {
            AuditJson.write(OspreyYard.audit(), file);
        }
    }

    private int run(String... args) {
        CommandLine line = new CommandLine(new Since())
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err, true))
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setExecutionExceptionHandler((e, command, parsed) -> {
                    command.getErr().println(e.getMessage());
                    return 2;
                });
        return line.execute(args);
    }

    @Test
    void two_reports_can_be_given_by_their_folders() {
        assertThat(run(earlier.getParent().toString(), earlier.toString())).isZero();
        assertThat(out.toString()).startsWith("Findings: 0 new, 0 changed, 3 remaining");
        assertThat(err).hasToString("");
    }

    @Test
    void it_is_written_as_json_when_asked() {
        assertThat(run("--format", "json", earlier.toString(), earlier.toString()))
                .isZero();
        assertThat(out.toString()).startsWith("{").contains("\"remaining\" : 3");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "`` | it is no audit of asfound",
                "{ | it is no JSON (line 1)",
                "[1, 2] | it is no audit of asfound",
                "hello | it is no JSON (line 1)",
                "{\"schema\":\"asfound-audit/9\"} | it is written as asfound-audit/9, which this version does not know",
                "{\"schema\":\"asfound-audit/1\"} | it has no 'findings'",
                "{\"schema\":\"asfound-audit/1\",\"findings\":[{}]} | it has no 'findings[0].equipment'",
                "{\"schema\":\"asfound-audit/1\",\"findings\":{}} | 'findings' is no list",
                "{\"schema\":\"asfound-audit/1\",\"findings\":[],\"equipment\":[{\"name\":7}]} | 'equipment[0].name' is no text",
                "{\"schema\":\"asfound-audit/1\"} {} | it is no JSON (line 1)",
                "{\"schema\":{\"schema\":\"asfound-audit/1\"}} | it is no audit of asfound"
            })
    void a_file_that_is_no_audit_gives_one_clear_line_and_ends_with_2(String content, String why) throws IOException {
        Path foreign = Files.writeString(home.resolve("foreign.json"), content);
        assertThat(run(earlier.toString(), foreign.toString())).isEqualTo(2);
        assertThat(err.toString().strip())
                .startsWith(foreign + " cannot be compared: " + why)
                .doesNotContain("\n");
        assertThat(out).hasToString("");
    }

    @Test
    void a_file_that_is_not_there_gives_one_clear_line_and_ends_with_2() {
        assertThat(run(home.resolve("nowhere/audit.json").toString(), earlier.toString()))
                .isEqualTo(2);
        assertThat(err.toString()).contains("there is no such file. Give the audit.json of a report.");
    }

    @Test
    void endless_nesting_is_no_audit_either() throws IOException {
        Path deep = Files.writeString(home.resolve("deep.json"), "[".repeat(1_000_000));
        assertThat(run(deep.toString(), earlier.toString())).isEqualTo(2);
        assertThat(err.toString()).contains("it is no JSON");
    }
}
