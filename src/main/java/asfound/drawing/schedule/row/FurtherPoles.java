package asfound.drawing.schedule.row;

import asfound.drawing.schedule.spine.Spine;
import asfound.drawing.schedule.text.Texts;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Rows without a number at the head and foot of a side, where positions stand only beside a device's first pole: the
 * further poles of the device above, or of one at the foot of the page or half before.
 */
final class FurtherPoles {

    private static final int MOST_POLES = 4;

    private final Spine spine;
    private final Levels levels;
    private final int step;

    /** @param everySecond the numbers of a row and the next are two apart */
    FurtherPoles(Spine spine, Levels levels, boolean everySecond) {
        this.spine = spine;
        this.levels = levels;
        step = everySecond ? 2 : 1;
    }

    /** The last device is the only one of several poles. */
    boolean areOwedByLastAlone() {
        for (Spine.Token t : spine.tokens()) if (levels.poles(t) > 1) return t == last();
        return false;
    }

    private Spine.Token last() {
        return spine.tokens().get(spine.tokens().size() - 1);
    }

    /**
     * Adds the rows below the last number: of the last device, or of those before it, as long as lines go on that hold
     * nothing but marks and loads, or print the device once more.
     *
     * @param once positions are known to stand only beside a device's first pole: blank rows count
     */
    void after(boolean once, List<Row> rows) {
        Spine.Token last = last();
        double pitch = rows.size() > 1 ? (last.y() - rows.get(0).y()) / (rows.size() - 1) : spine.pitch();
        int owed = last.text().order(), sure = owed;
        for (Spine.Token t : spine.tokens()) {
            owed = Math.max(owed, t.text().order() + 2 * (levels.poles(t) - 1));
            sure = Math.max(sure, t.text().order() + step * (levels.poles(t) - 1));
        }
        int most = (owed - last.text().order()) / step;
        if (most == 0) return;
        double at = last.y(), reach = 1.6 * Math.max(pitch, spine.pitch());
        int number = last.text().order(), found = 0;
        List<Double> below = levels.between(last.y(), last.y() + (2.5 * most + 1) * pitch);
        List<Double> marked = levels.withoutBlank(below);
        // a blank row among marks for all further poles is none of them
        boolean spaced = once
                && marked.size() < below.size()
                && marked.stream().takeWhile(levels::carriesOn).count() * step
                        >= sure - last.text().order();
        if (spaced) reach += pitch;
        for (double y : spaced ? marked : below) {
            if (found == most || y - at > reach || !levels.carriesOn(y) && !repeatsOwing(y, number + step)) break;
            // a blank row may be the other half's alone
            if (levels.isBlank(y) && (!once || number + step > sure)) break;
            rows.add(new Row(Optional.empty(), number += step, y));
            at = y;
            found++;
        }
        for (int k = found + 1; once && k < levels.poles(last); k++)
            rows.add(new Row(Optional.empty(), number += step, at += Math.min(pitch, spine.pitch())));
    }

    /** A device that has a pole at this number is printed on this level once more. */
    private boolean repeatsOwing(double y, int number) {
        return levels.isDevice(y)
                && spine.tokens().stream()
                        .filter(t -> t.text().order() + 2 * (levels.poles(t) - 1) >= number)
                        .anyMatch(t -> levels.repeats(y, t.y()));
    }

    /**
     * Adds the rows above the first number, which belong to the device at the foot of the page or half before: marks and
     * loads alone, or that device printed once more.
     *
     * @param top where the table's first row begins
     */
    void before(double top, List<Row> rows) {
        Spine.Token first = spine.tokens().get(0);
        double pitch = rows.size() > 1 ? spacing(rows) : spine.pitch();
        double limit = spine.heading()
                .map(h -> h.bottom() + 0.2 * spine.size())
                .orElse(Math.min(top, first.y() - (MOST_POLES + 0.6) * pitch));
        if (limit > first.y()) limit = top;
        int number = first.text().order(), most = MOST_POLES + spine.tokens().size() * 4;
        double at = first.y();
        List<Double> above = levels.between(limit, first.y());
        for (int i = above.size() - 1; i >= 0 && rows.size() < most; i--) {
            double y = above.get(i), gap = at - y;
            number -= step;
            boolean row = gap > 0.6 * pitch && gap < 1.6 * Math.max(pitch, spine.pitch());
            if (!row || number < 1 || levels.isBlank(y) || !levels.carriesOn(y) && !levels.isDevice(y)) return;
            boolean marked = levels.on(y).stream().anyMatch(p -> Texts.isMark(p.text()));
            if (y < top && !spine.headed() && !marked) return;
            rows.add(0, new Row(Optional.empty(), number, y));
            at = y;
        }
    }

    /** The least distance between neighbouring rows that is usual. */
    private static double spacing(List<Row> rows) {
        double[] steps = new double[rows.size() - 1];
        for (int r = 1; r < rows.size(); r++)
            steps[r - 1] = rows.get(r).y() - rows.get(r - 1).y();
        Arrays.sort(steps);
        return steps[steps.length / 4];
    }
}
