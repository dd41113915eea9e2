package asfound.sample;

import asfound.model.EquipmentKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * A random building as it was first drawn: service, main switchboard, distribution boards, transformers, panels of
 * 480Y/277 and 208Y/120, a generator with its transfer switch, a solar inverter. Paper and truth agree until events are
 * planted.
 */
final class Campus {

    static final String HIGH = "480Y/277", LOW = "208Y/120";

    final Random random;
    final List<Board> boards = new ArrayList<>();
    /** Tie or source rows of the one-line that no slot stands for: from, device, to. */
    final List<String[]> furtherRows = new ArrayList<>();

    /** Boards of 480Y/277 with room for another feeder, in order of their making, of the first {@code looked} boards. */
    private final List<Board> roomy = new ArrayList<>();

    private int looked;
    private int loads;
    private int floor = 1;

    Campus(Random random, int panels) {
        this.random = random;
        Board utility = add(new Board("UTIL-1", EquipmentKind.UTILITY, HIGH));
        Board main = board("MSB", EquipmentKind.SWITCHBOARD, HIGH, 42);
        main.behind = utility;
        furtherRows.add(new String[] {utility.name, "", main.name});
        standby(main);
        solar(main);
        for (int i = 0; i < panels; i++) panel(i);
        for (Board b : boards) if (b.hasSchedule()) fill(b);
    }

    /** Boards with a schedule, in order of their making. */
    List<Board> scheduled() {
        return boards.stream()
                .filter(b -> b.hasSchedule() && b.drawn && b.there)
                .toList();
    }

    Load newLoad() {
        return Load.numbered(++loads, random);
    }

    String newName(String mark) {
        return mark + "-" + (90 + boards.size()) + "X";
    }

    Board add(Board b) {
        boards.add(b);
        return b;
    }

    private Board board(String name, EquipmentKind kind, String voltage, int positions) {
        Board b = add(new Board(name, kind, voltage));
        for (int p = 1; p <= positions; p++) b.slots.add(new Slot(b, List.of(p), 20));
        return b;
    }

    private void standby(Board main) {
        Board generator = add(new Board("GEN-1", EquipmentKind.GENERATOR, HIGH));
        Board transfer = add(new Board("ATS-1", EquipmentKind.TRANSFER_SWITCH, HIGH));
        feed(main, transfer, 100, 3);
        furtherRows.add(new String[] {generator.name, "", transfer.name});
        Board emergency = board("EDP", EquipmentKind.PANEL, HIGH, 30);
        emergency.behind = transfer;
        furtherRows.add(new String[] {transfer.name, "", emergency.name});
    }

    private void solar(Board main) {
        Board inverter = add(new Board("INV-1", EquipmentKind.INVERTER, HIGH));
        Slot slot = merge(main, 3);
        slot.use = asfound.model.Directory.Use.LOAD;
        slot.drawnText = "INV-1";
        slot.rating = 60;
        slot.backfedBy = inverter;
        furtherRows.add(new String[] {inverter.name, "", main.name});
    }

    /** Every third panel stands behind a transformer of its own; every fifth feeds others. */
    private void panel(int i) {
        for (; looked < boards.size(); looked++) {
            Board b = boards.get(looked);
            if (b.hasSchedule() && b.voltage.equals(HIGH)) roomy.add(b);
        }
        if (i % 5 == 4) floor++;
        Board from = roomy.get(random.nextInt(roomy.size()));
        char letter = (char) ('A' + i % 5);
        if (i % 3 == 0) {
            Board transformer = add(new Board("T-" + (i + 1), EquipmentKind.TRANSFORMER, HIGH));
            feed(from, transformer, 100, 3);
            Board low = board("LP-" + floor + letter, EquipmentKind.PANEL, LOW, 42);
            low.behind = transformer;
            furtherRows.add(new String[] {transformer.name, "", low.name});
        } else {
            Board panel = board(
                    (i % 3 == 1 ? "HP-" : "DP-") + floor + letter, EquipmentKind.PANEL, HIGH, i % 2 == 0 ? 42 : 30);
            feed(from, panel, 100 + 25 * random.nextInt(2), 3);
        }
        if (!roomFor(from)) roomy.remove(from);
    }

    private static boolean roomFor(Board b) {
        return b.slots.stream()
                        .filter(s -> s.use == asfound.model.Directory.Use.SPARE)
                        .count()
                > 12;
    }

    private void feed(Board from, Board to, int rating, int poles) {
        Slot slot = merge(from, poles);
        slot.rating = rating;
        slot.draw(to);
    }

    /** Takes consecutive free positions of one side for one device. */
    private static Slot merge(Board b, int poles) {
        for (Slot s : b.slots) {
            List<Integer> positions = IntStream.range(0, poles)
                    .mapToObj(i -> s.positions.get(0) + 2 * i)
                    .toList();
            List<Slot> here = b.slots.stream()
                    .filter(o -> o.use == asfound.model.Directory.Use.SPARE && o.poles() == 1)
                    .filter(o -> positions.contains(o.positions.get(0)))
                    .toList();
            if (here.size() != poles) continue;
            b.slots.removeAll(here);
            Slot merged = new Slot(b, positions, 20);
            b.slots.add(merged);
            b.slots.sort(java.util.Comparator.comparing(x -> x.positions.get(0)));
            return merged;
        }
        throw new IllegalStateException("no room in " + b.name);
    }

    private void fill(Board b) {
        for (Slot s : b.slots)
            if (s.use == asfound.model.Directory.Use.SPARE && s.drawnText == null) {
                int roll = random.nextInt(10);
                if (roll < 7) s.draw(newLoad());
                else if (roll == 9) s.use = asfound.model.Directory.Use.SPACE;
                s.loadVA = roll < 7 ? new double[] {100 * (1 + random.nextInt(12))} : new double[] {};
            }
    }
}
