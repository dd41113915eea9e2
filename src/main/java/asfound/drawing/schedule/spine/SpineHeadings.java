package asfound.drawing.schedule.spine;

import asfound.drawing.page.Rule;
import asfound.drawing.page.Sheet;
import asfound.drawing.page.Word;
import asfound.drawing.schedule.phrase.NamedDevices;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.phrase.SectionRows;
import asfound.drawing.schedule.spine.Spine.Token;
import asfound.drawing.schedule.text.Role;
import asfound.model.Box;
import asfound.recordset.Patience;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What stands over a column of numbers, and whether it says that they are positions. */
final class SpineHeadings {

    /** So many words in one heading are rather those of several columns. */
    private static final int FUSED = 5;

    /** A cell of a position is no wider, in sizes of its type. */
    private static final double WIDEST_CELL = 12;

    private final Sheet sheet;
    private final Phrases phrases;
    private final List<Word> turned;

    SpineHeadings(Sheet sheet, Phrases phrases) {
        this.sheet = sheet;
        this.phrases = phrases;
        turned = phrases.turned();
    }

    /** What stands above the column's first entry and near enough to head it, the nearest first. */
    List<Phrase> above(List<Token> run) {
        Patience.check();
        Phrase first = run.get(0).phrase();
        double[] blank = blankBeside(run);
        double[] cell = cell(run, blank);
        List<Phrase> over = over(first, cell[0], cell[1]), wide = over(first, blank[0], blank[1]);
        boolean nearer = !wide.isEmpty()
                && (over.isEmpty() || wide.get(0).centreY() > over.get(0).centreY() + 0.5 * first.size());
        boolean heads = nearer
                && wide.stream()
                        .anyMatch(p -> isPosition(p) && wide.get(0).centreY() - p.centreY() < 0.5 * first.size());
        return heads ? wide : over;
    }

    /** From the column before to the next one: a heading may stand in the middle, and the entries at an edge, or the other way. */
    private double[] blankBeside(List<Token> run) {
        double size = run.get(0).phrase().size();
        double left = run.stream().mapToDouble(t -> t.phrase().left()).min().orElse(0);
        double right = run.stream().mapToDouble(t -> t.phrase().right()).max().orElse(0);
        double before = left - WIDEST_CELL * size, next = right + WIDEST_CELL * size;
        for (Token t : run)
            for (Phrase p : phrases.near(t.y(), 0.3 * size)) {
                if (p.centreY() <= t.y() - 0.3 * size || p.centreY() > t.y() + 0.3 * size) continue;
                if (p.left() > right) next = Math.min(next, p.left());
                if (p.right() < left) before = Math.max(before, p.right());
            }
        return new double[] {before + 0.3 * size, next - 0.3 * size};
    }

    private List<Phrase> over(Phrase first, double left, double right) {
        double reach = 7 * first.size() + 12;
        return phrases.between(first.centreY() - reach, first.centreY()).stream()
                .filter(p -> p.centreY() < first.centreY() - 0.4 * first.size())
                .filter(p -> p.centreY() > first.centreY() - reach)
                .filter(p -> p.left() < right && p.right() > left && !SectionRows.isOne(p, phrases))
                .map(p -> within(p, left, right))
                .sorted(Comparator.comparingDouble((Phrase p) -> -p.centreY()).thenComparingDouble(Phrase::left))
                .toList();
    }

    /** Of headings that stand so close that they look like one text, the words over the column. */
    private static Phrase within(Phrase p, double left, double right) {
        if (p.words().size() < FUSED || p.box().w() < 2 * (right - left)) return p;
        List<Word> own = p.words().stream()
                .filter(w -> w.centreX() > left && w.centreX() < right)
                .toList();
        return own.isEmpty() ? p : Phrase.of(own);
    }

    /** The edges that a heading must overlap: the upright rules beside the column, or a little more than its entries. */
    private double[] cell(List<Token> run, double[] blank) {
        Phrase first = run.get(0).phrase();
        double size = first.size(), y = first.centreY();
        double left = run.stream().mapToDouble(t -> t.phrase().left()).min().orElse(first.left());
        double right = run.stream().mapToDouble(t -> t.phrase().right()).max().orElse(first.right());
        double ruledLeft = Double.NEGATIVE_INFINITY, ruledRight = Double.POSITIVE_INFINITY;
        for (Rule r : sheet.down().between(left - WIDEST_CELL * size, right + WIDEST_CELL * size)) {
            if (!r.passes(y)) continue;
            if (r.at() <= left + 0.5) ruledLeft = Math.max(ruledLeft, r.at());
            else if (r.at() >= right - 0.5) ruledRight = Math.min(ruledRight, r.at());
        }
        boolean ruled = ruledRight - ruledLeft < WIDEST_CELL * size;
        return ruled
                ? new double[] {ruledLeft + 0.1 * size, ruledRight - 0.1 * size}
                : new double[] {
                    Math.max(first.left() - size, Math.min(left, blank[0])),
                    Math.min(first.right() + size, Math.max(right, blank[1]))
                };
    }

    /** The heading that says that the column holds positions: one phrase, two above each other, or a turned text. */
    Optional<Box> heading(Token top, List<Phrase> above) {
        boolean named = top.text().isNamed();
        for (int i = 0; i < Math.min(3, above.size()); i++) {
            Phrase near = above.get(i);
            if (i > 0 && above.get(0).centreY() - near.centreY() > 0.5 * near.size()) break;
            if (isPosition(near) || named && NamedDevices.mayHead(near.text())) return Optional.of(near.box());
            for (Phrase upper : above.subList(i + 1, above.size()))
                if (near.box().y() - upper.box().bottom() < near.size() && isPosition(upper.text() + " " + near.text()))
                    return Optional.of(near.box());
        }
        return turned(top.phrase());
    }

    private boolean isPosition(Phrase p) {
        return phrases.meanings().weight(p, Role.POSITION) >= 0.8;
    }

    private boolean isPosition(String text) {
        return phrases.meanings().weight(text, Role.POSITION) >= 0.8;
    }

    /** A turned text over a column's first entry that says that it holds positions. */
    Optional<Box> turned(Phrase first) {
        if (turned.isEmpty()) return Optional.empty();
        List<Word> own = turned.stream()
                .filter(w -> w.bottom() < first.centreY() && w.bottom() > first.centreY() - 5 * first.size())
                .filter(w ->
                        w.left() < first.right() + 1.2 * first.size() && w.right() > first.left() - 1.2 * first.size())
                .sorted(Comparator.comparingDouble((Word w) -> Math.round(w.centreX() / (0.5 * w.size())))
                        .thenComparingDouble(w -> -w.bottom()))
                .toList();
        if (own.isEmpty()) return Optional.empty();
        String text = String.join(" ", own.stream().map(Word::text).toList());
        return isPosition(text) ? own.stream().map(Word::box).reduce(Box::union) : Optional.empty();
    }
}
