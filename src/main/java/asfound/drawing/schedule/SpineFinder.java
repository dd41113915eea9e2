package asfound.drawing.schedule;

import asfound.drawing.page.Rule;
import asfound.drawing.page.Sheet;
import asfound.drawing.page.Word;
import asfound.drawing.schedule.Spine.Token;
import asfound.model.Box;
import asfound.recordset.Patience;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds the columns of position numbers on a sheet. */
final class SpineFinder {

    /** Without a heading that says so, this many rows must rise before they count as positions. */
    private static final int UNHEADED_ROWS = 4;

    /** So much of the rows rises under a heading of positions. */
    private static final double LEAST_RISING = 0.5;

    /** So many words in one heading are rather those of several columns. */
    private static final int FUSED = 5;

    /** A cell of a position is no wider, in sizes of its type. */
    private static final double WIDEST_CELL = 12;

    private final Sheet sheet;
    private final Phrases phrases;
    private final List<Word> turned;
    private final List<Spine> others = new ArrayList<>();

    SpineFinder(Sheet sheet, Phrases phrases) {
        this.sheet = sheet;
        this.phrases = phrases;
        turned = phrases.turned();
    }

    /** The numbers of the sheet's own lists, which were met on the way and are no positions. */
    List<Spine> others() {
        return others;
    }

    List<Spine> find() {
        List<List<Token>> columns = new ArrayList<>();
        OwnNames own = new OwnNames(phrases);
        NumbersWithPhase phased = new NumbersWithPhase(phrases);
        SheetLists lists = new SheetLists(phrases);
        ConductorColours colours = new ConductorColours(phrases);
        for (Phrase p : phrases)
            phased.position(p.text())
                    .or(() -> colours.position(p.text()))
                    .or(() -> PositionText.parse(p.text()))
                    .or(() -> own.positions(p.text()))
                    .filter(position -> !isValueOfLabel(p))
                    .ifPresent(position -> place(new Token(position, p), columns));
        List<Spine> spines = new ArrayList<>();
        for (List<Token> column : SplitColumns.joined(columns, phrases))
            for (List<Token> run : runs(column))
                if (lists.areThese(run)) others.add(new Spine(run, Optional.empty()));
                else accept(run).ifPresent(spines::add);
        spines.sort(Comparator.comparingDouble(Spine::firstY).thenComparingDouble(Spine::left));
        return spines;
    }

    /** {@code Phases: 3}: a number of the header that happens to stand over the positions. */
    private boolean isValueOfLabel(Phrase p) {
        return p.text().length() == 1 && HeaderLines.isBesideLabel(p, phrases);
    }

    /** Puts an entry under the column that it lines up with, or begins a new one. */
    private static void place(Token token, List<List<Token>> columns) {
        Patience.check();
        List<Token> best = null;
        double bestOff = Double.MAX_VALUE;
        for (List<Token> column : columns) {
            Token last = column.get(column.size() - 1);
            double size = Math.max(token.phrase().size(), last.phrase().size());
            double gap = token.y() - last.y();
            if (gap < 0.4 * size || gap > 16 * size) continue;
            double off = misalignment(last.phrase(), token.phrase());
            if (off < 0.6 * size && off + gap * 0.01 < bestOff) {
                bestOff = off + gap * 0.01;
                best = column;
            }
        }
        if (best != null) best.add(token);
        else columns.add(new ArrayList<>(List.of(token)));
    }

    private static double misalignment(Phrase a, Phrase b) {
        double off = Math.min(Math.abs(a.left() - b.left()), Math.abs(a.right() - b.right()));
        return Math.min(off, Math.abs(a.centreX() - b.centreX()));
    }

    /** Parts a column where the numbers begin again. */
    private List<List<Token>> runs(List<Token> column) {
        List<List<Token>> out = new ArrayList<>();
        List<Token> open = new ArrayList<>();
        for (int i = 0; i < column.size(); i++) {
            if (!open.isEmpty() && beginsAgain(column, i)) {
                out.add(open);
                open = new ArrayList<>();
            }
            open.add(column.get(i));
        }
        out.add(open);
        return out;
    }

    private boolean beginsAgain(List<Token> column, int i) {
        Token before = column.get(i - 1), here = column.get(i);
        if (isHeadedBetween(before.phrase(), here.phrase())) return true;
        double gap = here.y() - before.y(), pitch = pitch(column, i);
        if (here.text().order() > before.text().order()) return gap > 9 * pitch;
        boolean anew = here.text().order() <= 2;
        if (anew && gap > 1.8 * pitch) return !isListed(before, here, pitch);
        // without a gap the numbers go on in another order: odd ones first, then even ones, or the next panel of a list
        return gap > 6 * pitch || isParted(before.phrase(), here.phrase());
    }

    /** A text of the row above stands in every row between too: a list that names its panel row by row goes on. */
    private boolean isListed(Token above, Token below, double pitch) {
        return phrases.near(above.y(), 0.4 * above.phrase().size()).stream()
                .filter(p -> p.text().chars().anyMatch(Character::isLetter))
                .anyMatch(p -> goesDown(p, below.y(), 1.9 * pitch));
    }

    /** The same text stands below itself again and again, down to a level, never further apart than so much. */
    private boolean goesDown(Phrase name, double to, double most) {
        double last = name.centreY();
        for (Phrase p : phrases.between(last + 0.4 * name.size(), to)) {
            if (last >= to - most || p.centreY() - last > most) break;
            if (p.text().equals(name.text()) && Math.abs(p.left() - name.left()) < 0.3 * p.size()) last = p.centreY();
        }
        return last >= to - most && last > name.centreY();
    }

    private boolean isHeadedBetween(Phrase above, Phrase below) {
        // what may head positions stands over them and never among them
        if (between(above, below).stream().anyMatch(p -> phrases.meanings().weight(p.text(), Role.POSITION) > 0))
            return true;
        return turnedHeading(below).filter(h -> h.y() > above.centreY()).isPresent();
    }

    /** Something else stands between two entries of a column. */
    private boolean isParted(Phrase above, Phrase below) {
        return between(above, below).stream().anyMatch(p -> !Texts.saysNothing(p.text()));
    }

    private List<Phrase> between(Phrase above, Phrase below) {
        double left = Math.min(above.left(), below.left()), right = Math.max(above.right(), below.right());
        double top = above.centreY() + 0.5 * above.size(), bottom = below.centreY() - 0.5 * below.size();
        List<Phrase> out = new ArrayList<>();
        for (Phrase p : phrases.between(top, bottom))
            if (p.centreY() > top && p.centreY() < bottom && p.left() < right && p.right() > left) out.add(p);
        return out;
    }

    /** The smallest step down to the entries around {@code i}. */
    private static double pitch(List<Token> column, int i) {
        double smallest = Double.MAX_VALUE;
        for (int k = Math.max(1, i - 4); k < Math.min(column.size(), i + 5); k++)
            if (k != i)
                smallest =
                        Math.min(smallest, column.get(k).y() - column.get(k - 1).y());
        return smallest == Double.MAX_VALUE ? 3 * column.get(i).phrase().size() : smallest;
    }

    /** So few numbers rise that they are no positions, whatever stands above them: ratings, poles. */
    private static boolean isLevel(List<Token> column) {
        int up = 0;
        for (int i = 1; i < column.size(); i++)
            if (column.get(i).text().order() > column.get(i - 1).text().order()) up++;
        double rising = up / (column.size() - 1.0);
        return rising < (column.size() < UNHEADED_ROWS ? 1 : LEAST_RISING) && !RepeatedWays.isRepeated(column);
    }

    private Optional<Spine> accept(List<Token> column) {
        if (column.size() > 1 && isLevel(column)) return Optional.empty();
        List<Phrase> above = above(column);
        boolean poles =
                !above.isEmpty() && phrases.meanings().weight(above.get(0).text(), Role.POLES) > 0.5;
        List<Token> run = poles ? column : RepeatedWays.of(column, phrases);
        Optional<Box> heading = heading(run.get(0).phrase(), above);
        Spine spine = new Spine(run, heading);
        if (run.size() == 1) return spine.headed() ? Optional.of(spine) : Optional.empty();
        // of two or three rows each must rise, or numbers of poles pass for positions
        double least = spine.headed() ? LEAST_RISING : 0.7;
        if (spine.rising() < (run.size() < UNHEADED_ROWS ? 1 : least)) return Optional.empty();
        if (spine.regular() < least - 0.1) return Optional.empty();
        if (spine.headed()) return Optional.of(spine);
        // a column headed 'pole' that rises from row to row holds positions
        boolean may = !above.isEmpty() && phrases.meanings().weight(above.get(0).text(), Role.POSITION) > 0;
        // ratings under such a word may rise as well, and do not begin with the first position
        boolean counted = above.isEmpty()
                || spine.numbers().get(0) <= 2
                || phrases.meanings().weight(above.get(0).text(), Role.RATING) == 0;
        if (may && counted && run.size() >= UNHEADED_ROWS && spine.regular() > 0.75)
            return Optional.of(new Spine(run, Optional.of(above.get(0).box())));
        boolean otherwise = !above.isEmpty()
                && above.get(0).left() < spine.right() + 0.2 * spine.size()
                && above.get(0).right() > spine.left() - 0.2 * spine.size()
                && !isOfTitle(above.get(0))
                && phrases.meanings().weigh(above.get(0).text()).entrySet().stream()
                        .anyMatch(e -> e.getKey() != Role.PANEL && e.getValue() >= 0.8);
        return !otherwise && run.size() >= UNHEADED_ROWS && spine.regular() >= 0.75 && areOnceEach(spine)
                ? Optional.of(spine)
                : Optional.empty();
    }

    /** It stands on the line that names the panel: {@code Panel C-9  Location Print shop} heads no column. */
    private boolean isOfTitle(Phrase p) {
        List<Phrase> line = phrases.near(p.centreY(), 0.3 * p.size());
        String whole = String.join(" ", line.stream().map(Phrase::text).toList());
        return Titles.nameIn(whole).isPresent()
                || line.stream().anyMatch(o -> Titles.nameIn(o.text()).isPresent());
    }

    /** A position has one row; numbers of poles come again and again, though some of them rise. */
    private static boolean areOnceEach(Spine spine) {
        List<Integer> numbers = spine.numbers();
        return numbers.stream().distinct().count() * 10 >= numbers.size() * 9L;
    }

    /** What stands above the column's first entry and near enough to head it, the nearest first. */
    private List<Phrase> above(List<Token> run) {
        Patience.check();
        Phrase first = run.get(0).phrase();
        double[] blank = blankBeside(run);
        double[] cell = cell(run, blank);
        List<Phrase> over = over(first, cell[0], cell[1]), wide = over(first, blank[0], blank[1]);
        boolean nearer = !wide.isEmpty()
                && (over.isEmpty() || wide.get(0).centreY() > over.get(0).centreY() + 0.5 * first.size());
        boolean heads = nearer
                && wide.stream()
                        .anyMatch(
                                p -> isPosition(p.text()) && wide.get(0).centreY() - p.centreY() < 0.5 * first.size());
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
                .filter(p -> p.left() < right && p.right() > left)
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
    private Optional<Box> heading(Phrase first, List<Phrase> above) {
        for (int i = 0; i < Math.min(3, above.size()); i++) {
            Phrase near = above.get(i);
            if (i > 0 && above.get(0).centreY() - near.centreY() > 0.5 * near.size()) break;
            if (isPosition(near.text())) return Optional.of(near.box());
            for (Phrase upper : above.subList(i + 1, above.size()))
                if (near.box().y() - upper.box().bottom() < near.size() && isPosition(upper.text() + " " + near.text()))
                    return Optional.of(near.box());
        }
        return turnedHeading(first);
    }

    private boolean isPosition(String text) {
        return phrases.meanings().weight(text, Role.POSITION) >= 0.8;
    }

    private Optional<Box> turnedHeading(Phrase first) {
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
