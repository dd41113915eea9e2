package asfound.drawing.schedule;

import asfound.model.Box;
import asfound.model.Directory.Use;
import asfound.model.Stated;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Joins the rows of one side into devices: by positions written together, by joined cells, by the poles that are printed,
 * and by marks or blanks that carry a device on.
 */
final class Devices {

    /** Said of a position whose device stands on the page before, until the pages are put together. */
    static final String CARRIED_ON = "a mark carries on a device that begins elsewhere";

    private final List<Row> rows;
    private final Loads loads;
    private final int step;
    /** Of all sides together: a device at the foot of a first half may go on at the head of the next. */
    private final int highest;

    private final Map<Integer, Integer> rowOf = new HashMap<>();
    private final Set<Integer> taken = new HashSet<>();
    private final List<Draft> drafts = new ArrayList<>();
    private final boolean spacesWritten;
    private double cost;
    private int clash;
    /** The side begins with a mark, and not with the panel's first position: what it carries on stands elsewhere. */
    private boolean stray;

    private Devices(List<Row> rows, Loads loads, int step, int highest) {
        this.rows = rows;
        this.loads = loads;
        this.step = step;
        this.highest = highest;
        spacesWritten = rows.stream().allMatch(row -> Device.of(row).poles().isEmpty())
                && rows.stream().anyMatch(Devices::isWrittenSpace);
        for (int r = 0; r < rows.size(); r++)
            if (rows.get(r).number() > 0) rowOf.putIfAbsent(rows.get(r).number(), r);
    }

    /**
     * The circuits, and what speaks against this way of joining them.
     *
     * @param cost of poles over occupied rows and of marks that carry on nothing, in rows
     */
    record Joined(List<Draft> drafts, double cost, int step) {}

    /** Joins the rows where poles of one device are {@code step} positions apart; {@code highest} is the panel's last. */
    static Joined join(List<Row> rows, Loads loads, int step, int highest) {
        Devices devices = new Devices(rows, loads, step, highest);
        for (int r = 0; r < rows.size(); r++) if (!devices.taken.contains(r)) devices.device(r);
        return new Joined(List.copyOf(devices.drafts), devices.cost, step);
    }

    /** The sheet says of an empty position that it is a space, so it leaves none blank. */
    private static boolean isWrittenSpace(Row row) {
        return !row.saysNothing(Role.DESCRIPTION) && UseText.of(row.text(Role.DESCRIPTION), false) == Use.SPACE;
    }

    private void device(int r) {
        Row row = rows.get(r);
        taken.add(r);
        clash = 0;
        stray = false;
        if (isAboveItsEntry(r)) {
            centred(r);
            return;
        }
        Device read = Device.of(row);
        List<Integer> own = new ArrayList<>(List.of(r));
        List<Integer> positions = written(row, read);
        if (positions.size() > 1) takePrinted(r, positions, own);
        else if (spanEnd(r) > r) takeSpan(r, spanEnd(r), own, positions);
        else if (step != Numbering.OF_DEVICES && read.poles().orElse(0) > 1) takePoles(r, read, own, positions);
        else if (read.poles().isEmpty() && !row.isBlank()) takeMarks(r, read, own, positions);
        stray = row.isBlank() && own.size() == 1 && row.hasMark();
        if (stray) cost += 0.7;
        stray &= r == 0 && row.number() > 2;
        if (positions.isEmpty()) return;
        Collections.sort(positions);
        draft(row, read, positions, own);
    }

    /**
     * A load alone, above a device of several poles: the first pole of a device whose entry stands in the middle of its
     * rows, as in a joined cell without rules.
     */
    private boolean isAboveItsEntry(int r) {
        if (r + 1 >= rows.size() || !isLoadAlone(r) || taken.contains(r + 1)) return false;
        if (rows.get(r + 1).number() != rows.get(r).number() + step) return false;
        int poles = Device.of(rows.get(r + 1)).poles().orElse(1);
        boolean below = r + 2 < rows.size() && !taken.contains(r + 2) && isLoadAlone(r + 2);
        return poles == 3 && below || poles == 2 && !below;
    }

    private boolean isLoadAlone(int r) {
        Row row = rows.get(r);
        return row.number() > 0 && continues(row) && !row.hasMark() && !loads.isBlank(row);
    }

    private void centred(int r) {
        Row head = rows.get(r + 1);
        Device read = Device.of(head);
        List<Integer> own = new ArrayList<>(List.of(r));
        List<Integer> positions = new ArrayList<>(List.of(rows.get(r).number()));
        for (int k = 1; k < read.poles().orElse(1); k++) {
            take(r + k, own);
            positions.add(rows.get(r + k).number());
        }
        draft(head, read, positions, own);
    }

    /** The positions that the row itself names. */
    private static List<Integer> written(Row row, Device read) {
        List<Integer> out = new ArrayList<>();
        if (row.token().isEmpty()) {
            if (row.number() > 0) out.add(row.number());
            return out;
        }
        PositionText text = row.token().get().text();
        if (text.isWay()) {
            for (int phase : text.phases()) out.add((text.first() - 1) * 3 + phase);
            return out;
        }
        out.addAll(text.numbers());
        // '1-5' with three poles names the ends of 1, 3, 5
        int poles = read.poles().orElse(0);
        if (out.size() == 2 && poles > 2 && (out.get(1) - out.get(0)) % (poles - 1) == 0) {
            int first = out.get(0), by = (out.get(1) - first) / (poles - 1);
            out.clear();
            for (int k = 0; k < poles; k++) out.add(first + k * by);
        }
        return out;
    }

    /** Rows of their own of the positions that are written together, where there are such rows. */
    private void takePrinted(int r, List<Integer> positions, List<Integer> own) {
        for (int p : positions) {
            Integer at = rowOf.get(p);
            if (at != null && at != r && !taken.contains(at) && rows.get(at).isBlank()) take(at, own);
        }
    }

    private int spanEnd(int r) {
        int end = r;
        for (Role role : new Role[] {Role.DEVICE, Role.RATING, Role.POLES, Role.DESCRIPTION})
            end = Math.max(
                    end, r + rows.get(r).cell(role).map(Row.Cell::further).orElse(0));
        for (int k = r + 1; k <= end; k++) if (!continues(rows.get(k)) || taken.contains(k)) return k - 1;
        return end;
    }

    private void takeSpan(int r, int end, List<Integer> own, List<Integer> positions) {
        for (int k = r + 1; k <= end; k++) {
            take(k, own);
            if (rows.get(k).number() > 0) positions.add(rows.get(k).number());
        }
    }

    private void takePoles(int r, Device read, List<Integer> own, List<Integer> positions) {
        int first = positions.get(positions.size() - 1);
        for (int k = 1; k < read.poles().get(); k++) {
            int p = first + k * step;
            positions.add(p);
            Integer at = rowOf.get(p);
            if (at == null) {
                if (p > highest) cost += 1;
            } else if (!taken.contains(at) && (continues(rows.get(at)) || repeats(rows.get(r), rows.get(at))))
                take(at, own);
            else {
                cost += 1;
                clash = p;
            }
        }
    }

    /** Without poles printed, marks below a device carry it on; so does a load alone, and a blank where spaces are written. */
    private void takeMarks(int r, Device read, List<Integer> own, List<Integer> positions) {
        boolean device =
                read.rating().isStated() || !Texts.saysNothing(rows.get(r).text(Role.DESCRIPTION));
        for (int k = 1; device && k < 3; k++) {
            Integer at = rowOf.get(positions.get(0) + k * step);
            if (at == null || taken.contains(at) || !continues(rows.get(at))) return;
            Row next = rows.get(at);
            boolean carries = next.hasMark() || !loads.isBlank(next) || spacesWritten;
            if (!carries || !read.rating().isStated()) return;
            take(at, own);
            positions.add(next.number());
        }
    }

    private void take(int at, List<Integer> own) {
        taken.add(at);
        own.add(at);
    }

    /** Nothing of a device of its own stands in the row. */
    static boolean continues(Row row) {
        return row.saysNothing(Role.DESCRIPTION)
                && row.saysNothing(Role.RATING)
                && row.saysNothing(Role.DEVICE)
                && row.saysNothing(Role.POLES);
    }

    /** The row prints the device of the row above once more. */
    private static boolean repeats(Row head, Row row) {
        for (Role role : new Role[] {Role.DESCRIPTION, Role.RATING, Role.DEVICE, Role.POLES})
            if (!row.saysNothing(role) && !Texts.upper(row.text(role)).equals(Texts.upper(head.text(role))))
                return false;
        return true;
    }

    private void draft(Row head, Device read, List<Integer> positions, List<Integer> own) {
        List<Row> all = own.stream().map(rows::get).toList();
        String description = Texts.saysNothing(head.text(Role.DESCRIPTION)) ? "" : head.text(Role.DESCRIPTION);
        if (description.isEmpty() && all.size() > 1) description = laterDescription(all);
        boolean rated = read.rating().isStated() || read.rating().isUnreadable();
        List<Stated<Double>> load = loads.of(all, positions.size());
        Use use = UseText.of(description, rated || load.stream().anyMatch(l -> l.or(0.0) > 0));
        String label = head.token()
                .filter(t -> t.text().isWay())
                .map(t -> t.text().raw())
                .orElse("");
        drafts.add(new Draft(
                List.copyOf(positions),
                label,
                Math.max(positions.size(), read.poles().orElse(1)),
                read.rating(),
                description,
                use,
                load,
                box(head, all),
                trouble(read, all)));
    }

    private String trouble(Device read, List<Row> all) {
        List<String> what = new ArrayList<>();
        if (!read.trouble().isEmpty()) what.add(read.trouble());
        if (clash > 0) what.add(read.poles().orElse(1) + " poles, and position " + clash + " has an entry of its own");
        if (stray) what.add(CARRIED_ON);
        if (all.stream().anyMatch(Row::isMixed)) what.add("two entries stand in one row");
        return String.join("; ", what);
    }

    /** The description of a device may stand beside any of its poles. */
    private static String laterDescription(List<Row> all) {
        return all.stream()
                .map(r -> r.text(Role.DESCRIPTION))
                .filter(t -> !Texts.saysNothing(t))
                .findFirst()
                .orElse("");
    }

    private static Box box(Row head, List<Row> all) {
        List<Box> boxes = new ArrayList<>();
        head.token().ifPresent(t -> boxes.add(t.phrase().box()));
        for (Row row : all) {
            boxes.addAll(row.boxes());
            row.token().ifPresent(t -> boxes.add(t.phrase().box()));
        }
        Optional<Box> box = boxes.stream().reduce(Box::union);
        return box.orElse(new Box(0, head.y(), 0, 0));
    }
}
