package asfound.drawing.schedule.text;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * The words of the trade that the reader knows, in text files beside this class: what they mean stands at the margin, and under it
 * the words, parted by bars. Lines that begin with {@code # } are remarks.
 */
final class Vocabulary {

    private Vocabulary() {}

    /**
     * Each word with its meaning; one that stands under two has the first.
     *
     * @param file beside this class
     * @param named the meaning that goes by a name
     */
    static <T> Map<String, T> read(String file, Function<String, T> named) {
        Map<String, T> all = new HashMap<>();
        T meaning = null;
        for (String line : lines(file)) {
            if (line.isBlank() || line.startsWith("# ")) continue;
            if (!Character.isWhitespace(line.charAt(0))) meaning = named.apply(line.strip());
            else for (String word : line.split("\\|")) if (!word.isBlank()) all.putIfAbsent(word.strip(), meaning);
        }
        return Map.copyOf(all);
    }

    private static Iterable<String> lines(String file) {
        try (InputStream in = Vocabulary.class.getResourceAsStream(file);
                BufferedReader text = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return text.lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }
}
