package asfound.sample;

import static asfound.sample.Planted.expect;

import asfound.network.Device;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Plants a run of entries that stand one row from where they are, or sides exchanged over several rows. */
final class Shifts {

    private final Plants plants;

    Shifts(Plants plants) {
        this.plants = plants;
    }

    Optional<Planted> plant() {
        return plants.random.nextInt(4) == 0 ? exchanged() : shifted();
    }

    private Optional<Planted> shifted() {
        int length = 5 + plants.random.nextInt(3);
        return plants.board(b -> !b.rearranged && window(b, length).isPresent()).map(b -> {
            b.rearranged = true;
            List<Slot> run = new ArrayList<>(window(b, length).orElseThrow());
            if (plants.random.nextBoolean()) Collections.reverse(run);
            List<Load> loads = run.stream().map(s -> s.load).toList();
            boolean round = plants.random.nextBoolean();
            for (int i = 0; i < length; i++) {
                Slot s = run.get(i).take();
                s.load = i > 0 ? loads.get(i - 1) : round ? loads.get(length - 1) : null;
                s.nothing = s.load == null;
            }
            return new Planted("shifted-directory", traced -> along(run, traced, round));
        });
    }

    /** Consecutive single-pole entries of one side, with loads, that no other event uses. */
    private Optional<List<Slot>> window(Board b, int length) {
        for (int side = 0; side < 2; side++) {
            int parity = side;
            List<Slot> column = b.slots.stream()
                    .filter(s -> s.positions.get(0) % 2 == parity)
                    .toList();
            for (int i = 0; i + length <= column.size(); i++) {
                List<Slot> run = column.subList(i, i + length);
                if (run.stream().allMatch(Slot::isBranch)) return Optional.of(run);
            }
        }
        return Optional.empty();
    }

    /**
     * Each device but the first holds what the one before it is drawn with; three of them traced reveal the run, and with
     * it everything between. What was traced outside of that stands alone.
     */
    private static List<Planted.Expected> along(List<Slot> run, Set<Device> traced, boolean round) {
        List<Integer> hits = new ArrayList<>();
        for (int i = 1; i < run.size(); i++) if (traced.contains(run.get(i).device())) hits.add(i);
        List<Planted.Expected> all = new ArrayList<>();
        boolean revealed = hits.size() >= 3;
        int first = revealed ? hits.get(0) - 1 : -1, last = revealed ? hits.get(hits.size() - 1) : -2;
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < run.size(); i++) {
            Slot s = run.get(i);
            if (!traced.contains(s.device())) continue;
            if (i >= first && i <= last) parts.add(Plants.label(s));
            else all.add(expect(s.nothing ? "nothing-connected" : "feeds-other", Plants.label(s)));
        }
        if (revealed) all.add(expect("shifted-directory", parts.toArray(String[]::new)));
        return round && !revealed ? closedRing(run, traced, all) : all;
    }

    /** Few devices of a run that goes round may still close a ring when every one of them is traced. */
    private static List<Planted.Expected> closedRing(
            List<Slot> run, Set<Device> traced, List<Planted.Expected> otherwise) {
        boolean all = run.stream().allMatch(s -> traced.contains(s.device()));
        return all
                ? List.of(
                        expect("crossed-feeds", run.stream().map(Plants::label).toArray(String[]::new)))
                : otherwise;
    }

    private Optional<Planted> exchanged() {
        int rows = 4;
        return plants.board(b -> !b.rearranged && topRow(b, rows) >= 0).map(b -> {
            b.rearranged = true;
            int top = topRow(b, rows);
            List<Slot> all = new ArrayList<>();
            for (int row = top; row < top + rows; row++) {
                Slot odd = b.at(2 * row + 1).take(), even = b.at(2 * row + 2).take();
                Load load = odd.load;
                odd.load = even.load;
                even.load = load;
                all.add(odd);
                all.add(even);
            }
            return new Planted("shifted-directory", traced -> acrossRows(all, traced));
        });
    }

    private static int topRow(Board b, int rows) {
        for (int top = 0; 2 * (top + rows) <= b.slots.size(); top++) {
            boolean free = true;
            for (int p = 2 * top + 1; p <= 2 * (top + rows); p++)
                free &= b.at(p) != null && b.at(p).isBranch();
            if (free) return top;
        }
        return -1;
    }

    /** Traced in three rows or more it is one event; in fewer, crossed pairs and single devices. */
    private static List<Planted.Expected> acrossRows(List<Slot> all, Set<Device> traced) {
        List<Slot> seen = all.stream().filter(s -> traced.contains(s.device())).toList();
        long rows = seen.stream().map(Shifts::row).distinct().count();
        if (rows >= 3)
            return List.of(
                    expect("shifted-directory", seen.stream().map(Plants::label).toArray(String[]::new)));
        List<Planted.Expected> each = new ArrayList<>();
        for (Slot s : seen) {
            Optional<Slot> mate =
                    seen.stream().filter(o -> o != s && row(o) == row(s)).findFirst();
            if (mate.isEmpty()) each.add(expect("feeds-other", Plants.label(s)));
            else if (s.positions.get(0) % 2 == 1)
                each.add(expect("crossed-feeds", Plants.label(s), Plants.label(mate.get())));
        }
        return each;
    }

    private static int row(Slot s) {
        return (s.positions.get(0) - 1) / 2;
    }
}
