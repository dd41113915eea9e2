package asfound.drawing.schedule.cell;

import asfound.model.Directory;
import asfound.model.Directory.Circuit;
import asfound.model.Problem;
import asfound.model.Stated;
import asfound.recordset.CrossedOut;
import asfound.recordset.Grid;
import asfound.recordset.GridRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Entries of a worksheet that are struck through. Whether such a circuit is gone, moved or only noted so is for a person to
 * say: it is read as it stands, told, and nothing is concluded from it.
 */
final class CrossedOutRows {

    /** More rows than these are told together. */
    private static final int SINGLY = 20;

    private final Grid grid;
    /** What is struck through, by the number of its row. */
    private final Map<Integer, List<String>> rows = new TreeMap<>();

    CrossedOutRows(Grid grid, List<CrossedOut.Cell> cells) {
        this.grid = grid;
        Map<Integer, GridRow> byNumber =
                grid.rows().stream().collect(Collectors.toMap(GridRow::number, r -> r, (a, b) -> a));
        for (CrossedOut.Cell cell : cells) {
            GridRow row = byNumber.get(cell.row());
            String text = row == null ? "" : row.cell(cell.column()).strip();
            if (!text.isEmpty())
                rows.computeIfAbsent(cell.row(), r -> new ArrayList<>()).add(text);
        }
    }

    List<Problem> problems() {
        List<Problem> out = new ArrayList<>();
        List<Integer> further = new ArrayList<>();
        rows.forEach((row, texts) -> {
            if (out.size() < SINGLY) out.add(problem(row, "Row " + row, texts.get(0)));
            else further.add(row);
        });
        if (!further.isEmpty()) {
            String all = further.stream().map(String::valueOf).collect(Collectors.joining(", "));
            out.add(problem(
                    further.get(0),
                    "Each of rows " + all,
                    rows.get(further.get(0)).get(0)));
        }
        return out;
    }

    private Problem problem(int row, String which, String text) {
        return new Problem(
                grid.place(new GridRow(row, List.of())),
                which + " holds text that is crossed out, as '" + text + "'; it was read as it stands.",
                "Look whether the entry still holds; clear what does not.");
    }

    /** The directory with the circuits of these rows unread; all of it doubtful where a value of its header is crossed out. */
    Directory doubted(Directory d) {
        if (rows.isEmpty()) return d;
        Set<Integer> unread = new TreeSet<>(d.unread());
        for (Circuit c : d.circuits()) if (isCrossedOut(c, d)) unread.add(c.position());
        boolean header = values(d.header())
                .anyMatch(v ->
                        v.place().filter(p -> rows.containsKey(p.rowNumber())).isPresent());
        double confidence = header ? Math.min(d.confidence(), Directory.DOUBTFUL - 0.05) : d.confidence();
        return new Directory(
                d.panel(),
                d.header(),
                d.circuits(),
                d.totals(),
                d.place(),
                confidence,
                List.copyOf(unread),
                d.problems());
    }

    /** One of its rows is: those from its own down to that of the next circuit on the same side. */
    private boolean isCrossedOut(Circuit c, Directory d) {
        int first = c.place().rowNumber();
        if (rows.containsKey(first)) return true;
        int next = d.circuits().stream()
                .filter(o -> o.position() % 2 == c.position() % 2)
                .mapToInt(o -> o.place().rowNumber())
                .filter(row -> row > first)
                .min()
                .orElse(first + c.poles());
        return c.poles() > 1
                && rows.keySet().stream().anyMatch(row -> row > first && row < Math.min(next, first + c.poles()));
    }

    private static Stream<Stated<?>> values(Directory.Header h) {
        return Stream.of(
                h.designation(),
                h.location(),
                h.fedFrom(),
                h.voltage(),
                h.phases(),
                h.wires(),
                h.busA(),
                h.mainA(),
                h.mains(),
                h.interruptingKA(),
                h.mounting());
    }
}
