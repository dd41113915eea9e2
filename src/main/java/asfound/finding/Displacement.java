package asfound.finding;

import asfound.finding.Comparison.Answer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * One panel's entries that were found at another position of the same panel, and the ways in which a whole run of them
 * could have been displaced at once.
 */
final class Displacement {

    /** A run shorter than this is told entry by entry. */
    static final int RUN = 3;

    /** More untraced entries than this between two of a run, and they may be two events. */
    private static final int GAP = 3;

    /**
     * One way in which entries were displaced.
     *
     * @param how in words: {@code stand one row above where they were traced}
     * @param hits how many entries were found exactly where this way puts them
     * @param devices all devices that it explains, in order of position
     */
    record Way(String how, int hits, List<Comparison> devices) {}

    private final List<Comparison> entries;
    private final Map<Integer, Comparison> byPosition = new HashMap<>();
    /** An entry to the devices of the panel where what it names was found. */
    private final Map<Comparison, List<Comparison>> foundAt = new LinkedHashMap<>();

    private final Facts facts;

    Displacement(Facts facts, List<Comparison> panel) {
        this.facts = facts;
        entries = panel.stream()
                .filter(c -> Comparisons.isNumber(c.device().key()))
                .sorted(Comparator.comparingInt(Displacement::position))
                .toList();
        for (Comparison c : entries) byPosition.put(position(c), c);
        for (Comparison c : entries) {
            boolean displaced = facts.isOpen(c) && !c.backfed() && c.seen().size() == 1;
            if (!displaced || c.answer() == Answer.NOTHING) continue;
            for (Comparison origin : Origins.of(facts, c))
                if (Comparisons.isNumber(origin.device().key()) && byPosition.get(position(origin)) == origin)
                    foundAt.computeIfAbsent(origin, o -> new ArrayList<>(1)).add(c);
        }
    }

    /** The way that explains most entries; empty where none explains a whole run. Of ways as good, the plainest. */
    Optional<Way> largest() {
        if (foundAt.size() < RUN) return Optional.empty();
        List<Way> ways = new ArrayList<>();
        for (int side = 1; side >= 0; side--) {
            int odd = side;
            List<Comparison> column =
                    entries.stream().filter(c -> position(c) % 2 == odd).toList();
            ways.addAll(shifts(column, true, odd == 1 ? "odd" : "even"));
            ways.addAll(shifts(column, false, odd == 1 ? "odd" : "even"));
        }
        ways.addAll(shifts(entries, false, "both"));
        exchangedSides().ifPresent(ways::add);
        renumbered().ifPresent(ways::add);
        return ways.stream()
                .max(Comparator.comparingInt(Way::hits))
                .map(best -> ways.stream()
                        .filter(w -> w.hits() == best.hits())
                        .findFirst()
                        .orElseThrow());
    }

    static int position(Comparison c) {
        return Integer.parseInt(c.device().key());
    }

    private static int row(Comparison c) {
        return (position(c) - 1) / 2;
    }

    /** Runs along one column: each entry found a constant number of rows (or, with multi-pole devices, of entries) on. */
    private List<Way> shifts(List<Comparison> column, boolean byRow, String side) {
        TreeSet<Integer> offsets = new TreeSet<>(
                Comparator.comparingInt((Integer k) -> Math.abs(k)).thenComparing(Comparator.reverseOrder()));
        Map<Comparison, Integer> index = new HashMap<>();
        for (int i = 0; i < column.size(); i++) index.put(column.get(i), byRow ? row(column.get(i)) : i);
        for (Comparison entry : column)
            for (Comparison at : foundAt.getOrDefault(entry, List.of()))
                if (index.containsKey(at)) offsets.add(index.get(at) - index.get(entry));
        List<Way> ways = new ArrayList<>();
        for (int k : offsets) ways.addAll(runs(column, index, k, side));
        return ways;
    }

    private List<Way> runs(List<Comparison> column, Map<Comparison, Integer> index, int k, String side) {
        Map<Integer, Comparison> at = new HashMap<>();
        index.forEach((c, i) -> at.put(i, c));
        List<Way> ways = new ArrayList<>();
        List<Comparison> hits = new ArrayList<>();
        int untold = 0;
        for (Comparison entry : column) {
            Comparison there = at.get(index.get(entry) + k);
            boolean hit =
                    there != null && foundAt.getOrDefault(entry, List.of()).contains(there);
            if (hit
                    && untold > 0
                    && !hits.isEmpty()
                    && rowsApart(hits.get(hits.size() - 1), k, index, at) != row(there) - row(entry))
                close(ways, hits, index, at, k, side);
            untold = hit ? 0 : untold + 1;
            if (hit) hits.add(entry);
            else if (untold > GAP || speaksAgainst(entry, there)) close(ways, hits, index, at, k, side);
        }
        close(ways, hits, index, at, k, side);
        return ways;
    }

    private static int rowsApart(Comparison entry, int k, Map<Comparison, Integer> index, Map<Integer, Comparison> at) {
        return row(at.get(index.get(entry) + k)) - row(entry);
    }

    /** The entry was found as drawn or elsewhere, or what was traced where it should be is something else. */
    private boolean speaksAgainst(Comparison entry, Comparison there) {
        if (entry.drawn().isEmpty()) return false;
        if (entry.answer() == Answer.AGREES || foundAt.containsKey(entry)) return true;
        return there != null && !there.seen().isEmpty();
    }

    private void close(
            List<Way> ways,
            List<Comparison> hits,
            Map<Comparison, Integer> index,
            Map<Integer, Comparison> at,
            int k,
            String side) {
        if (hits.size() >= RUN) {
            int first = index.get(hits.get(0)), last = index.get(hits.get(hits.size() - 1));
            List<Comparison> devices = new ArrayList<>();
            for (int i = Math.min(first, first + k); i <= Math.max(last, last + k); i++)
                if (at.containsKey(i) && (facts.isOpen(at.get(i)))) devices.add(at.get(i));
            ways.add(new Way(shiftInWords(k, side), hits.size(), devices));
        }
        hits.clear();
    }

    private static String shiftInWords(int k, String side) {
        String rows = Math.abs(k) == 1 ? "one row" : Math.abs(k) + " rows";
        if (side.equals("both")) rows = Math.abs(k) == 1 ? "one position" : Math.abs(k) + " positions";
        return "stand " + rows + (k > 0 ? " above" : " below") + " where they were traced"
                + (side.equals("both") ? "" : ", on the " + side + " side");
    }

    private Optional<Way> exchangedSides() {
        List<Comparison> hits = foundAt.keySet().stream()
                .filter(e -> foundAt.get(e).stream().anyMatch(a -> row(a) == row(e)))
                .toList();
        if (hits.stream().map(Displacement::row).distinct().count() < RUN) return Optional.empty();
        int top = hits.stream().mapToInt(Displacement::row).min().orElseThrow();
        int bottom = hits.stream().mapToInt(Displacement::row).max().orElseThrow();
        List<Comparison> within =
                entries.stream().filter(c -> row(c) >= top && row(c) <= bottom).toList();
        boolean contradicted = within.stream()
                .anyMatch(c -> c.answer() == Answer.AGREES && !c.drawn().isEmpty());
        if (contradicted) return Optional.empty();
        return Optional.of(new Way(
                "stand on the opposite side from where they were traced (odd and even exchanged)",
                hits.size(),
                within.stream().filter(facts::isOpen).toList()));
    }

    /** Drawn as numbered across the two sides and found numbered down them, or the other way. */
    private Optional<Way> renumbered() {
        int size = entries.stream().mapToInt(Displacement::position).max().orElse(0);
        int half = (size + 1) / 2;
        for (boolean downFound : new boolean[] {true, false}) {
            int hits = 0, against = 0;
            for (Comparison e : entries) {
                int p = position(e), moved = downFound ? down(p, half) : across(p, half);
                boolean hit = foundAt.getOrDefault(e, List.of()).stream().anyMatch(a -> position(a) == moved);
                if (hit) hits++;
                else if (!e.drawn().isEmpty() && moved != p && (e.answer() == Answer.AGREES || foundAt.containsKey(e)))
                    against++;
            }
            if (hits >= RUN && against == 0)
                return Optional.of(new Way(
                        downFound
                                ? "are drawn as numbered across the two sides and were traced as numbered down them"
                                : "are drawn as numbered down the two sides and were traced as numbered across them",
                        hits,
                        entries.stream().filter(facts::isOpen).toList()));
        }
        return Optional.empty();
    }

    /** The number that a place has when numbered down, from the number that it has when numbered across. */
    private static int down(int across, int half) {
        return (across - 1) / 2 + 1 + (across % 2 == 0 ? half : 0);
    }

    private static int across(int down, int half) {
        return down <= half ? 2 * down - 1 : 2 * (down - half);
    }
}
