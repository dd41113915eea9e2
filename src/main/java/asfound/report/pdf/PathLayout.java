package asfound.report.pdf;

import asfound.model.Box;
import asfound.network.Connection;
import asfound.network.Device;
import asfound.network.Equipment;
import asfound.report.picture.Standings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * Where everything stands in the picture of the ways of supply: one column for each distance from the equipment, the
 * farthest at the left. Lines run level, turn once between two columns, each in a track of its own.
 */
final class PathLayout {

    /** Room for the sign of a source in its box. */
    static final double SOURCE = 18;

    static final Type NAME = Type.bold(9.5), DETAIL = Type.plain(6.6), DEVICE = Type.bold(8.5), WORD = Type.plain(7);
    private static final double TEXT = 66, PORT = 24, GAP = 11, TRACK = 7, BEFORE = 9;

    /** A box. */
    record Node(Equipment equipment, Box box, Paragraph name, Paragraph detail) {

        double textHeight() {
            return name.height() + (detail.lines().get(0).isEmpty() ? 0 : detail.height());
        }
    }

    /** A device on a line. */
    record Tap(Device device, String label, double x, double y) {}

    /**
     * A line.
     *
     * @param path its corners
     * @param tagX where the word for its standing begins
     * @param endY the level of its right end
     */
    record Wire(Connection connection, List<double[]> path, List<Tap> taps, double tagX, double endY) {}

    private static final class Line {
        final Connection connection;
        final String left, right;
        double leftY, rightY, track;

        Line(Connection connection, String left, String right) {
            this.connection = connection;
            this.left = left;
            this.right = right;
        }
    }

    private final SupplyPaths paths;
    private final Typeface typeface;
    private final Map<String, Node> nodes = new HashMap<>();
    private final Map<String, Integer> layerOf = new HashMap<>();
    private final List<Line> lines = new ArrayList<>();
    private final List<Wire> wires = new ArrayList<>();

    PathLayout(SupplyPaths paths, Typeface typeface) {
        this.paths = paths;
        this.typeface = typeface;
        for (int i = 0; i < paths.layers().size(); i++)
            for (Equipment e : paths.layers().get(i)) layerOf.put(e.name(), i);
        for (Connection c : paths.connections()) {
            boolean fromIsLeft = layerOf.get(c.from()) >= layerOf.get(c.to());
            lines.add(new Line(c, fromIsLeft ? c.from() : c.to(), fromIsLeft ? c.to() : c.from()));
        }
        stack();
        ports();
        columns();
        for (Line line : lines) wires.add(wire(line));
    }

    List<Node> nodes() {
        return paths.layers().stream()
                .flatMap(List::stream)
                .map(e -> nodes.get(e.name()))
                .toList();
    }

    List<Wire> wires() {
        return wires;
    }

    double width() {
        return nodes.values().stream().mapToDouble(n -> n.box().right()).max().orElse(0);
    }

    double height() {
        return nodes.values().stream().mapToDouble(n -> n.box().bottom()).max().orElse(0);
    }

    /** Heights and order within the columns: things beside what they supply. */
    private void stack() {
        double tallest = 0;
        List<Double> heights = new ArrayList<>();
        for (List<Equipment> layer : paths.layers()) {
            List<Equipment> row = new ArrayList<>(layer);
            row.sort(Comparator.comparingDouble(this::level).thenComparing(Equipment::name));
            double y = 0;
            for (Equipment e : row) {
                Node node = node(e, y);
                nodes.put(e.name(), node);
                y = node.box().bottom() + GAP;
            }
            heights.add(y - GAP);
            tallest = Math.max(tallest, y - GAP);
        }
        for (int i = 0; i < heights.size(); i++)
            for (Equipment e : paths.layers().get(i)) move(e.name(), 0, (tallest - heights.get(i)) / 2);
    }

    private Node node(Equipment e, double y) {
        double sign = e.kind().isSource() ? SOURCE : 0;
        Paragraph name = Paragraph.of(e.name(), NAME, TEXT - sign, typeface);
        Paragraph detail = Paragraph.of(detail(e), DETAIL, TEXT - sign, typeface);
        double w = Math.max(name.width(typeface), detail.width(typeface)) + 10 + sign;
        long out = lines.stream().filter(l -> l.left.equals(e.name())).count();
        long in = lines.stream().filter(l -> l.right.equals(e.name())).count();
        double h = Math.max(name.height() + detail.height() + 6, Math.max(out, in) * PORT);
        return new Node(e, new Box(0, y, w, h), name, detail);
    }

    private static String detail(Equipment e) {
        String seen = !e.drawn() ? "on no drawing" : !e.found() ? "not met by the survey" : "";
        String kind = e.kind().word();
        return kind + (kind.isEmpty() || seen.isEmpty() ? "" : ", ") + seen;
    }

    private void move(String name, double dx, double dy) {
        Node n = nodes.get(name);
        Box b = n.box();
        nodes.put(name, new Node(n.equipment(), new Box(b.x() + dx, b.y() + dy, b.w(), b.h()), n.name(), n.detail()));
    }

    private double level(Equipment e) {
        return lines.stream()
                .filter(l -> l.left.equals(e.name()) && nodes.containsKey(l.right))
                .mapToDouble(l -> nodes.get(l.right).box().centreY())
                .average()
                .orElse(0);
    }

    /** Lines leave and arrive in the order of their other ends. */
    private void ports() {
        for (String name : List.copyOf(nodes.keySet())) {
            Box box = nodes.get(name).box();
            List<Line> out = sorted(name, true, l -> nodes.get(l.right).box().centreY());
            List<Line> in = sorted(name, false, l -> nodes.get(l.left).box().centreY());
            for (int i = 0; i < out.size(); i++) out.get(i).leftY = box.y() + box.h() * (i + 1) / (out.size() + 1);
            for (int i = 0; i < in.size(); i++) in.get(i).rightY = box.y() + box.h() * (i + 1) / (in.size() + 1);
        }
    }

    private List<Line> sorted(String name, boolean leaving, ToDoubleFunction<Line> by) {
        return lines.stream()
                .filter(l -> (leaving ? l.left : l.right).equals(name))
                .sorted(Comparator.comparingDouble(by))
                .toList();
    }

    /** Widths from left to right: the boxes of a column, then room for devices, words and the tracks of its lines. */
    private void columns() {
        double x = 0;
        for (int layer = paths.layers().size() - 1; layer >= 0; layer--) {
            int here = layer;
            double widest = 0;
            for (Equipment e : paths.layers().get(layer))
                widest = Math.max(widest, nodes.get(e.name()).box().w());
            for (Equipment e : paths.layers().get(layer))
                move(e.name(), x + (widest - nodes.get(e.name()).box().w()) / 2, 0);
            x += widest;
            List<Line> leaving =
                    lines.stream().filter(l -> layerOf.get(l.left) == here).toList();
            x = tracks(leaving, x);
        }
    }

    private double tracks(List<Line> leaving, double x) {
        if (leaving.isEmpty()) return x;
        double devices = 0, words = 30;
        for (Line l : leaving) {
            devices = Math.max(devices, tapsWidth(l, l.left));
            words = Math.max(words, Math.max(tapsWidth(l, l.right) + 6, wordsWidth(l)));
        }
        double at = x + BEFORE + devices;
        // downward lines take the far tracks from the top on, so that two lines that turn the same way do not cross
        List<Line> order = leaving.stream()
                .sorted(Comparator.comparingDouble(l -> l.leftY < l.rightY ? -l.leftY : l.leftY - 10_000))
                .toList();
        for (Line l : order) {
            l.track = at;
            if (Math.abs(l.leftY - l.rightY) > 0.5) at += TRACK;
        }
        return at + words + 6;
    }

    /** What is written at a line's end must not run into the box there. */
    private double wordsWidth(Line line) {
        String tag = Standings.tag(line.connection.standing());
        double said = line.connection.devices().isEmpty() ? typeface.width("no device", WORD) : 0;
        return Math.max(said, typeface.width(tag, WORD));
    }

    private double tapsWidth(Line line, String end) {
        return line.connection.devices().stream()
                .filter(d -> (d.in().equals(line.right) ? line.right : line.left).equals(end))
                .mapToDouble(d -> 14 + typeface.width(label(line, d), DEVICE))
                .sum();
    }

    private static String label(Line line, Device device) {
        boolean atOneEnd = device.in().equals(line.left) || device.in().equals(line.right);
        return atOneEnd ? device.key() : device.label();
    }

    private Wire wire(Line line) {
        Box left = nodes.get(line.left).box(), right = nodes.get(line.right).box();
        boolean level = layerOf.get(line.left).equals(layerOf.get(line.right));
        double end = level ? right.right() : right.x();
        List<double[]> path = List.of(
                new double[] {left.right(), line.leftY},
                new double[] {line.track, line.leftY},
                new double[] {line.track, line.rightY},
                new double[] {end, line.rightY});
        List<Tap> taps = new ArrayList<>();
        double at = left.right() + BEFORE, back = right.x() - tapsWidth(line, line.right) + 4;
        for (Device d : line.connection.devices()) {
            boolean atRight = d.in().equals(line.right) && !level;
            double x = atRight ? back : at, step = 14 + typeface.width(label(line, d), DEVICE);
            if (atRight) back += step;
            else at += step;
            taps.add(new Tap(d, label(line, d), x, atRight ? line.rightY : line.leftY));
        }
        double tag = level ? end + 4 : line.track + 3;
        return new Wire(line.connection, path, List.copyOf(taps), tag, line.rightY);
    }
}
