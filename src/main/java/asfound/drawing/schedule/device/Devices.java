package asfound.drawing.schedule.device;

import asfound.drawing.schedule.row.Row;
import asfound.drawing.schedule.text.Role;
import asfound.drawing.schedule.text.Texts;
import asfound.drawing.schedule.text.UseText;
import asfound.model.Directory.Use;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Joins the rows of one side into devices: by positions written together, by joined cells, by the poles that are printed,
 * and by marks or blanks that carry a device on.
 */
final class Devices {

    /** No device's cell is joined over more rows. */
    private static final int MOST_JOINED = 12;

    private final List<Row> rows;
    /** What each row by itself says of its device. */
    private final List<Device> read;

    private final Loads loads;
    private final int step;
    /** Of all sides together: a device at the foot of a first half may go on at the head of the next. */
    private final int highest;

    private final Map<Integer, Integer> rowOf = new HashMap<>();
    private final Set<Integer> taken = new HashSet<>();
    /** Positions whose marks carry on a device that is not above them. */
    private final Set<Integer> strays = new HashSet<>();

    private final List<JoinedRows> joined = new ArrayList<>();
    private final boolean spacesWritten;

    /** No device of the side has a rating: a list of positions and what they feed. */
    private final boolean unrated;

    private double cost;

    private Devices(List<Row> rows, List<Device> read, Loads loads, int step, int highest) {
        this.rows = rows;
        this.read = read;
        this.loads = loads;
        this.step = step;
        this.highest = highest;
        unrated = read.stream().noneMatch(device -> device.rating().isStated());
        spacesWritten = read.stream().allMatch(device -> device.poles().isEmpty())
                && rows.stream().anyMatch(Devices::isWrittenSpace);
        for (int r = 0; r < rows.size(); r++)
            if (rows.get(r).number() > 0) rowOf.putIfAbsent(rows.get(r).number(), r);
    }

    /**
     * Joins the rows where poles of one device are {@code step} positions apart.
     *
     * @param read what each row by itself says of its device
     * @param highest the panel's last position
     */
    static Devices join(List<Row> rows, List<Device> read, Loads loads, int step, int highest) {
        Devices devices = new Devices(rows, read, loads, step, highest);
        for (int r = 0; r < rows.size(); r++) if (!devices.taken.contains(r)) devices.device(r);
        if (step != Numbering.OF_DEVICES && !devices.unrated) BelowRated.doubt(devices.joined, step);
        return devices;
    }

    /** The circuits. */
    List<Draft> drafts() {
        return joined.stream().flatMap(device -> device.drafts(loads).stream()).toList();
    }

    /** A word about each device of which another way of joining, as good as this one, makes another device. */
    void doubt(Devices other, String word) {
        Set<Set<Integer>> alike = new HashSet<>();
        other.joined.forEach(device -> alike.add(new HashSet<>(device.positions())));
        for (JoinedRows device : joined) if (!alike.contains(new HashSet<>(device.positions()))) device.doubt(word);
    }

    /** What speaks against this way of joining: poles over occupied rows and marks that carry on nothing, in rows. */
    double cost() {
        return cost;
    }

    /** The sheet says of an empty position that it is a space, so it leaves none blank. */
    private static boolean isWrittenSpace(Row row) {
        return !row.saysNothing(Role.DESCRIPTION) && UseText.of(row.text(Role.DESCRIPTION), false) == Use.SPACE;
    }

    private void device(int r) {
        JoinedRows device = isAboveItsEntry(r) ? centred(r) : headed(r);
        if (!device.positions().isEmpty()) joined.add(device);
    }

    private JoinedRows headed(int r) {
        Row row = rows.get(r);
        Device own = read.get(r);
        JoinedRows device = new JoinedRows(row, own, row.positions(own.poles().orElse(0)));
        take(r, device);
        if (device.positions().size() > 1) takePrinted(device);
        else if (spanEnd(r) > r) takeSpan(r, device);
        else if (step != Numbering.OF_DEVICES && own.poles().orElse(0) > 1) takePoles(device);
        else if (own.poles().isEmpty() && !row.isBlank()) takeMarks(device);
        if (device.isMarkAlone()) {
            cost += 0.7;
            if (goesOnFromElsewhere(row.number())) {
                strays.add(row.number());
                device.stray();
            }
        }
        return device;
    }

    /** Above it are no rows of the table, or a mark alone that goes on from elsewhere itself. */
    private boolean goesOnFromElsewhere(int number) {
        boolean atHead = number < rows.get(0).number() + step;
        return number > 2 && (atHead || strays.contains(number - step) || strays.contains(number - 2));
    }

    /**
     * A load alone, above a device of several poles: the first pole of a device whose entry stands in the middle of its
     * rows, as in a joined cell without rules.
     */
    private boolean isAboveItsEntry(int r) {
        if (r + 1 >= rows.size() || taken.contains(r + 1)) return false;
        if (rows.get(r + 1).number() != rows.get(r).number() + step) return false;
        int poles = read.get(r + 1).poles().orElse(1);
        if (!isLoadAlone(r)) return isUnwritten(r) && hasNoRoomBelow(r + 1, poles);
        boolean below = r + 2 < rows.size() && !taken.contains(r + 2) && isLoadAlone(r + 2);
        return poles == 3 && below || poles == 2 && !below;
    }

    /** Nothing stands beside the position on a sheet that says of each space that it is one. */
    private boolean isUnwritten(int r) {
        Row row = rows.get(r);
        return row.number() > 0
                && row.isBlank()
                && !row.hasMark()
                && rows.stream().anyMatch(Devices::isWrittenSpace);
    }

    /** Its poles would fall on the next device if it began with its entry: it begins in the blank row above. */
    private boolean hasNoRoomBelow(int r, int poles) {
        if (poles != 2 && poles != 3) return false;
        boolean between = poles == 2
                || r + 1 < rows.size()
                        && !taken.contains(r + 1)
                        && rows.get(r + 1).isBlank()
                        && !rows.get(r + 1).hasMark();
        Integer last = rowOf.get(rows.get(r).number() + (poles - 1) * step);
        return between && last != null && !rows.get(last).isWithoutDevice();
    }

    private boolean isLoadAlone(int r) {
        Row row = rows.get(r);
        return row.number() > 0 && row.isWithoutDevice() && !row.hasMark() && !loads.isBlank(row);
    }

    private JoinedRows centred(int r) {
        Row head = rows.get(r + 1);
        Device own = read.get(r + 1);
        JoinedRows device = new JoinedRows(head, own, List.of());
        for (int k = 0; k < own.poles().orElse(1); k++) {
            take(r + k, device);
            device.addPosition(rows.get(r + k).number());
        }
        return device;
    }

    /** Rows of their own of the positions that are written together, where there are such rows. */
    private void takePrinted(JoinedRows device) {
        for (int p : device.positions()) {
            Integer at = rowOf.get(p);
            if (at == null || taken.contains(at)) continue;
            Row row = rows.get(at);
            boolean own = row.token().isEmpty() && (row.isWithoutDevice() || row.repeats(device.head()));
            if (own || row.isBlank()) take(at, device);
        }
    }

    private int spanEnd(int r) {
        int end = r;
        for (Role role : new Role[] {Role.DEVICE, Role.RATING, Role.POLES, Role.DESCRIPTION})
            end = Math.max(
                    end, r + rows.get(r).cell(role).map(Row.Cell::further).orElse(0));
        for (int k = r + 1; k <= end; k++) if (!rows.get(k).isWithoutDevice() || taken.contains(k)) return k - 1;
        return end;
    }

    private void takeSpan(int r, JoinedRows device) {
        for (int k = r + 1, end = spanEnd(r); k <= end; k++) {
            take(k, device);
            if (rows.get(k).number() > 0) device.addPosition(rows.get(k).number());
        }
    }

    private void takePoles(JoinedRows device) {
        int first = device.positions().get(device.positions().size() - 1);
        for (int k = 1; k < device.read().poles().get(); k++) {
            int p = first + k * step;
            device.addPosition(p);
            Integer at = rowOf.get(p);
            if (at == null) {
                if (p > highest) cost += 1;
            } else if (!taken.contains(at)
                    && (rows.get(at).isWithoutDevice() || rows.get(at).repeats(device.head()))) take(at, device);
            else {
                cost += 1;
                device.clash(p);
            }
        }
    }

    /** Without poles printed, marks below a device carry it on; so does a load alone, and a blank where spaces are written. */
    private void takeMarks(JoinedRows device) {
        boolean rated = device.read().rating().isStated();
        if (!rated && !unrated) return;
        int first = device.positions().get(0);
        for (int k = 1; k < 3; k++) {
            Integer at = rowOf.get(first + k * step);
            if (at == null || taken.contains(at)) return;
            if (goesOnInWay(device.head(), rows.get(at))) {
                take(at, device);
                device.addPosition(rows.get(at).number());
                continue;
            }
            if (!rows.get(at).isWithoutDevice()) return;
            if (isJoinedToOther(at, device)) return;
            Row next = rows.get(at);
            if (!rated && !next.hasArrow()) return;
            if (!next.hasMark() && loads.isBlank(next) && !spacesWritten) return;
            take(at, device);
            device.addPosition(next.number());
        }
    }

    /** {@code 40 Combi oven, 40 ″, 40 ″} on the three phases of a way: one device, whose rating is printed beside each. */
    private static boolean goesOnInWay(Row head, Row next) {
        boolean sameWay = head.token().isPresent()
                && next.token().isPresent()
                && head.token().get().text().isWay()
                && next.token().get().text().isWay()
                && head.token().get().text().first()
                        == next.token().get().text().first();
        return sameWay && Texts.isDitto(next.text(Role.DESCRIPTION)) && !next.isWithoutDevice() && next.repeats(head);
    }

    /** A cell of another device's row, joined over several, reaches down to this one. */
    private boolean isJoinedToOther(int at, JoinedRows device) {
        for (int r = Math.max(0, at - MOST_JOINED); r < at; r++)
            if (rows.get(r) != device.head() && spanEnd(r) >= at) return true;
        return false;
    }

    private void take(int at, JoinedRows device) {
        taken.add(at);
        device.take(rows.get(at));
    }
}
