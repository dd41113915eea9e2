package asfound.report.since;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.audit.Audit;
import asfound.finding.Accepted;
import asfound.finding.Correction;
import asfound.finding.CrossedFeeds;
import asfound.finding.EquipmentNotDrawn;
import asfound.finding.Event;
import asfound.finding.Finding;
import asfound.finding.Severity;
import asfound.model.EquipmentKind;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.network.DeviceRecord.Tracing;
import asfound.recordset.Limits;
import asfound.recordset.Source;
import asfound.report.AuditJson;
import asfound.report.since.Comparison.Fate;
import asfound.report.since.Comparison.State;
import asfound.report.terminal.Shown;
import asfound.sample.MadeAudit;
import asfound.sample.OspreyYard;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SinceTest {

    @TempDir
    Path home;

    private Comparison compare(MadeAudit earlier, MadeAudit later) throws IOException {
        return Comparison.of(read(earlier.build(), "earlier.json"), read(later.build(), "later.json"));
    }

    private WrittenAudit read(Audit audit, String name) throws IOException {
        Path file = home.resolve(name);
        try (OutputStream out = Files.newOutputStream(file)) {
            AuditJson.write(audit, out);
        }
        return AuditReader.read(file, Limits.usual());
    }

    private static List<String> fates(Comparison comparison) {
        return comparison.findings().stream()
                .map(f -> f.state().word() + " " + f.finding().kind() + " "
                        + f.finding().where())
                .toList();
    }

    private static Finding crossing(Severity severity, String message, String... circuits) {
        List<Finding.Part> others = java.util.Arrays.stream(circuits)
                .skip(1)
                .map(c -> Finding.Part.of("MDP", c))
                .toList();
        Event as = OspreyYard.audit().findings().get(0).event();
        return new CrossedFeeds(new Event(
                severity,
                Finding.Part.of("MDP", circuits[0]),
                others,
                as.drawn(),
                as.found(),
                as.drawings(),
                as.evidence(),
                message,
                as.correction(),
                List.<Correction>of()));
    }

    @Test
    void what_is_read_back_is_what_was_written() throws IOException {
        Audit audit = OspreyYard.audit();
        WrittenAudit read = read(audit, "audit.json");
        assertThat(read.building()).isEqualTo("Osprey Yard");
        assertThat(read.findings())
                .extracting(WrittenAudit.Found::id)
                .containsExactlyElementsOf(
                        audit.findings().stream().map(Finding::id).toList());
        assertThat(read.findings().get(0).where()).isEqualTo("MDP/7, MDP/9");
        assertThat(read.findings().get(0).evidence()).containsExactly(MadeAudit.SURVEY);
        assertThat(read.isolation().get("LP-2A").drawnPoints()).containsExactly("MDP/7");
        assertThat(read.isolation().get("MDP").foundPoints()).isEmpty();
        assertThat(read.devices().orElseThrow())
                .containsEntry("MDP/7", "traced")
                .hasSize(3);
        assertThat(read.inputs().get(OspreyYard.LP_2A).problems()).isEqualTo(2);
        assertThat(read.directories().get("LP-2A"))
                .containsEntry("fed from", "MDP CKT 7")
                .containsEntry("6", "SPARE, spare, 20 A, 1 poles")
                .containsEntry("1", "LTG RM 201, load, ? A, 1 poles");
    }

    @Test
    void a_crossing_put_right_is_corrected_and_a_rating_left_alone_remains() throws IOException {
        Comparison since = compare(OspreyYard.asSurveyed(), OspreyYard.asCorrected());
        assertThat(fates(since))
                .containsExactly(
                        "remaining device-differs LP-2A/3",
                        "corrected crossed-feeds MDP/7, MDP/9",
                        "corrected vague-entry LP-2A/5");
        assertThat(since.verdicts())
                .extracting(v -> v.equipment() + " " + v.earlier().orElseThrow().verdict() + " "
                        + v.later().orElseThrow().verdict())
                .containsExactly("LP-2A fails agrees", "LP-2B fails agrees");
        assertThat(since.stillFailing()).isEmpty();
    }

    @Test
    void nothing_is_new_or_corrected_between_an_audit_and_itself() throws IOException {
        Comparison since = compare(OspreyYard.asSurveyed(), OspreyYard.asSurveyed());
        assertThat(since.findings()).allMatch(f -> f.state() == State.REMAINING).hasSize(3);
        assertThat(since.verdicts()).isEmpty();
        assertThat(since.touched()).isEqualTo(new Touched(List.of(), List.of(), List.of()));
        assertThat(since.stillFailing()).hasSize(2);
    }

    @Test
    void a_finding_is_the_same_by_kind_and_place_and_not_by_its_wording() throws IOException {
        MadeAudit before = OspreyYard.asSurveyed(), now = OspreyYard.asSurveyed();
        now.findings.set(0, crossing(Severity.DANGER, "Said in quite other words.", "7", "9"));
        assertThat(compare(before, now).findings()).allMatch(f -> f.state() == State.REMAINING);
    }

    @Test
    void a_crossing_that_grew_by_a_device_or_lost_its_first_is_changed_and_not_corrected() throws IOException {
        MadeAudit before = OspreyYard.asSurveyed(), grown = OspreyYard.asSurveyed(), moved = OspreyYard.asSurveyed();
        grown.findings.set(0, crossing(Severity.DANGER, "m", "7", "9", "11"));
        moved.findings.set(0, crossing(Severity.WARNING, "m", "9", "11"));
        assertThat(compare(before, grown).in(State.CHANGED))
                .singleElement()
                .satisfies(f -> assertThat(f.why()).containsExactly("is about: MDP/7, MDP/9 -> MDP/7, MDP/9, MDP/11"));
        assertThat(compare(before, moved).in(State.CHANGED))
                .singleElement()
                .satisfies(f -> assertThat(f.why())
                        .containsExactly("severity: danger -> warning", "is about: MDP/7, MDP/9 -> MDP/9, MDP/11"));
    }

    private static Fate crossingOf(Comparison comparison) {
        return comparison.findings().stream()
                .filter(f -> f.finding().kind().equals("crossed-feeds"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_finding_whose_trace_is_missing_later_is_no_longer_seen_and_not_corrected() throws IOException {
        MadeAudit now = OspreyYard.asCorrected();
        now.devices.removeIf(d -> d.device().label().equals("MDP/9"));
        assertThat(crossingOf(compare(OspreyYard.asSurveyed(), now)))
                .satisfies(f -> assertThat(f.state()).isEqualTo(State.NO_LONGER_SEEN))
                .satisfies(f -> assertThat(f.why()).containsExactly("the later survey does not trace MDP/9"));
        now.device("MDP", "9", Tracing.NOT_TRACED, "LP-2A");
        assertThat(crossingOf(compare(OspreyYard.asSurveyed(), now)).state()).isEqualTo(State.NO_LONGER_SEEN);
    }

    @Test
    void a_finding_whose_drawing_is_missing_later_is_no_longer_seen_and_not_corrected() throws IOException {
        MadeAudit now = OspreyYard.asCorrected();
        now.inputs.removeIf(i -> i.source().file().equals(OspreyYard.MDP));
        now.drawings.clear();
        assertThat(crossingOf(compare(OspreyYard.asSurveyed(), now)).why())
                .containsExactly("drawings/MDP.pdf is not in the later audit, and no other drawing shows MDP");
    }

    @Test
    void a_drawing_under_another_name_still_counts() throws IOException {
        MadeAudit now = OspreyYard.asCorrected();
        now.inputs.removeIf(i -> i.source().file().equals(OspreyYard.MDP));
        now.input("drawings/MDP rev C.pdf", Source.Kind.PDF, 1);
        assertThat(crossingOf(compare(OspreyYard.asSurveyed(), now)).state()).isEqualTo(State.CORRECTED);
    }

    @Test
    void a_drawing_that_could_not_be_read_later_corrects_nothing() throws IOException {
        MadeAudit now = OspreyYard.asCorrected();
        now.problems.add(new Problem(Place.page(OspreyYard.MDP, 1), "No text.", ""));
        assertThat(crossingOf(compare(OspreyYard.asSurveyed(), now)).why())
                .containsExactly("more of drawings/MDP.pdf could not be read than before");
    }

    @Test
    void equipment_that_no_drawing_shows_is_corrected_when_drawn_and_not_when_the_survey_no_longer_meets_it()
            throws IOException {
        MadeAudit before = OspreyYard.asSurveyed(), drawn = OspreyYard.asSurveyed(), dropped = OspreyYard.asSurveyed();
        before.findings.add(new EquipmentNotDrawn(new Event(
                Severity.WARNING,
                Finding.Part.of("X-9"),
                List.of(),
                "",
                "X-9",
                List.of(),
                OspreyYard.audit().findings().get(0).evidence(),
                "No drawing shows X-9.",
                "Draw it.",
                List.of())));
        drawn.equipment("X-9", EquipmentKind.PANEL, true, true);
        assertThat(fates(compare(before, drawn))).contains("corrected equipment-not-drawn X-9");
        assertThat(fates(compare(before, dropped))).contains("no longer seen equipment-not-drawn X-9");
    }

    @Test
    void accepting_a_finding_does_not_correct_it() throws IOException {
        MadeAudit now = OspreyYard.asSurveyed();
        now.accepted.add(new Accepted(now.findings.remove(0), "known", "R. Adeyemi", LocalDate.of(2026, 5, 1)));
        Fate fate = crossingOf(compare(OspreyYard.asSurveyed(), now));
        assertThat(fate.state()).isEqualTo(State.CHANGED);
        assertThat(fate.why()).containsExactly("accepted since");
    }

    @Test
    void drawings_door_cards_and_lockout_procedures_that_a_change_touches_are_named() throws IOException {
        Touched touched =
                compare(OspreyYard.asSurveyed(), OspreyYard.asCorrected()).touched();
        assertThat(touched.drawings()).containsExactly("drawings/MDP.pdf (changed)");
        assertThat(touched.cards()).containsExactly("LP-2A"); // its vague entry is gone; MDP has no directory here
        assertThat(touched.procedures())
                .containsExactly("LP-2A (points MDP/7 -> MDP/9)", "LP-2B (points MDP/9 -> MDP/7)");
    }

    @Test
    void points_that_changed_under_the_same_verdict_are_told_too() throws IOException {
        MadeAudit before = OspreyYard.asCorrected(), now = OspreyYard.asCorrected();
        now.verdicts.set(
                0,
                MadeAudit.verdict(
                        "LP-2A", asfound.isolation.Verdict.Standing.AGREES, "MDP/9 MDP/11", "MDP/9 MDP/11", "Traced."));
        Comparison since = compare(before, now);
        assertThat(since.touched().procedures()).containsExactly("LP-2A (points MDP/9 -> MDP/9, MDP/11)");
        assertThat(SinceText.of(since, StandardCharsets.UTF_8))
                .containsSubsequence(
                        "  LP-2A: agrees as before",
                        "    drawn points MDP/9 -> MDP/9, MDP/11",
                        "    found points MDP/9 -> MDP/9, MDP/11");
    }

    @Test
    void the_text_says_what_still_fails_and_lists_findings_by_drawing() throws IOException {
        List<String> text =
                SinceText.of(compare(OspreyYard.asSurveyed(), OspreyYard.asCorrected()), StandardCharsets.US_ASCII);
        assertThat(text)
                .startsWith(
                        "Findings: 0 new, 0 changed, 1 remaining, 0 no longer seen, 2 corrected",
                        "In the later audit nothing was found that fails.",
                        "",
                        "Verdicts and points that changed",
                        "  LP-2A: fails -> agrees",
                        "    drawn points MDP/7 -> MDP/9",
                        "    found points MDP/9 as before")
                .containsSubsequence(
                        "drawings/LP-2A.pdf",
                        "  REMAINING: caution, device-differs LP-2A/3",
                        "    LP-2A/3 is drawn with 20 A and was found with 30 A.",
                        "drawings/MDP.pdf",
                        "  CORRECTED: danger, crossed-feeds MDP/7, MDP/9",
                        "Look at these, and tell those who rely on them",
                        "  Drawings: drawings/MDP.pdf (changed)")
                .allMatch(line -> Shown.columns(line) <= 80);
        assertThat(String.join(" ", text).replaceAll(" +", " "))
                .contains("29 CFR 1910.147(c)(6)")
                .contains("Qualified persons only");
    }

    @Test
    void audits_of_different_buildings_are_compared_with_a_warning_before_all_else() throws IOException {
        MadeAudit other = new MadeAudit("Gannet Store");
        Comparison since = compare(OspreyYard.asSurveyed(), other);
        assertThat(SinceText.of(since, StandardCharsets.UTF_8).get(0))
                .isEqualTo("THE AUDITS ARE OF DIFFERENT BUILDINGS: Osprey Yard / Gannet Store");
        assertThat(since.in(State.CORRECTED)).isEmpty();
    }

    @Test
    void the_json_counts_and_names_the_same() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SinceJson.write(compare(OspreyYard.asSurveyed(), OspreyYard.asCorrected()), out);
        JsonNode json = new ObjectMapper().readTree(out.toByteArray());
        assertThat(json.get("schema").asText()).isEqualTo("asfound-since/1");
        assertThat(json.at("/counts/corrected").asInt()).isEqualTo(2);
        assertThat(json.at("/drawings/1/file").asText()).isEqualTo("drawings/MDP.pdf");
        assertThat(json.at("/drawings/1/corrected")).hasSize(1);
        assertThat(json.at("/isolation/0/later/verdict").asText()).isEqualTo("agrees");
        assertThat(json.at("/toBeTold/lockoutProcedures")).hasSize(2);
        assertThat(out.toString(StandardCharsets.UTF_8).chars()).allMatch(c -> c == '\n' || (c >= 0x20 && c < 0x7F));
    }
}
