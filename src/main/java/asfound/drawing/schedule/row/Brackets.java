package asfound.drawing.schedule.row;

import asfound.drawing.page.Rule;
import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.table.Side;
import asfound.model.Box;
import asfound.model.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Brackets drawn beside the positions of one device of several poles, whose entry stands beside their middle: upright lines
 * from one row to the next or the next but one that bound no cell.
 */
final class Brackets {

    private static final int MOST_ROWS = 3;
    /** A line of another table's rows or of a cell is no shorter, in sizes of type. */
    private static final double RULING = 3;

    private static final double TOUCHES = 1.5;

    private final List<Row> rows;
    private final double size;
    private final List<Cells.Range> groups = new ArrayList<>();

    Brackets(Sheet sheet, Side side, List<Row> rows) {
        this.rows = rows;
        size = side.spine().size();
        // between the cells of a worksheet nothing is drawn by hand
        if (rows.isEmpty() || sheet.place(boxOf(side)) instanceof Place.InRow) return;
        for (Rule r : sheet.down().between(side.left() - 2 * size, side.right() + 2 * size)) {
            if (r.length() > (MOST_ROWS + 1) * side.spine().pitch()
                    || isOfCell(sheet, r, size)
                    || isAnothers(sheet, r, side)) continue;
            int first = -1, last = -1;
            for (int i = 0; i < rows.size(); i++)
                if (rows.get(i).y() > r.from() - 0.3 * size && rows.get(i).y() < r.to() + 0.3 * size) {
                    if (first < 0) first = i;
                    last = i;
                }
            if (first >= 0 && last > first && last - first < MOST_ROWS) groups.add(new Cells.Range(first, last));
        }
    }

    private static Box boxOf(Side side) {
        return side.spine().tokens().get(0).phrase().box();
    }

    /** A rule of the table ends where it does. */
    private static boolean isOfCell(Sheet sheet, Rule upright, double size) {
        return touches(sheet, upright.from(), upright.at(), size) || touches(sheet, upright.to(), upright.at(), size);
    }

    /** It stands beyond a rule that ends this side, and its ends do not point back to it. */
    private boolean isAnothers(Sheet sheet, Rule upright, Side side) {
        double x = upright.at(), y = (upright.from() + upright.to()) / 2;
        boolean before = x < side.left(), behind = x > side.right();
        if (!before && !behind) return false;
        double edge = before ? side.left() + size : side.right() - size;
        boolean barred = sheet.down().between(Math.min(x, edge) + TOUCHES, Math.max(x, edge) - TOUCHES).stream()
                .anyMatch(r -> r.passes(y) && r.length() > upright.length());
        return barred && !pointsTo(sheet, upright, before);
    }

    private boolean pointsTo(Sheet sheet, Rule upright, boolean right) {
        return sheet.across().between(upright.from() - TOUCHES, upright.from() + TOUCHES).stream()
                .anyMatch(r -> r.length() < RULING * size
                        && (right
                                ? Math.abs(r.from() - upright.at()) < TOUCHES
                                : Math.abs(r.to() - upright.at()) < TOUCHES));
    }

    private static boolean touches(Sheet sheet, double y, double x, double size) {
        return sheet.across().between(y - TOUCHES, y + TOUCHES).stream()
                .anyMatch(r -> r.length() > RULING * size && r.from() <= x + TOUCHES && r.to() >= x - TOUCHES);
    }

    /** The rows of the bracket within which a line stands, where it is the only one of its column there. */
    Optional<Cells.Range> of(ColumnLines.Line line, List<ColumnLines.Line> column) {
        return groups.stream()
                .filter(g -> isWithin(g, line)
                        && column.stream().filter(l -> isWithin(g, l)).count() == 1)
                .findFirst();
    }

    private boolean isWithin(Cells.Range group, ColumnLines.Line line) {
        return line.y() > rows.get(group.first()).y() - 0.5 * size
                && line.y() < rows.get(group.last()).y() + 0.5 * size;
    }
}
