package asfound.drawing.schedule.table;

import asfound.drawing.schedule.column.Column;
import asfound.drawing.schedule.text.Headings;
import asfound.drawing.schedule.text.LoadClasses;
import asfound.drawing.schedule.text.Role;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Loads in the middle of a panel of which nobody can say whose they are: beside a column under a heading of loads stands another
 * that nothing heads, and the heading may stand over both, for the circuits at the left and those at the right. Such loads are left
 * out.
 */
final class OpenHalves {

    private OpenHalves() {}

    /** The two sides of a panel without such loads; as they were where there are none. */
    static List<Side> leftOut(List<Side> sides) {
        if (sides.size() != 2) return sides;
        List<Column> middle = middle(sides.get(0), sides.get(1));
        if (!areOpen(middle, sides)) return sides;
        return sides.stream().map(side -> without(side, middle)).toList();
    }

    /** The columns of figures on both sides of where the one side ends and the other begins. */
    private static List<Column> middle(Side left, Side right) {
        List<Column> out = new ArrayList<>();
        List<Column> first = left.columns(), second = right.columns();
        for (int i = first.size() - 1;
                i >= 0 && first.get(i).left() > left.spine().right() && isOne(first.get(i));
                i--) out.add(0, first.get(i));
        for (int i = 0;
                i < second.size() && second.get(i).right() < right.spine().left() && isOne(second.get(i));
                i++) out.add(second.get(i));
        return out;
    }

    private static boolean isOne(Column c) {
        return isHeaded(c) || isUnheaded(c);
    }

    private static boolean isHeaded(Column c) {
        return LoadClasses.isOne(c.heading())
                || Headings.weigh(c.heading()).entrySet().stream()
                        .anyMatch(e -> e.getKey().isPhaseLoad() && e.getValue() >= 0.8);
    }

    private static boolean isUnheaded(Column c) {
        return c.weight(Role.LOAD) >= Column.ENOUGH
                && Headings.weigh(c.heading()).isEmpty();
    }

    /** Each heading is there once, so it may be that of both sides, and one beside it was taken for loads without any. */
    private static boolean areOpen(List<Column> middle, List<Side> sides) {
        Set<String> headings = new HashSet<>();
        boolean open = false;
        for (int i = 0; i < middle.size(); i++) {
            Column c = middle.get(i);
            if (isHeaded(c)) {
                if (!headings.add(Headings.plain(c.heading()))) return false;
            } else if (isLoad(c, sides))
                open |= i > 0 && isHeaded(middle.get(i - 1)) || i + 1 < middle.size() && isHeaded(middle.get(i + 1));
        }
        return open;
    }

    /** It was taken for loads; not for those of a phase that the other side has as well, as where they have been shared out. */
    private static boolean isLoad(Column c, List<Side> sides) {
        return sides.stream()
                .flatMap(s -> s.roles().entrySet().stream())
                .filter(e -> e.getValue() == c && e.getKey().isLoad())
                .map(Map.Entry::getKey)
                .anyMatch(role -> role == Role.LOAD
                        || sides.stream().anyMatch(s -> !s.roles().containsKey(role)));
    }

    private static Side without(Side side, List<Column> columns) {
        Map<Role, Column> roles = new EnumMap<>(side.roles());
        roles.entrySet().removeIf(e -> e.getKey().isLoad() && columns.contains(e.getValue()));
        return new Side(side.spine(), side.columns(), roles, side.quality());
    }
}
