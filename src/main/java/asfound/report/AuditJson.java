package asfound.report;

import asfound.audit.Audit;
import asfound.audit.Reliance;
import asfound.finding.Accepted;
import asfound.finding.Unclear;
import asfound.isolation.DrawingVerdict;
import asfound.isolation.Verdict;
import asfound.model.Observation;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.network.Device;
import asfound.network.DeviceRecord;
import asfound.network.Equipment;
import asfound.network.Served;
import asfound.recordset.Source;
import asfound.trust.Coverage;
import asfound.trust.Trace;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * {@code audit.json}: everything that is known about a record set, for machines. Its shape is published as
 * {@code audit.schema.json}. Written as a stream; every list is in the audit's own order, which does not depend on the
 * run, and nothing in it tells when or where it was written.
 */
public final class AuditJson {

    /** The name and version of the format. A field is only ever added within a version. */
    public static final String SCHEMA = "asfound-audit/1";

    private final Audit audit;
    private final JsonGenerator json;
    private final Reliance reliance;

    private AuditJson(Audit audit, JsonGenerator json) {
        this.audit = audit;
        this.json = json;
        this.reliance = Reliance.of(audit);
    }

    /** Writes the whole audit and leaves {@code out} open. */
    public static void write(Audit audit, OutputStream out) throws IOException {
        try (JsonGenerator json = Json.generator(out)) {
            new AuditJson(audit, json).all();
            json.writeRaw('\n');
        }
    }

    private void all() throws IOException {
        json.writeStartObject();
        json.writeStringField("schema", SCHEMA);
        json.writeStringField("building", audit.recordSet().building());
        Json.texts(json, "cautions", cautions());
        json.writeStringField("toBeToldReminder", Cautions.TELL);
        inputs();
        objects("directories", audit.drawings().directories(), d -> DirectoryJson.write(json, d));
        objects("equipment", audit.network().equipment(), this::equipment);
        objects("devices", audit.network().devices(), this::device);
        objects("findings", audit.findings(), finding -> {
            json.writeStartObject();
            FindingJson.members(json, finding, reliance.of(finding));
            json.writeEndObject();
        });
        objects("accepted", audit.accepted(), this::accepted);
        objects("unclear", audit.unclear(), this::unclear);
        objects("isolation", audit.verdicts(), this::verdict);
        objects("drawings", audit.drawingVerdicts(), this::drawing);
        coverage(audit.coverage());
        objects("plan", audit.plan(), this::trace);
        json.writeEndObject();
    }

    private static List<String> cautions() {
        return Stream.concat(Stream.of(Cautions.AGREES), Cautions.ALL.stream()).toList();
    }

    private interface Writing<T> {
        void write(T one) throws IOException;
    }

    private <T> void objects(String name, Collection<T> all, Writing<T> writing) throws IOException {
        json.writeArrayFieldStart(name);
        for (T one : all) writing.write(one);
        json.writeEndArray();
    }

    private void inputs() throws IOException {
        Unread unread = Unread.of(audit);
        objects("inputs", audit.inputs(), input -> input(input, unread));
        Set<String> files =
                audit.inputs().stream().map(input -> input.source().file()).collect(Collectors.toSet());
        List<Problem> elsewhere = unread.all().stream()
                .filter(p -> !files.contains(p.place().file()))
                .toList();
        objects("problems", elsewhere, problem -> {
            json.writeStartObject();
            json.writeStringField("file", problem.place().file());
            DirectoryJson.problemMembers(json, problem);
            json.writeEndObject();
        });
    }

    private void input(Audit.Input input, Unread unread) throws IOException {
        json.writeStartObject();
        json.writeStringField("file", input.source().file());
        json.writeStringField("sha256", input.source().sha256());
        json.writeStringField(
                "kind", input.source().kind().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        json.writeNumberField("bytes", input.source().bytes());
        if (isPaged(input)) json.writeNumberField("pages", input.pages());
        else json.writeNumberField("rows", input.rows());
        objects("problems", unread.in(input.source().file()), p -> DirectoryJson.problem(json, p));
        json.writeEndObject();
    }

    private static boolean isPaged(Audit.Input input) {
        Source.Kind kind = input.source().kind();
        return kind == Source.Kind.PDF || kind == Source.Kind.WORKBOOK || input.pages() > 0;
    }

    private void equipment(Equipment e) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", e.name());
        Json.text(json, "kind", Optional.of(e.kind().word()).filter(word -> !word.isEmpty()));
        json.writeBooleanField("drawn", e.drawn());
        json.writeBooleanField("found", e.found());
        Json.texts(json, "alsoWritten", e.alsoWritten());
        json.writeBooleanField("lifeSafety", e.lifeSafety());
        json.writeBooleanField("doubtful", e.doubtful());
        FindingJson.places(json, "drawnAt", e.drawnAt());
        FindingJson.places(
                json,
                "seenAt",
                e.seenBy().stream()
                        .map(Observation::place)
                        .map(Place.class::cast)
                        .toList());
        json.writeEndObject();
    }

    private void device(DeviceRecord d) throws IOException {
        json.writeStartObject();
        json.writeStringField("device", d.device().label());
        json.writeStringField("equipment", d.device().in());
        json.writeStringField("circuit", d.device().key());
        json.writeStringField(
                "tracing", d.tracing().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        Json.texts(
                json,
                "drawn",
                d.showings().stream()
                        .flatMap(s -> s.serves().stream())
                        .map(Served::inWords)
                        .distinct()
                        .toList());
        Json.texts(
                json,
                "traced",
                d.tracedTo().stream().map(Served::inWords).distinct().toList());
        json.writeEndObject();
    }

    private void accepted(Accepted accepted) throws IOException {
        json.writeStartObject();
        FindingJson.members(json, accepted.finding(), reliance.of(accepted.finding()));
        json.writeStringField("reason", accepted.reason());
        json.writeStringField("by", accepted.by());
        json.writeStringField("date", accepted.date().toString());
        json.writeEndObject();
    }

    private void unclear(Unclear u) throws IOException {
        json.writeStartObject();
        json.writeStringField("equipment", u.device().in());
        json.writeStringField("circuit", u.device().key());
        json.writeStringField("drawn", u.drawn());
        json.writeStringField("found", u.found());
        FindingJson.places(json, "drawings", u.drawings());
        FindingJson.places(
                json,
                "evidence",
                u.evidence().stream().map(o -> (Place) o.place()).toList());
        json.writeEndObject();
    }

    private void verdict(Verdict v) throws IOException {
        json.writeStartObject();
        json.writeStringField("equipment", v.equipment());
        json.writeStringField("verdict", v.standing().word());
        Json.texts(json, "drawnPoints", labels(v.drawnPoints()));
        if (v.foundPoints().isPresent())
            Json.texts(json, "foundPoints", labels(v.foundPoints().get()));
        else json.writeNullField("foundPoints");
        json.writeBooleanField("otherSets", v.otherSets());
        Json.texts(json, "liveFrom", v.liveFrom());
        Json.texts(json, "path", v.path());
        json.writeStringField("reason", v.reason());
        Json.texts(json, "alsoDark", v.alsoDark());
        FindingJson.places(json, "evidence", v.evidence());
        json.writeEndObject();
    }

    private static List<String> labels(List<Device> devices) {
        return devices.stream().map(Device::label).toList();
    }

    private void drawing(DrawingVerdict d) throws IOException {
        json.writeStartObject();
        json.writeStringField("file", d.file());
        json.writeStringField("verdict", d.standing().word());
        Json.texts(json, "panels", d.equipment());
        Json.texts(json, "reasons", d.reasons());
        json.writeEndObject();
    }

    private void coverage(Coverage c) throws IOException {
        json.writeObjectFieldStart("coverage");
        share(c.building());
        objects("byPanel", c.panels(), panel -> {
            json.writeStartObject();
            json.writeStringField("panel", panel.panel());
            share(panel);
            json.writeEndObject();
        });
        counts("byMethod", c.byMethod());
        counts("byYear", c.byYear());
        Map<String, Integer> verdicts = new LinkedHashMap<>();
        for (Verdict.Standing s : Verdict.Standing.values()) verdicts.put(s.word(), 0);
        for (Verdict v : audit.verdicts()) verdicts.merge(v.standing().word(), 1, Integer::sum);
        counts("equipmentByVerdict", verdicts);
        json.writeStringField("statement", c.statement());
        json.writeEndObject();
    }

    private void counts(String name, Map<String, Integer> counts) throws IOException {
        json.writeObjectFieldStart(name);
        for (Map.Entry<String, Integer> count : counts.entrySet())
            json.writeNumberField(count.getKey(), count.getValue());
        json.writeEndObject();
    }

    private void share(Coverage.Share s) throws IOException {
        json.writeNumberField("drawn", s.drawn());
        json.writeNumberField("traced", s.traced());
        json.writeNumberField("wrong", s.wrong());
        Json.number(json, "share", s.share());
        Json.number(json, "bound95", s.bound95());
    }

    private void trace(Trace t) throws IOException {
        json.writeStartObject();
        json.writeNumberField("rank", t.rank());
        Json.text(json, "location", t.location());
        json.writeStringField("panel", t.panel());
        json.writeStringField("circuit", t.circuit());
        json.writeStringField("expect", t.expect());
        json.writeStringField("method", t.method().word());
        json.writeStringField("why", t.why());
        Json.texts(json, "settles", t.settles());
        Json.texts(json, "findings", t.findings());
        json.writeEndObject();
    }
}
