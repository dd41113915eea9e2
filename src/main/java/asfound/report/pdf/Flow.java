package asfound.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** Text and tables that run down a page and on to the next where the first is full. */
final class Flow {

    private final Supplier<Canvas> next;
    private final double left;
    private final double right;
    private final double top;
    private final double bottom;
    private Canvas canvas;
    private double y;

    /** Starts on a new page of {@code next}; {@code bottom} is kept free at the foot of every page. */
    Flow(Supplier<Canvas> next, double margin, double top, double bottom) {
        this.next = next;
        this.canvas = next.get();
        this.left = margin;
        this.right = canvas.width() - margin;
        this.top = top;
        this.bottom = bottom;
        this.y = top;
    }

    Canvas canvas() {
        return canvas;
    }

    boolean isLengthwise() {
        return canvas.width() > canvas.height();
    }

    double y() {
        return y;
    }

    double left() {
        return left;
    }

    double right() {
        return right;
    }

    double width() {
        return right - left;
    }

    /** What is still free on this page. */
    double free() {
        return canvas.height() - bottom - y;
    }

    Flow skip(double points) {
        y += points;
        return this;
    }

    /** A new page, unless so much is still free on this one. Says whether it turned. */
    boolean need(double points) {
        if (free() >= points) return false;
        canvas = next.get();
        y = top;
        return true;
    }

    Flow text(String text, Type type) {
        Paragraph paragraph = Paragraph.of(text, type, width(), canvas.typeface());
        for (String line : paragraph.lines()) {
            need(type.leading());
            y = new Paragraph(List.of(line), type).draw(canvas, left, y);
        }
        return this;
    }

    /** A small heading with a rule above it, kept together with what follows for {@code with} points. */
    Flow heading(String text, double with) {
        need(with + 22);
        skip(7);
        canvas.line(left, y, right, y, Pen.FINE);
        skip(4);
        return text(text, Type.bold(9)).skip(2);
    }

    /**
     * A table whose rows are never split; its head stands again on every page.
     *
     * @param widths shares of the width
     */
    Flow table(double[] widths, List<String> head, List<List<String>> rows, Type type) {
        headRow(widths, head);
        for (List<String> row : rows) {
            List<Paragraph> cells = cells(widths, row, type);
            double high = cells.stream().mapToDouble(Paragraph::height).max().orElse(0) + 4;
            if (need(high)) headRow(widths, head);
            draw(widths, cells, y + 2);
            y += high;
            canvas.line(left, y, right, y, Pen.HAIRLINE);
        }
        return this;
    }

    /**
     * A table with fields to be filled in by hand: columns from {@code written} on are framed blanks.
     *
     * @param least height of a row in points, so that a hand can write in it
     */
    Flow blanks(double[] widths, List<String> head, List<List<String>> rows, Type type, int written, double least) {
        headRow(widths, head);
        for (List<String> row : rows) {
            List<Paragraph> cells = new ArrayList<>(cells(widths, row, type));
            cells.set(
                    0,
                    Paragraph.of(row.get(0), Type.bold(type.size() + 1.3), widths[0] * width() - 5, canvas.typeface()));
            double high = Math.max(
                    least, cells.stream().mapToDouble(Paragraph::height).max().orElse(0) + 6);
            if (need(high)) headRow(widths, head);
            draw(widths, cells, y + 3);
            double x = left;
            for (int i = 0; i < widths.length; i++) {
                double w = widths[i] * width();
                if (i >= written) canvas.box(x, y + 2, w - 3, high - 4, new Pen(0.7, Tint.INK));
                x += w;
            }
            y += high;
            canvas.line(left, y, right, y, Pen.HAIRLINE);
        }
        return this;
    }

    private void headRow(double[] widths, List<String> head) {
        List<Paragraph> cells = cells(widths, head, Type.bold(7).in(Tint.SOFT));
        double high = cells.stream().mapToDouble(Paragraph::height).max().orElse(0) + 4;
        need(high + 24);
        draw(widths, cells, y + 2);
        y += high;
        canvas.line(left, y, right, y, Pen.FINE);
    }

    private List<Paragraph> cells(double[] widths, List<String> texts, Type type) {
        List<Paragraph> cells = new ArrayList<>();
        for (int i = 0; i < widths.length; i++)
            cells.add(Paragraph.of(texts.get(i), type, widths[i] * width() - 5, canvas.typeface()));
        return cells;
    }

    private void draw(double[] widths, List<Paragraph> cells, double at) {
        double x = left;
        for (int i = 0; i < widths.length; i++) {
            cells.get(i).draw(canvas, x, at);
            x += widths[i] * width();
        }
    }
}
