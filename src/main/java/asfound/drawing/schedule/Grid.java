package asfound.drawing.schedule;

import asfound.drawing.page.Rule;
import asfound.drawing.page.Sheet;
import asfound.drawing.page.Word;
import asfound.recordset.Patience;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;

/**
 * Finds the columns of the rows that hang on neighbouring spines: by vertical rules where there are any, by blank space
 * that runs down through all rows elsewhere.
 */
final class Grid {

    /** Figures set to the right and a text set to the left beside them leave no more than a thin space. */
    private static final double NARROWEST = 0.12;

    private static final double OUTER = 6;

    private final Sheet sheet;
    private final List<Phrase> phrases;
    private final List<Spine> spines;
    private final double top;
    private final double bottom;
    private final double size;
    private final double leftEdge;
    private final double rightEdge;
    private double headTop;
    private boolean ruled;
    private ColumnHeadings headings;
    private final HeadCuts heads;

    Grid(Sheet sheet, List<Phrase> phrases, List<Spine> spines) {
        this(sheet, phrases, spines, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    /** A grid that keeps between two edges, where a neighbouring table begins. */
    Grid(Sheet sheet, List<Phrase> phrases, List<Spine> spines, double leftEdge, double rightEdge) {
        this.leftEdge = leftEdge;
        this.rightEdge = rightEdge;
        this.sheet = sheet;
        this.phrases = phrases;
        this.spines = spines;
        double first = spines.stream().mapToDouble(Spine::firstY).max().orElse(0);
        double last = spines.stream().mapToDouble(Spine::lastY).min().orElse(0);
        size = spines.get(0).size();
        top = bodyTop(spines.stream().mapToDouble(Spine::firstY).min().orElse(0), first);
        bottom = last + Math.max(0.5 * linePitch(first, last), 0.6 * size);
        headTop = top;
        heads = new HeadCuts(sheet, phrases, top, size);
    }

    /** Where the column headings begin. */
    double headTop() {
        return headTop;
    }

    double top() {
        return top;
    }

    /** Rules across the rows show how far the table reaches. */
    boolean isRuled() {
        return ruled;
    }

    /** Where the first row begins: at a rule, below the headings, or half a row above the first position. */
    private double bodyTop(double earliest, double latest) {
        double ruled = ruleAbove(earliest, 1.1 * spines.get(0).pitch());
        OptionalDouble foot = spines.stream()
                .filter(Spine::headed)
                .mapToDouble(s -> s.heading().orElseThrow().bottom())
                .max();
        boolean below = foot.isEmpty() || ruled > foot.getAsDouble() - 0.4 * size;
        if (ruled > Double.NEGATIVE_INFINITY && below) return ruled;
        if (foot.isEmpty() || foot.getAsDouble() > earliest)
            return latest - 0.5 * linePitch(earliest, latest + 20 * size);
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

    /** The usual distance between lines of text among the rows. */
    private double linePitch(double from, double to) {
        double left = spines.get(0).left() - 12 * size,
                right = spines.get(spines.size() - 1).right() + 12 * size;
        double[] levels = phrases.stream()
                .filter(p -> p.centreY() >= from - 0.2 * size && p.centreY() <= to + 0.2 * size)
                .filter(p -> p.right() > left && p.left() < right)
                .mapToDouble(Phrase::centreY)
                .sorted()
                .toArray();
        double[] steps = new double[levels.length];
        int n = 0;
        for (int i = 1; i < levels.length; i++)
            if (levels[i] - levels[i - 1] > 0.4 * size) steps[n++] = levels[i] - levels[i - 1];
        if (n == 0) return spines.get(0).pitch();
        java.util.Arrays.sort(steps, 0, n);
        return Math.min(spines.get(0).pitch(), steps[n / 2]);
    }

    private double ruleAbove(double y, double reach) {
        double x = spines.get(0).centreX();
        return sheet.across().between(y - reach, y - 0.2 * size).stream()
                .filter(r -> r.passes(x))
                .mapToDouble(Rule::at)
                .max()
                .orElse(Double.NEGATIVE_INFINITY);
    }

    /** How much blank stands before each column, its headings and entries taken together. */
    double[] blanks(List<Column> columns) {
        double[] out = new double[columns.size()];
        double last = Double.NEGATIVE_INFINITY;
        for (int c = 0; c < out.length; c++) {
            double from = Double.POSITIVE_INFINITY, to = last;
            for (Phrase p : phrases) {
                if (p.centreY() > bottom
                        || p.centreY() < headTop - 0.1
                        || !columns.get(c).holds(p.centreX())) continue;
                from = Math.min(from, p.left());
                to = Math.max(to, p.right());
            }
            out[c] = c == 0 || from == Double.POSITIVE_INFINITY ? 0 : from - last;
            last = to;
        }
        return out;
    }

    /** The columns from left to right. */
    List<Column> columns() {
        double[] extent = extent();
        extent[0] = Math.max(extent[0], leftEdge);
        extent[1] = Math.min(extent[1], rightEdge);
        List<Phrase> body = phrases.stream()
                .filter(p -> p.centreY() > top && p.centreY() < bottom)
                .filter(p -> p.right() > extent[0] && p.left() < extent[1])
                .toList();
        headings = new ColumnHeadings(sheet, phrases, top, size, spines.get(0).pitch(), extent);
        List<Double> cuts = cuts(body, extent[0], extent[1]);
        List<Column> columns = new ArrayList<>();
        for (int i = 1; i < cuts.size(); i++) {
            double left = cuts.get(i - 1), right = cuts.get(i);
            List<String> texts = texts(body, left, right);
            String heading = headings.of(left, right);
            boolean outermost = i == 1 || i == cuts.size() - 1;
            // what stands further out may as well be a header beside the table: only where nothing heads the column
            // itself
            if (outermost && !texts.isEmpty() && Headings.weigh(heading).isEmpty())
                heading = headings.of(i == 1 ? outer(left, -1) : left, i == cuts.size() - 1 ? outer(right, 1) : right);
            // over a blank column anything may stand: a label of the header beside the headings
            if (!texts.isEmpty()) headTop = Math.min(headTop, headings.lastTop());
            Column column = Column.of(left, right, heading, texts);
            if (!texts.isEmpty() && isBeside(column, body) || !heading.isEmpty() && texts.isEmpty())
                columns.add(column);
        }
        return columns;
    }

    /** Without a rule at the table's edge a heading may stand further out than the entries of the outermost column. */
    private double outer(double edge, int side) {
        boolean ruled = sheet.down().between(edge - 2, edge + 2).stream().anyMatch(r -> r.passes(top + size));
        double open = edge + side * OUTER * size;
        return ruled ? edge : Math.max(leftEdge, Math.min(rightEdge, open));
    }

    /** It belongs to the rows: inside the rules across, or no block of labels and values that stands beside the table. */
    private boolean isBeside(Column column, List<Phrase> body) {
        if (spines.stream().anyMatch(s -> column.holds(s.centreX()))) return true;
        List<Phrase> own = body.stream().filter(p -> column.holds(p.centreX())).toList();
        long labels = own.stream().filter(this::isLabelled).count();
        if (labels >= 3 && labels * 10 >= own.size() * 6) return false;
        double x = (column.left() + column.right()) / 2;
        List<double[]> ruled = spines.stream().map(this::ruled).toList();
        if (ruled.stream().allMatch(r -> r.length > 0)) return ruled.stream().anyMatch(r -> x > r[0] && x < r[1]);
        return labels < 3 || labels * 10 < own.size() * 3;
    }

    /** A label of a header, or what stands to the right of one. */
    private boolean isLabelled(Phrase p) {
        Patience.check();
        if (isLabel(p.text())) return true;
        return phrases.stream()
                .filter(o -> o.right() <= p.left() && p.left() - o.right() < 20 * size)
                .filter(o -> Math.abs(o.centreY() - p.centreY()) < 0.3 * size)
                .max(Comparator.comparingDouble(Phrase::right))
                .filter(o -> isLabel(o.text()))
                .isPresent();
    }

    private static boolean isLabel(String text) {
        return Labels.at(List.of(text.split(" ")), 0)
                .filter(l -> l.field() != Field.OTHER
                        && !l.field().isTotal()
                        && (l.marked() || l.end() == text.split(" ").length))
                .isPresent();
    }

    /** How far the rules across a spine reach; nothing where they are not those of a whole table. */
    private double[] ruled(Spine spine) {
        double left = spine.left(), right = spine.right();
        for (Rule r : sheet.across().between(spine.firstY() - 2 * size, spine.lastY() + 2 * size))
            if (r.passes(spine.centreX())) {
                left = Math.min(left, r.from());
                right = Math.max(right, r.to());
            }
        return right - left > 14 * size ? new double[] {left, right} : new double[0];
    }

    /** How far the table reaches to both sides. */
    private double[] extent() {
        double left = spines.stream().mapToDouble(Spine::left).min().orElse(0);
        double right = spines.stream().mapToDouble(Spine::right).max().orElse(0);
        double ruledLeft = left, ruledRight = right;
        for (Rule r : sheet.across().between(top - size, bottom + size))
            if (spines.stream().anyMatch(s -> r.passes(s.centreX()))) {
                ruledLeft = Math.min(ruledLeft, r.from());
                ruledRight = Math.max(ruledRight, r.to());
            }
        boolean wide = ruledRight - ruledLeft > Math.max(14 * size, right - left + 0.5 * size);
        ruled = wide;
        if (wide) return new double[] {ruledLeft - 1, ruledRight + 1};
        return open(left, right);
    }

    /** Without rules: outwards from the spines as long as the rows go on, up to a long upright rule of the sheet. */
    private double[] open(double left, double right) {
        double barLeft = 0, barRight = sheet.width();
        for (Rule r : sheet.down().all()) {
            if (r.length() < 1.3 * (bottom - top) + 4 * size || r.covers(top, bottom) < 0.9 * (bottom - top)) continue;
            if (r.at() < left) barLeft = Math.max(barLeft, r.at());
            if (r.at() > right) barRight = Math.min(barRight, r.at());
        }
        List<Phrase> near = new ArrayList<>();
        double head = top - 4.5 * size;
        for (Phrase p : phrases)
            if (p.centreY() > head && p.centreY() < bottom && p.left() >= barLeft - 1 && p.right() <= barRight + 1)
                near.add(p);
        boolean grown = true;
        while (grown) {
            Patience.check();
            grown = false;
            for (Phrase p : near) {
                if (p.right() < left && reaches(near, p, left - p.right())) {
                    left = p.left();
                    grown = true;
                } else if (p.left() > right && reaches(near, p, p.left() - right)) {
                    right = p.right();
                    grown = true;
                } else if (p.left() < left && p.right() >= left) {
                    left = p.left();
                    grown = true;
                } else if (p.right() > right && p.left() <= right) {
                    right = p.right();
                    grown = true;
                }
            }
        }
        double[] edges = heads.widened(left, right, barLeft, barRight);
        if (edges[0] < left || edges[1] > right) takeIn(near, edges);
        return new double[] {edges[0] - 0.5 * size, edges[1] + 0.5 * size};
    }

    /** The entries under a heading at the edge reach further out than the heading does. */
    private void takeIn(List<Phrase> near, double[] edges) {
        boolean grown = true;
        while (grown) {
            grown = false;
            for (Phrase p : near) {
                if (p.centreY() < top) continue;
                if (p.right() > edges[1] && p.left() < edges[1] + 1.5 * size) {
                    edges[1] = p.right();
                    grown = true;
                } else if (p.left() < edges[0] && p.right() > edges[0] - 1.5 * size) {
                    edges[0] = p.left();
                    grown = true;
                }
            }
        }
    }

    /** It is part of a column that belongs to the rows, not a remark beside the table: the more rows, the further away. */
    private boolean reaches(List<Phrase> near, Phrase p, double gap) {
        if (gap > 34 * size) return false;
        Patience.check();
        List<Phrase> column = near.stream()
                .filter(o -> o.right() > p.left() && o.left() < p.right())
                .toList();
        double share = 0;
        for (Spine s : spines) {
            long beside = s.tokens().stream()
                    .filter(t -> column.stream().anyMatch(o -> Math.abs(t.y() - o.centreY()) < 0.3 * size))
                    .count();
            share = Math.max(share, beside / (double) s.tokens().size());
        }
        return gap < 4 * size ? share > 0.1 : share > (gap < 16 * size ? 0.16 : 0.35);
    }

    private List<Double> cuts(List<Phrase> body, double left, double right) {
        TreeSet<Double> cuts = new TreeSet<>();
        cuts.add(left);
        cuts.add(right);
        List<Double> ruled = ruledCuts(left, right);
        cuts.addAll(ruled);
        for (double[] blank : blanks(body, left))
            if (ruled.stream().noneMatch(r -> r > blank[0] - 0.3 * size && r < blank[1] + 0.3 * size))
                cuts.add((blank[0] + blank[1]) / 2);
        for (int i = 1; i < spines.size(); i++) {
            double a = spines.get(i - 1).right(), b = spines.get(i).left();
            if (a < b && cuts.subSet(a, b).isEmpty()) cuts.add((a + b) / 2);
        }
        return parted(dropUseless(new ArrayList<>(cuts), body, new TreeSet<>(ruled)), body, new TreeSet<>(ruled));
    }

    /** Parts what the headings show to be two columns. */
    private List<Double> parted(List<Double> cuts, List<Phrase> body, TreeSet<Double> ruled) {
        double first = cuts.get(0), last = cuts.get(cuts.size() - 1);
        for (HeadCuts.Between b : heads.betweenLoads(body)) {
            if (b.left() < first || b.right() > last) continue;
            if (!ruled.subSet(b.left(), b.right()).isEmpty()) continue;
            cuts.removeIf(c -> c > b.left() && c < b.right());
            cuts.add(b.cut());
        }
        cuts.sort(Comparator.naturalOrder());
        for (int i = 1; i < cuts.size(); ) {
            Optional<Double> cut = heads.within(cuts.get(i - 1), cuts.get(i), body);
            if (cut.isPresent()) cuts.add(i, cut.get());
            else i++;
        }
        return cuts;
    }

    /** Upright rules along at least nearly half of the rows. */
    private List<Double> ruledCuts(double left, double right) {
        List<Double> out = new ArrayList<>();
        List<Rule> rules = sheet.down().between(left, right);
        for (int i = 0; i < rules.size(); ) {
            double at = rules.get(i).at(), covered = 0;
            int j = i;
            while (j < rules.size() && rules.get(j).at() - at < 1.2)
                covered += rules.get(j++).covers(top, bottom);
            if (covered >= 0.42 * (bottom - top)) out.add(at);
            i = j;
        }
        return out;
    }

    /** The blanks that run down between the rows' texts. */
    private List<double[]> blanks(List<Phrase> body, double left) {
        List<double[]> edges = new ArrayList<>();
        for (Phrase p : body) {
            edges.add(new double[] {p.left(), 1});
            edges.add(new double[] {p.right(), -1});
        }
        edges.sort(Comparator.comparingDouble((double[] e) -> e[0]).thenComparingDouble(e -> e[1]));
        int rows = spines.stream().mapToInt(s -> s.tokens().size()).max().orElse(1);
        int few = rows >= 12 ? rows / 24 + 1 : 0;
        List<double[]> out = new ArrayList<>();
        int open = 0;
        double since = left;
        boolean blank = true, seen = false;
        for (double[] edge : edges) {
            open += (int) edge[1];
            if (blank && open > few) {
                if (seen && edge[0] - since > NARROWEST * size) out.add(new double[] {since, edge[0]});
                blank = false;
                seen = true;
            } else if (!blank && open <= few) {
                blank = true;
                since = edge[0];
            }
        }
        return out;
    }

    /** Takes out unruled cuts on whose other side nothing but an odd stray text or two would stand. */
    private List<Double> dropUseless(List<Double> cuts, List<Phrase> body, TreeSet<Double> ruled) {
        int i = 1;
        while (i < cuts.size()) {
            double left = cuts.get(i - 1), right = cuts.get(i);
            boolean weak = texts(body, left, right).size() < 2
                    && headings.of(left, right).isEmpty()
                    && spines.stream().noneMatch(s -> s.centreX() > left && s.centreX() < right);
            boolean openLeft = i - 1 > 0 && !ruled.contains(left),
                    openRight = i < cuts.size() - 1 && !ruled.contains(right);
            if (weak && openLeft) cuts.remove(i - 1);
            else if (weak && openRight) cuts.remove(i);
            else i++;
        }
        return cuts;
    }

    private static List<String> texts(List<Phrase> body, double left, double right) {
        List<String> out = new ArrayList<>();
        for (Phrase p : body) {
            String text = piece(p, left, right);
            if (!text.isEmpty()) out.add(text);
        }
        return out;
    }

    /** The words of a phrase whose middles lie between two edges. */
    static String piece(Phrase p, double left, double right) {
        if (p.left() >= left && p.right() <= right) return p.text();
        if (p.right() < left || p.left() > right) return "";
        StringBuilder out = new StringBuilder();
        for (Word w : p.words())
            if (w.centreX() >= left && w.centreX() < right)
                out.append(out.isEmpty() ? "" : " ").append(w.text());
        return out.toString();
    }
}
