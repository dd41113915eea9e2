package asfound.recordset;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.yaml.snakeyaml.LoaderOptions;

/**
 * YAML as a tree of texts. Every scalar stays the text that the user wrote: {@code 2E1} is a panel and no number,
 * {@code 01} is not {@code 1}.
 */
public sealed interface YamlText {

    /** The line on which it begins, from 1. */
    int line();

    record Text(String text, int line) implements YamlText {}

    record Items(List<YamlText> items, int line) implements YamlText {}

    record Entries(List<Entry> entries, int line) implements YamlText {}

    record Entry(String key, int line, YamlText value) {}

    /** The text is not YAML; the message says why. */
    final class Broken extends Exception {

        private static final long serialVersionUID = 1L;
        private final int line;

        Broken(String message, int line) {
            super(message);
            this.line = line;
        }

        public int line() {
            return line;
        }
    }

    int DEEPEST = 32;

    /** Reads one document; an empty one is an empty map. */
    static YamlText read(String yaml) throws Broken {
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit(Integer.MAX_VALUE); // the file's size has its own limit
        YAMLFactory factory = YAMLFactory.builder().loaderOptions(options).build();
        try (YAMLParser parser = factory.createParser(yaml)) {
            JsonToken first = parser.nextToken();
            return first == null ? new Entries(List.of(), 1) : node(parser, first, 0);
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 1 : Math.max(1, e.getLocation().getLineNr());
            throw new Broken(e.getOriginalMessage().lines().findFirst().orElse("it is not YAML"), line);
        } catch (IOException | RuntimeException e) {
            throw new Broken("it is not YAML", 1);
        }
    }

    private static YamlText node(YAMLParser parser, JsonToken token, int depth) throws IOException, Broken {
        int line = parser.currentTokenLocation().getLineNr();
        if (depth > DEEPEST) throw new Broken("it is nested deeper than " + DEEPEST + " levels", line);
        if (token == JsonToken.START_OBJECT) {
            List<Entry> entries = new ArrayList<>();
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                String key = Unshowable.replaced(parser.currentName());
                int keyLine = parser.currentTokenLocation().getLineNr();
                entries.add(new Entry(key, keyLine, node(parser, parser.nextToken(), depth + 1)));
            }
            return new Entries(entries, line);
        }
        if (token == JsonToken.START_ARRAY) {
            List<YamlText> items = new ArrayList<>();
            for (JsonToken t = parser.nextToken(); t != JsonToken.END_ARRAY && t != null; t = parser.nextToken())
                items.add(node(parser, t, depth + 1));
            return new Items(items, line);
        }
        String text = token == null || token == JsonToken.VALUE_NULL ? "" : parser.getText();
        return new Text(Unshowable.replaced(text), line);
    }
}
