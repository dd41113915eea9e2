package asfound.recordset;

import java.time.Duration;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * How much a single file or a record set may ask for. What goes over a limit is reported with the limit's name, and the
 * rest of the set is still read.
 *
 * @param amounts every limit's in bytes, milliseconds or as a count
 */
public record Limits(Map<Limit, Long> amounts) {

    public Limits {
        amounts = Map.copyOf(amounts);
        if (amounts.size() != Limit.values().length) throw new IllegalArgumentException("a limit is missing");
    }

    public static Limits usual() {
        EnumMap<Limit, Long> amounts = new EnumMap<>(Limit.class);
        for (Limit limit : Limit.values()) amounts.put(limit, limit.amount(limit.usual()));
        return new Limits(amounts);
    }

    /**
     * These limits with one of them set otherwise.
     *
     * @param name as a user writes it
     * @throws IllegalArgumentException where there is no such limit, or the value is below 1
     */
    public Limits with(String name, int value) {
        Limit limit = Arrays.stream(Limit.values())
                .filter(l -> l.inWords().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("There is no limit '" + name + "'. The limits are "
                        + Arrays.stream(Limit.values()).map(Limit::inWords).collect(Collectors.joining(", ")) + "."));
        if (value < 1) throw new IllegalArgumentException("The limit " + name + " must be at least 1.");
        return with(limit, limit.amount(value));
    }

    /** These limits with one of them set otherwise, in bytes, milliseconds or as a count; 0 lets nothing through. */
    public Limits with(Limit limit, long amount) {
        EnumMap<Limit, Long> changed = new EnumMap<>(amounts);
        changed.put(limit, amount);
        return new Limits(changed);
    }

    /** Bytes, milliseconds or a count. */
    public long amount(Limit limit) {
        return amounts.get(limit);
    }

    private int count(Limit limit) {
        return Math.toIntExact(amount(limit));
    }

    /** The largest file that is opened. */
    public long fileBytes() {
        return amount(Limit.FILE_MB);
    }

    /** The most pages of one drawing that are read. */
    public int pages() {
        return count(Limit.PAGES);
    }

    /** The longest that one page may take. */
    public Duration pageTime() {
        return Duration.ofMillis(amount(Limit.PAGE_SECONDS));
    }

    /** The most letters, and the most ruled lines, of one page. */
    public int pageObjects() {
        return count(Limit.PAGE_OBJECTS);
    }

    /** The longest that one file may take. */
    public Duration fileTime() {
        return Duration.ofMillis(amount(Limit.FILE_SECONDS));
    }

    /** The most rows of one table. */
    public int rows() {
        return count(Limit.ROWS);
    }

    /** The most columns of one table. */
    public int columns() {
        return count(Limit.COLUMNS);
    }

    /** The longest single field of a table. */
    public int fieldChars() {
        return count(Limit.FIELD_CHARS);
    }

    /** The most that compressed content may expand to. */
    public long expandedBytes() {
        return amount(Limit.EXPANDED_MB);
    }
}
