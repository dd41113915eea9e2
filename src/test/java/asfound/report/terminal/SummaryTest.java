package asfound.report.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.audit.Audit;
import asfound.finding.Accepted;
import asfound.finding.Finding;
import asfound.isolation.Verdict.Standing;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.sample.MadeAudit;
import asfound.sample.OspreyYard;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class SummaryTest {

    private static List<String> of(MadeAudit made) {
        return Summary.of(made.build(), "reports/osprey/index.html", List.of(), StandardCharsets.UTF_8);
    }

    @Test
    void it_says_first_what_may_not_be_isolated_by_the_drawing_and_why() {
        assertThat(of(OspreyYard.asSurveyed()))
                .containsExactly(
                        "DO NOT ISOLATE BY THE DRAWING: 2 of 3 pieces of equipment of Osprey Yard",
                        "  LP-2A      MDP/9 was traced to it, MDP/7 to LP-2B.",
                        "  LP-2B      MDP/7 was traced to it, MDP/9 to LP-2A.",
                        "Not proven: 1 (MDP)",
                        "Paper and survey agree: 0. That never means dead.",
                        "",
                        "Drawings     3 not for isolation, 0 not proven, 0 agree",
                        "Findings     1 danger, 0 warning, 1 caution, 1 notice",
                        "Corrections  3 changes on 2 drawings; 1 finding needs a look first",
                        "Traced       20 of 42 circuits (48 %)",
                        "NOT READ     2 problems in 1 file. What was not read is not absent.",
                        "             first: drawings/LP-2A.pdf, page 1: Position 8 cannot be read. Lo...",
                        "Trace next   UTIL/M by 'opened': It settles MDP, and with it everything that...",
                        "Report       reports/osprey/index.html",
                        "Before work: test for absence of voltage with a proven tester; lock and tag",
                        "every source; release stored energy. Qualified persons only; local codes and",
                        "licensed practice decide.");
    }

    /** A thousand that fail, with names and reasons as long as they come. */
    private static MadeAudit crowded(int fails) {
        MadeAudit yard = OspreyYard.asSurveyed();
        for (int n = 0; n < fails; n++)
            yard.verdicts.add(MadeAudit.verdict(
                    "PANEL-WITH-A-VERY-LONG-DESIGNATION-" + n,
                    Standing.FAILS,
                    "MDP/7",
                    null,
                    "It is live. ".repeat(60)));
        for (int n = 0; n < 300; n++)
            yard.verdicts.add(MadeAudit.verdict("LP-" + n, Standing.UNPROVEN, "", null, "Not traced."));
        Finding danger = OspreyYard.audit().findings().get(0);
        yard.accepted.add(new Accepted(danger, "known", "R. Adeyemi", LocalDate.of(2026, 5, 1)));
        for (int n = 0; n < 90; n++)
            yard.problems.add(new Problem(Place.file("a".repeat(90) + n), "Not understood. ".repeat(9), "Look."));
        return yard;
    }

    @Test
    void however_much_there_is_it_keeps_to_25_lines_of_80_columns_and_gives_the_true_counts() {
        List<String> lines = Summary.of(
                crowded(1_000).build(),
                "reports/osprey/index.html",
                List.of("An earlier report that was changed by hand is kept: reports/osprey-kept-1"),
                StandardCharsets.UTF_8);
        assertThat(lines).hasSizeLessThanOrEqualTo(25).allMatch(line -> Shown.columns(line) <= 80);
        assertThat(lines.get(0)).startsWith("DO NOT ISOLATE BY THE DRAWING: 1002 of 1303");
        assertThat(lines).anyMatch(l -> l.startsWith("  and 995 more (all in isolation.csv): PANEL-WITH"));
        assertThat(lines).anyMatch(l -> l.startsWith("  PANEL-WITH") && l.endsWith("..."));
        assertThat(lines).anyMatch(l -> l.startsWith("Not proven: 301 (MDP, LP-0"));
        assertThat(lines).anyMatch(l -> l.startsWith("NOT READ     92 problems in 91 files"));
        assertThat(lines).anyMatch(l -> l.contains("reports/osprey-kept-1"));
    }

    @Test
    void a_dozen_that_fail_are_all_named_before_the_reason_of_the_first_is_told_at_length() {
        MadeAudit yard = OspreyYard.asSurveyed();
        for (int n = 1; n <= 10; n++)
            yard.verdicts.add(
                    MadeAudit.verdict("HP-" + n + "A", Standing.FAILS, "MDP/7", null, "It is live. ".repeat(20)));
        List<String> lines = of(yard);
        assertThat(lines).hasSizeLessThanOrEqualTo(25);
        for (int n = 1; n <= 10; n++) {
            String name = "HP-" + n + "A";
            assertThat(lines).anyMatch(line -> line.contains(name));
        }
    }

    @Test
    void it_keeps_to_25_lines_for_any_number_that_fails() {
        for (int fails = 0; fails < 12; fails++) assertThat(of(crowded(fails))).hasSizeLessThanOrEqualTo(25);
    }

    @Test
    void an_accepted_danger_stays_on_the_first_screen() {
        assertThat(of(crowded(0)))
                .contains("Accepted, and a danger still: 1 (crossed-feeds at MDP/7)")
                .contains("Findings     1 danger, 0 warning, 1 caution, 1 notice; 1 accepted");
    }

    @Test
    void where_nothing_fails_it_does_not_sound_like_safety() {
        assertThat(of(OspreyYard.asCorrected()))
                .startsWith(
                        "Nothing was found that fails among 3 pieces of equipment of Osprey Yard.",
                        "Not proven: 1 (MDP)",
                        "Paper and survey agree: 2. That never means dead.");
        assertThat(of(new MadeAudit("Empty lot")).get(0))
                .isEqualTo("No equipment of Empty lot could be judged: its isolation is unproven.");
        assertThat(of(new MadeAudit("Empty lot")))
                .noneMatch(l -> l.toLowerCase().contains("safe"));
    }

    @Test
    void names_from_drawings_cannot_play_tricks_on_the_terminal() {
        MadeAudit yard = new MadeAudit("Yard\u001B[2J");
        yard.verdicts.add(MadeAudit.verdict("LP-\u202E\u0391", Standing.FAILS, "", null, "x\u0007\ny"));
        Audit audit = yard.build();
        List<String> ascii = Summary.of(audit, "r\u001B/index.html", List.of("n\u0000"), StandardCharsets.US_ASCII);
        assertThat(ascii).allMatch(line -> line.chars().allMatch(c -> c >= 0x20 && c < 0x7F));
        assertThat(ascii.get(1)).isEqualTo("  LP-<U+202E><U+0391>  x<U+0007> y");
    }
}
