package asfound.command;

import asfound.recordset.NothingToDoException;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A single file that the user asked for: written whole or not at all, and never over another. */
final class NewFile {

    private NewFile() {}

    interface Contents {
        void writeTo(OutputStream out) throws IOException;
    }

    /** @throws NothingToDoException where a file of that name is there, or its folder is not */
    static void write(Path file, Contents contents) throws IOException, NothingToDoException {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder))
            throw new NothingToDoException("The folder of " + file + " is not there; make it, or give another name.");
        if (Files.exists(file)) throw isThere(file);
        Path draft = Files.createTempFile(folder, ".asfound-", ".part");
        try {
            try (OutputStream out = Files.newOutputStream(draft)) {
                contents.writeTo(out);
            }
            Files.move(draft, file);
        } catch (FileAlreadyExistsException e) {
            throw isThere(file);
        } finally {
            Files.deleteIfExists(draft);
        }
    }

    private static NothingToDoException isThere(Path file) {
        return new NothingToDoException(file + " is there already; give another name, or take it away first.");
    }
}
