package asfound.recordset;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/** Makes files and sources for tests. */
public final class TableFiles {

    private TableFiles() {}

    public static Source text(Path folder, String name, String content) throws IOException {
        return bytes(folder, name, content.getBytes(StandardCharsets.UTF_8));
    }

    public static Source text(Path folder, String name, String content, Charset charset) throws IOException {
        return bytes(folder, name, content.getBytes(charset));
    }

    public static Source bytes(Path folder, String name, byte[] content) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.write(file, content);
        return new Source(name, file, Source.Kind.UNKNOWN, content.length, Hashes.sha256(file));
    }

    public static Settings columns(Map<String, String> columns) {
        Settings none = Settings.none();
        return new Settings(
                none.building(),
                columns,
                none.same(),
                none.distinct(),
                none.abbreviations(),
                none.modified(),
                none.numbering(),
                none.lifeSafety(),
                Optional.empty());
    }
}
