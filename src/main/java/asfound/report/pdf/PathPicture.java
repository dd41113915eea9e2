package asfound.report.pdf;

import asfound.network.Device;
import asfound.network.Equipment;
import asfound.network.Standing;
import java.util.List;
import java.util.Set;

/**
 * The ways of supply to one equipment as a picture: supply runs from left to right, the equipment stands at the right.
 * How a line is drawn says how it stands between paper and survey, and a word says it too.
 */
final class PathPicture {

    private final PathLayout layout;
    private final String target;
    private final Set<Device> drawn;
    private final Set<Device> found;

    PathPicture(SupplyPaths paths, String target, Set<Device> drawn, Set<Device> found, Typeface typeface) {
        this.layout = new PathLayout(paths, typeface);
        this.target = target;
        this.drawn = drawn;
        this.found = found;
    }

    /** Natural width; the height is {@link #height}. */
    double width() {
        return layout.width();
    }

    double height() {
        return layout.height();
    }

    /** A canvas seen through a place and a scale. */
    private record Drawing(Canvas canvas, double left, double top, double scale) {

        double x(double v) {
            return left + v * scale;
        }

        double y(double v) {
            return top + v * scale;
        }

        Type type(Type natural) {
            return natural.at(natural.size() * scale);
        }
    }

    void draw(Canvas canvas, double left, double top, double scale) {
        Drawing d = new Drawing(canvas, left, top, scale);
        for (PathLayout.Wire wire : layout.wires()) wire(d, wire);
        for (PathLayout.Node node : layout.nodes()) box(d, node);
        for (PathLayout.Wire wire : layout.wires()) words(d, wire);
        for (PathLayout.Wire wire : layout.wires()) taps(d, wire);
    }

    private void wire(Drawing d, PathLayout.Wire wire) {
        List<double[]> path = wire.path().stream()
                .map(p -> new double[] {d.x(p[0]), d.y(p[1])})
                .toList();
        Standing standing = wire.connection().standing();
        if (standing == Standing.FOUND) {
            d.canvas.path(path, new Pen(3.4 * d.scale, Tint.INK));
            d.canvas.path(path, new Pen(1.4 * d.scale, Tint.WHITE));
        } else d.canvas.path(path, pen(standing, d.scale));
    }

    /** The line of a standing; a found connection is a double line. */
    static Pen pen(Standing standing, double scale) {
        return switch (standing) {
            case CONFIRMED, FOUND -> new Pen(1.5 * scale, Tint.INK);
            case UNTRACED -> new Pen(1 * scale, Tint.INK, 7 * scale, 3.5 * scale);
            case CONTRADICTED -> new Pen(1.2 * scale, Tint.INK, 1.5 * scale, 2.5 * scale);
            case IN_CONFLICT -> new Pen(1.2 * scale, Tint.INK, 8 * scale, 2.5 * scale, 1.5 * scale, 2.5 * scale);
            case STALE ->
                new Pen(1.2 * scale, Tint.INK, 8 * scale, 2 * scale, 1.5 * scale, 2 * scale, 1.5 * scale, 2 * scale);
        };
    }

    private void box(Drawing d, PathLayout.Node node) {
        Equipment e = node.equipment();
        double x = d.x(node.box().x()), y = d.y(node.box().y());
        double w = node.box().w() * d.scale, h = node.box().h() * d.scale;
        boolean isTarget = e.name().equals(target);
        d.canvas.fill(x, y, w, h, isTarget ? Tint.INK : Tint.WHITE);
        boolean paperOnly = e.drawn() && !e.found();
        d.canvas.box(x, y, w, h, paperOnly ? new Pen(0.8, Tint.INK, 3, 2) : new Pen(isTarget ? 1.6 : 0.9, Tint.INK));
        if (!e.drawn()) d.canvas.box(x - 2, y - 2, w + 4, h + 4, new Pen(0.7, Tint.INK));
        double indent = 0;
        if (e.kind().isSource()) {
            indent = PathLayout.SOURCE * d.scale;
            source(d, x + 11 * d.scale, y + h / 2, 6.5 * d.scale);
        }
        Tint text = isTarget ? Tint.WHITE : Tint.INK;
        double centre = x + (w + indent) / 2, at = y + (h - node.textHeight() * d.scale) / 2;
        for (Paragraph paragraph : List.of(node.name(), node.detail())) {
            Type type = d.type(paragraph.type()).in(text);
            for (String line : paragraph.lines()) {
                d.canvas.textCentred(line, centre, at + paragraph.type().size() * 0.92 * d.scale, type);
                at += paragraph.type().leading() * d.scale;
            }
        }
    }

    /** The wave of a source of alternating current, in a circle. */
    private static void source(Drawing d, double x, double y, double r) {
        d.canvas.circle(x, y, r, new Pen(0.8, Tint.INK));
        List<double[]> wave = new java.util.ArrayList<>();
        for (int i = -8; i <= 8; i++)
            wave.add(new double[] {x + i * r * 0.07, y - Math.sin(i * Math.PI / 8) * r * 0.4});
        d.canvas.path(wave, new Pen(0.8, Tint.INK));
    }

    private static void words(Drawing d, PathLayout.Wire wire) {
        Type type = d.type(PathLayout.WORD);
        for (PathLayout.Word word : wire.words()) d.canvas.text(word.text(), d.x(word.x()), d.y(word.y()), type);
    }

    private void taps(Drawing d, PathLayout.Wire wire) {
        for (PathLayout.Tap tap : wire.taps()) {
            Device device = tap.device();
            boolean isDrawn = drawn.contains(device), isFound = found.contains(device);
            double half = 3.4 * d.scale, cx = d.x(tap.x()), cy = d.y(tap.y());
            d.canvas.fill(cx - half, cy - half, 2 * half, 2 * half, isDrawn || isFound ? Tint.INK : Tint.WHITE);
            d.canvas.box(cx - half, cy - half, 2 * half, 2 * half, new Pen(0.9, Tint.INK));
            if (isFound) d.canvas.circle(cx, cy, half * 2, new Pen(0.9, Tint.INK));
            if (isDrawn && !isFound)
                d.canvas.line(cx - half * 2, cy - half * 2, cx + half * 2, cy + half * 2, new Pen(1, Tint.INK));
            Type type = d.type(isDrawn || isFound ? PathLayout.DEVICE : Type.plain(PathLayout.DEVICE.size()));
            d.canvas.text(tap.label(), d.x(tap.x() + PathLayout.LABEL_RIGHT), d.y(tap.y() - PathLayout.LABEL_UP), type);
        }
    }
}
