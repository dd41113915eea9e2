package asfound.report.pdf;

import java.util.ArrayList;
import java.util.List;

/**
 * The small frame beside an entry: the mark's number, and the right value in bold.
 *
 * @param width in points, frame included
 */
record Note(String number, List<Paragraph> values, double size, double tag, double width, double height) {

    private static final double PAD = 0.1;

    /** The note set in lines of at most {@code most} points. */
    static Note of(Mark mark, double size, double most, Typeface typeface) {
        String number = Integer.toString(mark.number());
        double tag = typeface.width(number, tagType(size)) + size * 0.5;
        List<Paragraph> values = new ArrayList<>();
        double wide = 0, high = 0;
        boolean oneLine = typeface.width(String.join("; ", mark.beside()), type(size)) < most - tag - size;
        for (String beside : oneLine ? List.of(String.join("; ", mark.beside())) : mark.beside()) {
            Paragraph value = Paragraph.of(beside, type(size), most - tag - size, typeface);
            values.add(value);
            wide = Math.max(wide, value.width(typeface));
            high += value.height();
        }
        double pad = size * PAD;
        return new Note(number, List.copyOf(values), size, tag, tag + wide + size * 0.8, high + 2 * pad);
    }

    void draw(Canvas canvas, double x, double y) {
        canvas.fill(x, y, width, height, Tint.WHITE);
        canvas.fill(x, y, tag, height, Tint.RED);
        canvas.box(x + 0.3, y + 0.3, width - 0.6, height - 0.6, new Pen(0.6, Tint.RED));
        Type small = tagType(size).in(Tint.WHITE);
        double first = y + size * PAD + size * 0.92;
        canvas.textCentred(number, x + tag / 2, first, small);
        double at = y + size * PAD;
        for (Paragraph value : values) at = value.draw(canvas, x + tag + size * 0.4, at);
    }

    private static Type type(double size) {
        return Type.bold(size).in(Tint.RED);
    }

    private static Type tagType(double size) {
        return Type.bold(size * 0.9);
    }
}
