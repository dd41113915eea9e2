package asfound.drawing.schedule.device;

import asfound.drawing.schedule.row.Row;
import asfound.drawing.schedule.spine.Spine;
import asfound.drawing.schedule.text.Looks;
import asfound.drawing.schedule.text.Role;
import asfound.drawing.schedule.text.UseText;
import asfound.model.Directory.Use;
import asfound.recordset.Settings;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** Whether poles of one device are neighbours in number, or every second number: what the rows themselves say. */
final class Numbering {

    /** Each number is that of a device, whatever poles it has. */
    static final int OF_DEVICES = 0;

    private static final int FEWEST = 3;

    private static final String DOUBTED =
            "nothing shows whether the marks below it carry on this device or that of the row before";
    /** Two ways to join the rows whose costs differ by less leave as little unexplained. */
    private static final double ALIKE = 0.1;

    private Numbering() {}

    /**
     * A switchboard's devices are counted, not its poles: most have several poles, and the next number as well as the one after
     * it has an entry of its own, whichever way poles would run.
     */
    private static boolean isOfDevices(List<Row> rows, List<Device> read) {
        Map<Integer, Row> byNumber = new HashMap<>();
        for (Row row : rows) {
            if (row.token().isEmpty() || row.token().get().text().numbers().size() > 1) return false;
            byNumber.put(row.number(), row);
        }
        int last = rows.get(rows.size() - 1).number();
        long rated = read.stream().filter(d -> d.rating().isStated()).count();
        List<Row> several = IntStream.range(0, rows.size())
                .filter(r -> read.get(r).poles().orElse(1) > 1)
                .mapToObj(rows::get)
                .toList();
        if (several.size() < FEWEST || several.size() * 5L < rated * 3) return false;
        // where a device is printed beside each of its poles, the rows that follow it are its own
        // two spares alike are not yet one device, nor are two boilers of one name that have three poles each
        for (int r = 0; r < rows.size(); r++)
            if (UseText.of(rows.get(r).text(Role.DESCRIPTION), true) == Use.LOAD
                    && isRepeated(rows.get(r), read.get(r).poles().orElse(1), byNumber)) return false;
        for (Row row : several)
            for (int next = row.number() + 1; next <= Math.min(last, row.number() + 2); next++)
                if (!byNumber.containsKey(next) || byNumber.get(next).isWithoutDevice()) return false;
        return true;
    }

    /** It stands beside each of its further poles once more, whichever way these run. */
    private static boolean isRepeated(Row row, int poles, Map<Integer, Row> byNumber) {
        return poles > 1
                && IntStream.rangeClosed(1, 2)
                        .anyMatch(step -> IntStream.range(1, poles)
                                .mapToObj(pole -> byNumber.get(row.number() + pole * step))
                                .allMatch(next -> next != null && next.repeats(row)));
    }

    /** Joins one side's rows in the way that leaves least unexplained. */
    static Devices join(
            List<Row> rows,
            Looks looks,
            Loads loads,
            Spine spine,
            boolean alone,
            int highest,
            Optional<Settings.Numbering> told) {
        boolean ways = rows.stream()
                .anyMatch(r -> r.token().filter(t -> t.text().isWay()).isPresent());
        List<Device> read = rows.stream().map(row -> Device.of(row, looks)).toList();
        if (ways) return Devices.join(rows, read, loads, 1, highest);
        if (spine.isNamed()) return Devices.join(rows, read, loads, OF_DEVICES, highest);
        boolean everySecond = spine.isOdd() || spine.isEven();
        if (alone && isOfDevices(rows, read)) return Devices.join(rows, read, loads, OF_DEVICES, highest);
        Devices across = Devices.join(rows, read, loads, 2, highest);
        if (everySecond && spine.tokens().size() > 1) return across;
        Devices down = Devices.join(rows, read, loads, 1, highest);
        if (told.isPresent()) return told.get() == Settings.Numbering.ACROSS ? across : down;
        Optional<Integer> step = PhasesInRows.step(rows);
        boolean open = step.isEmpty() && alone && Math.abs(across.cost() - down.cost()) < ALIKE;
        if (open) across.doubt(down, DOUBTED);
        double lean = step.map(s -> s == 2 ? -2.0 : 2.0).orElse(alone ? -0.5 : 0.5);
        return across.cost() + lean <= down.cost() ? across : down;
    }
}
