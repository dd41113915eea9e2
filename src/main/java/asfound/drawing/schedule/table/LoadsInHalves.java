package asfound.drawing.schedule.table;

import asfound.drawing.page.Word;
import asfound.drawing.schedule.column.Column;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.spine.Spine;
import asfound.drawing.schedule.text.LoadText;
import asfound.drawing.schedule.text.Role;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One column of loads for each phase in the middle of a panel, for both of its sides: what the left circuit takes stands in the
 * left half of a cell, what the right one takes in the right half, mostly with a diagonal between. Where the halves cannot be told,
 * such loads are nobody's.
 */
final class LoadsInHalves {

    /** Nearer to the middle of its column, in widths of it, a figure may be of either side. */
    private static final double UNTOLD = 0.08;

    private final Side left;
    private final Side right;
    private final Phrases phrases;

    private LoadsInHalves(Side left, Side right, Phrases phrases) {
        this.left = left;
        this.right = right;
        this.phrases = phrases;
    }

    /** The sides with the loads shared out, or without them; empty where each has its own or there are none. */
    static Optional<List<Side>> split(Side left, Side right, Phrases phrases) {
        Map<Role, Column> shared = shared(left, right);
        if (shared.size() < 2) return Optional.empty();
        LoadsInHalves halves = new LoadsInHalves(left, right, phrases);
        return Optional.of(halves.parted(shared));
    }

    /** The loads by phase, each in one column between what else the sides have; empty where they are no such loads. */
    private static Map<Role, Column> shared(Side left, Side right) {
        Map<Role, Column> out = new EnumMap<>(Role.class);
        double first = left.spine().right(), last = right.spine().left();
        for (Side side : List.of(left, right))
            for (Map.Entry<Role, Column> e : side.roles().entrySet()) {
                Column c = e.getValue();
                if (e.getKey().isPhaseLoad()) {
                    if (out.put(e.getKey(), c) != null) return Map.of();
                } else if (e.getKey().isLoad()) return Map.of();
                else if (side == left) first = Math.max(first, c.left());
                else last = Math.min(last, c.right());
            }
        for (Column c : out.values()) if (c.left() < first || c.right() > last) return Map.of();
        return out;
    }

    private List<Side> parted(Map<Role, Column> shared) {
        Map<Role, Column> ofLeft = new EnumMap<>(Role.class), ofRight = new EnumMap<>(Role.class);
        boolean told = true;
        int pairs = 0;
        for (Map.Entry<Role, Column> e : shared.entrySet()) {
            Column c = e.getValue();
            double middle = (c.left() + c.right()) / 2;
            List<String> before = new ArrayList<>(), behind = new ArrayList<>();
            for (Spine.Token row : left.spine().tokens()) {
                List<Word> figures = figures(c, row.y());
                List<String> own = new ArrayList<>(), theirs = new ArrayList<>();
                for (Word w : figures) {
                    told &= Math.abs(w.centreX() - middle) > UNTOLD * c.width();
                    (w.centreX() < middle ? own : theirs).add(w.text());
                }
                told &= own.size() < 2 && theirs.size() < 2;
                if (!own.isEmpty() && !theirs.isEmpty()) pairs++;
                before.addAll(own);
                behind.addAll(theirs);
            }
            ofLeft.put(e.getKey(), new Column(c.left(), middle, c.heading(), before, c.weights()));
            ofRight.put(e.getKey(), new Column(middle, c.right(), c.heading(), behind, c.weights()));
        }
        boolean halved = told && pairs > 0;
        return List.of(
                halved ? with(left, shared, ofLeft) : with(left, Map.of(), Map.of()),
                halved ? with(right, shared, ofRight) : with(right, Map.of(), Map.of()));
    }

    /** The words of a column beside a position; a unit stands behind its figure and is no further one. */
    private List<Word> figures(Column c, double y) {
        double reach = left.spine().pitch() / 2;
        List<Word> out = new ArrayList<>();
        for (Phrase p : phrases.between(y - reach, y + reach)) {
            if (p.right() < c.left() || p.left() > c.right()) continue;
            for (Word w : p.words()) if (c.holds(w.centreX()) && !LoadText.isUnit(w.text())) out.add(w);
        }
        return out;
    }

    /** A side with other columns of loads than it had. */
    private static Side with(Side side, Map<Role, Column> shared, Map<Role, Column> own) {
        List<Column> columns = new ArrayList<>(side.columns());
        columns.removeAll(shared.values());
        columns.addAll(own.values());
        columns.sort(Comparator.comparingDouble(Column::left));
        Map<Role, Column> roles = new EnumMap<>(Role.class);
        side.roles().forEach((role, column) -> {
            if (!role.isLoad()) roles.put(role, column);
        });
        roles.putAll(own);
        return new Side(side.spine(), List.copyOf(columns), roles, side.quality());
    }
}
