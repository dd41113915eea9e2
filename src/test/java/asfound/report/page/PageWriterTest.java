package asfound.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.audit.Audit;
import asfound.model.EquipmentKind;
import asfound.sample.AuditSketch;
import asfound.sample.BrackenMill;
import asfound.sample.LargeCampus;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class PageWriterTest {

    private static final String PAGE = page(BrackenMill.audit());

    @Test
    void the_headline_counts_what_must_not_be_isolated_by_the_drawing() {
        assertThat(text("<h1[^>]*>(.*?)</h1>"))
                .isEqualTo("4 of 12 pieces of equipment must not be isolated by the drawing.");
    }

    @Test
    void no_known_failure_is_not_called_safe() {
        Audit none = new AuditSketch("Quiet house")
                .equipment(EquipmentKind.PANEL, "LP-1")
                .verdict("LP-1", asfound.isolation.Verdict.Standing.UNPROVEN, "", null, "", "LP-1 was not traced.")
                .build();

        assertThat(page(none)).contains("No equipment of 1 is known to fail.", "That clears none of it");
        assertThat(page(new AuditSketch("Empty house").build())).contains("No equipment was read from these records.");
    }

    @Test
    void the_page_of_400_panels_and_12_000_circuits_stays_under_fifteen_megabytes() {
        Audit campus = LargeCampus.audit();

        assertThat(campus.network().devices()).hasSize(12_000);
        assertThat(campus.network().equipment()).hasSizeGreaterThan(400);
        assertThat(page(campus).getBytes(StandardCharsets.UTF_8).length).isLessThan(15_000_000);
    }

    @Test
    void the_cautions_stand_before_the_first_verdict() {
        assertThat(PAGE.indexOf("Test for absence of voltage")).isPositive().isLessThan(PAGE.indexOf("id=\"fails\""));
    }

    @Test
    void the_policy_allows_the_pages_own_style_and_script_and_nothing_else() throws Exception {
        String policy = text("Content-Security-Policy\" content=\"([^\"]*)\"").replace("&#39;", "'");

        assertThat(policy)
                .isEqualTo("default-src 'none'; style-src 'sha256-"
                        + hash(all("<style>(.*?)</style>").get(0))
                        + "'; script-src 'sha256-"
                        + hash(all("<script>(.*?)</script>").get(0))
                        + "'; base-uri 'none'; form-action 'none'");
    }

    @Test
    void text_of_a_drawing_stays_text() {
        assertThat(all("<script")).hasSize(1);
        assertThat(all("<style")).hasSize(1);
        assertThat(PAGE).doesNotContain("<img").contains("&lt;/script&gt;&lt;script&gt;window.ran=1");
        assertThat(all("\\son[a-z]+=")).as("handlers in attributes").allMatch(s -> PAGE.contains("src=x" + s));
        assertThat(all("\\sstyle=")).as("styles in attributes").isEmpty();
    }

    @Test
    void nothing_is_fetched_from_anywhere() {
        assertThat(all("(?:src|href|action|data)=\"([^\"#][^\"]*)\""))
                .isNotEmpty()
                .allMatch(link -> link.startsWith("redlines/")
                        || List.of("corrections.xlsx", "corrections.csv", "retrace.csv", "isolation.csv", "audit.json")
                                .contains(link));
        assertThat(PAGE.replace("\"http://www.w3.org/2000/svg\"", ""))
                .doesNotContain("http://", "https://", "@import", "url(");
    }

    @Test
    void every_link_within_the_page_arrives_and_no_id_stands_twice() {
        List<String> ids = all("\\sid=\"([^\"]*)\"");

        assertThat(ids).doesNotHaveDuplicates();
        assertThat(new TreeSet<>(all("href=\"#([^\"]*)\""))).isSubsetOf(ids);
    }

    @Test
    void a_place_on_a_drawing_leads_to_its_page_in_the_marked_copy_behind_the_summary() {
        assertThat(PAGE)
                .contains("href=\"redlines/HP-1.pdf#page=2\">drawings/HP-1.pdf, page 1</a>")
                .contains("href=\"redlines/level%202%20panels.pdf#page=2\"");
    }

    @Test
    void whoever_looks_up_a_panel_sees_that_its_feeder_is_crossed() {
        Index index = new Index(BrackenMill.audit());

        assertThat(index.findings("LP-1A")).extracting(f -> f.kind()).contains("crossed-feeds");
        assertThat(index.findings("LP-2A")).extracting(f -> f.kind()).containsExactly("survey-conflict");
    }

    @Test
    void every_finding_says_whom_to_tell_when_it_is_corrected() {
        long findings = PAGE.split("<article class=\"finding\"", -1).length - 1;
        assertThat(findings).isPositive();
        assertThat(PAGE.split("<dt>Tell</dt><dd>those who rely on<ul><li>lockout records: ", -1).length - 1)
                .isEqualTo((int) findings);
        assertThat(PAGE).contains("29 CFR 1910.147(c)(6)", "deferring to local rules");
    }

    @Test
    void names_that_differ_only_in_punctuation_keep_their_own_places() {
        Audit audit = new AuditSketch("x")
                .equipment(EquipmentKind.PANEL, "LP-1", "LP 1", "LP.1")
                .build();
        Index index = new Index(audit);

        assertThat(List.of(
                        index.anchor("LP-1").orElseThrow(),
                        index.anchor("LP 1").orElseThrow(),
                        index.anchor("LP.1").orElseThrow()))
                .doesNotHaveDuplicates();
    }

    @Test
    void a_long_list_is_folded_and_says_how_much_is_folded() {
        AuditSketch many = new AuditSketch("x");
        for (int i = 1; i <= 30; i++)
            many.equipment(EquipmentKind.PANEL, "LP-" + i)
                    .verdict("LP-" + i, asfound.isolation.Verdict.Standing.FAILS, "", null, "", "It fails.");

        assertThat(page(many.build())).contains("And 6 more:", "Why, for these 6", "and 6 more</a>");
    }

    @Test
    void the_same_audit_gives_the_same_bytes() {
        assertThat(page(BrackenMill.audit())).isEqualTo(PAGE);
    }

    private static String page(Audit audit) {
        try {
            StringWriter out = new StringWriter();
            PageWriter.write(audit, out);
            return out.toString();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static String text(String pattern) {
        return all(pattern)
                .get(0)
                .replaceAll("<[^>]*>", "")
                .replaceAll("\\s+", " ")
                .strip();
    }

    /** The first group of every match, or the whole match where the pattern has no group. */
    private static List<String> all(String pattern) {
        return Pattern.compile(pattern, Pattern.DOTALL)
                .matcher(PAGE)
                .results()
                .map((MatchResult m) -> m.groupCount() == 0 ? m.group() : m.group(1))
                .toList();
    }

    private static String hash(String text) throws Exception {
        byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        return Base64.getEncoder().encodeToString(hash);
    }
}
