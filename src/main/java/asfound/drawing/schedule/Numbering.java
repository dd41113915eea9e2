package asfound.drawing.schedule;

import asfound.recordset.Settings;
import java.util.List;
import java.util.Optional;

/** Whether poles of one device are neighbours in number, or every second number: what the rows themselves say. */
final class Numbering {

    private Numbering() {}

    /** Joins one side's rows in the way that leaves least unexplained. */
    static Devices.Joined join(
            List<Row> rows, Loads loads, Spine spine, boolean alone, int highest, Optional<Settings.Numbering> told) {
        boolean ways = rows.stream()
                .anyMatch(r -> r.token().filter(t -> t.text().isWay()).isPresent());
        if (ways) return Devices.join(rows, loads, 1, highest);
        boolean everySecond = spine.isOdd() || spine.isEven();
        Devices.Joined across = Devices.join(rows, loads, 2, highest);
        if (everySecond && spine.tokens().size() > 1) return across;
        Devices.Joined down = Devices.join(rows, loads, 1, highest);
        double lean = told.map(n -> n == Settings.Numbering.ACROSS ? -5.0 : 5.0).orElse(alone ? -0.5 : 0.5);
        return across.cost() + lean <= down.cost() ? across : down;
    }
}
