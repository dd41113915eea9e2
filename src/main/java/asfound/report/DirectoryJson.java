package asfound.report;

import asfound.model.Directory;
import asfound.model.Directory.Circuit;
import asfound.model.Directory.Header;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.model.Stated;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * One directory as JSON, in {@code audit.json} and in {@code asfound read --format json} alike.
 *
 * <p>A value that is not printed is {@code null}. A value that is printed and could not be understood is {@code null}
 * too, and named in {@code unreadable}; {@code raw} holds the text as it stands wherever that differs from the value.
 */
public final class DirectoryJson {

    private final JsonGenerator json;

    private DirectoryJson(JsonGenerator json) {
        this.json = json;
    }

    /** Writes one object. */
    public static void write(JsonGenerator json, Directory directory) throws IOException {
        new DirectoryJson(json).directory(directory);
    }

    private void directory(Directory d) throws IOException {
        json.writeStartObject();
        json.writeStringField("panel", d.panel());
        json.writeStringField("file", d.place().file());
        json.writeNumberField("page", d.place().pageNumber());
        if (d.place() instanceof Place.InRow row && !row.sheet().isEmpty()) json.writeStringField("sheet", row.sheet());
        header(d.header());
        json.writeArrayFieldStart("circuits");
        for (Circuit circuit : d.circuits()) circuit(circuit);
        json.writeEndArray();
        totals(d.totals());
        Json.number(json, "confidence", d.confidence());
        json.writeBooleanField("doubtful", d.isDoubtful());
        Json.wholes(json, "unread", d.unread());
        json.writeArrayFieldStart("problems");
        for (Problem problem : d.problems()) problem(json, problem);
        json.writeEndArray();
        json.writeEndObject();
    }

    private void header(Header h) throws IOException {
        json.writeObjectFieldStart("header");
        Fields fields = new Fields();
        fields.text("designation", h.designation());
        fields.text("location", h.location());
        fields.text("fedFrom", h.fedFrom());
        fields.text("voltage", h.voltage().read(v -> Optional.of(v.inWords())));
        fields.whole("phases", h.phases());
        fields.whole("wires", h.wires());
        fields.whole("busA", h.busA());
        fields.whole("mainA", h.mainA());
        fields.text("mains", h.mains().read(m -> Optional.of(m.name().toLowerCase(Locale.ROOT))));
        fields.number("interruptingKA", h.interruptingKA());
        fields.text("mounting", h.mounting());
        fields.end();
    }

    private void circuit(Circuit c) throws IOException {
        json.writeStartObject();
        json.writeNumberField("position", c.position());
        Json.wholes(json, "positions", c.positions());
        if (!c.label().isEmpty()) json.writeStringField("label", c.label());
        json.writeNumberField("poles", c.poles());
        Fields fields = new Fields();
        fields.whole("ratingA", c.ratingA());
        fields.text("description", c.description());
        json.writeStringField("use", c.use().name().toLowerCase(Locale.ROOT));
        fields.number("loadVA", c.totalVA());
        json.writeNumberField("page", c.place().pageNumber());
        if (c.place().rowNumber() > 0) json.writeNumberField("row", c.place().rowNumber());
        Json.box(json, "box", Json.boxOf(c.place()));
        fields.end();
    }

    private void totals(Directory.Totals t) throws IOException {
        json.writeObjectFieldStart("totals");
        json.writeArrayFieldStart("byPhaseVA");
        for (Stated<Double> phase : t.byPhaseVA()) {
            if (phase.isStated()) json.writeNumber(Math.round(phase.or(0.0) * 100) / 100.0);
            else json.writeNull();
        }
        json.writeEndArray();
        Fields fields = new Fields();
        fields.number("totalVA", t.totalVA());
        fields.number("amperes", t.amperes());
        fields.end();
    }

    static void problem(JsonGenerator json, Problem problem) throws IOException {
        json.writeStartObject();
        problemMembers(json, problem);
        json.writeEndObject();
    }

    static void problemMembers(JsonGenerator json, Problem problem) throws IOException {
        json.writeStringField("where", problem.place().within());
        json.writeStringField("message", problem.message());
        json.writeStringField("remedy", problem.remedy());
    }

    /** The stated values of one object; at its end, what of them was unreadable and the text as it stands. */
    private final class Fields {

        private final Map<String, String> raw = new TreeMap<>();
        private final List<String> unreadable = new ArrayList<>();

        void text(String name, Stated<String> value) throws IOException {
            Json.text(json, name, value.value());
            remember(name, value, value.or(""));
        }

        void whole(String name, Stated<Integer> value) throws IOException {
            Json.whole(json, name, value.value());
            remember(name, value, value.value().map(String::valueOf).orElse(""));
        }

        void number(String name, Stated<Double> value) throws IOException {
            Json.number(json, name, value.value());
            remember(name, value, value.value().map(Fields::printed).orElse(""));
        }

        private static String printed(double value) {
            return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
        }

        private void remember(String name, Stated<?> value, String printed) {
            if (value.isUnreadable()) unreadable.add(name);
            Json.rawBeside(value, printed).ifPresent(text -> raw.put(name, text));
        }

        void end() throws IOException {
            if (!unreadable.isEmpty()) Json.texts(json, "unreadable", unreadable);
            if (!raw.isEmpty()) {
                json.writeObjectFieldStart("raw");
                for (Map.Entry<String, String> entry : raw.entrySet())
                    json.writeStringField(entry.getKey(), entry.getValue());
                json.writeEndObject();
            }
            json.writeEndObject();
        }
    }
}
