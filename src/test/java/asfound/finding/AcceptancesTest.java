package asfound.finding;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.recordset.Limits;
import asfound.recordset.Source;
import asfound.sample.Building;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A finding is accepted with reason, name and date, and comes back when its facts change. */
class AcceptancesTest {

    @TempDir
    Path folder;

    private final List<Finding> findings = Building.of("MDP/7 PANEL LP-1", "MDP/9 PANEL LP-2", "MDP/7 feeds LP-2")
            .findings();

    private Acceptances.Parted part(String yaml, List<Finding> of) throws IOException {
        Path file = Files.writeString(folder.resolve("accepted.yaml"), yaml);
        Source source = new Source("accepted.yaml", file, Source.Kind.SETTINGS, yaml.length(), "");
        return Acceptances.read(source, Limits.usual()).part(of);
    }

    private String entry(String facts) {
        return "accepted:\n  - id: " + findings.get(0).id() + "\n    facts: " + facts
                + "\n    reason: Swapped back on Friday.\n    by: A. Duarte\n    date: 2026-03-01\n";
    }

    @Test
    void an_accepted_finding_is_listed_apart() throws IOException {
        var parted = part(entry(findings.get(0).facts()), findings);
        assertThat(parted.open()).isEmpty();
        assertThat(parted.problems()).isEmpty();
        assertThat(parted.accepted()).hasSize(1).allSatisfy(a -> {
            assertThat(a.by()).isEqualTo("A. Duarte");
            assertThat(a.date()).hasToString("2026-03-01");
        });
    }

    @Test
    void it_comes_back_when_the_facts_change() throws IOException {
        List<Finding> changed = Building.of("MDP/7 PANEL LP-1", "MDP/9 PANEL LP-2", "MDP/7 feeds LP-3")
                .findings();
        assertThat(changed.get(0).id()).isEqualTo(findings.get(0).id());
        var parted = part(entry(findings.get(0).facts()), changed);
        assertThat(parted.open()).containsExactlyElementsOf(changed);
        assertThat(parted.problems())
                .singleElement()
                .satisfies(p -> assertThat(p.message()).contains("have changed"));
    }

    @Test
    void an_entry_that_fits_nothing_any_more_is_reported() throws IOException {
        assertThat(part(entry("0"), List.of()).problems())
                .singleElement()
                .satisfies(p -> assertThat(p.message()).contains("any more"));
    }

    @Test
    void without_reason_name_or_date_nothing_is_accepted() throws IOException {
        String yaml = "accepted:\n  - id: " + findings.get(0).id() + "\n    facts: "
                + findings.get(0).facts() + "\n    by: A. Duarte\n";
        var parted = part(yaml, findings);
        assertThat(parted.open()).hasSize(1);
        assertThat(parted.problems()).singleElement().satisfies(p -> {
            assertThat(p.message()).contains("lacks date and reason");
            assertThat(p.place().inWords()).isEqualTo("accepted.yaml, row 2");
        });
    }

    @Test
    void a_file_that_is_no_such_list_accepts_nothing_and_says_so() throws IOException {
        assertThat(part("- a\n- b\n", findings).problems()).hasSize(1);
        assertThat(part("accepted: [", findings).problems()).hasSize(1);
        assertThat(part("", findings).problems()).isEmpty();
        assertThat(part("accepted: [", findings).open()).hasSize(1);
    }
}
