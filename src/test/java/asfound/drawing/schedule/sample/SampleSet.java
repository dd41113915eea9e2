package asfound.drawing.schedule.sample;

import asfound.drawing.schedule.sample.SamplePanel.SampleCircuit;
import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * Writes a set of drawn samples with what a reader should find in them, to score a reader with.
 *
 * <p>{@code SampleSet FOLDER FIRST_SEED COUNT}
 */
public final class SampleSet {

    private SampleSet() {}

    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        Files.createDirectories(folder.resolve("truth"));
        long first = Long.parseLong(args[1]);
        for (long seed = first; seed < first + Long.parseLong(args[2]); seed++) {
            String name = "sample-" + seed + ".pdf";
            SampleSheets.Drawn drawn = SampleSheets.draw(seed, folder.resolve(name));
            truth(folder.resolve("truth").resolve(name + ".json"), name, drawn);
        }
    }

    private static void truth(Path file, String name, SampleSheets.Drawn drawn) throws IOException {
        try (JsonGenerator json = new JsonFactory().createGenerator(file.toFile(), JsonEncoding.UTF8)) {
            json.useDefaultPrettyPrinter();
            json.writeStartObject();
            json.writeStringField("file", name);
            json.writeStringField("family", drawn.layout().sides().name().toLowerCase(Locale.ROOT));
            json.writeStringField("layout", drawn.layout().toString());
            json.writeArrayFieldStart("problemPages");
            json.writeEndArray();
            json.writeArrayFieldStart("directories");
            for (SamplePanel panel : drawn.panels()) panel(json, panel, drawn.layout());
            json.writeEndArray();
            json.writeEndObject();
        }
    }

    private static void panel(JsonGenerator json, SamplePanel panel, SampleLayout layout) throws IOException {
        json.writeStartObject();
        json.writeStringField("panel", panel.name());
        json.writeObjectFieldStart("header");
        for (String field : List.of(
                "designation",
                "location",
                "fedFrom",
                "voltage",
                "phases",
                "wires",
                "busA",
                "mainA",
                "mains",
                "interruptingKA")) {
            String value = panel.header().get(field);
            if (value == null) json.writeNullField(field);
            else json.writeStringField(field, value);
        }
        json.writeEndObject();
        json.writeArrayFieldStart("circuits");
        for (SampleCircuit c : panel.circuits()) {
            json.writeStartObject();
            json.writeNumberField("position", c.first());
            json.writeArrayFieldStart("positions");
            for (int p : c.positions()) json.writeNumber(p);
            json.writeEndArray();
            json.writeNumberField("poles", c.poles());
            if (c.rating() > 0) json.writeNumberField("ratingA", c.rating());
            else json.writeNullField("ratingA");
            json.writeStringField("description", c.description());
            json.writeStringField("use", c.use());
            if (layout.loads() != SampleLayout.LoadStyle.NONE && c.vaPerPole() > 0)
                json.writeNumberField("loadVA", c.vaPerPole() * c.poles());
            else json.writeNullField("loadVA");
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }
}
