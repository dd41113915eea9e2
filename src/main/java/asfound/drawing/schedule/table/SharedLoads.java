package asfound.drawing.schedule.table;

import asfound.drawing.schedule.column.Column;
import asfound.drawing.schedule.column.Contents;
import asfound.drawing.schedule.text.Headings;
import asfound.drawing.schedule.text.Role;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * Load columns in the middle of a panel that serve both sides: under each phase stand two columns, the left one with the
 * loads of the left side and the right one with those of the right side.
 */
final class SharedLoads {

    private static final Role[] PHASES = {Role.LOAD_A, Role.LOAD_B, Role.LOAD_C};

    private SharedLoads() {}

    /** The sides with their loads shared out; as they were where the middle has no such columns. */
    static List<Side> split(Side left, Side right) {
        List<Column> all = new ArrayList<>(left.columns());
        all.addAll(right.columns());
        int cut = left.columns().size();
        int from = cut, to = cut;
        while (from > 0 && isLoad(all.get(from - 1), left.spine().centreX())) from--;
        while (to < all.size() && isLoad(all.get(to), left.spine().centreX())) to++;
        int columns = to - from;
        List<Column> middle = all.subList(from, to);
        // loads at its outer side are a side's own, and so are those in the middle the other's
        if (hasOthers(left, middle) || hasOthers(right, middle)) return List.of(left, right);
        boolean balanced = cut - from == to - cut;
        if (columns > 2 && isEachOwn(middle)) return halved(left, right, middle);
        if (columns != 4 && columns != 6 || balanced && isMirrored(middle)) return List.of(left, right);
        Map<Role, Column> ofLeft = without(left), ofRight = without(right);
        for (int k = 0; k < columns / 2; k++) {
            ofLeft.put(PHASES[k], all.get(from + 2 * k));
            ofRight.put(PHASES[k], all.get(from + 2 * k + 1));
        }
        return List.of(with(left, middle, ofLeft), with(right, middle, ofRight));
    }

    private static boolean hasOthers(Side side, List<Column> middle) {
        return side.roles().entrySet().stream().anyMatch(e -> e.getKey().isLoad() && !middle.contains(e.getValue()));
    }

    /** Both halves of the columns name the same phases, each once: {@code A B C | A B C}, {@code A B | B A}. */
    private static boolean isEachOwn(List<Column> columns) {
        if (columns.size() % 2 != 0) return false;
        List<Role> phases = columns.stream()
                .map(SharedLoads::phaseOf)
                .filter(Objects::nonNull)
                .toList();
        if (phases.size() != columns.size()) return false;
        Set<Role> first = EnumSet.copyOf(phases.subList(0, phases.size() / 2)),
                second = EnumSet.copyOf(phases.subList(phases.size() / 2, phases.size()));
        return first.equals(second) && first.size() == phases.size() / 2;
    }

    private static List<Side> halved(Side left, Side right, List<Column> columns) {
        Map<Role, Column> ofLeft = without(left), ofRight = without(right);
        int half = columns.size() / 2;
        for (int k = 0; k < columns.size(); k++)
            (k < half ? ofLeft : ofRight).put(phaseOf(columns.get(k)), columns.get(k));
        return List.of(with(left, columns, ofLeft), with(right, columns, ofRight));
    }

    /** A side with its own of the columns in the middle. */
    private static Side with(Side side, List<Column> middle, Map<Role, Column> roles) {
        List<Column> columns = new ArrayList<>(side.columns());
        columns.removeAll(middle);
        middle.stream().filter(roles::containsValue).forEach(columns::add);
        columns.sort(Comparator.comparingDouble(Column::left));
        return new Side(side.spine(), columns, roles, side.quality());
    }

    private static Map<Role, Column> without(Side side) {
        Map<Role, Column> out = new EnumMap<>(Role.class);
        side.roles().forEach((role, column) -> {
            if (!role.isLoad()) out.put(role, column);
        });
        return out;
    }

    private static boolean isLoad(Column c, double spine) {
        if (c.holds(spine)) return false;
        boolean headed = Headings.weigh(c.heading()).keySet().stream().anyMatch(Role::isPhaseLoad);
        return headed || c.heading().isEmpty() && !c.isBlank() && Contents.weight(Role.LOAD, c.texts()) > 0.3;
    }

    /** Each side has its own three: A B C on the left, and A B C or C B A on the right. */
    private static boolean isMirrored(List<Column> columns) {
        List<Role> first = columns.stream().limit(2).map(SharedLoads::phaseOf).toList();
        if (first.get(0) != null && first.get(0) == first.get(1)) return false;
        long headed = columns.stream()
                .filter(c -> Headings.weigh(c.heading()).keySet().stream().anyMatch(Role::isPhaseLoad))
                .count();
        return headed > columns.size() / 2 + 1;
    }

    /** The phase that a column's heading names; null where it names none. */
    private static Role phaseOf(Column c) {
        return Headings.weigh(c.heading()).entrySet().stream()
                .filter(e -> e.getKey().isPhaseLoad() && e.getValue() >= 0.8)
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(null);
    }
}
