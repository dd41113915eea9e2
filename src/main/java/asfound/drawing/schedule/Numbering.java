package asfound.drawing.schedule;

import asfound.recordset.Settings;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Whether poles of one device are neighbours in number, or every second number: what the rows themselves say. */
final class Numbering {

    /** Each number is that of a device, whatever poles it has. */
    static final int OF_DEVICES = 0;

    private static final int FEWEST = 3;

    private Numbering() {}

    /**
     * A switchboard's devices are counted, not its poles: most have several poles, and the next number as well as the one after
     * it has an entry of its own, whichever way poles would run.
     */
    private static boolean isOfDevices(List<Row> rows) {
        Map<Integer, Row> byNumber = new HashMap<>();
        for (Row row : rows) {
            if (row.token().isEmpty() || row.token().get().text().numbers().size() > 1) return false;
            byNumber.put(row.number(), row);
        }
        int last = rows.get(rows.size() - 1).number();
        long rated = rows.stream().filter(r -> Device.of(r).rating().isStated()).count();
        List<Row> several =
                rows.stream().filter(r -> Device.of(r).poles().orElse(1) > 1).toList();
        if (several.size() < FEWEST || several.size() * 5L < rated * 3) return false;
        for (Row row : several)
            for (int next = row.number() + 1; next <= Math.min(last, row.number() + 2); next++)
                if (!byNumber.containsKey(next) || byNumber.get(next).isWithoutDevice()) return false;
        return true;
    }

    /** Joins one side's rows in the way that leaves least unexplained. */
    static Devices.Joined join(
            List<Row> rows, Loads loads, Spine spine, boolean alone, int highest, Optional<Settings.Numbering> told) {
        boolean ways = rows.stream()
                .anyMatch(r -> r.token().filter(t -> t.text().isWay()).isPresent());
        if (ways) return Devices.join(rows, loads, 1, highest);
        boolean everySecond = spine.isOdd() || spine.isEven();
        if (alone && isOfDevices(rows)) return Devices.join(rows, loads, OF_DEVICES, highest);
        Devices.Joined across = Devices.join(rows, loads, 2, highest);
        if (everySecond && spine.tokens().size() > 1) return across;
        Devices.Joined down = Devices.join(rows, loads, 1, highest);
        double lean = told.map(n -> n == Settings.Numbering.ACROSS ? -5.0 : 5.0).orElse(alone ? -0.5 : 0.5);
        return across.cost() + lean <= down.cost() ? across : down;
    }
}
