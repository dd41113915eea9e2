package asfound.finding;

import asfound.finding.Comparison.Answer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** The ways in which whole runs of one panel's entries could have been displaced at once. */
final class Displacement {

    private final Displaced panel;

    private Displacement(Displaced panel) {
        this.panel = panel;
    }

    /** Every way that explains a whole run, plainer ones first; none where a ring of exchanged devices is plainer. */
    static List<Shift> of(Facts facts, List<Comparison> devices) {
        Displaced panel = new Displaced(facts, devices);
        if (panel.moved().size() < Shift.RUN) return List.of();
        Displacement d = new Displacement(panel);
        List<Shift> ways = new ArrayList<>();
        for (boolean odd : new boolean[] {true, false}) {
            ways.addAll(ShiftRuns.of(panel, panel.side(odd), true, odd ? "odd" : "even"));
            ways.addAll(ShiftRuns.of(panel, panel.side(odd), false, odd ? "odd" : "even"));
        }
        ways.addAll(d.exchangedSides());
        ways.addAll(ShiftRuns.of(panel, panel.entries(), false, "both"));
        d.renumbered().ifPresent(ways::add);
        List<Rings.Ring> rings = ways.isEmpty() ? List.of() : panel.rings();
        return ways.stream()
                .filter(w -> rings.stream().noneMatch(r -> isPlainer(r.devices(), w)))
                .toList();
    }

    /**
     * All that moved are members of one ring, and the run leaves some member over or is no longer than the shortest run:
     * the devices changed places, and no card was shifted.
     */
    private static boolean isPlainer(List<Comparison> ring, Shift way) {
        return ring.containsAll(way.moved())
                && (way.hits() <= Shift.RUN || !way.devices().containsAll(ring));
    }

    /** Runs of rows whose odd and even entries changed sides, unbroken by a row that was found otherwise. */
    private List<Shift> exchangedSides() {
        Map<Integer, List<Comparison>> rows = panel.entries().stream()
                .collect(Collectors.groupingBy(Displaced::row, TreeMap::new, Collectors.toList()));
        List<Shift> ways = new ArrayList<>();
        List<List<Comparison>> run = new ArrayList<>();
        for (List<Comparison> row : rows.values()) {
            if (row.stream().noneMatch(this::speaksAgainstExchange)) run.add(row);
            else close(run, ways);
        }
        close(run, ways);
        return ways;
    }

    private void close(List<List<Comparison>> run, List<Shift> ways) {
        while (!run.isEmpty() && exchangedIn(run.get(0)).isEmpty()) run.remove(0);
        while (!run.isEmpty() && exchangedIn(run.get(run.size() - 1)).isEmpty()) run.remove(run.size() - 1);
        long rows = run.stream().filter(row -> !exchangedIn(row).isEmpty()).count();
        if (rows >= Shift.RUN)
            ways.add(new Shift(
                    Shift.Manner.SIDES_EXCHANGED,
                    "stand on the opposite side from where they were traced (odd and even exchanged)",
                    run.stream().flatMap(row -> exchangedIn(row).stream()).toList(),
                    run.stream().flatMap(List::stream).filter(panel::isOpen).toList()));
        run.clear();
    }

    private List<Comparison> exchangedIn(List<Comparison> row) {
        return row.stream().filter(e -> isInRow(e, panel.foundAt(e))).toList();
    }

    /** The entry was found as drawn or in another row, or its device feeds what belongs to another row. */
    private boolean speaksAgainstExchange(Comparison c) {
        if (c.answer() == Answer.AGREES && !c.drawn().isEmpty()) return true;
        List<Comparison> at = panel.foundAt(c), from = panel.originsOf(c);
        return !at.isEmpty() && !isInRow(c, at) || !from.isEmpty() && !isInRow(c, from);
    }

    private static boolean isInRow(Comparison c, List<Comparison> others) {
        return others.stream().anyMatch(o -> Displaced.row(o) == Displaced.row(c));
    }

    /** Drawn as numbered across the two sides and found numbered down them, or the other way. */
    private Optional<Shift> renumbered() {
        int size = panel.entries().stream().mapToInt(Displaced::position).max().orElse(0);
        return renumbered(size, true).or(() -> renumbered(size, false));
    }

    private Optional<Shift> renumbered(int size, boolean downFound) {
        int half = (size + 1) / 2;
        List<Comparison> hits = new ArrayList<>();
        for (Comparison e : panel.entries()) {
            int p = Displaced.position(e), moved = downFound ? down(p, half) : across(p, half);
            if (panel.foundAt(e).stream().anyMatch(a -> Displaced.position(a) == moved)) hits.add(e);
            else if (!e.drawn().isEmpty() && moved != p && (e.answer() == Answer.AGREES || panel.isMoved(e)))
                return Optional.empty();
        }
        if (hits.size() < Shift.RUN) return Optional.empty();
        String how = downFound
                ? "are drawn as numbered across the two sides and were traced as numbered down them"
                : "are drawn as numbered down the two sides and were traced as numbered across them";
        return Optional.of(new Shift(
                Shift.Manner.NUMBERED_OTHERWISE,
                how,
                hits,
                panel.entries().stream().filter(panel::isOpen).toList()));
    }

    /** The number that a place has when numbered down, from the number that it has when numbered across. */
    private static int down(int across, int half) {
        return (across - 1) / 2 + 1 + (across % 2 == 0 ? half : 0);
    }

    private static int across(int down, int half) {
        return down <= half ? 2 * down - 1 : 2 * (down - half);
    }
}
