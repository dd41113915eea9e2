package asfound.drawing.schedule;

import asfound.recordset.Patience;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Shares out the columns of one band of rows among its spines: every way to cut between neighbouring spines is tried, and
 * the cuts are taken with which the sides make most sense.
 */
final class Sides {

    private final List<Spine> spines;
    private final List<Column> columns;
    private final int[] home;

    private Sides(List<Spine> spines, List<Column> all) {
        this.spines = spines;
        columns = all;
        home = new int[spines.size()];
        for (int s = 0; s < spines.size(); s++) home[s] = columnOf(spines.get(s));
    }

    /** One side for each spine, in their order from left to right. */
    static List<Side> of(List<Spine> spines, List<Column> columns) {
        return new Sides(spines, columns).best();
    }

    private int columnOf(Spine spine) {
        int nearest = 0;
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).holds(spine.centreX())) return i;
            if (Math.abs(centre(i) - spine.centreX()) < Math.abs(centre(nearest) - spine.centreX())) nearest = i;
        }
        return nearest;
    }

    private double centre(int i) {
        return (columns.get(i).left() + columns.get(i).right()) / 2;
    }

    private List<Side> best() {
        int n = spines.size(), m = columns.size();
        // score[c]: the best sum for the spines so far where the last of them reaches up to column c (exclusive)
        double[][] score = new double[n][m + 1];
        int[][] from = new int[n][m + 1];
        for (int s = 0; s < n; s++) {
            int lastCut = s == n - 1 ? m : home[s + 1];
            for (int cut = home[s] + 1; cut <= lastCut; cut++) {
                Patience.check();
                if (s == n - 1 && cut != m) continue;
                score[s][cut] = Double.NEGATIVE_INFINITY;
                int firstStart = s == 0 ? 0 : home[s - 1] + 1;
                for (int start = firstStart; start <= home[s]; start++) {
                    if (s == 0 && start != 0) continue;
                    double before = s == 0 ? 0 : score[s - 1][start];
                    double total = before + side(s, start, cut).quality() + gapBefore(start, s);
                    if (total > score[s][cut] + 1e-9) {
                        score[s][cut] = total;
                        from[s][cut] = start;
                    }
                }
            }
        }
        List<Side> out = new ArrayList<>();
        int cut = m;
        for (int s = n - 1; s >= 0; s--) {
            int start = from[s][cut];
            out.add(side(s, start, cut));
            cut = start;
        }
        Collections.reverse(out);
        return out;
    }

    private Side side(int s, int start, int cut) {
        List<Column> own = new ArrayList<>();
        for (int c = start; c < cut; c++) if (c != home[s]) own.add(columns.get(c));
        return Side.of(spines.get(s), own);
    }

    /** Sides are rather parted where columns stand apart. */
    private double gapBefore(int start, int s) {
        if (s == 0 || start == 0 || start >= columns.size()) return 0;
        double gap = columns.get(start).left() - columns.get(start - 1).right();
        return gap > spines.get(s).size() ? 0.15 : 0;
    }
}
