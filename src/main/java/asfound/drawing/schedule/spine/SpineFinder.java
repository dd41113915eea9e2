package asfound.drawing.schedule.spine;

import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.phrase.ConductorColours;
import asfound.drawing.schedule.phrase.HeaderLines;
import asfound.drawing.schedule.phrase.NamedDevices;
import asfound.drawing.schedule.phrase.NumbersWithPhase;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.phrase.RunningText;
import asfound.drawing.schedule.phrase.Titles;
import asfound.drawing.schedule.spine.Spine.Token;
import asfound.drawing.schedule.text.Role;
import asfound.drawing.schedule.text.Texts;
import asfound.model.Box;
import asfound.recordset.Patience;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds the columns of position numbers on a sheet. */
public final class SpineFinder {

    /** Without a heading that says so, this many rows must rise before they count as positions. */
    private static final int UNHEADED_ROWS = 4;

    /** So many are at least needed to tell positions from poles. */
    private static final int FEWEST = 3;

    /** So much of the rows rises under a heading of positions. */
    private static final double LEAST_RISING = 0.5;

    private final Phrases phrases;
    private final SpineHeadings headings;
    private final List<Spine> others = new ArrayList<>();

    public SpineFinder(Sheet sheet, Phrases phrases) {
        this.phrases = phrases;
        headings = new SpineHeadings(sheet, phrases);
    }

    /** The numbers of the sheet's own lists, which were met on the way and are no positions. */
    public List<Spine> others() {
        return others;
    }

    public List<Spine> find() {
        List<List<Token>> columns = new ArrayList<>();
        OwnNames own = new OwnNames(phrases);
        NumbersWithPhase phased = new NumbersWithPhase(phrases);
        SheetLists lists = new SheetLists(phrases);
        NamedDevices named = new NamedDevices(phrases);
        ConductorColours colours = new ConductorColours(phrases);
        for (Phrase p : phrases)
            phased.position(p.text())
                    .or(() -> colours.position(p.text()))
                    .or(() -> named.position(p.text()))
                    .or(() -> phrases.meanings().position(p))
                    .or(() -> own.positions(p.text()))
                    .filter(position -> !isValueOfLabel(p))
                    .ifPresent(position -> place(new Token(position, p), columns));
        List<Spine> spines = new ArrayList<>();
        for (List<Token> column : SplitColumns.joined(columns, phrases))
            for (List<Token> run : runs(column))
                if (lists.areThese(run)) others.add(new Spine(run, Optional.empty()));
                else accept(run).ifPresent(spines::add);
        List<Spine> all = List.copyOf(spines);
        spines.removeIf(s -> arePoles(s, all));
        spines.sort(Comparator.comparingDouble(Spine::firstY).thenComparingDouble(Spine::left));
        return spines;
    }

    /** One or two numbers under a word for poles, beside a column of positions that goes on: how many poles the first devices have. */
    private boolean arePoles(Spine s, List<Spine> all) {
        return s.tokens().size() < FEWEST
                && isUnderPoles(s)
                && all.stream()
                        .anyMatch(o -> o.tokens().size() > FEWEST
                                && Math.abs(o.firstY() - s.firstY()) < 0.4 * s.size()
                                && !isUnderPoles(o));
    }

    private boolean isUnderPoles(Spine s) {
        return s.headed()
                && phrases.near(s.heading().orElseThrow().centreY(), 0.1 * s.size()).stream()
                        .filter(p -> p.left() < s.right() && p.right() > s.left())
                        .anyMatch(p -> phrases.meanings().weight(p, Role.POLES) > 0.5);
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
        if (here.text().order() > before.text().order())
            return gap > 9 * pitch
                    || gap > 2.5 * pitch && isOtherList(column, i) && isParted(before.phrase(), here.phrase());
        boolean anew = here.text().order() <= 2;
        if (anew && gap > 1.8 * pitch) return !isListed(before, here, pitch);
        // without a gap the numbers go on in another order: odd ones first, then even ones, or the next panel of a list
        return gap > 6 * pitch || isParted(before.phrase(), here.phrase());
    }

    /**
     * Here and on to the next the numbers rise by far more than among all rows above: sizes or ratings that stand below the
     * directory, and no positions of a further section.
     */
    private static boolean isOtherList(List<Token> column, int i) {
        if (i < UNHEADED_ROWS) return false;
        int most = 1;
        for (int k = 1; k < i; k++) most = Math.max(most, step(column, k));
        return step(column, i) > 3 * most && (i + 1 == column.size() || step(column, i + 1) > 2 * most);
    }

    private static int step(List<Token> column, int i) {
        return column.get(i).text().order() - column.get(i - 1).text().order();
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
        if (between(above, below).stream().anyMatch(p -> phrases.meanings().weight(p, Role.POSITION) > 0)) return true;
        return headings.turned(below).filter(h -> h.y() > above.centreY()).isPresent();
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
        List<Phrase> above = headings.above(column);
        boolean poles = !above.isEmpty() && phrases.meanings().weight(above.get(0), Role.POLES) > 0.5;
        List<Token> run = poles ? column : RepeatedWays.of(column, phrases);
        Optional<Box> heading = headings.heading(run.get(0), above);
        Spine spine = new Spine(run, heading);
        if (run.size() == 1) return spine.headed() ? Optional.of(spine) : Optional.empty();
        // of two or three rows each must rise, or numbers of poles pass for positions
        double least = spine.headed() ? LEAST_RISING : 0.7;
        if (spine.rising() < (run.size() < UNHEADED_ROWS ? 1 : least)) return Optional.empty();
        if (spine.regular() < least - 0.1) return Optional.empty();
        if (spine.headed()) return Optional.of(spine);
        // a column headed 'pole' that rises from row to row holds positions
        boolean may = !above.isEmpty() && phrases.meanings().weight(above.get(0), Role.POSITION) > 0;
        // ratings under such a word may rise as well, and do not begin with the first position
        boolean counted = above.isEmpty()
                || spine.numbers().get(0) <= 2
                || phrases.meanings().weight(above.get(0), Role.RATING) == 0;
        if (may && counted && run.size() >= UNHEADED_ROWS && spine.regular() > 0.75)
            return Optional.of(new Spine(run, Optional.of(above.get(0).box())));
        boolean otherwise = !above.isEmpty()
                && above.get(0).left() < spine.right() + 0.2 * spine.size()
                && above.get(0).right() > spine.left() - 0.2 * spine.size()
                && !isOfTitle(above.get(0))
                && !RunningText.ends(above.get(0), phrases)
                && phrases.meanings().weigh(above.get(0)).entrySet().stream()
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
}
