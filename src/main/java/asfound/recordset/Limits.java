package asfound.recordset;

import java.time.Duration;
import java.util.List;

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

    /** The names under which a user can set each limit, with its unit. */
    public static final List<String> NAMES = List.of(
            "file-mb", "pages", "page-seconds", "file-seconds", "rows", "columns", "field-chars", "expanded-mb");

    public static Limits usual() {
        return new Limits(
                256L << 20, 2_000, Duration.ofSeconds(20), Duration.ofMinutes(5), 2_000_000, 512, 32_000, 512L << 20);
    }

    /**
     * These limits with one of them set otherwise.
     *
     * @param name one of {@link #NAMES}
     * @throws IllegalArgumentException where there is no such limit, or the value is below 1
     */
    public Limits with(String name, int value) {
        if (value < 1) throw new IllegalArgumentException("The limit " + name + " must be at least 1.");
        long megabytes = (long) value << 20;
        Duration seconds = Duration.ofSeconds(value);
        return switch (name) {
            case "file-mb" ->
                new Limits(megabytes, pages, pageTime, fileTime, rows, columns, fieldChars, expandedBytes);
            case "pages" -> new Limits(fileBytes, value, pageTime, fileTime, rows, columns, fieldChars, expandedBytes);
            case "page-seconds" ->
                new Limits(fileBytes, pages, seconds, fileTime, rows, columns, fieldChars, expandedBytes);
            case "file-seconds" ->
                new Limits(fileBytes, pages, pageTime, seconds, rows, columns, fieldChars, expandedBytes);
            case "rows" -> new Limits(fileBytes, pages, pageTime, fileTime, value, columns, fieldChars, expandedBytes);
            case "columns" -> new Limits(fileBytes, pages, pageTime, fileTime, rows, value, fieldChars, expandedBytes);
            case "field-chars" -> new Limits(fileBytes, pages, pageTime, fileTime, rows, columns, value, expandedBytes);
            case "expanded-mb" ->
                new Limits(fileBytes, pages, pageTime, fileTime, rows, columns, fieldChars, megabytes);
            default ->
                throw new IllegalArgumentException(
                        "There is no limit '" + name + "'. The limits are " + String.join(", ", NAMES) + ".");
        };
    }
}
