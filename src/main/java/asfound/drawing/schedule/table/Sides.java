package asfound.drawing.schedule.table;

import asfound.drawing.schedule.column.Column;
import asfound.drawing.schedule.column.Columns;
import asfound.drawing.schedule.spine.Spine;
import asfound.recordset.Patience;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Shares out the columns of one band of rows among its spines: every way to cut between neighbouring spines is tried, and
 * the cuts are taken with which the sides make most sense.
 */
final class Sides {

    private final List<Spine> spines;
    private final List<Column> columns;
    private final List<Double> blanks;
    private final int[] home;

    private Sides(List<Spine> spines, Columns found) {
        blanks = found.blanks();
        this.spines = spines;
        columns = found.all();
        home = new int[spines.size()];
        for (int s = 0; s < spines.size(); s++) home[s] = columnOf(spines.get(s));
    }

    /** One side for each spine, in their order from left to right. */
    static List<Side> of(List<Spine> spines, Columns columns) {
        Sides sides = new Sides(spines, columns);
        List<Side> best = sides.best();
        return sides.uniform(quality(best) - 0.1).orElse(best);
    }

    private static double quality(List<Side> sides) {
        return sides.stream().mapToDouble(Side::quality).sum();
    }

    /**
     * The sides with the positions at the left of each, or at the right of each, where that makes as much sense as any other
     * way to cut: a sheet's tables are made alike, and a column between two of them belongs to both by its content alone.
     */
    private Optional<List<Side>> uniform(double least) {
        int n = spines.size(), m = columns.size();
        if (n < 2 || m == 0) return Optional.empty();
        List<Side> atLeft = new ArrayList<>(), atRight = new ArrayList<>();
        for (int s = 0; s < n; s++) {
            if (s > 0 && home[s] <= home[s - 1]) return Optional.empty();
            atLeft.add(side(s, s == 0 ? 0 : home[s], s == n - 1 ? m : home[s + 1]));
            atRight.add(side(s, s == 0 ? 0 : home[s - 1] + 1, s == n - 1 ? m : home[s] + 1));
        }
        if (home[0] == 0 && quality(atLeft) >= least) return Optional.of(atLeft);
        if (home[n - 1] == m - 1 && quality(atRight) >= least) return Optional.of(atRight);
        return Optional.empty();
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

    /** Of ways to cut that make the same sense, that through the widest blank is taken. */
    private double gapBefore(int start, int s) {
        if (s == 0 || start == 0 || start >= columns.size()) return 0;
        double widest = 0;
        for (int c = home[s - 1] + 1; c <= home[s]; c++) widest = Math.max(widest, blanks.get(c));
        double blank = blanks.get(start);
        return blank < 2.5 * spines.get(s).size() ? 0 : 0.1 * Math.max(0, blank) / widest;
    }
}
