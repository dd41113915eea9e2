package asfound.drawing.schedule.table;

import asfound.drawing.schedule.spine.Spine;
import java.util.List;

/**
 * The numbers of ways beside rows that have positions of their own: {@code 1} beside {@code R1}, {@code Y1} and {@code B1}. They
 * count the rows once more, and are the positions of no other table.
 */
final class WaysOfRows {

    private static final int MOST_PHASES = 3;

    private WaysOfRows() {}

    /** Each number stands in the middle of as many rows of one side, or beside the first of them. */
    static boolean areOf(Table table, Spine numbers) {
        return table.sides().stream().anyMatch(s -> areBeside(s, numbers));
    }

    private static boolean areBeside(Side side, Spine numbers) {
        List<Spine.Token> rows = side.spine().tokens();
        int ways = numbers.tokens().size(), each = rows.size() / ways;
        boolean beside = side.columns().stream().anyMatch(c -> c.holds(numbers.centreX()));
        if (!beside || each < 2 || each > MOST_PHASES || rows.size() != each * ways) return false;
        for (int w = 0; w < ways; w++) {
            double y = numbers.tokens().get(w).y(), slack = 0.3 * numbers.size();
            double first = rows.get(w * each).y(),
                    last = rows.get(w * each + each - 1).y();
            boolean among = y > first - slack && y < last + slack;
            if (!among || numbers.numbers().get(w) != numbers.numbers().get(0) + w) return false;
        }
        return true;
    }
}
