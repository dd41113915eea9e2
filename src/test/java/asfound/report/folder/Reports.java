package asfound.report.folder;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Small reports that can be told apart, and what stands in a folder. */
final class Reports {

    private Reports() {}

    /** A report of three files, each of them saying {@code word}; one is larger than any buffer. */
    static OutputFolder.Contents saying(String word) {
        return stage -> {
            put(stage, "index.html", "<p>" + word);
            put(stage, "audit.json", word.repeat(100_000));
            put(stage, "redlines/E-101.pdf", "%PDF " + word);
        };
    }

    static void put(Stage stage, String name, String text) throws IOException {
        try (OutputStream out = stage.create(name)) {
            out.write(text.getBytes(StandardCharsets.UTF_8));
        }
    }

    /** Every file below the folder with its content; empty where the folder is not there. */
    static Map<String, String> read(Path folder) throws IOException {
        Map<String, String> files = new TreeMap<>();
        if (!Files.exists(folder)) return files;
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList())
                files.put(folder.relativize(file).toString(), Files.readString(file));
        }
        return files;
    }

    /** Names directly in a folder, hidden ones too. */
    static java.util.List<String> names(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(p -> p.getFileName().toString()).sorted().toList();
        }
    }
}
