package asfound.report.folder;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.Locale;

/** The report could not be written; the message is one line that says why and what to do. What was there before is whole. */
public final class CannotWriteException extends IOException {

    private static final long serialVersionUID = 1;

    CannotWriteException(String message) {
        super(message);
    }

    private CannotWriteException(String message, Throwable cause) {
        super(message, cause);
    }

    /** The refusal to write to {@code folder} after {@code cause}, in the user's words. */
    static CannotWriteException of(Path folder, Throwable cause) {
        if (cause instanceof CannotWriteException already) return already;
        return new CannotWriteException(
                "Could not write the report to " + folder + ": " + why(cause) + " What was there before is unchanged.",
                cause);
    }

    private static String why(Throwable cause) {
        String text = String.valueOf(cause.getMessage());
        String lower = text.toLowerCase(Locale.ROOT);
        if (lower.contains("no space left") || lower.contains("not enough space"))
            return "the disk is full. Free some space, or give --out a folder on another disk.";
        if (lower.contains("quota")) return "the disk quota is used up. Free some space, or give --out another folder.";
        if (cause instanceof AccessDeniedException denied)
            return "no permission to write at " + denied.getFile() + ". Give --out a folder you may write to.";
        if (cause instanceof ReadOnlyFileSystemException || lower.contains("read-only file system"))
            return "the disk can only be read. Give --out a folder you may write to.";
        if (lower.contains("device or resource busy") || lower.contains("invalid cross-device"))
            return "it is a mounted disk and cannot be replaced in one step. Give --out a new folder inside it.";
        if (cause instanceof FileSystemException plain && plain.getReason() == null)
            return "nothing can be made at " + plain.getFile() + ". Give --out a folder you may write to.";
        return text + " Mend that, or give --out another folder.";
    }
}
