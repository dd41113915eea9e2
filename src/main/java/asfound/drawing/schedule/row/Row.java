package asfound.drawing.schedule.row;

import asfound.drawing.schedule.spine.Spine;
import asfound.drawing.schedule.text.DeviceText;
import asfound.drawing.schedule.text.Role;
import asfound.drawing.schedule.text.Texts;
import asfound.model.Box;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One row of a side: its position and what stands in its columns. */
public final class Row {

    /**
     * What stands in one column of a row.
     *
     * @param text its lines put together
     * @param raw as printed, where the text is what counts of it: {@code 160/125} for the trip of 125 A
     * @param box around it
     * @param further how many rows below this one the cell spans as well
     * @param says it says something: it is neither blank nor a mark
     */
    public record Cell(String text, String raw, Box box, int further, boolean says) {

        Cell(String text, Box box, int further) {
            this(text, text, box, further);
        }

        Cell(String text, String raw, Box box, int further) {
            this(text, raw, box, further, !Texts.saysNothing(text));
        }

        /** With a further figure of the same row. */
        Cell plus(Cell o) {
            return new Cell(text + " + " + o.text, raw + " + " + o.raw, box.union(o.box), Math.max(further, o.further));
        }
    }

    private static final List<Role> DEVICE = List.of(Role.DESCRIPTION, Role.RATING, Role.DEVICE, Role.POLES, Role.USE);

    private final Optional<Spine.Token> token;
    private final int number;
    private final double y;
    private boolean mixed;
    private final Map<Role, Cell> cells = new EnumMap<>(Role.class);

    /** @param number the row's position; 0 for a row that has none of its own */
    Row(Optional<Spine.Token> token, int number, double y) {
        this.token = token;
        this.number = number;
        this.y = y;
    }

    /** Both lines together are one entry of a narrow column: {@code 100A} over {@code 3P}. */
    private static boolean isOne(String above, String below) {
        return DeviceText.parse(above + " " + below).isPresent()
                && DeviceText.parse(above + " " + below).get().poles().isPresent();
    }

    public Optional<Spine.Token> token() {
        return token;
    }

    public int number() {
        return number;
    }

    public double y() {
        return y;
    }

    /** The positions that the row itself names, of a device with so many poles; 0 where none are printed. */
    public List<Integer> positions(int poles) {
        if (token.isPresent()) return token.get().text().positions(poles);
        return number > 0 ? List.of(number) : List.of();
    }

    /** Two entries stand in what was taken for one row. */
    public boolean isMixed() {
        return mixed;
    }

    void put(Role role, Cell cell) {
        Cell there = cells.get(role);
        boolean device = role == Role.RATING || role == Role.POLES || role == Role.DEVICE;
        if (there != null && role == Role.PANEL && there.text().equals(cell.text())) return;
        if (there != null && device) mixed |= !isOne(there.text(), cell.text());
        // two figures put together would be read as one, with a space between its thousands
        if (there != null && role.isLoad() && !Texts.saysNothing(there.text()) && !Texts.saysNothing(cell.text()))
            mixed = true;
        // of two marks that which carries on: a ditto written upon the line of a form
        if (there != null && role == Role.DESCRIPTION && Texts.isMark(there.text()) && Texts.isMark(cell.text())) {
            cells.put(role, Texts.isDitto(cell.text()) ? cell : there);
            return;
        }
        if (there != null
                && (device || role == Role.DESCRIPTION)
                && Texts.isMark(there.text()) != Texts.isMark(cell.text())) {
            mixed = true;
            if (Texts.isMark(cell.text())) return;
            cells.remove(role);
        }
        cells.merge(
                role,
                cell,
                (a, b) -> new Cell(
                        Texts.continued(a.text(), b.text()),
                        Texts.continued(a.raw(), b.raw()),
                        a.box().union(b.box()),
                        Math.max(a.further(), b.further())));
    }

    /** What was struck through holds no longer where something else stands in its place. */
    void putStruck(Role role, Cell old) {
        Cell there = cells.get(role);
        if (there == null || !there.says()) put(role, old);
        else
            cells.put(
                    role,
                    new Cell(
                            there.text(),
                            there.raw(),
                            there.box().union(old.box()),
                            Math.max(there.further(), old.further())));
    }

    /** What stands in a column, which the row has no longer. */
    Optional<Cell> take(Role role) {
        return Optional.ofNullable(cells.remove(role));
    }

    /** What stands in a column, read once more. */
    void replace(Role role, Cell cell) {
        cells.put(role, cell);
    }

    public Optional<Cell> cell(Role role) {
        return Optional.ofNullable(cells.get(role));
    }

    public String text(Role role) {
        return cell(role).map(Cell::text).orElse("");
    }

    public boolean saysNothing(Role role) {
        Cell cell = cells.get(role);
        return cell == null || !cell.says();
    }

    /** Nothing of a device of its own stands in it. */
    public boolean isWithoutDevice() {
        for (Role role : DEVICE) if (!saysNothing(role)) return false;
        return true;
    }

    /** It prints the device of a row above once more. */
    public boolean repeats(Row head) {
        return DEVICE.stream()
                .filter(role -> !saysNothing(role))
                .allMatch(role -> Texts.upper(text(role)).equals(Texts.upper(head.text(role))));
    }

    public List<Box> boxes() {
        return cells.values().stream().map(Cell::box).toList();
    }

    /** Nothing at all, or only marks, stands beside the position. */
    public boolean isBlank() {
        for (Map.Entry<Role, Cell> e : cells.entrySet())
            if (e.getKey() != Role.PHASE
                    && e.getKey() != Role.PANEL
                    && e.getValue().says()) return false;
        return true;
    }

    /** A mark that points to the row above, as against a dash, which may stand for nothing. */
    public boolean hasArrow() {
        return cells.values().stream().anyMatch(c -> Texts.isArrow(c.text()));
    }

    public boolean hasMark() {
        return cells.values().stream().anyMatch(c -> Texts.isMark(c.text()));
    }
}
