package asfound.report.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.model.Observation.Method;
import asfound.trust.Trace;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PlanTextTest {

    private static final List<Trace> PLAN = List.of(
            trace(
                    1,
                    Optional.of("Elec rm 106"),
                    "MSB",
                    "F3",
                    "ATS-1",
                    "Decides whether the drawn points of ATS-1 can be believed."),
            trace(2, Optional.of("Elec rm 106"), "T-1", "", "LDP", "Nothing in T-1 was traced yet."),
            trace(3, Optional.empty(), "LP-2A", "7-9", "spare", "Widens what is known of LP-2A."));

    @Test
    void a_walk_names_the_place_once_and_there_each_device_with_what_to_look_for_and_why() {
        assertThat(lines(3))
                .startsWith(
                        "What to trace next at Kestrel Wharf, most useful first: 3 of 3.",
                        "",
                        "Elec rm 106",
                        "   1  MSB F3: drawn as ATS-1 [tone]",
                        "      Decides whether the drawn points of ATS-1 can be believed.",
                        "   2  T-1, no device: drawn as LDP [tone]",
                        "      Nothing in T-1 was traced yet.",
                        "",
                        "Location not recorded",
                        "   3  LP-2A 7-9: drawn as spare [tone]",
                        "      Widens what is known of LP-2A.");
    }

    @Test
    void what_the_limit_leaves_out_is_counted() {
        assertThat(lines(1)).first().asString().endsWith("1 of 3.");
        assertThat(lines(1)).noneMatch(l -> l.contains("LP-2A"));
        assertThat(lines(99)).first().asString().endsWith("3 of 3.");
    }

    @Test
    void the_cautions_stand_below_and_no_line_is_wider_than_a_terminal() {
        assertThat(String.join(" ", lines(3))).contains("test for absence of voltage");
        assertThat(lines(3)).allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(80));
    }

    @Test
    void where_nothing_is_left_it_says_so_and_that_agreement_is_not_safety() {
        assertThat(String.join(" ", PlanText.of("Kestrel Wharf", List.of(), 20, StandardCharsets.UTF_8)))
                .contains("Nothing is left to trace")
                .contains("never means");
    }

    @Test
    void a_name_from_a_drawing_cannot_move_the_cursor() {
        List<Trace> hostile = List.of(trace(1, Optional.of("Rm\u001b[2J"), "LP\u202e", "1", "x\ny", "z"));

        assertThat(PlanText.of("B", hostile, 5, StandardCharsets.UTF_8))
                .noneMatch(l -> l.contains("\u001b") || l.contains("\u202e") || l.contains("\n"));
    }

    private static List<String> lines(int limit) {
        return PlanText.of("Kestrel Wharf", PLAN, limit, StandardCharsets.UTF_8);
    }

    private static Trace trace(
            int rank, Optional<String> location, String panel, String circuit, String expect, String why) {
        return new Trace(rank, location, panel, circuit, expect, Method.TONE, why, List.of(), List.of());
    }
}
