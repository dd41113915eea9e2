package asfound.drawing.schedule.table;

import asfound.drawing.schedule.column.Column;
import asfound.drawing.schedule.spine.Spine;
import asfound.drawing.schedule.text.Role;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Loads in the middle of a panel whose odd and even positions stand on rows in turn, the odd one at the left and below it the even one
 * at the right: a load is of the position on its row, whichever side that is at.
 */
public final class LoadsInTurn {

    /** Nearer than this, in sizes of type, two things stand on one row. */
    public static final double LEVEL = 0.35;

    private static final int ROWS = 3;

    private LoadsInTurn() {}

    /** Both sides with all the loads; empty where their rows do not stand in turn or each has its own. */
    static Optional<List<Side>> shared(Side left, Side right) {
        if (!areInTurn(left.spine(), right.spine())) return Optional.empty();
        Map<Role, Column> loads = new EnumMap<>(Role.class);
        double first = left.spine().right(), last = right.spine().left();
        for (Side side : List.of(left, right))
            for (Map.Entry<Role, Column> e : side.roles().entrySet())
                if (e.getKey().isLoad()) {
                    if (loads.put(e.getKey(), e.getValue()) != null) return Optional.empty();
                } else if (side == left) first = Math.max(first, e.getValue().left());
                else last = Math.min(last, e.getValue().right());
        for (Column c : loads.values()) if (c.left() < first || c.right() > last) return Optional.empty();
        return loads.isEmpty() ? Optional.empty() : Optional.of(List.of(with(left, loads), with(right, loads)));
    }

    /** The levels of the other sides that have a column of loads as well; empty where it is of this side alone. */
    public static List<Double> levelsOfOthers(Side side, Column load, List<Side> all) {
        List<Double> out = new ArrayList<>();
        for (Side other : all)
            if (other != side && other.roles().containsValue(load))
                other.spine().tokens().forEach(t -> out.add(t.y()));
        return out;
    }

    private static boolean areInTurn(Spine left, Spine right) {
        List<Spine.Token> a = left.tokens(), b = right.tokens();
        if (Math.min(a.size(), b.size()) < ROWS || a.size() - b.size() > 1 || b.size() > a.size()) return false;
        double apart = LEVEL * left.size();
        for (int i = 0; i < b.size(); i++) {
            if (b.get(i).y() - a.get(i).y() < apart) return false;
            if (i + 1 < a.size() && a.get(i + 1).y() - b.get(i).y() < apart) return false;
        }
        return true;
    }

    private static Side with(Side side, Map<Role, Column> loads) {
        List<Column> columns = new ArrayList<>(side.columns());
        columns.removeAll(loads.values());
        columns.addAll(loads.values());
        columns.sort(Comparator.comparingDouble(Column::left));
        Map<Role, Column> roles = new EnumMap<>(side.roles());
        roles.putAll(loads);
        return new Side(side.spine(), List.copyOf(columns), roles, side.quality());
    }
}
