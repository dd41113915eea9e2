package asfound.finding;

import asfound.finding.Comparison.Answer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * Runs along one column of a panel's entries: each found a constant number of rows on, or, with multi-pole devices among
 * them, a constant number of entries.
 */
final class ShiftRuns {

    /** More untraced entries than this between two of a run, and they may be two events. */
    private static final int GAP = 3;

    private final Displaced panel;
    private final List<Comparison> column;
    private final String side;
    private final Map<Comparison, Integer> index = new HashMap<>();
    private final Map<Integer, Comparison> at = new HashMap<>();
    private final List<Shift> shifts = new ArrayList<>();

    private ShiftRuns(Displaced panel, List<Comparison> column, boolean byRow, String side) {
        this.panel = panel;
        this.column = column;
        this.side = side;
        for (int i = 0; i < column.size(); i++) index.put(column.get(i), byRow ? Displaced.row(column.get(i)) : i);
        index.forEach((c, i) -> at.put(i, c));
    }

    /** @param side {@code odd}, {@code even} or {@code both} */
    static List<Shift> of(Displaced panel, List<Comparison> column, boolean byRow, String side) {
        ShiftRuns runs = new ShiftRuns(panel, column, byRow, side);
        for (int k : runs.offsets()) runs.along(k);
        return runs.shifts;
    }

    /** The distances that occur, small ones first. */
    private TreeSet<Integer> offsets() {
        TreeSet<Integer> offsets = new TreeSet<>(
                Comparator.comparingInt((Integer k) -> Math.abs(k)).thenComparing(Comparator.reverseOrder()));
        for (Comparison entry : column)
            for (Comparison there : panel.foundAt(entry))
                if (index.containsKey(there)) offsets.add(index.get(there) - index.get(entry));
        return offsets;
    }

    private void along(int k) {
        List<Comparison> hits = new ArrayList<>();
        int untold = 0;
        for (Comparison entry : column) {
            Comparison there = at.get(index.get(entry) + k);
            boolean hit = there != null && panel.foundAt(entry).contains(there);
            boolean otherStep = hit
                    && untold > 0
                    && !hits.isEmpty()
                    && rowsMoved(hits.get(hits.size() - 1), k) != rowsMoved(entry, k);
            if (otherStep) close(hits, k);
            untold = hit ? 0 : untold + 1;
            if (hit) hits.add(entry);
            else if (untold > GAP || speaksAgainst(entry, there)) close(hits, k);
        }
        close(hits, k);
    }

    private int rowsMoved(Comparison entry, int k) {
        return Displaced.row(at.get(index.get(entry) + k)) - Displaced.row(entry);
    }

    /** The entry was found as drawn or elsewhere, or what was traced where it should be is something else. */
    private boolean speaksAgainst(Comparison entry, Comparison there) {
        if (entry.drawn().isEmpty()) return false;
        if (entry.answer() == Answer.AGREES || panel.isMoved(entry)) return true;
        return there != null && !there.seen().isEmpty();
    }

    private void close(List<Comparison> hits, int k) {
        if (hits.size() >= Shift.RUN) {
            int first = index.get(hits.get(0)), last = index.get(hits.get(hits.size() - 1));
            List<Comparison> devices = new ArrayList<>();
            for (int i = Math.min(first, first + k); i <= Math.max(last, last + k); i++)
                if (at.containsKey(i) && panel.isOpen(at.get(i))) devices.add(at.get(i));
            shifts.add(new Shift(Shift.Manner.MOVED_ALONG, inWords(hits, k), List.copyOf(hits), devices));
        }
        hits.clear();
    }

    private String inWords(List<Comparison> hits, int k) {
        boolean both = side.equals("both");
        List<Integer> rows =
                hits.stream().map(e -> Math.abs(rowsMoved(e, k))).distinct().toList();
        boolean byRows = !both || k % 2 == 0 && rows.size() == 1;
        int n = byRows && both ? rows.get(0) : Math.abs(k);
        String unit = byRows ? "row" : "position";
        return "stand " + (n == 1 ? "one " + unit : n + " " + unit + "s") + (k > 0 ? " above" : " below")
                + " where they were traced"
                + (!both ? ", on the " + side + " side" : byRows ? ", on both sides" : "");
    }
}
