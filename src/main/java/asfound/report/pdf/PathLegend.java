package asfound.report.pdf;

import asfound.network.Standing;
import asfound.report.picture.Standings;

/** How the picture of the ways of supply is to be read. */
final class PathLegend {

    static final double HEIGHT = 34;

    private PathLegend() {}

    static void draw(Canvas canvas, double left, double top) {
        Type type = Type.plain(7);
        double column = (canvas.width() - 2 * left) / 3;
        int i = 0;
        for (Standing standing : Standings.byAttention()) {
            double x = left + i % 3 * column, y = top + 4 + i / 3 * 9.5;
            if (standing == Standing.FOUND) {
                canvas.line(x, y, x + 26, y, new Pen(3.4, Tint.INK));
                canvas.line(x, y, x + 26, y, new Pen(1.4, Tint.WHITE));
            } else canvas.line(x, y, x + 26, y, PathPicture.pen(standing, 1));
            canvas.text(Standings.meaning(standing), x + 31, y + 2.4, type);
            i++;
        }
        double y = top + 4 + 19;
        canvas.fill(left + 9, y - 3.6, 7.2, 7.2, Tint.INK);
        canvas.line(left + 5.5, y - 6.2, left + 19.7, y + 6.2, new Pen(1, Tint.INK));
        canvas.text("drawn point, not found: do not rely on it", left + 31, y + 2.4, type);
        canvas.fill(left + column + 9, y - 3.6, 7.2, 7.2, Tint.INK);
        canvas.circle(left + column + 12.6, y, 7.2, new Pen(0.9, Tint.INK));
        canvas.text("found point", left + column + 31, y + 2.4, type);
        canvas.box(left + 2 * column + 9, y - 3.6, 7.2, 7.2, new Pen(0.9, Tint.INK));
        canvas.text("other device; every device is taken as closed", left + 2 * column + 31, y + 2.4, type);
    }
}
