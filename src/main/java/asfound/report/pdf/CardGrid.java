package asfound.report.pdf;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The two sides of a panel as they stand behind the door: breakers in the middle, what they serve outwards. */
final class CardGrid {

    /** Rows of one card: 42 circuits. */
    private static final int ROWS = 21;

    private static final double NUMBER = 30, RATING = 30, SIGN = 15;
    private static final Type TEXT = Type.plain(11), SMALLER = Type.plain(9.5), POSITION = Type.bold(12.5);

    private final Map<Integer, CardEntry> at = new HashMap<>();
    private final List<CardEntry> clashes = new ArrayList<>();
    private final int perSide;
    private final boolean down;

    /** @param down positions run down the left side and then down the right, instead of odd left and even right */
    CardGrid(List<CardEntry> entries, boolean down) {
        this.down = down;
        int last = 0;
        for (CardEntry e : entries) {
            boolean clash = e.positions().stream().anyMatch(at::containsKey);
            if (clash) clashes.add(e);
            else e.positions().forEach(p -> at.put(p, e));
            last = Math.max(last, e.highest());
        }
        perSide = (last + 1) / 2;
    }

    void draw(Flow flow, Runnable head) {
        for (int row = 0; row < perSide; row++) {
            int left = down ? row + 1 : 2 * row + 1, right = down ? perSide + row + 1 : 2 * row + 2;
            double high = Math.max(height(flow, left), height(flow, right));
            if (row % ROWS == 0 && row > 0) turn(flow, head, flow.free() + 1);
            else turn(flow, head, high);
            half(flow, left, true, high);
            half(flow, right, false, high);
            flow.skip(high);
        }
        if (!clashes.isEmpty()) {
            turn(flow, head, 40);
            flow.skip(4).text("Positions claimed twice: look before you rely on either", Type.bold(9.5));
            list(clashes, flow, head);
        }
    }

    private static void turn(Flow flow, Runnable head, double need) {
        if (flow.need(need)) head.run();
    }

    private double textWidth(Flow flow) {
        return flow.width() / 2 - NUMBER - RATING - SIGN - 8;
    }

    private boolean begins(int position) {
        CardEntry e = at.get(position);
        return e == null || e.lowest() == position;
    }

    private Paragraph text(Flow flow, int position) {
        CardEntry e = at.get(position);
        String text = e == null || !begins(position) ? "" : e.text();
        Paragraph large =
                Paragraph.of(text, TEXT, textWidth(flow), flow.canvas().typeface());
        return large.lines().size() == 1
                ? large
                : Paragraph.of(text, SMALLER, textWidth(flow), flow.canvas().typeface());
    }

    private double height(Flow flow, int position) {
        return Math.max(23.5, text(flow, position).height() + 3.5);
    }

    private void half(Flow flow, int position, boolean isLeft, double high) {
        Canvas canvas = flow.canvas();
        double middle = flow.left() + flow.width() / 2, y = flow.y(), out = isLeft ? flow.left() : flow.right();
        int dir = isLeft ? -1 : 1;
        double base = y + 15;
        CardEntry e = at.get(position);
        canvas.textCentred(Integer.toString(position), middle + dir * NUMBER / 2, base + 0.5, POSITION);
        if (e == null) {
            canvas.textCentred("not drawn", middle + dir * (flow.width() / 4 + 20), base, SMALLER.in(Tint.SOFT));
        } else if (begins(position)) {
            canvas.textCentred(e.rating(), middle + dir * (NUMBER + RATING / 2), base, TEXT);
            Sign.draw(canvas, e.state(), out - dir * (SIGN / 2), y + 11.5, 4.2);
            double x = isLeft ? flow.left() + SIGN + 2 : middle + NUMBER + RATING + 4;
            Paragraph text = text(flow, position);
            text.draw(canvas, x, y + Math.max(1.5, (23.5 - text.height()) / 2));
        }
        boolean goesOn = e != null && e.positions().contains(position + (down ? 1 : 2));
        if (e != null && e.positions().size() > 1) tieBar(canvas, e, position, middle + dir * (NUMBER - 1), y, high);
        double ruleFrom = middle, ruleTo = goesOn ? middle + dir * NUMBER : out;
        canvas.line(ruleFrom, y + high, ruleTo, y + high, Pen.HAIRLINE);
        canvas.line(middle, y, middle, y + high, Pen.FINE);
        canvas.line(middle + dir * NUMBER, y, middle + dir * NUMBER, y + high, Pen.HAIRLINE);
    }

    /** The bar that joins the poles of one device. */
    private void tieBar(Canvas canvas, CardEntry e, int position, double x, double y, double high) {
        double from = position == e.lowest() ? y + 5 : y, to = position == e.highest() ? y + high - 5 : y + high;
        canvas.line(x, from, x, to, new Pen(2.4, Tint.INK));
    }

    /** One entry a row, for boards with ways and for devices with names of their own. */
    static void list(List<CardEntry> entries, Flow flow, Runnable head) {
        flow.skip(3);
        canvasRule(flow);
        for (CardEntry e : entries) {
            String name = !e.label().isBlank()
                    ? e.label()
                    : String.join(
                            "-", e.positions().stream().map(String::valueOf).toList());
            double nameWidth = 84, width = flow.width() - nameWidth - RATING - SIGN - 10;
            Paragraph text = Paragraph.of(e.text(), TEXT, width, flow.canvas().typeface());
            Paragraph label = Paragraph.of(
                    name, Type.bold(11), nameWidth - 4, flow.canvas().typeface());
            double high = Math.max(21, Math.max(text.height(), label.height()) + 5);
            turn(flow, head, high);
            double y = flow.y();
            label.draw(flow.canvas(), flow.left(), y + 3);
            flow.canvas().textCentred(e.rating(), flow.left() + nameWidth + RATING / 2, y + 14, TEXT);
            text.draw(flow.canvas(), flow.left() + nameWidth + RATING + 6, y + 3.5);
            Sign.draw(flow.canvas(), e.state(), flow.right() - SIGN / 2, y + 10.5, 4.2);
            flow.skip(high);
            canvasRule(flow);
        }
    }

    private static void canvasRule(Flow flow) {
        flow.canvas().line(flow.left(), flow.y(), flow.right(), flow.y(), Pen.HAIRLINE);
    }
}
