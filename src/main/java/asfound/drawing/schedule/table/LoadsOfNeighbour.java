package asfound.drawing.schedule.table;

import asfound.drawing.schedule.column.Column;
import asfound.drawing.schedule.text.Role;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A column of loads that two tables side by side were both read with: the last of the three phases of a panel, beside one that has
 * two phases and its positions next to it. The loads of the phases stand together, so it is of the table where they do.
 */
final class LoadsOfNeighbour {

    private LoadsOfNeighbour() {}

    /** Where the left table ends, if the right one was read with its last loads; empty where it was not. */
    static OptionalDouble edge(List<Table> before, List<Side> now) {
        for (Side own : now)
            for (Map.Entry<Role, Column> e : own.roles().entrySet()) {
                boolean apart = e.getKey().isPhaseLoad() && !isBesideLoads(own, e.getValue());
                if (apart)
                    for (Table table : before)
                        for (Side side : table.sides())
                            for (Column c : side.roles().values())
                                if (areOne(c, e.getValue()) && isBesideLoads(side, c))
                                    return OptionalDouble.of(
                                            Math.max(c.right(), e.getValue().right()));
            }
        return OptionalDouble.empty();
    }

    private static boolean areOne(Column a, Column b) {
        double both = Math.min(a.right(), b.right()) - Math.max(a.left(), b.left());
        return both > 0.5 * Math.min(a.width(), b.width());
    }

    /** The load of another phase stands next to it. */
    private static boolean isBesideLoads(Side side, Column c) {
        return side.roles().entrySet().stream()
                .filter(e -> e.getKey().isPhaseLoad() && e.getValue() != c)
                .map(Map.Entry::getValue)
                .anyMatch(o -> Math.abs(o.left() - c.right()) < 1 || Math.abs(c.left() - o.right()) < 1);
    }
}
