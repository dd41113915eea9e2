package asfound.drawing.schedule.device;

import asfound.drawing.schedule.row.Row;
import asfound.drawing.schedule.text.Role;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Which phase each row of a list is on, as far as it is written, shows how the positions lie in the panel: phases that go
 * round in pairs of numbers are those of two columns of devices, phases that go round one by one those of a single column.
 * Common practice.
 */
final class PhasesInRows {

    private static final int FEW = 4;
    private static final Role[] LOADS = {Role.LOAD_A, Role.LOAD_B, Role.LOAD_C};

    private PhasesInRows() {}

    /** How many positions apart the poles of a device lie; empty where the rows do not say. */
    static Optional<Integer> step(List<Row> rows) {
        int phases = rows.stream().flatMapToInt(r -> of(r).stream()).max().orElse(0) + 1;
        if (phases < 2) return Optional.empty();
        int written = 0, across = 0, down = 0;
        for (Row row : rows) {
            OptionalInt own = row.number() > 0 ? of(row) : OptionalInt.empty();
            if (own.isEmpty()) continue;
            written++;
            if ((row.number() - 1) / 2 % phases == own.getAsInt()) across++;
            if ((row.number() - 1) % phases == own.getAsInt()) down++;
        }
        if (written < FEW) return Optional.empty();
        if (across * 10 >= written * 8 && down * 10 < written * 6) return Optional.of(2);
        return down * 10 >= written * 8 && across * 10 < written * 6 ? Optional.of(1) : Optional.empty();
    }

    /** The phase that stands in the row, or the one under which its only load stands, from 0. */
    private static OptionalInt of(Row row) {
        String phase = row.text(Role.PHASE).strip().toUpperCase(Locale.ROOT);
        switch (phase) {
            case "A", "L1" -> {
                return OptionalInt.of(0);
            }
            case "B", "L2" -> {
                return OptionalInt.of(1);
            }
            case "C", "L3" -> {
                return OptionalInt.of(2);
            }
            default -> {}
        }
        OptionalInt found = OptionalInt.empty();
        for (int i = 0; i < LOADS.length; i++) {
            if (row.saysNothing(LOADS[i])) continue;
            if (found.isPresent()) return OptionalInt.empty();
            found = OptionalInt.of(i);
        }
        return found;
    }
}
