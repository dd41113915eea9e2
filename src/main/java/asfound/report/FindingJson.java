package asfound.report;

import asfound.audit.ToBeTold;
import asfound.finding.Correction;
import asfound.finding.Finding;
import asfound.model.CircuitRef;
import asfound.model.Observation;
import asfound.model.Place;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Collection;
import java.util.Optional;

/** Findings, places and observations as {@code audit.json} writes them. */
final class FindingJson {

    private FindingJson() {}

    /** The members of a finding, without the braces: an accepted finding has more. */
    static void members(JsonGenerator json, Finding finding, ToBeTold told) throws IOException {
        json.writeStringField("id", finding.id());
        json.writeStringField("kind", finding.kind());
        json.writeStringField("facts", finding.facts());
        json.writeStringField("severity", finding.severity().word());
        json.writeStringField("equipment", finding.equipment());
        Json.text(json, "circuit", finding.circuit());
        json.writeArrayFieldStart("others");
        for (Finding.Part part : finding.others()) {
            json.writeStartObject();
            json.writeStringField("equipment", part.equipment());
            Json.text(json, "circuit", part.circuit());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeStringField("drawn", finding.drawn());
        json.writeStringField("found", finding.found());
        places(json, "drawings", finding.drawings());
        observations(json, "evidence", finding.evidence());
        json.writeStringField("message", finding.message());
        json.writeStringField("correction", finding.correction());
        json.writeArrayFieldStart("corrections");
        for (Correction correction : finding.corrections()) correction(json, correction);
        json.writeEndArray();
        json.writeObjectFieldStart("toBeTold");
        Json.texts(json, "lockoutRecords", told.equipment());
        Json.texts(json, "lockoutDevices", told.devices());
        Json.texts(json, "doorCards", told.cards());
        Json.texts(json, "drawings", told.drawings());
        json.writeEndObject();
    }

    private static void correction(JsonGenerator json, Correction c) throws IOException {
        json.writeStartObject();
        placeMembers(json, c.place());
        json.writeStringField("panel", c.panel());
        json.writeStringField("circuit", c.circuit());
        json.writeStringField("field", c.field().word());
        json.writeStringField("reads", c.reads());
        json.writeStringField("shouldRead", c.shouldRead());
        json.writeStringField("why", c.why());
        json.writeEndObject();
    }

    static void places(JsonGenerator json, String name, Collection<Place> places) throws IOException {
        json.writeArrayFieldStart(name);
        for (Place place : places) {
            json.writeStartObject();
            placeMembers(json, place);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void placeMembers(JsonGenerator json, Place place) throws IOException {
        json.writeStringField("file", place.file());
        json.writeNumberField("page", place.pageNumber());
        if (place instanceof Place.InRow row) {
            if (!row.sheet().isEmpty()) json.writeStringField("sheet", row.sheet());
            json.writeNumberField("row", row.row());
        }
        Optional<asfound.model.Box> box = Json.boxOf(place);
        if (box.isPresent()) Json.box(json, "box", box);
    }

    /** Each observation with its row and, as it stands there, what it says: enough to weigh it without the survey at hand. */
    static void observations(JsonGenerator json, String name, Collection<Observation> observations) throws IOException {
        json.writeArrayFieldStart(name);
        for (Observation o : observations) {
            json.writeStartObject();
            json.writeStringField("file", o.place().file());
            json.writeNumberField("row", o.place().row());
            if (!o.place().sheet().isEmpty())
                json.writeStringField("sheet", o.place().sheet());
            json.writeStringField("panel", o.panel().raw());
            json.writeStringField(
                    "circuit",
                    o.circuit()
                            .value()
                            .map(CircuitRef::inWords)
                            .orElse(o.circuit().raw()));
            json.writeStringField("relation", o.relation().word());
            json.writeStringField("found", o.found().raw());
            json.writeStringField("method", o.method().word());
            json.writeStringField("by", o.by());
            json.writeStringField(
                    "date",
                    o.date().value().map(String::valueOf).orElse(o.date().raw()));
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
