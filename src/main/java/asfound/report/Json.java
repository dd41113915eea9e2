package asfound.report;

import asfound.model.Box;
import asfound.model.Place;
import asfound.model.Stated;
import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.JsonGeneratorDelegate;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.Optional;
import java.util.OptionalDouble;

/** The few ways in which every JSON output writes a value: the same bytes for the same facts, on any system. */
public final class Json {

    private Json() {}

    /** A generator of indented UTF-8 with line feeds alone. Closing it leaves {@code out} open: its owner closes it. */
    public static JsonGenerator generator(OutputStream out) throws IOException {
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        JsonGenerator json = new JsonFactory()
                .createGenerator(out, JsonEncoding.UTF8)
                .disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
        json.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(lines));
        return new Whole(json);
    }

    /** The same in ASCII alone, for standard output: whatever the terminal's character set, a name arrives whole. */
    public static JsonGenerator asciiGenerator(OutputStream out) throws IOException {
        JsonGenerator json = generator(out);
        return json.setHighestNonEscapedChar(127);
    }

    /** Writes half a surrogate pair, that a broken drawing can hold, as the sign for a broken character. */
    private static final class Whole extends JsonGeneratorDelegate {

        Whole(JsonGenerator json) {
            super(json);
        }

        @Override
        public void writeString(String text) throws IOException {
            super.writeString(whole(text));
        }

        @Override
        public void writeFieldName(String name) throws IOException {
            super.writeFieldName(whole(name));
        }

        private static String whole(String text) {
            if (text.chars().noneMatch(c -> Character.isSurrogate((char) c))) return text;
            return text.codePoints()
                    .map(c -> c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE ? 0xFFFD : c)
                    .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                    .toString();
        }
    }

    static void text(JsonGenerator json, String name, Optional<String> value) throws IOException {
        if (value.isPresent()) json.writeStringField(name, value.get());
        else json.writeNullField(name);
    }

    static void whole(JsonGenerator json, String name, Optional<Integer> value) throws IOException {
        if (value.isPresent()) json.writeNumberField(name, value.get());
        else json.writeNullField(name);
    }

    static void number(JsonGenerator json, String name, OptionalDouble value) throws IOException {
        json.writeFieldName(name);
        if (value.isPresent()) number(json, value.getAsDouble());
        else json.writeNull();
    }

    static void number(JsonGenerator json, String name, Optional<Double> value) throws IOException {
        number(json, name, value.map(OptionalDouble::of).orElse(OptionalDouble.empty()));
    }

    static void number(JsonGenerator json, String name, double value) throws IOException {
        json.writeFieldName(name);
        number(json, value);
    }

    /** At most six decimals and no needless zeros, so that no platform's printing of doubles shows. */
    private static void number(JsonGenerator json, double value) throws IOException {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            json.writeNull();
            return;
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_EVEN);
        BigDecimal bare = rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
        json.writeNumber(bare.toPlainString());
    }

    static void texts(JsonGenerator json, String name, Collection<String> values) throws IOException {
        json.writeArrayFieldStart(name);
        for (String value : values) json.writeString(value);
        json.writeEndArray();
    }

    static void wholes(JsonGenerator json, String name, Collection<Integer> values) throws IOException {
        json.writeArrayFieldStart(name);
        for (int value : values) json.writeNumber(value);
        json.writeEndArray();
    }

    /** {@code [x, y, w, h]} in points from the top left of the page as displayed, to a hundredth; null where unknown. */
    static void box(JsonGenerator json, String name, Optional<Box> box) throws IOException {
        json.writeFieldName(name);
        if (box.isEmpty()) {
            json.writeNull();
            return;
        }
        json.writeStartArray();
        Box b = box.get();
        for (double side : new double[] {b.x(), b.y(), b.w(), b.h()}) number(json, Math.round(side * 100) / 100.0);
        json.writeEndArray();
    }

    static Optional<Box> boxOf(Place place) {
        return place instanceof Place.OnPage p ? p.area() : Optional.empty();
    }

    /** The text as it stands where that is not just the value printed again; empty otherwise. */
    static Optional<String> rawBeside(Stated<?> stated, String printed) {
        return stated.isBlank() || stated.raw().equals(printed) ? Optional.empty() : Optional.of(stated.raw());
    }
}
