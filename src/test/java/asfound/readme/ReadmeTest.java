package asfound.readme;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.command.Main;
import asfound.recordset.Limit;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** README says what is so. */
class ReadmeTest {

    private final String readme;

    ReadmeTest() throws IOException {
        readme = Files.readString(ReadmeGuide.README);
    }

    @Test
    void the_guide_to_findings_is_what_the_rules_say() {
        assertThat(ReadmeGuide.within(readme))
                .as("make it anew with ReadmeGuide's main")
                .isEqualTo(ReadmeGuide.text());
    }

    @Test
    void the_table_of_limits_is_what_the_program_keeps_to() {
        assertThat(ReadmeLimits.within(readme))
                .as("make it anew with ReadmeLimits' main")
                .isEqualTo(ReadmeLimits.text());
    }

    @Test
    void the_help_of_every_command_leads_to_the_limits_and_they_fit_a_terminal() {
        for (String command : List.of("audit", "read", "isolate", "plan", "card", "since"))
            assertThat(said(command, "--help").replaceAll("\\s+", " "))
                    .as(command)
                    .contains("'asfound limits'");

        List<String> lines = said("limits").lines().toList();
        assertThat(lines).allMatch(l -> l.length() <= 80);
        for (Limit limit : Limit.values())
            assertThat(lines)
                    .filteredOn(l -> l.matches(limit.inWords() + " +" + limit.usual() + "  \\S.*"))
                    .hasSize(1);
    }

    @Test
    void every_link_leads_to_a_file_that_is_there() {
        Matcher link = Pattern.compile("\\]\\(([^)#]+)\\)").matcher(readme);
        Set<String> links = new TreeSet<>();
        while (link.find()) if (!link.group(1).contains("://")) links.add(link.group(1));

        assertThat(links)
                .hasSizeGreaterThan(8)
                .allSatisfy(l -> assertThat(Path.of(l)).exists());
    }

    @Test
    void every_command_that_it_names_is_one_and_every_one_is_named() {
        Set<String> named = new TreeSet<>();
        Matcher command = Pattern.compile("`asfound ([a-z]+)").matcher(readme);
        while (command.find()) named.add(command.group(1));

        Set<String> there = new TreeSet<>();
        Matcher listed = Pattern.compile("(?m)^  ([a-z]+) {2,}\\S").matcher(said("--help"));
        while (listed.find()) there.add(listed.group(1));

        assertThat(named).isEqualTo(there);
    }

    private static String said(String... command) {
        StringWriter out = new StringWriter();
        Main.run(new PrintWriter(out), new PrintWriter(out), command);
        return out.toString();
    }
}
