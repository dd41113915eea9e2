package asfound.drawing.schedule.text;

import asfound.recordset.Grid;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Positions, ratings and numbers of poles that a program wrote with a point and a zero, {@code 20.0}, as some do where a
 * column has blank cells: they are whole numbers. Only columns are taken so whose heading says that they hold such, and
 * which hold no other fraction: {@code 2.0} below {@code kVA} must stay a figure of thousands.
 */
public final class WholeNumbers {

    private static final Pattern POINTED = Pattern.compile("\\d{1,4}[.,]0+");
    private static final Pattern FRACTION = Pattern.compile("\\d+\\.\\d*[1-9]\\d*");
    private static final Set<Role> COUNTED = Set.of(Role.POSITION, Role.RATING, Role.POLES);
    private static final double HEADED = 0.6;

    private final Grid grid;
    private final int column;
    private final Set<Integer> found = new HashSet<>();
    private final List<Integer> open = new ArrayList<>();
    private boolean headed;
    private boolean whole = true;
    private String above = "";

    private WholeNumbers(Grid grid, int column) {
        this.grid = grid;
        this.column = column;
    }

    /** The rows of a column, by their index, whose cells are such numbers. */
    public static Set<Integer> of(Grid grid, int column) {
        WholeNumbers numbers = new WholeNumbers(grid, column);
        for (int r = 0; r < grid.rows().size(); r++)
            numbers.cell(r, grid.rows().get(r).cell(column).strip());
        numbers.close();
        return numbers.found;
    }

    /** The number without its point and zero. */
    public static String plain(String cell) {
        return cell.strip().replaceFirst("[.,]0+$", "");
    }

    private void cell(int row, String text) {
        if (POINTED.matcher(text).matches()) open.add(row);
        else if (FRACTION.matcher(text).matches()) whole = false;
        else if (!text.isEmpty() && text.chars().anyMatch(Character::isLetter) || text.equals("#")) {
            String line = text.replaceAll("\\s+", " ");
            if (isHeading(line) || isHeading(above + " " + line) || isOther(line)) {
                close();
                headed = !isOther(line);
            }
            above = line;
        }
    }

    private static boolean isHeading(String text) {
        return Headings.weigh(text).entrySet().stream()
                .anyMatch(e -> COUNTED.contains(e.getKey()) && e.getValue() >= HEADED);
    }

    /** A heading of something else. */
    private static boolean isOther(String text) {
        Map<Role, Double> weights = Headings.weigh(text);
        return !isHeading(text) && weights.values().stream().anyMatch(w -> w >= HEADED);
    }

    private void close() {
        if (headed && whole) found.addAll(open);
        open.clear();
        whole = true;
    }
}
