package asfound.recordset;

import java.nio.file.Path;

/**
 * One file of the record set.
 *
 * @param file its name relative to the record set, with forward slashes
 * @param path where it is
 * @param kind what it is, told from its content
 * @param bytes its size
 * @param sha256 its content's hash in lower-case hexadecimal
 */
public record Source(String file, Path path, Kind kind, long bytes, String sha256) {

    /** What a file is. */
    public enum Kind {
        /** A PDF: schedules, or pages without one. */
        PDF,
        /** An Office Open XML workbook. */
        WORKBOOK,
        /** A table with panel, circuit and found. */
        SURVEY,
        /** A table with from and to. */
        FEEDERS,
        /** A table with name and kind. */
        EQUIPMENT,
        /** A table of circuits: a panel schedule. */
        SCHEDULE_TABLE,
        /** {@code record.yaml} or a list of accepted findings. */
        SETTINGS,
        /** Not understood, and reported. */
        UNKNOWN
    }
}
