package asfound.report.pdf;

import asfound.model.Box;
import asfound.model.EquipmentKind;
import asfound.network.Connection;
import asfound.network.Device;
import asfound.network.Equipment;
import asfound.network.Standing;
import asfound.report.picture.Standings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The ways of supply to one equipment as a picture: it stands at the foot, everything that could supply it above, nearer
 * things lower. Lines run at right angles, each in a track of its own; how a line is drawn says how it stands between
 * paper and survey, and a word says it too.
 */
final class PathPicture {

    private static final double BOX_HEIGHT = 25, PORT = 58, TRACK = 7, TAP = 12, GAP = 14;

    private final SupplyPaths paths;
    private final String target;
    private final Set<Device> drawn;
    private final Set<Device> found;
    private final Typeface typeface;
    private final Map<String, Box> boxes = new HashMap<>();
    private final Map<String, Integer> layerOf = new HashMap<>();
    private final List<Line> lines = new ArrayList<>();

    /** A connection with the places where it leaves the upper and reaches the lower equipment. */
    private static final class Line {
        final Connection connection;
        final String upper, lower;
        double upperX, lowerX, channelY;

        Line(Connection connection, String upper, String lower) {
            this.connection = connection;
            this.upper = upper;
            this.lower = lower;
        }
    }

    PathPicture(SupplyPaths paths, String target, Set<Device> drawn, Set<Device> found, Typeface typeface) {
        this.paths = paths;
        this.target = target;
        this.drawn = drawn;
        this.found = found;
        this.typeface = typeface;
        for (int i = 0; i < paths.layers().size(); i++)
            for (Equipment e : paths.layers().get(i)) layerOf.put(e.name(), i);
        for (Connection c : paths.connections()) {
            boolean fromIsUpper = layerOf.get(c.from()) >= layerOf.get(c.to());
            lines.add(new Line(c, fromIsUpper ? c.from() : c.to(), fromIsUpper ? c.to() : c.from()));
        }
        place();
    }

    /** Natural width; the height is {@link #height}. */
    double width() {
        return boxes.values().stream().mapToDouble(Box::right).max().orElse(0);
    }

    double height() {
        return boxes.values().stream().mapToDouble(Box::bottom).max().orElse(0);
    }

    private void place() {
        List<List<Equipment>> layers = paths.layers();
        double widest = 0;
        for (int layer = 0; layer < layers.size(); layer++) {
            List<Equipment> row = new ArrayList<>(layers.get(layer));
            if (layer > 0) row.sort(Comparator.comparingDouble(this::middle).thenComparing(Equipment::name));
            double x = 0;
            for (Equipment e : row) {
                double w = boxWidth(e);
                boxes.put(e.name(), new Box(x, 0, w, BOX_HEIGHT));
                x += w + GAP;
            }
            widest = Math.max(widest, x - GAP);
        }
        for (List<Equipment> row : layers) {
            double total =
                    row.stream().mapToDouble(e -> boxes.get(e.name()).w() + GAP).sum() - GAP;
            double shift = (widest - total) / 2;
            for (Equipment e : row) {
                Box b = boxes.get(e.name());
                boxes.put(e.name(), new Box(b.x() + shift, 0, b.w(), b.h()));
            }
        }
        ports();
        double y = 0;
        for (int layer = layers.size() - 1; layer >= 0; layer--) {
            for (Equipment e : layers.get(layer)) {
                Box b = boxes.get(e.name());
                boxes.put(e.name(), new Box(b.x(), y, b.w(), b.h()));
            }
            y += BOX_HEIGHT + channels(layer, y + BOX_HEIGHT);
        }
    }

    /** Where the lower neighbours of an equipment stand on average. */
    private double middle(Equipment e) {
        return lines.stream()
                .filter(l -> l.upper.equals(e.name()) && boxes.containsKey(l.lower))
                .mapToDouble(l -> boxes.get(l.lower).centreX())
                .average()
                .orElse(0);
    }

    private double boxWidth(Equipment e) {
        long down = lines.stream().filter(l -> l.upper.equals(e.name())).count();
        long up = lines.stream().filter(l -> l.lower.equals(e.name())).count();
        double text = Math.max(typeface.width(e.name(), Type.bold(9.5)), typeface.width(detail(e), Type.plain(6.5)));
        return Math.max(text + 14 + (e.kind().isSource() ? 20 : 0), Math.max(down, up) * PORT);
    }

    /** Lines leave and arrive in the order of their other ends. */
    private void ports() {
        for (Box box : List.copyOf(boxes.values())) {
            List<Line> down =
                    lines.stream().filter(l -> boxes.get(l.upper) == box).toList();
            List<Line> up =
                    lines.stream().filter(l -> boxes.get(l.lower) == box).toList();
            spread(box, sorted(down, l -> boxes.get(l.lower).centreX()), true);
            spread(box, sorted(up, l -> boxes.get(l.upper).centreX()), false);
        }
    }

    private static List<Line> sorted(List<Line> lines, java.util.function.ToDoubleFunction<Line> by) {
        return lines.stream().sorted(Comparator.comparingDouble(by)).toList();
    }

    private static void spread(Box box, List<Line> lines, boolean upperEnd) {
        for (int i = 0; i < lines.size(); i++) {
            double x = box.x() + box.w() * (i + 1) / (lines.size() + 1);
            if (upperEnd) lines.get(i).upperX = x;
            else lines.get(i).lowerX = x;
        }
    }

    /** Gives every line below this layer its own level; how much height they take. */
    private double channels(int layer, double top) {
        List<Line> here = lines.stream()
                .filter(l -> layerOf.get(l.upper) == layer)
                .sorted(Comparator.comparingDouble(l -> -Math.abs(l.upperX - l.lowerX)))
                .toList();
        double y = top + TAP + 5;
        for (Line line : here) {
            line.channelY = y;
            y += TRACK;
        }
        // room for a device of the lower equipment under the line's word
        boolean low = here.stream().anyMatch(PathPicture::hasLowTap);
        return here.isEmpty() ? 0 : y - top + TAP + (low ? 11 : 0);
    }

    private static boolean hasLowTap(Line line) {
        return line.connection.devices().stream().anyMatch(d -> d.in().equals(line.lower));
    }

    void draw(Canvas canvas, double left, double top, double scale) {
        Drawing d = new Drawing(canvas, left, top, scale);
        for (Line line : lines) wire(d, line);
        for (List<Equipment> row : paths.layers()) for (Equipment e : row) box(d, e);
        for (Line line : lines) taps(d, line);
    }

    private record Drawing(Canvas canvas, double left, double top, double scale) {

        /** A size of type: scaled with the picture, never below what can be read. */
        double type(double size) {
            return Math.max(6, size * scale);
        }

        double x(double v) {
            return left + v * scale;
        }

        double y(double v) {
            return top + v * scale;
        }
    }

    private void wire(Drawing d, Line line) {
        Box upper = boxes.get(line.upper), lower = boxes.get(line.lower);
        boolean level = layerOf.get(line.upper).equals(layerOf.get(line.lower));
        double end = level ? lower.bottom() : lower.y();
        List<double[]> path = List.of(
                new double[] {d.x(line.upperX), d.y(upper.bottom())},
                new double[] {d.x(line.upperX), d.y(line.channelY)},
                new double[] {d.x(line.lowerX), d.y(line.channelY)},
                new double[] {d.x(line.lowerX), d.y(end)});
        Standing standing = line.connection.standing();
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

    private void box(Drawing d, Equipment e) {
        Box b = boxes.get(e.name());
        double x = d.x(b.x()), y = d.y(b.y()), w = b.w() * d.scale, h = b.h() * d.scale;
        boolean isTarget = e.name().equals(target);
        d.canvas.fill(x, y, w, h, isTarget ? Tint.INK : Tint.WHITE);
        Pen outline = !e.found() && e.drawn() ? new Pen(0.8, Tint.INK, 3, 2) : new Pen(isTarget ? 1.6 : 0.9, Tint.INK);
        d.canvas.box(x, y, w, h, outline);
        if (!e.drawn()) d.canvas.box(x - 2, y - 2, w + 4, h + 4, new Pen(0.7, Tint.INK));
        Tint text = isTarget ? Tint.WHITE : Tint.INK;
        double indent = 0;
        if (e.kind().isSource()) {
            indent = 18 * d.scale;
            source(d, x + 11 * d.scale, y + h / 2, 7 * d.scale);
        }
        double centre = x + indent / 2 + w / 2;
        d.canvas.textCentred(
                e.name(), centre, y + 11.5 * d.scale, Type.bold(d.type(9.5)).in(text));
        d.canvas.textCentred(
                detail(e), centre, y + 20.5 * d.scale, Type.plain(d.type(6.5)).in(text));
    }

    /** The wave of a source of alternating current, in a circle. */
    private static void source(Drawing d, double x, double y, double r) {
        d.canvas.circle(x, y, r, new Pen(0.8, Tint.INK));
        List<double[]> wave = new ArrayList<>();
        for (int i = -8; i <= 8; i++)
            wave.add(new double[] {x + i * r * 0.07, y - Math.sin(i * Math.PI / 8) * r * 0.4});
        d.canvas.path(wave, new Pen(0.8, Tint.INK));
    }

    private static String detail(Equipment e) {
        String kind = e.kind() == EquipmentKind.UNKNOWN ? "" : e.kind().word();
        String seen = !e.drawn() ? "on no drawing" : !e.found() ? "not met by the survey" : "";
        return kind + (kind.isEmpty() || seen.isEmpty() ? "" : ", ") + seen;
    }

    private void taps(Drawing d, Line line) {
        Box upper = boxes.get(line.upper), lower = boxes.get(line.lower);
        boolean level = layerOf.get(line.upper).equals(layerOf.get(line.lower));
        double lowerEnd = level ? lower.bottom() : lower.y();
        double atUpper = upper.bottom() + 9, atLower = level ? lowerEnd + 9 : lowerEnd - 9;
        int further = 0;
        for (Device device : line.connection.devices()) {
            boolean low = device.in().equals(line.lower);
            double x = low ? line.lowerX : line.upperX, y = (low ? atLower : atUpper) + 9 * further;
            if (!low) further++;
            tap(d, device, x, y, !device.in().equals(line.upper) && !low);
        }
        String tag = Standings.tag(line.connection.standing());
        if (line.connection.devices().isEmpty()) tag = "no device" + (tag.isEmpty() ? "" : ", " + tag);
        boolean busy = hasLowTap(line);
        double y = level ? line.channelY - 2 : busy ? line.channelY + 6.5 : lowerEnd - 4;
        label(d, tag, line.lowerX + 4, y, Type.plain(d.type(6.4)));
    }

    private void tap(Drawing d, Device device, double x, double y, boolean elsewhere) {
        boolean isDrawn = drawn.contains(device), isFound = found.contains(device);
        double half = 3.6 * d.scale, cx = d.x(x), cy = d.y(y);
        d.canvas.fill(cx - half, cy - half, 2 * half, 2 * half, isDrawn || isFound ? Tint.INK : Tint.WHITE);
        d.canvas.box(cx - half, cy - half, 2 * half, 2 * half, new Pen(0.9, Tint.INK));
        if (isFound) d.canvas.circle(cx, cy, half * 2, new Pen(0.9, Tint.INK));
        if (isDrawn && !isFound) {
            d.canvas.line(cx - half * 2, cy - half * 2, cx + half * 2, cy + half * 2, new Pen(1, Tint.INK));
        }
        String name = elsewhere ? device.label() : device.key();
        label(d, name, x + 9, y + 2.6, new Type(d.type(7.5), isDrawn || isFound, Tint.INK));
    }

    private static void label(Drawing d, String text, double x, double y, Type type) {
        if (text.isEmpty()) return;
        double w = d.canvas.typeface().width(text, type);
        d.canvas.fill(d.x(x) - 0.8, d.y(y) - type.size() * 0.75, w + 1.6, type.size() * 0.95, Tint.WHITE);
        d.canvas.text(text, d.x(x), d.y(y), type);
    }
}
