package asfound.drawing.schedule.table;

import asfound.drawing.schedule.column.Column;
import asfound.drawing.schedule.spine.Spine;
import asfound.drawing.schedule.text.Headings;
import asfound.drawing.schedule.text.Role;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One column of positions with the columns that belong to its rows.
 *
 * @param spine the positions
 * @param columns from left to right, without the positions' own
 * @param roles the column that tells each thing
 * @param quality how well the columns make up one side of a schedule
 */
public record Side(Spine spine, List<Column> columns, Map<Role, Column> roles, double quality) {

    /** How much each role counts towards a side that is whole. */
    private static final Map<Role, Double> WORTH = Map.of(
            Role.DESCRIPTION, 1.0,
            Role.RATING, 1.0,
            Role.DEVICE, 1.0,
            Role.POLES, 0.6,
            Role.PHASE, 0.3,
            Role.LOAD, 0.3,
            Role.LOAD_A, 0.2,
            Role.LOAD_B, 0.2,
            Role.LOAD_C, 0.2,
            Role.WIRE, 0.2);

    private record Claim(Column column, Role role, double weight) {}

    /** Gives each role to the column that most speaks for it. */
    static Side of(Spine spine, List<Column> columns) {
        List<Claim> claims = new ArrayList<>();
        for (Column c : columns)
            c.weights().forEach((role, weight) -> {
                if (weight >= Column.ENOUGH
                        && role != Role.POSITION
                        && !isSparse(spine, c, role)
                        && !isLesser(columns, c, role)) claims.add(new Claim(c, role, weight));
            });
        claims.sort((a, b) -> {
            int byWeight = Double.compare(b.weight(), a.weight());
            if (byWeight != 0) return byWeight;
            int byRole = a.role().compareTo(b.role());
            return byRole != 0
                    ? byRole
                    : Double.compare(a.column().left(), b.column().left());
        });
        Map<Role, Column> roles = new EnumMap<>(Role.class);
        double quality = 0;
        for (Claim claim : claims) {
            if (roles.containsKey(claim.role()) || roles.containsValue(claim.column())) continue;
            if (claim.role() == Role.OTHER) continue;
            if (excluded(claim.role(), roles)) continue;
            roles.put(claim.role(), claim.column());
            quality += WORTH.getOrDefault(claim.role(), 0.0) * Math.min(1.6, claim.weight());
        }
        thirdPhase(columns, roles);
        quality -= lonePhase(roles);
        return new Side(spine, List.copyOf(columns), roles, quality - doubles(columns, roles));
    }

    /** Beside a column of descriptions, one that holds half as much says what kind of load it is, whatever its heading. */
    private static boolean isLesser(List<Column> columns, Column c, Role role) {
        return role == Role.DESCRIPTION
                && columns.stream().anyMatch(o -> o != c && o.weight(role) >= 1.2 && o.said() >= 2 * c.said() + 2);
    }

    /** Numbers of notes here and there may be such as poles have; poles stand beside most positions. */
    private static boolean isSparse(Spine spine, Column c, Role role) {
        if (role != Role.POLES || !c.heading().isEmpty()) return false;
        return c.said() * 5 < spine.tokens().size() * 2L;
    }

    /** Between the load of phase B and a total stands that of phase C, whatever is left of its heading. */
    private static void thirdPhase(List<Column> columns, Map<Role, Column> roles) {
        Column a = roles.get(Role.LOAD_A), b = roles.get(Role.LOAD_B), c = roles.get(Role.LOAD);
        if (a == null || b == null || c == null || roles.containsKey(Role.LOAD_C)) return;
        int at = columns.indexOf(b);
        boolean inOrder = columns.indexOf(a) == at - 1 && columns.indexOf(c) == at + 1 && at + 2 < columns.size();
        if (!inOrder) return;
        Column total = columns.get(at + 2);
        if (roles.containsValue(total) || total.weight(Role.LOAD) < Column.ENOUGH) return;
        roles.put(Role.LOAD_C, c);
        roles.put(Role.LOAD, total);
    }

    /**
     * Figures that nothing heads, beside a column of loads, are no loads of a single phase of the panel's: takes the role away
     * and gives what it counted.
     */
    private static double lonePhase(Map<Role, Column> roles) {
        List<Role> phases = roles.keySet().stream().filter(Role::isPhaseLoad).toList();
        if (phases.size() != 1 || !roles.containsKey(Role.LOAD)) return 0;
        Role phase = phases.get(0);
        Column column = roles.get(phase);
        if (!Headings.weigh(column.heading()).isEmpty()) return 0;
        roles.remove(phase);
        return WORTH.get(phase) * Math.min(1.6, column.weight(phase));
    }

    private static boolean excluded(Role role, Map<Role, Column> roles) {
        return role == Role.DEVICE && roles.containsKey(Role.RATING)
                || role == Role.RATING && roles.containsKey(Role.DEVICE);
    }

    /** A second description or rating is a sign that two sides were taken for one. */
    private static double doubles(List<Column> columns, Map<Role, Column> roles) {
        double cost = 0;
        for (Column c : columns) {
            if (roles.containsValue(c)) continue;
            for (Role role : new Role[] {Role.DESCRIPTION, Role.RATING, Role.DEVICE, Role.POLES, Role.LOAD})
                if (c.weight(role) >= 1.2 && roles.containsKey(role)) {
                    cost += role == Role.LOAD ? 0.2 : 0.5;
                    break;
                }
        }
        return cost;
    }

    public Optional<Column> column(Role role) {
        return Optional.ofNullable(roles.get(role));
    }

    public double left() {
        return Math.min(
                spine.left(), columns.stream().mapToDouble(Column::left).min().orElse(spine.left()));
    }

    public double right() {
        return Math.max(
                spine.right(), columns.stream().mapToDouble(Column::right).max().orElse(spine.right()));
    }

    /** The roles from left to right, the position among them: two sides of one panel have them alike, or as in a mirror. */
    public List<Role> sequence() {
        List<Map.Entry<Role, Column>> all = new ArrayList<>(roles.entrySet());
        all.add(Map.entry(Role.POSITION, new Column(spine.left(), spine.right(), "", List.of(), Map.of())));
        all.sort(java.util.Comparator.comparingDouble(
                e -> e.getValue().left() + e.getValue().right()));
        return all.stream().map(Map.Entry::getKey).toList();
    }
}
