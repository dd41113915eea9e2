package asfound.sample.kestrel;

import asfound.audit.Audit;
import asfound.audit.Audits;
import asfound.audit.Stages;
import asfound.recordset.Limits;
import asfound.recordset.NothingToDoException;
import asfound.recordset.RecordSet;
import asfound.recordset.RecordSets;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/** Makes the record set of Kestrel Wharf Maker Hall: the same bytes each time. {@link KestrelWharfStory} tells what is in it. */
public final class KestrelWharf {

    private KestrelWharf() {}

    /** Every file of the record set, by its name relative to the set. */
    public static Map<String, byte[]> files() {
        Map<String, byte[]> files = new TreeMap<>();
        KestrelDrawings drawings = new KestrelDrawings();
        drawings.files().forEach((name, bytes) -> files.put("drawings/" + name, bytes));
        KestrelOneLine.files().forEach((name, text) -> files.put("one-line/" + name, utf8(text)));
        new KestrelSurvey(drawings).files().forEach((name, text) -> files.put("survey/" + name, utf8(text)));
        files.put("record.yaml", utf8(KestrelWharfStory.RECORD_YAML));
        return files;
    }

    /** The audit of the record set as it stands in {@code fixtures}. */
    public static Audit audit() throws NothingToDoException {
        RecordSet set = RecordSets.open(Path.of("fixtures/kestrel-wharf"), Limits.usual());
        return Audits.of(set, Limits.usual(), Stages.SILENT);
    }

    public static void writeTo(Path folder) throws IOException {
        for (Map.Entry<String, byte[]> file : files().entrySet()) {
            Path path = folder.resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.write(path, file.getValue());
        }
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** Makes the record set anew in the folder given, {@code fixtures/kestrel-wharf} where none is. */
    public static void main(String[] args) throws IOException {
        writeTo(Path.of(args.length > 0 ? args[0] : "fixtures/kestrel-wharf"));
    }
}
