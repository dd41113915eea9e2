package asfound.report.pdf;

import asfound.model.Box;
import java.util.ArrayList;
import java.util.List;

/** The drafter's revision cloud around a box: arcs that bulge outwards, all of one size on each side. */
final class Cloud {

    private Cloud() {}

    /** How far the arcs reach beyond the box, in points: little, since rows of a table stand close. */
    static double reach(Box box) {
        return Math.max(1.6, Math.min(2.2, Math.min(box.w(), box.h()) * 0.18));
    }

    /** Strokes the cloud on the canvas, around {@code box} in canvas measures. */
    static void draw(Canvas canvas, Box box, Pen pen) {
        double bulge = reach(box);
        double chord = bulge * 2.6;
        List<double[]> points = new ArrayList<>();
        side(points, box.x(), box.y(), box.right(), box.y(), chord);
        side(points, box.right(), box.y(), box.right(), box.bottom(), chord);
        side(points, box.right(), box.bottom(), box.x(), box.bottom(), chord);
        side(points, box.x(), box.bottom(), box.x(), box.y(), chord);
        points.add(points.get(0));
        StringBuilder out = new StringBuilder(point(canvas, points.get(0)) + "m\n");
        for (int i = 0; i + 1 < points.size(); i++) arc(out, canvas, points.get(i), points.get(i + 1), bulge);
        canvas.pen(pen).raw(out + "s");
    }

    private static void side(List<double[]> points, double x1, double y1, double x2, double y2, double chord) {
        int n = Math.max(1, (int) Math.round(Math.hypot(x2 - x1, y2 - y1) / chord));
        for (int i = 0; i < n; i++) points.add(new double[] {x1 + (x2 - x1) * i / n, y1 + (y2 - y1) * i / n});
    }

    /** One bulge from a to b, to the left of the way round (which is outside: the sides run clockwise as displayed). */
    private static void arc(StringBuilder out, Canvas canvas, double[] a, double[] b, double reach) {
        double dx = b[0] - a[0], dy = b[1] - a[1], length = Math.max(1e-6, Math.hypot(dx, dy));
        double push = reach * 4 / 3;
        double ox = dy / length * push, oy = -dx / length * push;
        out.append(point(canvas, new double[] {a[0] + ox - dx * 0.12, a[1] + oy - dy * 0.12}))
                .append(point(canvas, new double[] {b[0] + ox + dx * 0.12, b[1] + oy + dy * 0.12}))
                .append(point(canvas, b))
                .append("c\n");
    }

    private static String point(Canvas canvas, double[] p) {
        return Canvas.num(p[0]) + " " + Canvas.num(canvas.height() - p[1]) + " ";
    }
}
