package asfound.finding;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.sample.Building;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A rule, its documentation and its examples say one thing. */
class GuideTest {

    static List<Rule> rules() {
        return Rules.all();
    }

    @ParameterizedTest
    @MethodSource("rules")
    void an_example_raises_exactly_its_finding(Rule rule) {
        Guide.Example example = rule.guide().example();
        assertThat(Building.of(example.drawn(), example.survey()).findings())
                .extracting(Finding::kind)
                .as("%s", example)
                .containsExactly(rule.kind());
    }

    @ParameterizedTest
    @MethodSource("rules")
    void a_near_miss_raises_nothing(Rule rule) {
        Guide.Example miss = rule.guide().nearMiss().example();
        assertThat(Building.of(miss.drawn(), miss.survey()).findings())
                .extracting(f -> f.kind() + ": " + f.message())
                .as("%s", miss)
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("rules")
    void the_first_sentence_of_a_rules_documentation_states_the_fault(Rule rule) throws IOException {
        String name = Arrays.stream(rule.kind().split("-"))
                .map(w -> w.substring(0, 1).toUpperCase() + w.substring(1))
                .collect(Collectors.joining());
        String source = Files.readString(Path.of("src/main/java/asfound/finding/" + name + ".java"));
        String doc = source.substring(source.indexOf("/**") + 3, source.indexOf("*/"))
                .replaceAll("\\s*\\n \\* ?", " ")
                .strip();
        assertThat(doc).startsWith(rule.guide().says());
    }

    @Test
    void every_kind_of_the_record_format_has_one_rule() {
        assertThat(Rules.all().stream().map(Rule::kind).sorted())
                .containsExactly(
                        "crossed-feeds",
                        "device-differs",
                        "drawings-disagree",
                        "duplicate-feed",
                        "entry-blank",
                        "equipment-not-drawn",
                        "equipment-not-found",
                        "feed-loop",
                        "feeds-other",
                        "nothing-connected",
                        "position-clash",
                        "shifted-directory",
                        "stale-observation",
                        "survey-conflict",
                        "totals-differ",
                        "undocumented-feed",
                        "undocumented-source",
                        "vague-entry");
        assertThat(Finding.class.getPermittedSubclasses()).hasSize(Rules.all().size());
    }

    @ParameterizedTest
    @MethodSource("rules")
    void a_guide_says_why_it_matters_what_to_do_and_what_it_rests_on(Rule rule) {
        Guide guide = rule.guide();
        assertThat(guide.matters()).endsWith(".");
        assertThat(guide.todo()).endsWith(".");
        assertThat(guide.restsOn()).isNotEmpty().allSatisfy(r -> assertThat(r).isNotBlank());
    }
}
