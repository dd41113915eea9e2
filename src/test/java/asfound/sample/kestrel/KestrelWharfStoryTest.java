package asfound.sample.kestrel;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.audit.Audit;
import asfound.finding.Finding;
import asfound.finding.Severity;
import asfound.isolation.DrawingVerdict;
import asfound.isolation.Verdict;
import asfound.network.Device;
import asfound.trust.Trace;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The story of Kestrel Wharf as an audit of its record set tells it: every difference planted, and none besides. */
class KestrelWharfStoryTest {

    private static Audit audit;

    @BeforeAll
    static void audit() throws Exception {
        audit = KestrelWharf.audit();
    }

    // What was wrong from the start

    @Test
    void the_schedules_and_the_one_line_name_different_supplies_for_hl_1() {
        assertThat(finding("drawings-disagree", "HL-1")).satisfies(f -> {
            assertThat(f.message()).contains("HDP CKT 13").contains("MSB CB F5");
            assertThat(f.drawings()).extracting(p -> p.file()).contains("drawings/HL-1.pdf", "one-line/feeders.csv");
        });
        assertThat(verdict("HL-1").standing()).isEqualTo(Verdict.Standing.UNPROVEN);
        assertThat(points("HL-1")).containsExactly("HDP/13", "MSB/F5");
    }

    @Test
    void the_sums_of_kp_1_do_not_follow_from_its_rows() {
        assertThat(finding("totals-differ", "KP-1")).satisfies(f -> {
            assertThat(f.severity()).isEqualTo(Severity.NOTICE);
            assertThat(f.drawn()).contains("50,640");
            assertThat(f.found()).contains("49640");
        });
    }

    @Test
    void one_entry_says_misc_and_one_says_nothing() {
        assertThat(finding("vague-entry", "LP-1B/27").drawn()).contains("MISC");
        assertThat(finding("entry-blank", "LP-3A/30").severity()).isEqualTo(Severity.NOTICE);
    }

    // The first modification: the shops

    @Test
    void the_shop_feeders_changed_places() {
        assertThat(finding("crossed-feeds", "HDP/1 HDP/2")).satisfies(f -> {
            assertThat(f.severity()).isEqualTo(Severity.DANGER);
            assertThat(f.message()).contains("HP-1A").contains("HP-1B");
            assertThat(f.evidence())
                    .extracting(o -> o.place().file())
                    .containsOnly("survey/okafor-electrical-room.csv");
        });
        assertThat(verdict("HP-1A").standing()).isEqualTo(Verdict.Standing.FAILS);
        assertThat(points("HP-1A")).containsExactly("HDP/1");
        assertThat(found("HP-1A")).containsExactly("HDP/2");
        assertThat(found("HP-1B")).containsExactly("HDP/1");
    }

    @Test
    void the_breaker_of_the_band_saw_that_was_sold_feeds_nothing() {
        assertThat(finding("nothing-connected", "HP-1B/13").drawn()).contains("BS-2");
    }

    @Test
    void the_breaker_of_rtu_1_is_bigger_than_drawn() {
        assertThat(finding("device-differs", "HDP/19")).satisfies(f -> {
            assertThat(f.severity()).isEqualTo(Severity.CAUTION);
            assertThat(f.drawn()).contains("40");
            assertThat(f.found()).contains("50");
        });
        assertThat(verdict("RTU-1").standing()).isEqualTo(Verdict.Standing.AGREES);
    }

    @Test
    void the_breaker_labelled_lp_1b_feeds_lp_1c_and_nobody_knows_what_feeds_lp_1b() {
        assertThat(finding("feeds-other", "LDP/2")).satisfies(f -> {
            assertThat(f.severity()).isEqualTo(Severity.DANGER);
            assertThat(f.message()).contains("LP-1B").contains("LP-1C");
        });
        assertThat(verdict("LP-1B").standing()).isEqualTo(Verdict.Standing.FAILS);
        assertThat(verdict("LP-1B").foundPoints()).isEmpty();
        assertThat(verdict("LP-1C").standing()).isEqualTo(Verdict.Standing.FAILS);
        assertThat(points("LP-1C")).containsExactly("LDP/20");
        assertThat(trace("LDP", "20-22-24").why()).contains("the two may be crossed");
    }

    @Test
    void a_spare_of_lp_1a_feeds_the_laser_room_s_fan_and_lp_1a_itself_still_agrees() {
        assertThat(finding("undocumented-feed", "LP-1A/38").found()).contains("EF-4");
        assertThat(verdict("LP-1A").standing()).isEqualTo(Verdict.Standing.AGREES);
        assertThat(points("LP-1A")).containsExactly("LDP/1");
    }

    // The second modification: kitchen, third floor and sun

    @Test
    void three_panels_came_back_each_on_another_s_breaker() {
        assertThat(finding("crossed-feeds", "LDP/7 LDP/8 LDP/13").severity()).isEqualTo(Severity.DANGER);
        assertThat(List.of("LP-2A", "LP-2B", "LP-3A"))
                .allSatisfy(p -> assertThat(verdict(p).standing()).isEqualTo(Verdict.Standing.FAILS));
        assertThat(found("LP-2A")).containsExactly("LDP/13");
        assertThat(found("LP-2B")).containsExactly("LDP/7");
        assertThat(found("LP-3A")).containsExactly("LDP/8", "LP-3A/38");
    }

    @Test
    void the_kitchen_is_fed_twice() {
        assertThat(finding("duplicate-feed", "LDP/38 LDP/14").severity()).isEqualTo(Severity.DANGER);
        assertThat(verdict("KP-1").standing()).isEqualTo(Verdict.Standing.FAILS);
        assertThat(points("KP-1")).containsExactly("LDP/14");
        assertThat(found("KP-1")).containsExactly("LDP/14", "LDP/38");
    }

    @Test
    void a_panel_for_vans_went_into_the_yard_and_no_drawing_shows_it() {
        assertThat(finding("equipment-not-drawn", "EVP-1 HDP/31").severity()).isEqualTo(Severity.DANGER);
        assertThat(verdict("EVP-1").standing()).isEqualTo(Verdict.Standing.FAILS);
        assertThat(found("EVP-1")).containsExactly("HDP/31");
        // HL-1 may hang on MSB/F5 as well, and its feeder from HDP was traced: supply may come back through it
        assertThat(verdict("HDP").standing()).isEqualTo(Verdict.Standing.UNPROVEN);
    }

    @Test
    void the_second_inverter_holds_the_floors_live_with_every_drawn_device_open() {
        assertThat(finding("undocumented-source", "INV-2 LP-3A/38")).satisfies(f -> {
            assertThat(f.severity()).isEqualTo(Severity.DANGER);
            assertThat(f.message()).contains("INV-2");
        });
        assertThat(List.of("LDP", "T-1", "MSB")).allSatisfy(e -> {
            assertThat(verdict(e).standing()).isEqualTo(Verdict.Standing.FAILS);
            assertThat(verdict(e).liveFrom()).containsExactly("INV-2");
            assertThat(verdict(e).path()).startsWith("LP-3A/38", "LDP/8");
        });
    }

    @Test
    void five_entries_of_lp_3a_stand_one_row_too_high() {
        assertThat(finding("shifted-directory", "LP-3A/17")).satisfies(f -> {
            assertThat(parts(f)).contains("LP-3A/17 LP-3A/19 LP-3A/21 LP-3A/23 LP-3A/25");
            assertThat(f.evidence()).hasSize(5);
        });
    }

    @Test
    void lights_changed_breakers_on_lp_2b_and_lp_2a_12_feeds_another_room() {
        assertThat(finding("crossed-feeds", "LP-2B/5 LP-2B/7").message())
                .contains("221")
                .contains("223");
        assertThat(finding("feeds-other", "LP-2A/12").found()).contains("216");
    }

    // The survey

    @Test
    void the_surveyors_disagree_about_one_circuit() {
        assertThat(finding("survey-conflict", "LP-2A/22").evidence()).hasSize(2);
    }

    @Test
    void a_trace_from_before_the_modification_no_longer_counts() {
        assertThat(finding("stale-observation", "EDP/1").evidence()).hasSize(1);
        assertThat(verdict("T-E1").standing()).isEqualTo(Verdict.Standing.UNPROVEN);
        assertThat(verdict("ELP-1").standing()).isEqualTo(Verdict.Standing.UNPROVEN);
    }

    @Test
    void a_label_that_was_read_proves_nothing_about_the_transfer_switch() {
        assertThat(points("ATS-1")).containsExactly("GEN-1/G1", "MSB/F3");
        assertThat(verdict("ATS-1").standing()).isEqualTo(Verdict.Standing.UNPROVEN);
        assertThat(verdict("ATS-1").reason()).contains("MSB/F3");
        assertThat(verdict("EDP").standing()).isEqualTo(Verdict.Standing.UNPROVEN);
    }

    @Test
    void the_scanned_card_is_said_not_to_have_been_read() {
        assertThat(audit.inputs())
                .filteredOn(i -> !i.problems().isEmpty())
                .singleElement()
                .satisfies(i -> {
                    assertThat(i.source().file()).isEqualTo("drawings/RP-1-scan.pdf");
                    assertThat(i.problems())
                            .singleElement()
                            .satisfies(
                                    p -> assertThat(p.place().inWords()).isEqualTo("drawings/RP-1-scan.pdf, page 1"));
                });
        assertThat(audit.recordSet().problems()).isEmpty();
    }

    // The whole

    @Test
    void nothing_else_is_found() {
        assertThat(audit.findings().stream().map(f -> f.severity().word() + " " + f.kind() + " " + parts(f)))
                .containsExactlyInAnyOrder(
                        "danger crossed-feeds HDP/1 HDP/2",
                        "danger crossed-feeds LDP/7 LDP/8 LDP/13",
                        "danger crossed-feeds LP-2B/5 LP-2B/7",
                        "danger shifted-directory LP-3A/17 LP-3A/19 LP-3A/21 LP-3A/23 LP-3A/25",
                        "danger feeds-other LDP/2",
                        "danger duplicate-feed LDP/38 LDP/14",
                        "danger undocumented-source INV-2 LP-3A/38",
                        "danger equipment-not-drawn EVP-1 HDP/31",
                        "warning drawings-disagree HL-1 HDP/13 MSB/F5",
                        "warning feeds-other LP-2A/12",
                        "warning undocumented-feed LP-1A/38",
                        "warning nothing-connected HP-1B/13",
                        "warning survey-conflict LP-2A/22",
                        "warning stale-observation EDP/1",
                        "caution device-differs HDP/19",
                        "notice totals-differ KP-1",
                        "notice vague-entry LP-1B/27",
                        "notice entry-blank LP-3A/30");
    }

    @Test
    void every_verdict_is_as_the_story_says() {
        Map<String, List<String>> by = audit.verdicts().stream()
                .collect(Collectors.groupingBy(
                        v -> v.standing().word(),
                        TreeMap::new,
                        Collectors.mapping(Verdict::equipment, Collectors.toList())));

        assertThat(by.get("fails"))
                .containsExactly(
                        "EVP-1", "HP-1A", "HP-1B", "KP-1", "LDP", "LP-1B", "LP-1C", "LP-2A", "LP-2B", "LP-3A", "MSB",
                        "T-1");
        assertThat(by.get("unproven")).containsExactly("AC-1", "ATS-1", "EDP", "ELP-1", "HDP", "HL-1", "T-E1");
        assertThat(by.get("agrees")).containsExactly("DC-1", "FE-1", "LP-1A", "RP-1", "RTU-1", "RTU-2");
    }

    @Test
    void a_drawing_is_as_good_as_the_worst_that_it_shows() {
        Map<String, String> verdicts = audit.drawingVerdicts().stream()
                .collect(
                        Collectors.toMap(DrawingVerdict::file, d -> d.standing().word()));

        assertThat(verdicts)
                .containsEntry("drawings/E-601.pdf", "fails")
                .containsEntry("drawings/E-602.pdf", "fails")
                .containsEntry("drawings/EM-01.pdf", "unproven")
                .containsEntry("drawings/HL-1.pdf", "unproven")
                .containsEntry("drawings/LP-1A.pdf", "agrees")
                .containsEntry("one-line/feeders.csv", "fails");
    }

    @Test
    void seven_entries_in_ten_were_traced_and_they_say_nothing_certain_of_the_rest() {
        assertThat(audit.coverage().building().share()).isBetween(0.65, 0.75);
        assertThat(audit.coverage().building().wrong()).isEqualTo(19);
        assertThat(audit.coverage().building().bound95()).isEmpty();
        assertThat(audit.coverage().statement()).contains("not at random");
    }

    @Test
    void what_to_trace_next_begins_with_what_feeds_the_emergency_panels() {
        assertThat(audit.plan().subList(0, 4))
                .extracting(t -> t.panel() + " " + t.circuit())
                .containsExactlyInAnyOrder("EDP 1-3-5", "MSB F3", "MSB F5", "HDP 14-16-18");
        assertThat(audit.plan().get(0).settles()).contains("ELP-1");
        assertThat(audit.plan()).extracting(Trace::rank).first().isEqualTo(1);
    }

    /** The one finding of a kind that names these devices (or this equipment). */
    private static Finding finding(String kind, String where) {
        List<Finding> all = audit.findings().stream()
                .filter(f -> f.kind().equals(kind) && parts(f).startsWith(where))
                .toList();
        assertThat(all)
                .as(
                        "%s at %s among %s",
                        kind,
                        where,
                        audit.findings().stream()
                                .map(f -> f.kind() + " " + parts(f))
                                .toList())
                .hasSize(1);
        return all.get(0);
    }

    /** {@code LDP/7 LDP/8 LDP/13}: the devices of a finding in its order, or the equipment where it is about that. */
    private static String parts(Finding f) {
        StringBuilder parts = new StringBuilder(part(f.equipment(), f.circuit().orElse("")));
        for (Finding.Part other : f.others())
            parts.append(" ").append(part(other.equipment(), other.circuit().orElse("")));
        return parts.toString();
    }

    private static String part(String equipment, String circuit) {
        return circuit.isEmpty() ? equipment : equipment + "/" + circuit;
    }

    private static Verdict verdict(String equipment) {
        return audit.verdicts().stream()
                .filter(v -> v.equipment().equals(equipment))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no verdict for " + equipment));
    }

    private static Trace trace(String panel, String circuit) {
        return audit.plan().stream()
                .filter(t -> t.panel().equals(panel) && t.circuit().equals(circuit))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no trace planned at " + panel + " " + circuit));
    }

    private static List<String> points(String equipment) {
        return verdict(equipment).drawnPoints().stream().map(Device::label).toList();
    }

    private static List<String> found(String equipment) {
        return verdict(equipment).foundPoints().orElseThrow().stream()
                .map(Device::label)
                .toList();
    }
}
