package asfound.drawing.schedule.cell;

import asfound.drawing.schedule.text.Headings;
import asfound.drawing.schedule.text.Role;
import asfound.model.Directory;
import asfound.model.Problem;
import asfound.recordset.Grid;
import asfound.recordset.GridRow;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Headings of circuits in a sheet of cells below which no circuit was read: a table must not be lost without a word. */
final class UnreadTables {

    /** So many rows with something in the column of positions make a table. */
    private static final int ROWS = 3;

    private UnreadTables() {}

    /** One for each table beside those that were read. */
    static List<Problem> problems(Grid grid, List<Directory> read) {
        Set<Integer> circuits = new HashSet<>();
        read.forEach(d -> d.circuits().forEach(c -> circuits.add(c.place().rowNumber())));
        Set<Integer> again = RepeatedHeadings.of(grid);
        List<Problem> out = new ArrayList<>();
        for (int r = 0; r < grid.rows().size(); r++) {
            GridRow head = grid.rows().get(r);
            List<Integer> positions = RepeatedHeadings.positions(head);
            if (positions.isEmpty() || again.contains(head.number()) || !isOfCircuits(head)) continue;
            int column = positions.get(0), rows = 0;
            boolean any = false;
            for (int k = r + 1; k < grid.rows().size() && !any; k++) {
                GridRow row = grid.rows().get(k);
                if (!RepeatedHeadings.positions(row).isEmpty()) break;
                any = circuits.contains(row.number());
                String cell = row.cell(column);
                if (!cell.isBlank() && Character.isDigit(cell.charAt(cell.length() - 1))) rows++;
            }
            if (!any && rows >= ROWS)
                out.add(new Problem(
                        grid.place(head),
                        "This looks like a schedule and could not be explained: below '"
                                + head.cell(column).replaceAll("\\s+", " ")
                                + "' stand no positions that were understood.",
                        "Read this part by hand."));
        }
        return out;
    }

    /** It heads descriptions, and ratings or poles. */
    private static boolean isOfCircuits(GridRow head) {
        boolean described = false, rated = false;
        for (String cell : head.cells()) {
            String text = cell.replaceAll("\\s+", " ");
            described |= Headings.weight(text, Role.DESCRIPTION) >= 0.5;
            rated |= Headings.weight(text, Role.RATING) >= 0.6 || Headings.weight(text, Role.DEVICE) >= 0.6;
        }
        return described && rated;
    }
}
