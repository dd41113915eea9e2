package asfound.report.since;

import java.io.IOException;
import java.nio.file.Path;

/** A file is no audit that can be compared; the message is one line that says why and what to do. */
public final class NotAnAuditException extends IOException {

    private static final long serialVersionUID = 1;

    NotAnAuditException(Path file, String why) {
        super(file + " cannot be compared: " + why + " Give the audit.json of a report.");
    }
}
