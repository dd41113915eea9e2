package asfound.report.reading;

import asfound.model.Directory;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.report.Cautions;
import asfound.report.DirectoryJson;
import asfound.report.Json;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;

/** Readings as {@code asfound-read/1}. */
public final class ReadingsJson {

    private ReadingsJson() {}

    /** Leaves {@code out} open. */
    public static void write(Readings readings, OutputStream out) throws IOException {
        try (JsonGenerator json = Json.generator(out)) {
            json.writeStartObject();
            json.writeStringField("schema", "asfound-read/1");
            json.writeStringField("caution", Cautions.SHORT);
            json.writeArrayFieldStart("directories");
            for (Directory d : readings.directories()) DirectoryJson.write(json, d);
            json.writeEndArray();
            json.writeArrayFieldStart("problems");
            for (Problem p : readings.everyProblem()) problem(json, p);
            json.writeEndArray();
            json.writeEndObject();
        }
        out.write('\n');
    }

    private static void problem(JsonGenerator json, Problem problem) throws IOException {
        Place place = problem.place();
        json.writeStartObject();
        json.writeStringField("file", place.file());
        json.writeNumberField("page", place.pageNumber());
        if (place instanceof Place.InRow row) {
            if (!row.sheet().isEmpty()) json.writeStringField("sheet", row.sheet());
            json.writeNumberField("row", row.row());
        }
        json.writeStringField("message", problem.message());
        json.writeStringField("remedy", problem.remedy());
        json.writeEndObject();
    }
}
