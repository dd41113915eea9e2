package asfound.drawing.schedule.device;

import asfound.drawing.schedule.row.Row;
import asfound.drawing.schedule.text.Role;
import asfound.drawing.schedule.text.Texts;
import asfound.drawing.schedule.text.UseText;
import asfound.model.Box;
import asfound.model.Directory.Use;
import asfound.model.Stated;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The rows that were joined into one device, and the circuit that they make. */
public final class JoinedRows {

    /** Said of a position whose device stands on the page before, until the pages are put together. */
    public static final String CARRIED_ON = "a mark carries on a device that begins elsewhere";

    /** Without a number of poles beside it no device is taken to have more. */
    private static final int MOST_POLES = 3;

    private static final String DITTO_WITH_RATING =
            "a ditto mark beside a rating of its own; nothing shows whether it is a further pole of the device above";

    /** Stands for a letter whose shape is known and whose meaning is not. */
    private static final char UNTOLD = '\uFFFD';

    private final Row head;
    private final Device read;
    private final List<Row> rows = new ArrayList<>();
    private final List<Integer> positions;
    private int clash;
    private boolean stray;
    private String doubt = "";

    /**
     * @param head the row in which the device's entry stands
     * @param positions those that are known before any row is taken
     */
    JoinedRows(Row head, Device read, List<Integer> positions) {
        this.head = head;
        this.read = read;
        this.positions = new ArrayList<>(positions);
    }

    Row head() {
        return head;
    }

    Device read() {
        return read;
    }

    List<Integer> positions() {
        return positions;
    }

    void take(Row row) {
        rows.add(row);
    }

    void addPosition(int position) {
        positions.add(position);
    }

    /** A pole of the device falls on a position that has an entry of its own. */
    void clash(int position) {
        clash = position;
    }

    /** It has a mark and nothing else: what that carries on is not above it. */
    boolean isMarkAlone() {
        return head.isBlank() && rows.size() == 1 && head.hasMark();
    }

    /** What its mark carries on stands elsewhere. */
    void stray() {
        stray = true;
    }

    /** Other rows than these may be its own. */
    void doubt(String word) {
        doubt = word;
    }

    /** The device; each position by itself where {@code 11 to 14} say together that they are free. */
    List<Draft> drafts(Loads loads) {
        Draft whole = draft(loads);
        boolean several = isMoreThanOne()
                && read.poles().orElse(1) == 1
                && whole.use() != Use.LOAD
                && whole.loads().stream().allMatch(Stated::isBlank);
        return several ? positions.stream().sorted().map(whole::at).toList() : List.of(whole);
    }

    private Draft draft(Loads loads) {
        String description = description();
        boolean rated = read.rating().isStated() || read.rating().isUnreadable();
        List<Stated<Double>> load = loads.of(rows, positions.size());
        Use use = use(description, rated || load.stream().anyMatch(l -> l.or(0.0) > 0));
        String label = head.token().map(t -> t.text().label()).orElse("");
        return new Draft(
                positions.stream().sorted().toList(),
                label,
                Math.max(positions.size(), read.poles().orElse(1)),
                read.rating(),
                description,
                use,
                load,
                box(),
                trouble(load));
    }

    /** By its description; where none stands, by the word in a column of uses. */
    private Use use(String description, boolean rated) {
        boolean told = description.isEmpty() && !head.saysNothing(Role.USE);
        return told ? UseText.of(head.text(Role.USE), rated) : UseText.of(description, rated);
    }

    /** A word in a column of uses says that it is free, and its description what it feeds. */
    private boolean isUsedOtherwise() {
        return !head.saysNothing(Role.USE)
                && !UseText.isWordForLoad(head.text(Role.USE))
                && UseText.of(description(), true) == Use.LOAD
                && !description().isEmpty();
    }

    /** It may stand beside any of the device's poles. */
    private String description() {
        String own = Texts.withoutLeader(head.text(Role.DESCRIPTION));
        if (!Texts.saysNothing(own) || isReferenceOfItsOwn(own)) return own;
        return rows.stream()
                .map(r -> Texts.withoutLeader(r.text(Role.DESCRIPTION)))
                .filter(t -> !Texts.saysNothing(t))
                .findFirst()
                .orElse("");
    }

    /** {@code see 5}, {@code con 3} beside a rating of its own: a circuit of its own, and what is printed for it. */
    private boolean isReferenceOfItsOwn(String text) {
        return rows.size() == 1
                && positions.size() == 1
                && read.rating().isStated()
                && Texts.hasFigure(text)
                && text.chars().anyMatch(Character::isLetter);
    }

    /** Neither poles nor another row say whether it is a device of its own. */
    private boolean isDittoWithRating() {
        return rows.size() == 1
                && positions.size() == 1
                && read.rating().isStated()
                && read.poles().isEmpty()
                && Texts.isDitto(head.text(Role.DESCRIPTION));
    }

    /** More positions are written together than it has poles, or than any device has where none are printed. */
    private boolean isMoreThanOne() {
        boolean together =
                head.token().filter(t -> t.text().numbers().size() > 1).isPresent();
        return together && positions.size() > read.poles().orElse(MOST_POLES);
    }

    /** {@code N/A} without a rating, beside a load: a further pole of the device above, or a load without a device. */
    private boolean isFreeWithLoad(List<Stated<Double>> loads) {
        return read.rating().isBlank()
                && !description().isEmpty()
                && UseText.of(description(), false) == Use.SPACE
                && loads.stream().anyMatch(l -> l.or(0.0) > 0);
    }

    private String trouble(List<Stated<Double>> loads) {
        List<String> what = new ArrayList<>();
        if (isMoreThanOne() && (read.poles().orElse(1) > 1 || use(description(), true) == Use.LOAD))
            what.add(positions.size() + " positions are more than the poles of one device");
        if (!read.trouble().isEmpty()) what.add(read.trouble());
        if (description().indexOf(UNTOLD) >= 0) what.add("letters of '" + description() + "' could not be told");
        if (clash > 0) what.add(read.poles().orElse(1) + " poles, and position " + clash + " has an entry of its own");
        if (stray) what.add(CARRIED_ON);
        if (isFreeWithLoad(loads)) what.add("it is written as free and has a load");
        if (isDittoWithRating()) what.add(DITTO_WITH_RATING);
        if (!doubt.isEmpty()) what.add(doubt);
        if (isUsedOtherwise()) what.add("its use is written as '" + head.text(Role.USE) + "'");
        if (rows.stream().anyMatch(Row::isMixed)) what.add("two entries stand in one row");
        return String.join("; ", what);
    }

    private Box box() {
        List<Box> boxes = new ArrayList<>();
        head.token().ifPresent(t -> boxes.add(t.phrase().box()));
        for (Row row : rows) {
            boxes.addAll(row.boxes());
            row.token().ifPresent(t -> boxes.add(t.phrase().box()));
        }
        Optional<Box> box = boxes.stream().reduce(Box::union);
        return box.orElse(new Box(0, head.y(), 0, 0));
    }
}
