package asfound.drawing.schedule.header;

import asfound.drawing.page.Rule;
import asfound.drawing.page.Sheet;
import asfound.drawing.schedule.phrase.Gutter;
import asfound.drawing.schedule.phrase.Phrases;
import asfound.model.Box;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Where the header of each directory of a sheet may stand: up to its neighbours, a long rule of the sheet, or the edge. */
final class HeaderAreas {

    /** The side of a directory. */
    enum Where {
        ABOVE,
        BELOW,
        LEFT,
        RIGHT
    }

    /** Two tables one above the other overlap by no more of the shorter one's height. */
    private static final double SLACK = 0.1;

    private final Sheet sheet;
    private final Phrases phrases;
    private final List<Box> tables;
    /** Whether all directories have their titles over them, and none below. */
    private final boolean titledAbove;

    HeaderAreas(Sheet sheet, Phrases phrases, List<Box> tables) {
        this.sheet = sheet;
        this.phrases = phrases;
        this.tables = tables;
        titledAbove = tables.size() > 1 && !sheet.hasCells() && FootLines.areTitledAbove(phrases, tables);
    }

    /** Where a directory's header may stand on each side: up to the next directory, or to the sheet's edge. */
    Map<Where, Box> of(int t) {
        Box b = tables.get(t);
        double margin = Math.min(60, 0.12 * b.w() + 12);
        double left = b.x() - margin, right = b.right() + margin, top = 0, bottom = sheet.height();
        double leftEnd = 0, rightEnd = sheet.width();
        for (int o = 0; o < tables.size(); o++) {
            if (o == t) continue;
            Box other = tables.get(o);
            boolean overUnder = other.x() < b.right() && b.x() < other.right();
            boolean beside = other.y() < b.bottom() && b.y() < other.bottom();
            // the last row of a table reaches into the headings of the next
            double slack = 1 + SLACK * Math.min(b.h(), other.h());
            if (overUnder && other.bottom() <= b.y() + slack) top = Math.max(top, Math.min(b.y(), other.bottom()));
            if (overUnder && other.y() >= b.bottom() - slack)
                bottom = Math.min(bottom, Math.max(b.bottom(), other.y()));
            if (other.right() <= b.x() + 1) {
                left = Math.max(
                        left,
                        Math.min(b.x() - 1, beside ? Gutter.between(phrases, other, b) : (other.right() + b.x()) / 2));
                if (beside) leftEnd = Math.max(leftEnd, other.right());
            }
            if (other.x() >= b.right() - 1) {
                right = Math.min(
                        right,
                        Math.max(
                                b.right() + 1,
                                beside ? Gutter.between(phrases, b, other) : (other.x() + b.right()) / 2));
                if (beside) rightEnd = Math.min(rightEnd, other.x());
            }
        }
        if (titledAbove && top > 0) top = FootLines.foot(phrases, new Box(left, top, right - left, b.y() - top));
        if (titledAbove && bottom < sheet.height()) {
            double foot = FootLines.foot(phrases, new Box(left, b.bottom(), right - left, bottom - b.bottom()));
            if (foot > b.bottom()) bottom = foot;
        }
        if (tables.size() == 1) {
            left = Math.min(left, bar(b, -1));
            right = Math.max(right, bar(b, 1));
        }
        Map<Where, Box> out = new EnumMap<>(Where.class);
        out.put(Where.ABOVE, new Box(left, top, right - left, Math.max(0, b.y() - top)));
        out.put(Where.BELOW, new Box(left, b.bottom(), right - left, Math.max(0, bottom - b.bottom())));
        double next = sheet.height();
        for (Box o : tables) if (o.y() >= b.bottom()) next = Math.min(next, o.y());
        out.put(Where.LEFT, beside(leftEnd, b.x() - 1, b, next));
        out.put(Where.RIGHT, beside(b.right() + 1, rightEnd, b, next));
        return out;
    }

    private Box beside(double left, double right, Box table, double next) {
        Box rows = new Box(left, table.y() - 20, Math.max(0, right - left), table.h() + 20);
        return new Box(rows.x(), rows.y(), rows.w(), ColumnBeside.foot(phrases, rows, next) - rows.y());
    }

    /** How far a header over the one directory of a sheet may reach: to a long rule of the sheet, or to its edge. */
    private double bar(Box b, int side) {
        double edge = side < 0 ? 0 : sheet.width();
        for (Rule r : sheet.down().all()) {
            if (r.length() < 0.4 * sheet.height()) continue;
            if (side < 0 && r.at() < b.x() - 1) edge = Math.max(edge, r.at());
            if (side > 0 && r.at() > b.right() + 1) edge = Math.min(edge, r.at());
        }
        return edge;
    }
}
