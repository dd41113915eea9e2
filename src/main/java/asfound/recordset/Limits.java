package asfound.recordset;

import java.time.Duration;

/**
 * How much a single file may ask for. What goes over a limit is reported with the limit's name, and the rest of the set
 * is still read.
 *
 * @param fileBytes the largest file that is opened
 * @param pages the most pages of one drawing that are read
 * @param pageTime the longest that one page may take
 * @param fileTime the longest that one file may take
 * @param rows the most rows of one table
 * @param columns the most columns of one table
 * @param fieldChars the longest single field of a table
 * @param expandedBytes the most that compressed content may expand to
 */
public record Limits(
        long fileBytes,
        int pages,
        Duration pageTime,
        Duration fileTime,
        int rows,
        int columns,
        int fieldChars,
        long expandedBytes) {

    public static Limits usual() {
        return new Limits(
                256L << 20, 2_000, Duration.ofSeconds(20), Duration.ofMinutes(5), 2_000_000, 512, 32_000, 512L << 20);
    }
}
