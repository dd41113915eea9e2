package asfound.recordset;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.NoSuchFileException;

/** Says in plain words why the system would not give a file. */
public final class Reasons {

    static final String CHECK_FILE = "Check that it is there and may be read, and run again.";

    private Reasons() {}

    /** A whole sentence. */
    public static String unreadable(IOException e) {
        if (e instanceof NoSuchFileException || e instanceof FileNotFoundException)
            return "The file has vanished since the folder was listed.";
        if (e instanceof AccessDeniedException) return "The file may not be read (no permission).";
        if (e instanceof FileSystemLoopException) return "The folder contains itself by way of a link.";
        String message = e.getMessage();
        return "The file could not be read: "
                + (message == null
                        ? e.getClass().getSimpleName()
                        : message.lines().findFirst().orElse(""))
                + ".";
    }
}
