package asfound.report.folder;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** Whether a report may be written to a folder: never over anything that is not a report. */
final class FolderCheck {

    private FolderCheck() {}

    /** Throws unless the folder is missing, empty or a report of ours, and can be written. */
    static void mayBeWritten(Path folder) throws IOException {
        // The shell would be left in the folder that is taken away, and show nothing of the new report.
        if (Path.of("").toRealPath().startsWith(folder))
            throw refusal(folder, "is the folder that you work in, or holds it");
        Path above = folder.getParent();
        while (!Files.exists(above)) above = above.getParent();
        if (!Files.isDirectory(above)) throw refusal(folder, "would lie inside a file, " + above);
        if (!Files.isWritable(above)) throw new AccessDeniedException(above.toString());
        if (!Files.exists(folder)) return;
        if (!Files.isDirectory(folder)) throw refusal(folder, "is a file");
        if (isMounted(folder))
            throw refusal(folder, "is a mounted disk, which cannot be exchanged in one step (a folder inside it can)");
        if (!isEmpty(folder) && !Manifest.marks(folder))
            throw refusal(folder, "holds other things than a report of asfound (" + firstOf(folder) + ")");
    }

    private static boolean isMounted(Path folder) {
        try {
            return !Files.getFileStore(folder).equals(Files.getFileStore(folder.getParent()));
        } catch (IOException e) {
            return false; // some systems cannot tell; the rename will
        }
    }

    static CannotWriteException refusal(Path folder, String why) {
        return new CannotWriteException("No report was written: " + folder + " " + why
                + ". Give --out a new or empty folder, or one with an earlier report.");
    }

    /** The path without links and dots, as far down as it exists. */
    static Path realPathOf(Path path) throws IOException {
        Path whole = path.toAbsolutePath().normalize();
        Path there = whole;
        while (!Files.exists(there) && there.getParent() != null) {
            if (Files.isSymbolicLink(there)) throw refusal(path, "is a link that leads nowhere");
            there = there.getParent();
        }
        return there.toRealPath().resolve(there.relativize(whole));
    }

    static boolean isEmpty(Path folder) throws IOException {
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder)) {
            return !entries.iterator().hasNext();
        }
    }

    private static String firstOf(Path folder) throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.map(p -> p.getFileName().toString())
                    .sorted()
                    .findFirst()
                    .orElse("");
        }
    }
}
