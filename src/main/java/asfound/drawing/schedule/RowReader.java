package asfound.drawing.schedule;

import asfound.drawing.page.Rule;
import asfound.drawing.page.Sheet;
import asfound.drawing.page.Word;
import asfound.model.Box;
import asfound.recordset.Patience;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Puts what stands in a side's columns to its rows. */
final class RowReader {

    private final Sheet sheet;
    private final List<Phrase> phrases;
    private final Side side;
    private final List<Row> rows;
    private final double top;
    private final double bottom;
    private final double size;
    private final List<Double> spineBounds;
    private final List<Leftover> strays = new ArrayList<>();
    private final Set<Word> taken = new HashSet<>();

    /** @param all the sides of the table, this one among them */
    RowReader(Sheet sheet, List<Phrase> phrases, Side side, List<Side> all, double top) {
        this.sheet = sheet;
        this.phrases = phrases;
        this.side = side;
        size = side.spine().size();
        rows = RowLattice.rows(sheet, phrases, side, all, top);
        this.top = Math.min(top, rows.get(0).y() - 0.6 * size);
        bottom = foot();
        spineBounds = spineBounds();
    }

    List<Row> read() {
        for (Map.Entry<Role, Column> e : side.roles().entrySet()) {
            List<Line> lines = lines(e.getKey(), e.getValue());
            place(e.getKey(), e.getValue(), lines);
        }
        return rows;
    }

    /** Text of a column that no row took. */
    List<Leftover> strays() {
        return strays;
    }

    /** The words that stand in some cell or were told as strays. */
    Set<Word> taken() {
        return taken;
    }

    double bottom() {
        return bottom;
    }

    /** The usual distance from one row to the next. */
    private double pitch() {
        if (rows.size() < 2) return 2 * size;
        double[] steps = new double[rows.size() - 1];
        for (int r = 1; r < rows.size(); r++)
            steps[r - 1] = rows.get(r).y() - rows.get(r - 1).y();
        java.util.Arrays.sort(steps);
        return Math.max(0.5 * size, steps[(steps.length - 1) / 2]);
    }

    /** Where the last row ends: at the next rule, or half a row further down. */
    private double foot() {
        double last = rows.get(rows.size() - 1).y(), pitch = pitch();
        double x = side.spine().centreX();
        double open = last + Math.max(0.55 * pitch, 0.8 * size);
        double rule = sheet.across().between(last + 0.25 * size, last + 4.5 * pitch).stream()
                .filter(r -> r.passes(x))
                .mapToDouble(Rule::at)
                .min()
                .orElse(open);
        // a rule further down than a row is the row's own only where rows are parted by rules
        boolean ruled = rows.size() > 1
                && sheet.across().between(rows.get(rows.size() - 2).y(), last).stream()
                        .anyMatch(r -> r.passes(x));
        boolean closed = rule != open && (rule <= last + 1.25 * pitch || ruled);
        return closed ? rule : wrapped(last, open, pitch);
    }

    /** Without a rule: further lines of the last entry's description, which follow each other more closely than rows do. */
    private double wrapped(double last, double open, double pitch) {
        Column own = side.roles().get(Role.DESCRIPTION);
        if (own == null) return open;
        double end = open, above = last;
        for (Phrase p : phrases) {
            if (p.centreY() <= last - 0.5 * pitch || p.centreX() < side.left() || p.centreX() > side.right()) continue;
            boolean alone = p.left() >= own.left() - 1 && p.centreX() < own.right();
            if (p.centreY() <= open) {
                if (alone) above = p.centreY();
                continue;
            }
            double gap = p.centreY() - above;
            if (!alone || gap > 1.5 * size || gap > 0.85 * pitch) break;
            above = p.centreY();
            end = above + 0.6 * size;
        }
        return end;
    }

    /** Words of one column on one level. */
    private record Line(String text, Box box) {
        double y() {
            return box.centreY();
        }
    }

    private List<Line> lines(Role role, Column column) {
        List<Word> own = new ArrayList<>();
        Patience.check();
        for (Phrase p : phrases) {
            if (p.centreY() <= top || p.centreY() >= bottom + 0.2 * size) continue;
            if (p.right() < column.left() - 40 * size || p.left() > column.right()) continue;
            for (Word w : p.words()) if (belongs(p, w, role, column)) own.add(w);
        }
        List<Line> out = new ArrayList<>();
        taken.addAll(own);
        for (List<Word> line : Phrase.lines(own)) {
            Phrase whole = Phrase.of(line);
            out.add(new Line(whole.text(), whole.box()));
        }
        return out;
    }

    /** A word belongs to the column that it stands in; words of a description that run on into the next column, to it. */
    private boolean belongs(Phrase p, Word w, Role role, Column column) {
        boolean inside = w.centreX() >= column.left() && w.centreX() < column.right();
        if (p.words().size() == 1) return inside;
        boolean runsOn = runsOn(p, w);
        if (role == Role.DESCRIPTION) return inside || runsOn && startsIn(p, column);
        return inside && !runsOn;
    }

    private static boolean startsIn(Phrase p, Column column) {
        double x = p.words().get(0).centreX();
        return x >= column.left() && x < column.right();
    }

    /** The phrase is a description that began in its column, and the word, in the next, is no entry of that one. */
    private boolean runsOn(Phrase p, Word w) {
        Column description = side.roles().get(Role.DESCRIPTION);
        if (description == null || !startsIn(p, description) || w.centreX() < description.right()) return false;
        for (Map.Entry<Role, Column> e : side.roles().entrySet())
            if (e.getValue() != description && e.getValue().holds(w.centreX()))
                return Contents.weight(e.getKey(), List.of(w.text())) < 0.3 || isTaken(e.getValue(), p);
        return true;
    }

    /** Another text stands in the column on the same level: the phrase has run into it. */
    private boolean isTaken(Column column, Phrase by) {
        return phrases.stream()
                .anyMatch(o -> o != by
                        && Math.abs(o.centreY() - by.centreY()) < 0.3 * size
                        && column.holds(o.centreX())
                        && o.left() > by.right());
    }

    private void place(Role role, Column column, List<Line> lines) {
        List<Double> bounds = bounds(column);
        Manner manner = manner(lines, bounds);
        for (Line line : lines) {
            int[] span = span(line, bounds, manner);
            if (span == null) {
                strays.add(new Leftover(line.text(), line.box()));
                continue;
            }
            Row.Cell cell = new Row.Cell(line.text(), line.box(), span[1] - span[0]);
            rows.get(span[0]).put(role, cell);
        }
    }

    /** The rules that part the cells of a column, with the edges of the body. */
    private List<Double> bounds(Column column) {
        List<Double> out = new ArrayList<>();
        out.add(top - 2);
        double width = column.width();
        List<Rule> rules = sheet.across().between(top + 0.5, bottom - 0.5);
        for (int i = 0; i < rules.size(); ) {
            double at = rules.get(i).at(), covered = 0;
            int j = i;
            while (j < rules.size() && rules.get(j).at() - at < 1.2)
                covered += rules.get(j++).covers(column.left(), column.right());
            if (covered > 0.6 * width) out.add(at);
            i = j;
        }
        out.add(bottom + size);
        return out;
    }

    /** How the lines of a wrapped entry lie to its position. */
    private enum Manner {
        MIDDLE,
        TOP,
        BOTTOM
    }

    /** The rows from first to last that a line belongs to; null where it belongs to none. */
    private int[] span(Line line, List<Double> bounds, Manner manner) {
        int b = interval(bounds, line.y());
        double low = bounds.get(b), high = bounds.get(b + 1);
        int first = rowBelow(low), last = rowBelow(high) - 1;
        if (first > last) return beside(line);
        if (first == last) return new int[] {first, first};
        if (isMerged(first, last)) return new int[] {first, last};
        int row = rowOf(line.y(), first, last, manner);
        return new int[] {row, row};
    }

    /** A cell beside a taller cell of the position. */
    private int[] beside(Line line) {
        int b = interval(spineBounds, line.y());
        int r = rowBelow(spineBounds.get(b));
        return r < rows.size() && rows.get(r).y() < spineBounds.get(b + 1) ? new int[] {r, r} : null;
    }

    /** The interval between neighbouring bounds that a level lies in. */
    private static int interval(List<Double> bounds, double y) {
        int low = 0, high = bounds.size() - 2;
        while (low < high) {
            int mid = (low + high + 1) >>> 1;
            if (bounds.get(mid) <= y) low = mid;
            else high = mid - 1;
        }
        return low;
    }

    /** The first row below a level. */
    private int rowBelow(double y) {
        int low = 0, high = rows.size();
        while (low < high) {
            int mid = (low + high) >>> 1;
            if (rows.get(mid).y() <= y) low = mid + 1;
            else high = mid;
        }
        return low;
    }

    private List<Double> spineBounds() {
        Spine s = side.spine();
        return bounds(new Column(s.left(), s.right(), "", List.of(), Map.of()));
    }

    /** The positions of these rows stand in cells of their own, so the wider cell was made by joining them. */
    private boolean isMerged(int first, int last) {
        for (int r = first; r < last; r++) {
            double a = rows.get(r).y(), b = rows.get(r + 1).y();
            double x = rows.get(r)
                    .token()
                    .map(t -> t.phrase().centreX())
                    .orElse(side.spine().centreX());
            boolean parted = sheet.across().between(a, b).stream().anyMatch(rule -> rule.passes(x));
            if (!parted) return false;
        }
        return true;
    }

    private int rowOf(double y, int first, int last, Manner manner) {
        double slack = 0.35 * size;
        int best = first;
        for (int r = first; r <= last; r++) {
            double at = rows.get(r).y();
            switch (manner) {
                case TOP -> {
                    if (at <= y + slack) best = r;
                }
                case BOTTOM -> {
                    if (r > first && rows.get(r - 1).y() < y - slack) best = r;
                }
                default -> {
                    if (Math.abs(at - y) < Math.abs(rows.get(best).y() - y)) best = r;
                }
            }
        }
        return best;
    }

    /** The manner in which the lines lie best to the positions: as one line each they lie alike in all. */
    private Manner manner(List<Line> lines, List<Double> bounds) {
        if (bounds.size() > rows.size()) return Manner.MIDDLE;
        Manner best = Manner.MIDDLE;
        double bestCost = Double.MAX_VALUE;
        for (Manner m : Manner.values()) {
            double cost = cost(lines, m);
            if (cost < bestCost - 1e-6) {
                bestCost = cost;
                best = m;
            }
        }
        return best;
    }

    private double cost(List<Line> lines, Manner manner) {
        List<List<Line>> byRow = new ArrayList<>();
        for (int r = 0; r < rows.size(); r++) byRow.add(new ArrayList<>());
        for (Line line : lines)
            byRow.get(rowOf(line.y(), 0, rows.size() - 1, manner)).add(line);
        double cost = 0;
        for (int r = 0; r < rows.size(); r++) {
            List<Line> own = byRow.get(r);
            if (own.isEmpty()) continue;
            own.sort(Comparator.comparingDouble(Line::y));
            double first = own.get(0).y(), last = own.get(own.size() - 1).y();
            double lies = switch (manner) {
                case TOP -> first;
                case BOTTOM -> last;
                default -> (first + last) / 2;
            };
            cost += Math.abs(lies - rows.get(r).y()) / size;
            // lines of one entry follow each other closely
            for (int i = 1; i < own.size(); i++)
                cost += Math.max(0, (own.get(i).y() - own.get(i - 1).y()) / size - 1.6);
        }
        return cost;
    }
}
