package asfound.drawing.schedule.doubt;

import asfound.drawing.page.Word;
import asfound.drawing.schedule.column.Column;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.phrase.PositionText;
import asfound.drawing.schedule.row.Leftover;
import asfound.drawing.schedule.spine.Spine;
import asfound.drawing.schedule.table.Side;
import asfound.drawing.schedule.table.Table;
import asfound.drawing.schedule.text.DeviceText;
import asfound.drawing.schedule.text.LoadText;
import asfound.drawing.schedule.text.Role;
import asfound.drawing.schedule.text.Texts;
import asfound.model.Box;
import asfound.recordset.Patience;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Accounts for every word among a table's rows, independently of how they were read: a word is a position, stands in a cell,
 * or belongs to a column that was told of or does not matter. What remains was not understood. Below the last row the lines
 * are looked through that could be further rows: a number under the positions, or a rating under the ratings.
 */
public final class Leftovers {

    private final Phrases phrases;
    private final Table table;
    private final List<Box> others;
    private final double bottom;
    private final Set<Word> taken;
    private final Set<Box> labelled;
    private final List<Leftover> out = new ArrayList<>();

    private Leftovers(
            Phrases phrases, Table table, List<Box> others, double bottom, Set<Word> taken, Set<Box> labelled) {
        this.phrases = phrases;
        this.table = table;
        this.others = others;
        this.bottom = bottom;
        this.taken = taken;
        this.labelled = labelled;
    }

    /**
     * @param others where the sheet's other tables stand, side by side
     * @param bottom where the last row ends
     * @param taken the words that stand in the rows that were read
     * @param labelled labels and their values, where they stand
     */
    public static List<Leftover> of(
            Phrases phrases, Table table, List<Box> others, double bottom, Set<Word> taken, Set<Box> labelled) {
        Leftovers leftovers = new Leftovers(phrases, table, others, bottom, taken, labelled);
        leftovers.among();
        leftovers.beside();
        leftovers.below();
        return leftovers.out;
    }

    /** It is a label or the value of one; a label may be a part of what stands together on a line. */
    private boolean isLabelled(Phrase p) {
        return labelled.stream()
                .anyMatch(b -> b.contains(p.centreX(), p.centreY()) || p.box().contains(b.centreX(), b.centreY()));
    }

    private double left() {
        return table.sides().stream().mapToDouble(Side::left).min().orElse(0);
    }

    private double right() {
        return table.sides().stream().mapToDouble(Side::right).max().orElse(0);
    }

    private void among() {
        double left = left(), right = right();
        for (Phrase p : phrases.between(table.bodyTop(), bottom)) {
            Patience.check();
            if (p.centreY() <= table.bodyTop() || p.centreY() >= bottom) continue;
            List<Word> own = new ArrayList<>();
            for (Word w : p.words())
                if (w.centreX() > left && w.centreX() < right && !taken.contains(w) && !isPassedOver(w)) own.add(w);
            if (own.isEmpty() || isLabelled(p)) continue;
            Phrase rest = Phrase.of(own);
            if (!Texts.saysNothing(rest.text())) out.add(new Leftover(rest.text(), rest.box()));
        }
    }

    /** Figures on the levels of rows just outside: a column that was not seen as part of the table. */
    private void beside() {
        double left = left(),
                right = right(),
                size = table.sides().get(0).spine().size();
        List<Phrase> own = new ArrayList<>();
        for (Phrase p : phrases.between(table.bodyTop(), bottom)) {
            if (p.centreY() <= table.bodyTop() || p.centreY() >= bottom) continue;
            boolean near = p.left() >= right && p.left() < right + 6 * size
                    || p.right() <= left && p.right() > left - 6 * size;
            if (near
                    && !taken.containsAll(p.words())
                    && isFigure(p.text())
                    && isOnRow(p)
                    && !isAnothers(p)
                    && !isLabelled(p)) own.add(p);
        }
        if (own.size() > 1) for (Phrase p : own) out.add(new Leftover(p.text(), p.box()));
    }

    private boolean isAnothers(Phrase p) {
        return others.stream()
                .anyMatch(o -> p.centreY() > o.y()
                        && p.centreY() < o.bottom() + p.size()
                        && p.centreX() > o.x()
                        && p.centreX() < o.right());
    }

    /**
     * Where the sides of a table stand.
     *
     * @param list it is none of a panel: what stands before its numbers is not known to be its own
     */
    public static List<Box> areas(Table table, boolean list) {
        return table.sides().stream()
                .map(s -> {
                    double left = list ? s.spine().left() : s.left();
                    return new Box(
                            left, table.box().y(), s.right() - left, table.box().h());
                })
                .toList();
    }

    private static boolean isFigure(String text) {
        return LoadText.parse(text, false).isPresent() || DeviceText.parse(text).isPresent();
    }

    private boolean isOnRow(Phrase p) {
        return table.sides().stream()
                .flatMap(s -> s.spine().tokens().stream())
                .anyMatch(t -> Math.abs(t.y() - p.centreY()) < 0.4 * p.size());
    }

    /** It stands in a column that has no part in the reading; those that matter are told of as columns, but for blank ones. */
    private boolean isPassedOver(Word w) {
        return table.sides().stream()
                .anyMatch(s -> s.columns().stream()
                        .anyMatch(c -> !c.isBlank() && !s.roles().containsValue(c) && c.holds(w.centreX())));
    }

    /** Lines that follow the last row as closely as rows do, and begin as rows begin. */
    private void below() {
        for (Side side : table.sides()) {
            Spine spine = side.spine();
            double reach = Math.max(3 * spine.pitch(), 4 * spine.size()), last = bottom;
            for (Phrase p : phrases.between(bottom, Double.POSITIVE_INFINITY)) {
                if (p.centreY() <= bottom) continue;
                if (p.centreY() > last + reach) break;
                if (taken.containsAll(p.words()) || !isRowLike(side, p) || isAnothers(p) || isLabelled(p)) continue;
                out.add(new Leftover(line(p), p.box()));
                last = p.centreY();
            }
        }
    }

    private static boolean isRowLike(Side side, Phrase p) {
        Spine spine = side.spine();
        boolean under = p.centreX() > spine.left() - spine.size() && p.centreX() < spine.right() + spine.size();
        boolean alike = Math.abs(p.size() - spine.size()) < 0.2 * spine.size();
        if (under
                && alike
                && PositionText.parse(p.text()).filter(t -> isNext(spine, t)).isPresent()) return true;
        Column rating =
                side.column(Role.DEVICE).or(() -> side.column(Role.RATING)).orElse(null);
        return rating != null
                && rating.holds(p.centreX())
                && alike
                && DeviceText.parse(p.text())
                        .filter(d -> d.ratingA().filter(DeviceText::isStandard).isPresent())
                        .isPresent();
    }

    /** The number could be the next of the column, or the one after a device of several poles. */
    private static boolean isNext(Spine spine, PositionText text) {
        int last = spine.everyNumber().stream().max(Integer::compare).orElse(0);
        return text.first() > last && text.first() <= last + 8 || text.isWay();
    }

    /** All that stands on the line of a phrase within the table's width. */
    private String line(Phrase p) {
        double left = left(), right = right();
        return String.join(
                " ",
                phrases.near(p.centreY(), 0.3 * p.size()).stream()
                        .filter(o -> Math.abs(o.centreY() - p.centreY()) < 0.3 * p.size())
                        .filter(o -> o.centreX() > left - p.size() && o.centreX() < right + p.size())
                        .map(Phrase::text)
                        .toList());
    }
}
