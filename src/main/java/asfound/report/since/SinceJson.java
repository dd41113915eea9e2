package asfound.report.since;

import asfound.report.Cautions;
import asfound.report.Json;
import asfound.report.since.Comparison.Fate;
import asfound.report.since.Comparison.State;
import asfound.report.since.Comparison.VerdictChange;
import asfound.report.since.WrittenAudit.Judged;
import asfound.report.since.WrittenAudit.Part;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A comparison for programs: {@code asfound-since/1}, in ASCII alone. */
public final class SinceJson {

    /** The name and version of the format. */
    public static final String SCHEMA = "asfound-since/1";

    private final JsonGenerator json;

    private SinceJson(JsonGenerator json) {
        this.json = json;
    }

    /** Leaves {@code out} open. */
    public static void write(Comparison comparison, OutputStream out) throws IOException {
        try (JsonGenerator json = Json.asciiGenerator(out)) {
            new SinceJson(json).comparison(comparison);
            json.writeRaw('\n');
        }
    }

    private void comparison(Comparison c) throws IOException {
        json.writeStartObject();
        json.writeStringField("schema", SCHEMA);
        texts("cautions", List.of(Cautions.AGREES, Cautions.SHORT));
        if (c.buildings().isPresent())
            json.writeStringField("differentBuildings", c.buildings().get());
        json.writeObjectFieldStart("counts");
        for (State state : State.values())
            json.writeNumberField(state.word(), c.in(state).size());
        json.writeEndObject();
        json.writeArrayFieldStart("findings");
        for (Fate fate : c.findings()) fate(fate);
        json.writeEndArray();
        drawings(c.findings());
        json.writeArrayFieldStart("isolation");
        for (VerdictChange change : c.verdicts()) verdict(change);
        json.writeEndArray();
        texts("stillFailing", c.stillFailing().stream().map(Judged::equipment).toList());
        json.writeObjectFieldStart("toBeTold");
        texts("drawings", c.touched().drawings());
        texts("doorCards", c.touched().cards());
        texts("lockoutProcedures", c.touched().procedures());
        json.writeStringField("reminder", Cautions.TELL);
        json.writeEndObject();
        json.writeEndObject();
    }

    private void fate(Fate fate) throws IOException {
        json.writeStartObject();
        json.writeStringField("state", fate.state().word());
        json.writeStringField("id", fate.finding().id());
        json.writeStringField("kind", fate.finding().kind());
        json.writeStringField("severity", fate.finding().severity());
        json.writeBooleanField("accepted", fate.finding().accepted());
        texts("where", fate.finding().parts().stream().map(Part::inWords).toList());
        texts("drawings", fate.finding().drawings());
        json.writeStringField("message", fate.finding().message());
        texts("why", fate.why());
        json.writeEndObject();
    }

    /** The ids of each drawing's findings by what became of them. */
    private void drawings(List<Fate> fates) throws IOException {
        Map<String, Map<State, List<String>>> byDrawing = new TreeMap<>();
        for (Fate fate : fates)
            for (String file : fate.finding().drawings())
                byDrawing
                        .computeIfAbsent(file, f -> new TreeMap<>())
                        .computeIfAbsent(fate.state(), s -> new ArrayList<>())
                        .add(fate.finding().id());
        json.writeArrayFieldStart("drawings");
        for (Map.Entry<String, Map<State, List<String>>> drawing : byDrawing.entrySet()) {
            json.writeStartObject();
            json.writeStringField("file", drawing.getKey());
            for (State state : State.values())
                texts(state.word(), drawing.getValue().getOrDefault(state, List.of()));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void verdict(VerdictChange change) throws IOException {
        json.writeStartObject();
        json.writeStringField("equipment", change.equipment());
        judged("earlier", change.earlier());
        judged("later", change.later());
        json.writeEndObject();
    }

    private void judged(String name, Optional<Judged> judged) throws IOException {
        if (judged.isEmpty()) {
            json.writeNullField(name);
            return;
        }
        json.writeObjectFieldStart(name);
        json.writeStringField("verdict", judged.get().verdict());
        texts("drawnPoints", judged.get().drawnPoints());
        if (judged.get().foundPoints().isPresent())
            texts("foundPoints", judged.get().foundPoints().get());
        else json.writeNullField("foundPoints");
        json.writeStringField("reason", judged.get().reason());
        json.writeEndObject();
    }

    private void texts(String name, Collection<String> values) throws IOException {
        json.writeArrayFieldStart(name);
        for (String value : values) json.writeString(value);
        json.writeEndArray();
    }
}
