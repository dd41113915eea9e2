package asfound.drawing.schedule.row;

import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.spine.Spine;
import asfound.drawing.schedule.table.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The rows that hang on a spine: one for each position that is printed, and those between two positions where the numbers
 * and the page both say that some stand there without a number. On a board with ways each phase of a way is a row.
 */
final class RowLattice {

    /** More rows than this are not left without a number between two that have one. */
    private static final int MOST_BETWEEN = 12;

    private final Spine spine;
    private final Levels levels;
    private final boolean single;
    /** Rows with a number, and those between them. */
    private final List<Row> printed;

    private RowLattice(Sheet sheet, Phrases phrases, Side side) {
        spine = side.spine();
        levels = new Levels(sheet, phrases, side);
        single = spine.isSingle();
        printed = printed();
    }

    /**
     * The rows of one side from top to bottom.
     *
     * @param all the sides of the table: what one shows of how positions are written holds for all
     * @param top where the table's first row begins
     */
    static List<Row> rows(Sheet sheet, Phrases phrases, Side side, List<Side> all, double top) {
        List<Row> ways = WayRows.of(phrases, side);
        if (!ways.isEmpty()) return ways;
        RowLattice own = new RowLattice(sheet, phrases, side);
        if (!own.single) return own.printed;
        boolean once = own.isOnce()
                || all.stream()
                        .filter(s -> s != side && s.spine().isSingle())
                        .anyMatch(s -> new RowLattice(sheet, phrases, s).isOnce());
        return own.positions(once, all.stream().map(Side::spine).toList(), top);
    }

    /** @param once positions stand only beside a device's first pole */
    private List<Row> positions(boolean once, List<Spine> all, double top) {
        List<Row> out = new ArrayList<>(printed);
        FurtherPoles further = new FurtherPoles(spine, levels, isEverySecond(all));
        if (once || further.areOwedByLastAlone()) further.after(once, out);
        if (once || all.stream().noneMatch(s -> s.numbers().contains(1))) further.before(top, out);
        return out;
    }

    private List<Row> printed() {
        List<Row> out = new ArrayList<>();
        boolean single = spine.isSingle();
        for (int i = 0; i < spine.tokens().size(); i++) {
            Spine.Token t = spine.tokens().get(i);
            if (i > 0 && single) out.addAll(spine.up(i) < 0 ? beforeTurn(i) : between(i));
            out.add(new Row(Optional.of(t), t.text().order(), t.y()));
            if (!single && !t.text().isWay()) out.addAll(belowList(i));
        }
        return out;
    }

    /**
     * Below positions that are written together in a device's first row, {@code 1,3,5}: the rows of its further poles, which hold
     * its loads and marks, or print the device once more.
     */
    private List<Row> belowList(int i) {
        Spine.Token t = spine.tokens().get(i);
        List<Integer> listed = t.text().positions(levels.poles(t));
        if (listed.size() < 2) return List.of();
        boolean last = i + 1 == spine.tokens().size();
        double foot = last
                ? t.y() + (listed.size() + 1) * spine.pitch()
                : spine.tokens().get(i + 1).y();
        List<Row> out = new ArrayList<>();
        for (double y : levels.withoutBlank(levels.between(t.y() + 0.5 * spine.size(), foot))) {
            boolean further = levels.carriesOn(y) || levels.repeats(y, t.y());
            if (!further || out.size() + 1 == listed.size()) return last ? out : List.of();
            out.add(new Row(Optional.empty(), listed.get(out.size() + 1), y));
        }
        return out;
    }

    /** Where the even positions begin below the odd ones: the rows above are the further poles of the last odd device. */
    private List<Row> beforeTurn(int i) {
        Spine.Token a = spine.tokens().get(i - 1), b = spine.tokens().get(i);
        int owed = levels.poles(a) - 1, step = i > 1 && spine.steps(i - 1).size() == 1 ? 2 : 1;
        if (owed < 1) return List.of();
        List<Double> seen = levels.between(a.y(), b.y());
        List<Double> rows = seen.size() == owed ? seen : levels.withoutBlank(seen);
        if (rows.size() != owed) return List.of();
        List<Row> out = new ArrayList<>();
        for (int k = 1; k <= owed; k++)
            out.add(new Row(Optional.empty(), a.text().order() + k * step, rows.get(k - 1)));
        return out;
    }

    /** Rows without a number above a position. */
    private List<Row> between(int i) {
        Spine.Token a = spine.tokens().get(i - 1), b = spine.tokens().get(i);
        List<Double> seen = null;
        for (int step : spine.steps(i)) {
            int missing = spine.up(i) % step == 0 ? spine.up(i) / step - 1 : 0;
            if (missing < 1 || missing > MOST_BETWEEN) continue;
            if (seen == null) seen = levels.between(a.y(), b.y());
            double gap = (b.y() - a.y()) / spine.pitch();
            boolean even = seen.isEmpty() && Math.abs(gap - (missing + 1)) < 0.3;
            List<Double> rows = seen.size() == missing ? seen : levels.withoutBlank(seen);
            if (rows.size() != missing && !even) continue;
            List<Row> out = new ArrayList<>();
            for (int k = 1; k <= missing; k++)
                out.add(new Row(
                        Optional.empty(),
                        a.text().order() + k * step,
                        even ? a.y() + k * (b.y() - a.y()) / (missing + 1) : rows.get(k - 1)));
            return out;
        }
        return List.of();
    }

    /**
     * Positions stand only beside a device's first pole: some of the rows have no number, or the numbers leave out just
     * those that a device of several poles takes.
     */
    private boolean isOnce() {
        if (printed.stream().anyMatch(r -> r.token().isEmpty())) return true;
        List<Spine.Token> all = spine.tokens();
        boolean ones = false;
        for (int i = 1; i < all.size(); i++) ones |= spine.up(i) == 1;
        for (int i = 1; i < all.size(); i++) {
            int step = spine.steps(i).size() == 1 ? 2 : 1;
            boolean leftOut = spine.up(i) > step && spine.up(i) == step * levels.poles(all.get(i - 1));
            if (leftOut && (step == 2 || ones)) return true;
        }
        return false;
    }

    /** The numbers of a row and the next are two apart, here or, where here is a single row, beside it. */
    private boolean isEverySecond(List<Spine> all) {
        int n = spine.tokens().size();
        if (n > 1)
            return spine.isOdd()
                    || spine.isEven()
                    || spine.isOddThenEven()
                    || spine.steps(n - 1).size() == 1;
        return all.stream().anyMatch(s -> s != spine && s.tokens().size() > 1 && (s.isOdd() || s.isEven()));
    }
}
