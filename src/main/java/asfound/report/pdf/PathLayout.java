package asfound.report.pdf;

import asfound.model.Box;
import asfound.model.Natural;
import asfound.network.Connection;
import asfound.network.Device;
import asfound.network.Equipment;
import asfound.report.picture.Standings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.elk.alg.layered.options.LayeredMetaDataProvider;
import org.eclipse.elk.alg.layered.options.LayeredOptions;
import org.eclipse.elk.alg.layered.options.NodePlacementStrategy;
import org.eclipse.elk.core.RecursiveGraphLayoutEngine;
import org.eclipse.elk.core.data.LayoutMetaDataService;
import org.eclipse.elk.core.math.ElkPadding;
import org.eclipse.elk.core.options.CoreOptions;
import org.eclipse.elk.core.options.Direction;
import org.eclipse.elk.core.options.EdgeRouting;
import org.eclipse.elk.core.options.PortConstraints;
import org.eclipse.elk.core.options.PortSide;
import org.eclipse.elk.core.options.SizeConstraint;
import org.eclipse.elk.core.util.BasicProgressMonitor;
import org.eclipse.elk.graph.ElkEdge;
import org.eclipse.elk.graph.ElkEdgeSection;
import org.eclipse.elk.graph.ElkNode;
import org.eclipse.elk.graph.ElkPort;
import org.eclipse.elk.graph.util.ElkGraphUtil;

/**
 * Where everything stands in the picture of the ways of supply: in layers, the farthest at the left, lines level and
 * upright, by the Eclipse Layout Kernel. What is written on a line stands beside a box, where lines run level and apart;
 * between that and the next layer's writing they turn. So nothing that is written meets a line or another word.
 */
final class PathLayout {

    /** Room for the sign of a source in its box. */
    static final double SOURCE = 18;

    static final Type NAME = Type.bold(9.5), DETAIL = Type.plain(6.6), DEVICE = Type.bold(8.5), WORD = Type.plain(7);

    /** Half the extent of a device with its ring, and where its label and the word of a line begin, from the line. */
    static final double RING = 6.8, LABEL_RIGHT = 8.5, LABEL_UP = 4.2, WORD_DOWN = 13;

    private static final double TEXT = 66, PITCH = 28, BEFORE = 9, AFTER = 5;

    /** A box. */
    record Node(Equipment equipment, Box box, Paragraph name, Paragraph detail) {

        double textHeight() {
            return name.height() + (detail.lines().get(0).isEmpty() ? 0 : detail.height());
        }
    }

    /** A device on a line. */
    record Tap(Device device, String label, double x, double y) {}

    /** A word on a line; {@code y} is its base line. */
    record Word(String text, double x, double y) {}

    /** A line with its corners, from the left. */
    record Wire(Connection connection, List<double[]> path, List<Tap> taps, List<Word> words) {}

    /** A connection between the box farther from the equipment, at the left, and the nearer one. */
    private record Line(Connection connection, String left, String right) {}

    private final Typeface typeface;
    private final Map<String, Node> nodes = new LinkedHashMap<>();
    private final List<Line> lines = new ArrayList<>();
    private final List<Wire> wires = new ArrayList<>();
    private double width, height;

    PathLayout(SupplyPaths paths, Typeface typeface) {
        this.typeface = typeface;
        List<Equipment> farthestFirst = new ArrayList<>();
        for (int i = paths.layers().size() - 1; i >= 0; i--)
            paths.layers().get(i).stream()
                    .sorted(Comparator.comparing(Equipment::name, Natural.ORDER))
                    .forEach(farthestFirst::add);
        Map<String, Integer> rank = new HashMap<>();
        farthestFirst.forEach(e -> rank.put(e.name(), rank.size()));
        for (Connection c : paths.connections()) {
            boolean fromIsLeft = rank.get(c.from()) < rank.get(c.to());
            lines.add(new Line(c, fromIsLeft ? c.from() : c.to(), fromIsLeft ? c.to() : c.from()));
        }
        place(farthestFirst);
    }

    List<Node> nodes() {
        return List.copyOf(nodes.values());
    }

    List<Wire> wires() {
        return wires;
    }

    double width() {
        return width;
    }

    double height() {
        return height;
    }

    private void place(List<Equipment> equipment) {
        ElkNode root = root();
        Map<String, ElkNode> boxes = new HashMap<>();
        for (Equipment e : equipment) boxes.put(e.name(), box(root, node(e)));
        List<ElkEdge> edges = new ArrayList<>();
        for (Line line : lines)
            edges.add(ElkGraphUtil.createSimpleEdge(
                    port(boxes.get(line.left), PortSide.EAST), port(boxes.get(line.right), PortSide.WEST)));
        new RecursiveGraphLayoutEngine().layout(root, new BasicProgressMonitor());
        for (Equipment e : equipment) {
            ElkNode at = boxes.get(e.name());
            Box box = new Box(at.getX(), at.getY(), at.getWidth(), at.getHeight());
            nodes.compute(e.name(), (name, n) -> new Node(e, box, n.name(), n.detail()));
        }
        for (int i = 0; i < edges.size(); i++) wires.add(wire(lines.get(i), path(edges.get(i))));
        width = root.getWidth();
        height = root.getHeight();
    }

    private ElkNode root() {
        LayoutMetaDataService.getInstance().registerLayoutMetaDataProviders(new LayeredMetaDataProvider());
        double leaving = 0, arriving = 0;
        for (Line line : lines) {
            leaving = Math.max(leaving, BEFORE + tapsWidth(line, false));
            arriving = Math.max(arriving, AFTER + Math.max(tapsWidth(line, true), wordsWidth(line)));
        }
        ElkNode root = ElkGraphUtil.createGraph();
        root.setProperty(CoreOptions.ALGORITHM, LayeredOptions.ALGORITHM_ID);
        root.setProperty(LayeredOptions.DIRECTION, Direction.RIGHT);
        root.setProperty(LayeredOptions.EDGE_ROUTING, EdgeRouting.ORTHOGONAL);
        root.setProperty(LayeredOptions.RANDOM_SEED, 1);
        root.setProperty(LayeredOptions.NODE_PLACEMENT_STRATEGY, NodePlacementStrategy.NETWORK_SIMPLEX);
        root.setProperty(LayeredOptions.SPACING_NODE_NODE, 12.0);
        root.setProperty(LayeredOptions.SPACING_NODE_NODE_BETWEEN_LAYERS, leaving + arriving);
        root.setProperty(LayeredOptions.SPACING_EDGE_NODE_BETWEEN_LAYERS, Math.max(leaving, arriving) + 2);
        root.setProperty(LayeredOptions.SPACING_EDGE_EDGE_BETWEEN_LAYERS, 7.0);
        root.setProperty(LayeredOptions.SPACING_EDGE_NODE, 16.0);
        root.setProperty(LayeredOptions.SPACING_EDGE_EDGE, PITCH);
        root.setProperty(LayeredOptions.PADDING, new ElkPadding(3));
        return root;
    }

    private Node node(Equipment e) {
        double sign = e.kind().isSource() ? SOURCE : 0;
        Paragraph name = Paragraph.of(e.name(), NAME, TEXT - sign, typeface);
        Paragraph detail = Paragraph.of(detail(e), DETAIL, TEXT - sign, typeface);
        double w = Math.max(name.width(typeface), detail.width(typeface)) + 10 + sign;
        long out = lines.stream().filter(l -> l.left.equals(e.name())).count();
        long in = lines.stream().filter(l -> l.right.equals(e.name())).count();
        long most = Math.max(out, in);
        double h = Math.max(name.height() + detail.height() + 6, most < 2 ? PITCH : (most + 1) * PITCH);
        Node node = new Node(e, new Box(0, 0, w, h), name, detail);
        nodes.put(e.name(), node);
        return node;
    }

    private static String detail(Equipment e) {
        String seen = !e.drawn() ? "on no drawing" : !e.found() ? "not met by the survey" : "";
        String kind = e.kind().word();
        return kind + (kind.isEmpty() || seen.isEmpty() ? "" : ", ") + seen;
    }

    private static ElkNode box(ElkNode root, Node node) {
        ElkNode box = ElkGraphUtil.createNode(root);
        box.setIdentifier(node.equipment().name());
        box.setDimensions(node.box().w(), node.box().h());
        box.setProperty(CoreOptions.NODE_SIZE_CONSTRAINTS, EnumSet.noneOf(SizeConstraint.class));
        box.setProperty(CoreOptions.PORT_CONSTRAINTS, PortConstraints.FIXED_SIDE);
        return box;
    }

    private static ElkPort port(ElkNode box, PortSide side) {
        ElkPort port = ElkGraphUtil.createPort(box);
        port.setProperty(CoreOptions.PORT_SIDE, side);
        return port;
    }

    private static List<double[]> path(ElkEdge edge) {
        List<double[]> path = new ArrayList<>();
        for (ElkEdgeSection s : edge.getSections()) {
            path.add(new double[] {s.getStartX(), s.getStartY()});
            s.getBendPoints().forEach(b -> path.add(new double[] {b.getX(), b.getY()}));
            path.add(new double[] {s.getEndX(), s.getEndY()});
        }
        return path;
    }

    private Wire wire(Line line, List<double[]> path) {
        double[] start = path.get(0), end = path.get(path.size() - 1);
        List<Tap> taps = new ArrayList<>();
        double at = start[0] + BEFORE, back = end[0] - AFTER - tapsWidth(line, true) + RING;
        for (Device d : line.connection.devices()) {
            boolean arriving = d.in().equals(line.right);
            taps.add(new Tap(d, label(line, d), arriving ? back : at, arriving ? end[1] : start[1]));
            if (arriving) back += step(line, d);
            else at += step(line, d);
        }
        List<Word> words = new ArrayList<>();
        String tag = Standings.tag(line.connection.standing());
        if (!tag.isEmpty()) words.add(word(tag, end, WORD_DOWN));
        if (line.connection.devices().isEmpty()) words.add(word(NO_DEVICE, end, -LABEL_UP));
        return new Wire(line.connection, path, List.copyOf(taps), List.copyOf(words));
    }

    private static final String NO_DEVICE = "no device";

    private Word word(String text, double[] end, double down) {
        return new Word(text, end[0] - AFTER - typeface.width(text, WORD), end[1] + down);
    }

    private double wordsWidth(Line line) {
        String tag = Standings.tag(line.connection.standing());
        double said = line.connection.devices().isEmpty() ? typeface.width(NO_DEVICE, WORD) : 0;
        return Math.max(said, typeface.width(tag, WORD));
    }

    private double tapsWidth(Line line, boolean arriving) {
        return line.connection.devices().stream()
                .filter(d -> d.in().equals(line.right) == arriving)
                .mapToDouble(d -> step(line, d))
                .sum();
    }

    /** From one device on a line to the next. */
    private double step(Line line, Device device) {
        return RING + LABEL_RIGHT + typeface.width(label(line, device), DEVICE) + 1;
    }

    private static String label(Line line, Device device) {
        boolean atOneEnd = device.in().equals(line.left) || device.in().equals(line.right);
        return atOneEnd ? device.key() : device.label();
    }
}
