package asfound.drawing.schedule.table;

import asfound.drawing.schedule.column.Column;
import asfound.drawing.schedule.text.Headings;
import asfound.drawing.schedule.text.LoadClasses;
import asfound.drawing.schedule.text.LoadText;
import asfound.drawing.schedule.text.Role;
import asfound.drawing.schedule.text.Texts;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Loads in neighbouring columns by their kinds, {@code Ltg | Rec | Mot | Oth}: what stands in a row of them together is the
 * circuit's load. A column of the whole load, or of each phase, says it better.
 */
public final class LoadsByKind {

    /** Under such headings smaller whole figures may count outlets. */
    private static final double LEAST = 100;

    private LoadsByKind() {}

    /** The columns of kinds that a side's column of loads is made of; empty where it is a column of its own. */
    public static List<Column> parts(Side side) {
        Column load = side.roles().get(Role.LOAD);
        if (load == null || side.columns().contains(load)) return List.of();
        List<Column> out = side.columns().stream()
                .filter(c -> c.left() >= load.left() && c.right() <= load.right() && LoadClasses.isKind(c.heading()))
                .toList();
        return out.size() > 1 ? out : List.of();
    }

    /** The side with all its kinds as its loads, where it has them. */
    static Side summed(Side side) {
        List<Column> kinds = kinds(side);
        // a kind that is named twice is perhaps the other side's
        if (headings(kinds).size() < kinds.size()) return side;
        if (kinds.size() < 2 || kinds.stream().noneMatch(c -> LoadClasses.isOne(c.heading())) || !areLoads(kinds))
            return side;
        Map<Role, Column> roles = new EnumMap<>(side.roles());
        roles.values().removeAll(kinds);
        // a column of the whole, or of a phase, under a heading that says so
        if (roles.keySet().stream().anyMatch(Role::isLoad)) return side;
        List<String> headings = new ArrayList<>(), texts = new ArrayList<>();
        for (Column c : kinds) {
            headings.add(c.heading());
            texts.addAll(c.texts());
        }
        double left = kinds.get(0).left(), right = kinds.get(kinds.size() - 1).right();
        roles.put(Role.LOAD, new Column(left, right, String.join(" ", headings), texts, Map.of(Role.LOAD, 2.0)));
        return new Side(side.spine(), side.columns(), roles, side.quality());
    }

    /**
     * The sides with the kinds in the middle of a panel shared out, where they are named twice, {@code LTG | REC | MISC | MISC | REC |
     * LTG}: the left half is of the left side. As they were where each has its own.
     */
    static List<Side> parted(Side left, Side right) {
        List<Column> first = left.columns(), second = right.columns();
        int from = first.size(), to = 0;
        while (from > 0
                && isFree(first.get(from - 1), left)
                && first.get(from - 1).left() > left.spine().right()) from--;
        while (to < second.size()
                && isFree(second.get(to), right)
                && second.get(to).right() < right.spine().left()) to++;
        List<Column> middle = new ArrayList<>(first.subList(from, first.size()));
        middle.addAll(second.subList(0, to));
        int half = middle.size() / 2;
        boolean own = half < 2 || middle.size() % 2 != 0 || to == half || hasKinds(first.subList(0, from));
        if (own || hasKinds(second.subList(to, second.size()))) return List.of(left, right);
        Set<String> ofLeft = headings(middle.subList(0, half)), ofRight = headings(middle.subList(half, 2 * half));
        if (ofLeft.size() != half || !ofLeft.equals(ofRight)) return List.of(left, right);
        List<Column> before = new ArrayList<>(first.subList(0, from)), behind = new ArrayList<>();
        before.addAll(middle.subList(0, half));
        behind.addAll(middle.subList(half, 2 * half));
        behind.addAll(second.subList(to, second.size()));
        return List.of(
                new Side(left.spine(), before, left.roles(), left.quality()),
                new Side(right.spine(), behind, right.roles(), right.quality()));
    }

    private static boolean isFree(Column c, Side side) {
        return LoadClasses.isKind(c.heading()) && !side.roles().containsValue(c);
    }

    private static boolean hasKinds(List<Column> columns) {
        return columns.stream().anyMatch(c -> LoadClasses.isOne(c.heading()));
    }

    private static Set<String> headings(List<Column> columns) {
        return columns.stream().map(c -> Headings.plain(c.heading())).collect(Collectors.toSet());
    }

    /** The first columns that stand side by side under headings of kinds. */
    private static List<Column> kinds(Side side) {
        List<Column> out = new ArrayList<>();
        for (Column c : side.columns()) {
            boolean taken = side.roles().entrySet().stream()
                    .anyMatch(e ->
                            e.getValue() == c && !e.getKey().isLoad() && Headings.weight(c.heading(), e.getKey()) > 0);
            boolean own = LoadClasses.isKind(c.heading()) && !taken;
            if (own) out.add(c);
            else if (out.size() == 1) out.clear();
            else if (!out.isEmpty()) break;
        }
        return out;
    }

    /** Figures that are loads, all in one unit, of kinds that may run at once. */
    private static boolean areLoads(List<Column> kinds) {
        boolean large = false, decimals = false, kilo = false, plain = false;
        for (Column c : kinds) {
            String heading = " " + Headings.plain(c.heading()) + " ";
            kilo |= heading.contains(" kva ") || heading.contains(" kw ");
            plain |= heading.contains(" va ") || heading.contains(" w ") || heading.contains(" watts ");
            for (String text : c.texts()) {
                if (Texts.saysNothing(text)) continue;
                double load = LoadText.parse(text, false).orElse(-1.0);
                if (load < 0) return false;
                large |= load >= LEAST;
                decimals |= text.indexOf('.') > 0;
            }
        }
        long inTurn = kinds.stream()
                .filter(c -> LoadClasses.isInTurn(c.heading()) && !c.isBlank())
                .count();
        return inTurn < 2 && !(kilo && plain) && (kilo || plain || large || decimals);
    }
}
