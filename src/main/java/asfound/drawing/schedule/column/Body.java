package asfound.drawing.schedule.column;

import asfound.drawing.page.Rule;
import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.phrase.Span;
import asfound.drawing.schedule.spine.Spine;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Where the rows of neighbouring spines lie: below their headings, down to the last row that all of them have.
 *
 * @param top where the first row begins
 * @param bottom where the last row ends
 * @param size of the rows' type
 * @param pitch from row to row
 */
record Body(double top, double bottom, double size, double pitch) {

    static Body of(Sheet sheet, Phrases phrases, List<Spine> spines) {
        double earliest = spines.stream().mapToDouble(Spine::firstY).min().orElse(0);
        double latest = spines.stream().mapToDouble(Spine::firstY).max().orElse(0);
        double last = spines.stream().mapToDouble(Spine::lastY).min().orElse(0);
        double size = spines.get(0).size();
        double top = top(sheet, phrases, spines, earliest, latest);
        double bottom = last + Math.max(0.5 * linePitch(phrases, spines, latest, last), 0.6 * size);
        return new Body(top, bottom, size, spines.get(0).pitch());
    }

    double height() {
        return bottom - top;
    }

    boolean holds(Phrase p) {
        return p.centreY() > top && p.centreY() < bottom;
    }

    /** At a rule, below the headings, or half a row above the first position. */
    private static double top(Sheet sheet, Phrases phrases, List<Spine> spines, double earliest, double latest) {
        double size = spines.get(0).size();
        double ruled = ruleAbove(sheet, spines.get(0), earliest);
        OptionalDouble foot = spines.stream()
                .filter(Spine::headed)
                .mapToDouble(s -> s.heading().orElseThrow().bottom())
                .max();
        boolean below = foot.isEmpty() || ruled > foot.getAsDouble() - 0.4 * size;
        if (ruled > Double.NEGATIVE_INFINITY && below) return ruled;
        if (foot.isEmpty() || foot.getAsDouble() > earliest)
            return latest - 0.5 * linePitch(phrases, spines, earliest, latest + 20 * size);
        // headings of several lines may reach one line further down than that of the positions
        double low = foot.getAsDouble();
        for (Phrase p : phrases)
            if (p.centreY() < foot.getAsDouble() + 0.7 * p.size()
                    && p.centreY() > foot.getAsDouble() - 2 * p.size()
                    && p.centreY() < earliest - 0.8 * size
                    && Math.abs(p.centreX() - spines.get(0).centreX()) < 90 * size)
                low = Math.max(low, p.box().bottom());
        return Math.min(low + 0.1 * size, earliest - 0.5 * size);
    }

    private static double ruleAbove(Sheet sheet, Spine spine, double y) {
        double reach = 1.1 * spine.pitch();
        return sheet.across().between(y - reach, y - 0.2 * spine.size()).stream()
                .filter(r -> r.passes(spine.centreX()))
                .mapToDouble(Rule::at)
                .max()
                .orElse(Double.NEGATIVE_INFINITY);
    }

    /** The usual distance between lines of text among the rows. */
    private static double linePitch(Phrases phrases, List<Spine> spines, double from, double to) {
        double size = spines.get(0).size();
        Span near = new Span(
                spines.get(0).left() - 12 * size, spines.get(spines.size() - 1).right() + 12 * size);
        double[] levels = phrases.between(from - 0.2 * size, to + 0.2 * size).stream()
                .filter(p -> p.centreY() >= from - 0.2 * size && p.centreY() <= to + 0.2 * size)
                .filter(near::meets)
                .mapToDouble(Phrase::centreY)
                .sorted()
                .toArray();
        double[] steps = new double[levels.length];
        int n = 0;
        for (int i = 1; i < levels.length; i++)
            if (levels[i] - levels[i - 1] > 0.4 * size) steps[n++] = levels[i] - levels[i - 1];
        if (n == 0) return spines.get(0).pitch();
        Arrays.sort(steps, 0, n);
        return Math.min(spines.get(0).pitch(), steps[n / 2]);
    }
}
