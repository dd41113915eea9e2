package asfound.report;

import static org.assertj.core.api.Assertions.assertThat;

import asfound.audit.Audit;
import asfound.finding.EntryBlank;
import asfound.finding.Event;
import asfound.finding.Finding;
import asfound.finding.Severity;
import asfound.isolation.Verdict;
import asfound.sample.MadeAudit;
import asfound.sample.OspreyYard;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AuditJsonTest {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    static byte[] written(Audit audit) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        AuditJson.write(audit, out);
        return out.toByteArray();
    }

    private static JsonNode read(Audit audit) throws IOException {
        return MAPPER.readTree(written(audit));
    }

    private static Set<ValidationMessage> faults(JsonNode audit) throws IOException {
        try (InputStream schema = AuditJson.class.getResourceAsStream("/asfound/audit.schema.json")) {
            JsonSchema known = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                    .getSchema(schema);
            return known.validate(audit);
        }
    }

    @Test
    void the_yard_is_written_as_it_always_was() throws IOException {
        Golden.assertSame(written(OspreyYard.audit()), "osprey-yard.json");
    }

    @Test
    void what_is_written_keeps_to_the_published_schema() throws IOException {
        assertThat(faults(read(OspreyYard.audit()))).isEmpty();
        assertThat(faults(read(OspreyYard.asCorrected().build()))).isEmpty();
        assertThat(faults(read(new MadeAudit("Empty lot").build()))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/schema",
                "/building",
                "/inputs",
                "/inputs/0/sha256",
                "/inputs/0/problems/0/where",
                "/directories/0/header/fedFrom",
                "/directories/0/circuits/0/positions",
                "/directories/0/circuits/0/box",
                "/equipment/0/alsoWritten",
                "/findings/0/id",
                "/findings/0/circuit",
                "/findings/0/others",
                "/findings/0/drawings/0/page",
                "/findings/0/evidence/0/row",
                "/findings/0/correction",
                "/isolation/0/foundPoints",
                "/isolation/0/liveFrom",
                "/drawings/0/panels",
                "/coverage/bound95",
                "/coverage/byPanel"
            })
    void the_schema_misses_a_field_of_the_format_that_is_left_out(String pointer) throws IOException {
        JsonNode audit = read(OspreyYard.audit());
        int cut = pointer.lastIndexOf('/');
        ObjectNode parent = (ObjectNode) audit.at(pointer.substring(0, cut));
        assertThat(parent.has(pointer.substring(cut + 1))).isTrue();
        parent.remove(pointer.substring(cut + 1));
        assertThat(faults(audit)).hasSize(1);
    }

    @Test
    void each_finding_says_whom_to_tell_and_a_reminder_stands_beside_it() throws IOException {
        JsonNode audit = read(OspreyYard.audit());
        JsonNode told = audit.at("/findings/0/toBeTold");
        assertThat(told.get("lockoutRecords")).extracting(JsonNode::asText).containsExactly("LP-2A", "LP-2B");
        assertThat(told.get("lockoutDevices")).extracting(JsonNode::asText).containsExactly("MDP/7", "MDP/9");
        assertThat(told.get("drawings")).extracting(JsonNode::asText).containsExactly(OspreyYard.MDP);
        assertThat(audit.get("toBeToldReminder").asText())
                .contains("29 CFR 1910.147(c)(6)", "deferring to local rules");
    }

    @Test
    void the_schema_knows_the_words_of_the_format() throws IOException {
        JsonNode audit = read(OspreyYard.audit());
        ((ObjectNode) audit.at("/findings/0")).put("kind", "crossed-wires").put("severity", "fatal");
        ((ObjectNode) audit.at("/isolation/0")).put("verdict", "safe");
        ((ObjectNode) audit.at("/directories/0/circuits/0")).put("use", "lamp");
        ((ObjectNode) audit).put("schema", "asfound-audit/2");
        assertThat(faults(audit)).hasSize(5);
    }

    @Test
    void the_schema_allows_further_fields() throws IOException {
        JsonNode audit = read(OspreyYard.audit());
        ((ObjectNode) audit.at("/findings/0")).put("assignedTo", "drafting");
        ((ObjectNode) audit).put("remark", "x");
        assertThat(faults(audit)).isEmpty();
    }

    @Test
    void an_unreadable_value_is_null_and_named_and_never_taken_for_a_blank_one() throws IOException {
        JsonNode directory = read(OspreyYard.audit()).at("/directories/0");
        JsonNode circuit = directory.at("/circuits/0");
        assertThat(circuit.get("ratingA").isNull()).isTrue();
        assertThat(circuit.get("unreadable"))
                .containsExactly(MAPPER.getNodeFactory().textNode("ratingA"));
        assertThat(circuit.at("/raw/ratingA").asText()).isEqualTo("2O");
        JsonNode header = directory.get("header");
        assertThat(header.get("mainA").isNull()).isTrue();
        assertThat(header.has("unreadable")).isFalse();
        assertThat(header.at("/raw/voltage").asText()).isEqualTo("120/208V");
        assertThat(header.get("voltage").asText()).isEqualTo("208Y/120");
        assertThat(directory.get("unread")).hasSize(1);
    }

    @Test
    void loads_are_summed_over_the_poles_and_boxes_given_to_a_hundredth_of_a_point() throws IOException {
        JsonNode audit = read(OspreyYard.audit());
        JsonNode heater = audit.at("/directories/0/circuits/2");
        assertThat(heater.get("loadVA").asInt()).isEqualTo(3000);
        assertThat(heater.get("positions")).hasSize(2);
        assertThat(audit.at("/directories/0/circuits/3/loadVA").isNull()).isTrue();
        assertThat(audit.at("/findings/0/drawings/0/box/0").asText()).isEqualTo("60.13");
    }

    @Test
    void points_of_equipment_whose_supply_was_not_traced_are_null_and_not_an_empty_list() throws IOException {
        MadeAudit yard = OspreyYard.asSurveyed();
        yard.verdicts.add(MadeAudit.verdict("X-1", Verdict.Standing.FAILS, "", "", "It has no supply on any drawing."));
        JsonNode isolation = read(yard.build()).get("isolation");
        assertThat(isolation.at("/2/foundPoints").isNull()).isTrue();
        assertThat(isolation.at("/3/foundPoints").isArray()).isTrue();
        assertThat(isolation.at("/0/drawnPoints/0").asText()).isEqualTo("MDP/7");
    }

    @Test
    void every_problem_is_there_once_at_its_input_or_apart_where_it_has_none() throws IOException {
        MadeAudit yard = OspreyYard.asSurveyed();
        yard.problems.add(new asfound.model.Problem(asfound.model.Place.file("notes.docx"), "Not understood.", ""));
        JsonNode audit = read(yard.build());
        assertThat(audit.at("/inputs/0/problems").findValuesAsText("where")).containsExactly("page 1", "page 2");
        assertThat(audit.get("problems").findValuesAsText("file")).containsExactly("notes.docx");
    }

    @Test
    void no_locale_and_no_second_run_changes_a_byte() throws IOException {
        Locale usual = Locale.getDefault();
        byte[] first = written(OspreyYard.audit());
        try {
            for (String tag : List.of("tr-TR", "ar-EG", "de-DE")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertThat(written(OspreyYard.audit())).as(tag).isEqualTo(first);
            }
        } finally {
            Locale.setDefault(usual);
        }
        assertThat(first).asString(StandardCharsets.UTF_8).doesNotContain("\r").endsWith("}\n");
    }

    @Test
    void a_broken_character_from_a_drawing_does_not_stop_the_writing() throws IOException {
        MadeAudit yard = OspreyYard.asSurveyed();
        Finding broken = new EntryBlank(new Event(
                Severity.NOTICE,
                Finding.Part.of("LP-2\uD83D"),
                List.of(),
                "\uD83D\uDE00 stays",
                "\u0000",
                List.of(),
                List.of(),
                "m",
                "c",
                List.of()));
        yard.findings.add(broken);
        JsonNode finding = read(yard.build()).get("findings").get(3);
        assertThat(finding.get("equipment").asText()).isEqualTo("LP-2\uFFFD");
        assertThat(finding.get("drawn").asText()).isEqualTo("\uD83D\uDE00 stays");
        assertThat(finding.get("found").asText()).isEqualTo("\u0000");
    }

    @Test
    void every_kind_of_the_format_is_in_the_schema_and_no_other() throws IOException {
        try (InputStream in = AuditJson.class.getResourceAsStream("/asfound/audit.schema.json")) {
            ArrayNode kinds = (ArrayNode) MAPPER.readTree(in).at("/$defs/finding/properties/kind/enum");
            assertThat(kinds).hasSize(18);
        }
    }
}
