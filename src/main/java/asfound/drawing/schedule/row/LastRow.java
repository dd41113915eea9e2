package asfound.drawing.schedule.row;

import asfound.drawing.page.Rule;
import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.column.Column;
import asfound.drawing.schedule.phrase.Phrase;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.drawing.schedule.spine.Spine;
import asfound.drawing.schedule.table.Side;
import asfound.drawing.schedule.text.Role;
import java.util.List;

/** Where the last row of a side ends: at the next rule, half a row further down, or below the last line of its entry. */
final class LastRow {

    private final Sheet sheet;
    private final Phrases phrases;
    private final Side side;
    private final List<Side> all;
    private final List<Row> rows;
    private final double size;
    private final double pitch;
    private final double y;

    private LastRow(Sheet sheet, Phrases phrases, Side side, List<Side> all, List<Row> rows) {
        this.sheet = sheet;
        this.phrases = phrases;
        this.side = side;
        this.all = all;
        this.rows = rows;
        size = side.spine().size();
        pitch = Spine.pitch(rows.stream().mapToDouble(Row::y).toArray(), size);
        y = rows.get(rows.size() - 1).y();
    }

    /** @param all the sides of the table */
    static double bottom(Sheet sheet, Phrases phrases, Side side, List<Side> all, List<Row> rows) {
        return new LastRow(sheet, phrases, side, all, rows).bottom();
    }

    private double bottom() {
        double x = side.spine().centreX();
        double open = y + Math.max(0.55 * pitch, 0.8 * size);
        double rule = sheet.across().between(y + 0.25 * size, y + 4.5 * pitch).stream()
                .filter(r -> r.passes(x))
                .mapToDouble(Rule::at)
                .min()
                .orElse(open);
        // a rule further down than a row is the row's own only where rows are parted by rules
        boolean ruled = rows.size() > 1
                && sheet.across().between(rows.get(rows.size() - 2).y(), y).stream()
                        .anyMatch(r -> r.passes(x));
        boolean closed = rule != open && (rule <= y + 1.25 * pitch || ruled);
        return closed ? Math.min(rule, header(rule)) : wrapped(open);
    }

    /** Where the next panel's header begins between the last position and a rule further down; the rule where none does. */
    private double header(double rule) {
        if (rule < y + 1.25 * pitch) return rule;
        return phrases.between(y + 0.6 * size, rule).stream()
                .filter(p -> all.stream().anyMatch(s -> p.left() < s.right() && p.right() > s.left()))
                .filter(phrases.meanings()::saysOfPanel)
                .mapToDouble(p -> p.box().y())
                .min()
                .orElse(rule);
    }

    /** Without a rule: further lines of the last entry's description, which follow each other more closely than rows do. */
    private double wrapped(double open) {
        Column own = side.roles().get(Role.DESCRIPTION);
        if (own == null) return open;
        double end = open, above = y;
        double left = side.left(), right = side.right();
        for (Phrase p : phrases.between(y - 0.5 * pitch, Double.POSITIVE_INFINITY)) {
            if (p.centreY() <= y - 0.5 * pitch || p.centreX() < left || p.centreX() > right) continue;
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
}
