package asfound.drawing.schedule.column;

import asfound.drawing.page.Rule;
import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Span;
import asfound.drawing.schedule.spine.Spine;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Where a table is cut into columns: at upright rules, in the blanks that run down through all rows, and where headings
 * part what neither rule nor blank does.
 */
final class ColumnCuts {

    /** Figures set to the right and a text set to the left beside them leave no more than a thin space. */
    private static final double NARROWEST = 0.12;

    /** A rule along so much of the rows parts columns. */
    private static final double RULED = 0.42;

    private record Blank(double left, double right) {}

    private final List<Spine> spines;
    private final Body body;
    private final List<Phrase> entries;
    private final HeadCuts heads;
    private final ColumnHeadings headings;
    private final double size;
    private final Span span;
    private final TreeSet<Double> ruled;

    /**
     * @param entries what stands in the rows
     * @param span from the left edge of the table to its right edge
     */
    ColumnCuts(
            Sheet sheet,
            List<Spine> spines,
            Body body,
            List<Phrase> entries,
            HeadCuts heads,
            ColumnHeadings headings,
            Span span) {
        this.spines = spines;
        this.body = body;
        this.entries = entries;
        this.heads = heads;
        this.headings = headings;
        this.span = span;
        size = body.size();
        ruled = ruled(sheet);
    }

    /** From left to right, the table's edges among them. */
    List<Double> all() {
        TreeSet<Double> cuts = new TreeSet<>(ruled);
        cuts.add(span.left());
        cuts.add(span.right());
        for (Blank blank : blanks())
            if (ruled.stream().noneMatch(r -> r > blank.left() - 0.3 * size && r < blank.right() + 0.3 * size))
                cuts.add((blank.left() + blank.right()) / 2);
        for (int i = 1; i < spines.size(); i++) {
            double a = spines.get(i - 1).right(), b = spines.get(i).left();
            if (a < b && cuts.subSet(a, b).isEmpty()) cuts.add((a + b) / 2);
        }
        List<Double> out = new ArrayList<>(cuts);
        dropUseless(out);
        dropWithinCells(out);
        MarkColumns.drop(out, entries, ruled);
        LastWords.drop(out, entries, ruled, headings);
        part(out);
        return out;
    }

    /** Upright rules along at least nearly half of the rows. */
    private TreeSet<Double> ruled(Sheet sheet) {
        TreeSet<Double> out = new TreeSet<>();
        List<Rule> rules = sheet.down().between(span.left(), span.right());
        for (int i = 0; i < rules.size(); ) {
            double at = rules.get(i).at(), covered = 0;
            int j = i;
            while (j < rules.size() && rules.get(j).at() - at < 1.2)
                covered += rules.get(j++).covers(body.top(), body.bottom());
            if (covered >= RULED * body.height()) out.add(at);
            i = j;
        }
        return out;
    }

    /** Those between the entries; in a long table an odd entry or two may run across. */
    private List<Blank> blanks() {
        double[] begins = new double[entries.size()], ends = new double[entries.size()];
        for (int i = 0; i < ends.length; i++) {
            begins[i] = entries.get(i).left();
            ends[i] = entries.get(i).right();
        }
        Arrays.sort(begins);
        Arrays.sort(ends);
        int rows = spines.stream().mapToInt(s -> s.tokens().size()).max().orElse(1);
        int few = rows >= 12 ? rows / 24 + 1 : 0;
        List<Blank> out = new ArrayList<>();
        double since = span.left();
        boolean blank = true, seen = false;
        for (int begun = 0, ended = 0; ended < ends.length; ) {
            boolean begin = begun < begins.length && begins[begun] < ends[ended];
            double at = begin ? begins[begun++] : ends[ended++];
            int open = begun - ended;
            if (blank && open > few) {
                if (seen && at - since > NARROWEST * size) out.add(new Blank(since, at));
                blank = false;
                seen = true;
            } else if (!blank && open <= few) {
                blank = true;
                since = at;
            }
        }
        return out;
    }

    /** Takes out unruled cuts on whose other side nothing but an odd stray text or two would stand. */
    private void dropUseless(List<Double> cuts) {
        int i = 1;
        while (i < cuts.size()) {
            double left = cuts.get(i - 1), right = cuts.get(i);
            boolean openLeft = i - 1 > 0 && !ruled.contains(left),
                    openRight = i < cuts.size() - 1 && !ruled.contains(right);
            boolean weak = (openLeft || openRight)
                    && spines.stream().noneMatch(s -> s.centreX() > left && s.centreX() < right)
                    && isNearlyBlank(left, right)
                    && headings.of(left, right).text().isEmpty();
            if (weak && openLeft) cuts.remove(i - 1);
            else if (weak) cuts.remove(i);
            else i++;
        }
    }

    /**
     * Takes out the cuts between what is set to the left in a ruled cell and what stands in its middle, as an entry across several
     * cells does: no row has both, and no more than one of them has a heading.
     */
    private void dropWithinCells(List<Double> cuts) {
        for (int i = cuts.size() - 2; i > 0 && ruled.size() > 2; i--) {
            double left = cuts.get(i - 1), cut = cuts.get(i), right = cuts.get(i + 1);
            boolean inCell = !ruled.contains(cut) && ruled.lower(cut) != null && ruled.higher(cut) != null;
            if (!inCell || spines.stream().anyMatch(s -> s.centreX() > left && s.centreX() < right)) continue;
            boolean headed = !headings.of(left, cut).text().isEmpty()
                    && !headings.of(cut, right).text().isEmpty();
            if (!headed && !standBeside(left, cut, right)) cuts.remove(i);
        }
    }

    /** In one row at least something stands on both sides of a cut. */
    private boolean standBeside(double left, double cut, double right) {
        for (Phrase a : entries) {
            if (a.left() < left || a.right() > cut) continue;
            for (Phrase b : entries)
                if (b.left() > cut && b.right() < right && Math.abs(a.centreY() - b.centreY()) < 0.5 * size)
                    return true;
        }
        return false;
    }

    /** Not two texts stand there. */
    private boolean isNearlyBlank(double left, double right) {
        boolean one = false;
        for (Phrase p : entries) {
            if (p.piece(left, right).isEmpty()) continue;
            if (one) return false;
            one = true;
        }
        return true;
    }

    /** Parts what the headings show to be two columns. */
    private void part(List<Double> cuts) {
        double first = cuts.get(0), last = cuts.get(cuts.size() - 1);
        for (HeadCuts.Between b : heads.betweenLoads(entries)) {
            if (b.left() < first || b.right() > last) continue;
            if (!ruled.subSet(b.left(), b.right()).isEmpty()) continue;
            cuts.removeIf(c -> c > b.left() && c < b.right());
            cuts.add(b.cut());
        }
        cuts.sort(Comparator.naturalOrder());
        for (int i = 1; i < cuts.size(); ) {
            Optional<Double> cut = heads.within(cuts.get(i - 1), cuts.get(i), entries);
            if (cut.isPresent()) cuts.add(i, cut.get());
            else i++;
        }
    }
}
