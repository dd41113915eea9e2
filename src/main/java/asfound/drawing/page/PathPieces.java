package asfound.drawing.page;

import asfound.model.Box;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The path that is being drawn, as straight pieces, and which of them are rules. */
final class PathPieces {

    private static final double THIN = 2.2;
    private static final double SHORTEST = 2.5;

    private final List<Point2D[]> pieces = new ArrayList<>();
    private final List<double[]> areas = new ArrayList<>();
    private Point2D start;
    private Point2D last;
    private Point2D current = new Point2D.Float();
    private Point2D currentStart = new Point2D.Float();
    private double left, top, right, bottom;
    private boolean open;
    private boolean curved;
    private int curves;

    Point2D current() {
        return current;
    }

    void rectangle(Point2D a, Point2D b, Point2D c, Point2D d) {
        endArea();
        piece(a, b);
        piece(b, c);
        piece(c, d);
        piece(d, a);
        begin(a);
        for (Point2D p : new Point2D[] {b, c, d}) grow(p);
        endArea();
        start = a;
        last = a;
    }

    void moveTo(Point2D shown, Point2D own) {
        endArea();
        begin(shown);
        start = shown;
        last = shown;
        current = own;
        currentStart = own;
    }

    void lineTo(Point2D shown, Point2D own) {
        if (last == null) {
            moveTo(shown, own);
            return;
        }
        piece(last, shown);
        grow(shown);
        last = shown;
        current = own;
    }

    void curveTo(Point2D shown, Point2D own) {
        if (last == null) moveTo(shown, own);
        grow(shown);
        curved = true;
        curves++;
        last = shown;
        current = own;
    }

    void close() {
        if (last != null && start != null) piece(last, start);
        last = start;
        current = currentStart;
    }

    void clear() {
        pieces.clear();
        areas.clear();
        open = false;
        curves = 0;
        start = null;
        last = null;
    }

    /** How much the path holds until now. */
    int size() {
        return Math.max(pieces.size(), areas.size());
    }

    private void piece(Point2D a, Point2D b) {
        pieces.add(new Point2D[] {a, b});
    }

    private void begin(Point2D p) {
        left = right = p.getX();
        top = bottom = p.getY();
        open = true;
        curved = false;
    }

    private void grow(Point2D p) {
        if (!open) begin(p);
        left = Math.min(left, p.getX());
        right = Math.max(right, p.getX());
        top = Math.min(top, p.getY());
        bottom = Math.max(bottom, p.getY());
    }

    private void endArea() {
        if (open) areas.add(new double[] {left, top, right, bottom, curved ? 1 : 0});
        open = false;
    }

    /** A filled shape with curves no larger than a letter of a heading. */
    boolean isSmallOutline() {
        endArea();
        if (curves == 0 || areas.isEmpty()) return false;
        for (double[] a : areas) if (a[2] - a[0] > 40 || a[3] - a[1] > 40) return false;
        return true;
    }

    /** The upright rectangle that the path is; empty where it is more or of another shape. */
    Optional<Box> rectangle() {
        endArea();
        if (areas.size() != 1 || curves > 0) return Optional.empty();
        int sides = 0;
        for (Point2D[] p : pieces) {
            double dx = Math.abs(p[0].getX() - p[1].getX()), dy = Math.abs(p[0].getY() - p[1].getY());
            if (dx > 0.1 && dy > 0.1) return Optional.empty();
            if (dx > 0.1 || dy > 0.1) sides++;
        }
        double[] a = areas.get(0);
        // three sides where the last is left to the filling
        return sides == 3 || sides == 4 ? Optional.of(new Box(a[0], a[1], a[2] - a[0], a[3] - a[1])) : Optional.empty();
    }

    /** Adds the straight pieces along the axes, as a stroke shows them. */
    void stroked(List<Rule> across, List<Rule> down) {
        for (Point2D[] p : pieces) {
            double dx = Math.abs(p[0].getX() - p[1].getX()), dy = Math.abs(p[0].getY() - p[1].getY());
            if (dy <= 0.6 && dx >= SHORTEST)
                across.add(rule((p[0].getY() + p[1].getY()) / 2, p[0].getX(), p[1].getX()));
            else if (dx <= 0.6 && dy >= SHORTEST)
                down.add(rule((p[0].getX() + p[1].getX()) / 2, p[0].getY(), p[1].getY()));
        }
    }

    /** Adds thin filled shapes as rules, and the edges of larger ones. */
    void filled(List<Rule> across, List<Rule> down) {
        endArea();
        for (double[] a : areas) {
            double w = a[2] - a[0], h = a[3] - a[1];
            if (a[4] != 0) continue;
            if (h <= THIN && w >= SHORTEST) across.add(rule((a[1] + a[3]) / 2, a[0], a[2]));
            else if (w <= THIN && h >= SHORTEST) down.add(rule((a[0] + a[2]) / 2, a[1], a[3]));
            else if (w > 2 * THIN && h > 2 * THIN) {
                across.add(rule(a[1], a[0], a[2]));
                across.add(rule(a[3], a[0], a[2]));
                down.add(rule(a[0], a[1], a[3]));
                down.add(rule(a[2], a[1], a[3]));
            }
        }
    }

    private static Rule rule(double at, double a, double b) {
        return new Rule(at, Math.min(a, b), Math.max(a, b));
    }
}
