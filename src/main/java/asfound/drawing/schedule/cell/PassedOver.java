package asfound.drawing.schedule.cell;

import asfound.drawing.schedule.phrase.PositionText;
import asfound.drawing.schedule.text.DeviceText;
import asfound.model.Directory;
import asfound.model.Problem;
import asfound.model.Stated;
import asfound.recordset.Grid;
import asfound.recordset.GridRow;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Rows of a table that begin like circuits and were read as none: a damaged row in between can end a directory early, and
 * what stands below it must not be lost without a word.
 */
final class PassedOver {

    private static final int NAMED = 8;
    private static final Pattern BEFORE_TEXT = Pattern.compile("\\s*(\\d{1,3})[\\s:)]+\\p{L}.*");

    private final Grid grid;
    private final List<Directory> directories;

    private PassedOver(Grid grid, List<Directory> directories) {
        this.grid = grid;
        this.directories = directories;
    }

    static Optional<Problem> problem(Grid grid, List<Directory> directories) {
        List<GridRow> rows = new PassedOver(grid, directories).rows();
        if (rows.isEmpty()) return Optional.empty();
        String named = rows.stream()
                .limit(NAMED)
                .map(r -> Integer.toString(r.number()))
                .collect(Collectors.joining(", "));
        String more = rows.size() > NAMED ? " and " + (rows.size() - NAMED) + " more" : "";
        return Optional.of(new Problem(
                grid.place(rows.get(0)),
                (rows.size() == 1
                                ? "A row looks like a circuit and was not read: row "
                                : rows.size() + " rows look like circuits and were not read: rows ")
                        + named + more + ".",
                "Look for a damaged or foreign row above it, and check these circuits by hand."));
    }

    /** The rows whose position no circuit has, or has less often than it is written. */
    private List<GridRow> rows() {
        Map<Integer, Integer> read = new HashMap<>();
        Map<Integer, Set<Integer>> positionsOfRow = new HashMap<>();
        for (Directory d : directories)
            for (Directory.Circuit c : d.circuits()) {
                Set<Integer> all = new HashSet<>(c.positions());
                all.forEach(p -> read.merge(p, 1, Integer::sum));
                positionsOfRow
                        .computeIfAbsent(c.place().rowNumber(), r -> new HashSet<>())
                        .addAll(all);
            }
        List<GridRow> passed = new ArrayList<>();
        for (int column : columns(positionsOfRow)) {
            Map<Integer, Integer> written = new HashMap<>();
            for (GridRow row : grid.rows()) {
                OptionalInt number = number(row, column);
                if (number.isEmpty() || isOfHeader(row, column)) continue;
                int times = written.merge(number.getAsInt(), 1, Integer::sum);
                if (times > read.getOrDefault(number.getAsInt(), 0) && !passed.contains(row)) passed.add(row);
            }
        }
        return passed;
    }

    /** The columns in which the circuits that were read have their positions. */
    private List<Integer> columns(Map<Integer, Set<Integer>> positionsOfRow) {
        int width = grid.rows().stream().mapToInt(r -> r.cells().size()).max().orElse(0);
        List<Integer> columns = new ArrayList<>();
        for (int c = 0; c < width; c++) {
            int column = c;
            long same = grid.rows().stream()
                    .filter(r -> positionsOfRow.containsKey(r.number()))
                    .filter(r -> number(r, column).stream()
                            .anyMatch(n -> positionsOfRow.get(r.number()).contains(n)))
                    .count();
            long other = grid.rows().stream()
                    .filter(r -> positionsOfRow.containsKey(r.number()))
                    .filter(r -> number(r, column).stream()
                            .anyMatch(n -> !positionsOfRow.get(r.number()).contains(n)))
                    .count();
            if (same > 2 * other) columns.add(c);
        }
        return columns;
    }

    /** A value that a directory's header was read from, and no position. */
    private boolean isOfHeader(GridRow row, int column) {
        String cell = row.cell(column).strip();
        return directories.stream()
                .flatMap(d -> values(d.header()))
                .anyMatch(v -> v.raw().equals(cell)
                        && v.place().filter(p -> p.rowNumber() == row.number()).isPresent());
    }

    private static Stream<Stated<?>> values(Directory.Header h) {
        return Stream.of(h.phases(), h.wires(), h.busA(), h.mainA(), h.interruptingKA(), h.voltage());
    }

    /** The first of the positions in a cell, or the number before a text; a rating is none. */
    private static OptionalInt number(GridRow row, int column) {
        String cell = row.cell(column);
        Optional<PositionText> position = PositionText.parse(cell);
        if (position.isPresent() && !position.get().isWay())
            return OptionalInt.of(position.get().first());
        Matcher m = BEFORE_TEXT.matcher(cell);
        boolean rating = !m.matches() || DeviceText.parse(cell).isPresent();
        return rating ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(m.group(1)));
    }
}
