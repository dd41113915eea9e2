package asfound.drawing.schedule.text;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;

/** The vocabulary of labels, {@code labels.txt} beside this class: the name of a field, and under it the labels that announce it. */
final class LabelWords {

    private static final String FILE = "labels.txt";

    private LabelWords() {}

    /** Each label with its field. */
    static Map<String, Field> read() {
        Map<String, Field> all = new HashMap<>();
        Field field = Field.OTHER;
        for (String line : lines()) {
            if (line.isBlank() || line.startsWith("#")) continue;
            if (!Character.isWhitespace(line.charAt(0))) field = Field.valueOf(line.strip());
            else for (String label : line.split("\\|")) if (!label.isBlank()) all.putIfAbsent(label.strip(), field);
        }
        return Map.copyOf(all);
    }

    private static Iterable<String> lines() {
        try (InputStream in = LabelWords.class.getResourceAsStream(FILE);
                BufferedReader text = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return text.lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(FILE, e);
        }
    }
}
