package asfound.sample;

import asfound.audit.Audit;
import asfound.audit.Audits;
import asfound.audit.Stages;
import asfound.recordset.Limits;
import asfound.recordset.RecordSets;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A small record set whose files a test writes as somebody would type them. */
public final class WrittenRecords {

    private final Path folder;

    public WrittenRecords(Path folder) {
        this.folder = folder;
    }

    /** Writes a file of the record set, by its name in it and its lines. */
    public WrittenRecords file(String name, String... lines) throws IOException {
        Path path = folder.resolve(name);
        Files.createDirectories(path.getParent());
        Files.writeString(path, String.join("\n", lines) + "\n");
        return this;
    }

    public Audit audit() throws Exception {
        return Audits.of(RecordSets.open(folder, Limits.usual()), Limits.usual(), Stages.SILENT);
    }
}
