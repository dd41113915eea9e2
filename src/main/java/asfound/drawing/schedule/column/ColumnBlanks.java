package asfound.drawing.schedule.column;

import asfound.drawing.schedule.phrase.Phrase;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** How much blank stands before each column of a table. */
final class ColumnBlanks {

    private ColumnBlanks() {}

    /**
     * From the rightmost text of the columns before to the leftmost of this one; 0 where there is none.
     *
     * @param columns from left to right
     * @param texts headings and entries
     */
    static List<Double> before(List<Column> columns, List<Phrase> texts) {
        int n = columns.size();
        double[] left = columns.stream().mapToDouble(Column::left).toArray();
        double[] right = columns.stream().mapToDouble(Column::right).toArray();
        double[] from = new double[n], to = new double[n];
        Arrays.fill(from, Double.POSITIVE_INFINITY);
        Arrays.fill(to, Double.NEGATIVE_INFINITY);
        for (Phrase p : texts) {
            double x = p.centreX();
            int c = 0;
            while (c < n && right[c] < x) c++;
            // on the edge between two it stands in both
            for (; c < n && left[c] <= x; c++) {
                from[c] = Math.min(from[c], p.left());
                to[c] = Math.max(to[c], p.right());
            }
        }
        List<Double> out = new ArrayList<>();
        double last = Double.NEGATIVE_INFINITY;
        for (int c = 0; c < n; c++) {
            out.add(c == 0 || from[c] == Double.POSITIVE_INFINITY ? 0 : from[c] - last);
            last = Math.max(last, to[c]);
        }
        return out;
    }
}
