package asfound.report.picture;

import asfound.network.Device;
import asfound.report.picture.Picture.Form;
import asfound.report.picture.Picture.Joint;
import asfound.report.picture.Picture.Point;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.eclipse.elk.alg.layered.options.LayeredMetaDataProvider;
import org.eclipse.elk.alg.layered.options.LayeredOptions;
import org.eclipse.elk.alg.layered.options.NodePlacementStrategy;
import org.eclipse.elk.alg.layered.options.OrderingStrategy;
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

/** Places one sheet in layers, sources on the left, wires at right angles, by the Eclipse Layout Kernel. */
final class Layout {

    /** At least so much level line beside every box for what is written on it. */
    private static final double ROOM = 84;

    private final Map<String, ElkNode> nodes = new LinkedHashMap<>();
    private final Map<String, ElkPort> ports = new HashMap<>();
    private final List<ElkEdge> edges = new ArrayList<>();
    private final Function<Device, String> labels;

    private Layout(Function<Device, String> labels) {
        this.labels = labels;
    }

    static Picture of(Sheet sheet, Graph graph, Function<Device, String> labels) {
        return new Layout(labels).place(sheet, graph);
    }

    private Picture place(Sheet sheet, Graph graph) {
        ElkNode root = root(leaving(graph), arriving(graph));
        graph.nodes.values().forEach(n -> nodes.put(n.key(), node(root, n)));
        for (Graph.Edge e : graph.edges) {
            ElkPort from = port(e.from(), "out " + e.fromPort(), PortSide.EAST);
            ElkPort to = port(e.to(), "in " + e.toPort(), PortSide.WEST);
            edges.add(ElkGraphUtil.createSimpleEdge(from, to));
        }
        graph.nodes.values().forEach(this::size);
        new RecursiveGraphLayoutEngine().layout(root, new BasicProgressMonitor());
        return picture(sheet, graph, root);
    }

    /** Room for the widest label of a device at the supplying end of a wire. */
    private double leaving(Graph graph) {
        double room = ROOM;
        for (Graph.Edge e : graph.edges)
            if (e.atFrom().isPresent())
                room = Math.max(
                        room,
                        Sizes.DEVICE
                                - Sizes.LABEL
                                + Sizes.label(label(e.atFrom().get(), e, false))
                                + 6);
        return room;
    }

    /** Room for a mark with its word, and a device with its label, at the supplied end of a wire. */
    private double arriving(Graph graph) {
        double room = ROOM;
        for (Graph.Edge e : graph.edges) room = Math.max(room, beforeEnd(e) + Sizes.word(e.standing()) / 2 + 6);
        return room;
    }

    /** How far from a wire's end its mark stands: clear of what else stands there. */
    private double beforeEnd(Graph.Edge e) {
        double half = Sizes.word(e.standing()) / 2;
        if (e.atTo().isEmpty()) return Math.max(44, half + 6);
        double label = Sizes.label(label(e.atTo().get(), e, true));
        return Math.max(60, Sizes.DEVICE + Math.max(12 + 18, label - Sizes.LABEL + half + 6));
    }

    private static ElkNode root(double leaving, double arriving) {
        LayoutMetaDataService.getInstance().registerLayoutMetaDataProviders(new LayeredMetaDataProvider());
        ElkNode root = ElkGraphUtil.createGraph();
        root.setProperty(CoreOptions.ALGORITHM, LayeredOptions.ALGORITHM_ID);
        root.setProperty(LayeredOptions.DIRECTION, Direction.RIGHT);
        root.setProperty(LayeredOptions.EDGE_ROUTING, EdgeRouting.ORTHOGONAL);
        root.setProperty(LayeredOptions.RANDOM_SEED, 1);
        root.setProperty(LayeredOptions.THOROUGHNESS, 12);
        root.setProperty(LayeredOptions.CONSIDER_MODEL_ORDER_STRATEGY, OrderingStrategy.PREFER_EDGES);
        root.setProperty(LayeredOptions.NODE_PLACEMENT_STRATEGY, NodePlacementStrategy.NETWORK_SIMPLEX);
        root.setProperty(LayeredOptions.SPACING_NODE_NODE, 22.0);
        root.setProperty(LayeredOptions.SPACING_NODE_NODE_BETWEEN_LAYERS, leaving + arriving);
        root.setProperty(LayeredOptions.SPACING_EDGE_NODE_BETWEEN_LAYERS, Math.max(leaving, arriving));
        root.setProperty(LayeredOptions.SPACING_EDGE_EDGE_BETWEEN_LAYERS, 14.0);
        root.setProperty(LayeredOptions.SPACING_EDGE_NODE, 20.0);
        root.setProperty(LayeredOptions.SPACING_EDGE_EDGE, 18.0);
        root.setProperty(LayeredOptions.PADDING, new ElkPadding(24));
        return root;
    }

    private static ElkNode node(ElkNode root, Graph.Node n) {
        ElkNode node = ElkGraphUtil.createNode(root);
        node.setIdentifier(n.key());
        node.setDimensions(n.width(), n.minHeight());
        node.setProperty(CoreOptions.NODE_SIZE_CONSTRAINTS, EnumSet.noneOf(SizeConstraint.class));
        boolean fixed = n.form() == Form.IN_LINE;
        node.setProperty(CoreOptions.PORT_CONSTRAINTS, fixed ? PortConstraints.FIXED_POS : PortConstraints.FIXED_SIDE);
        return node;
    }

    /** All wires at a symbol in the line, and all at one device, meet in one port. */
    private ElkPort port(String nodeKey, String portKey, PortSide side) {
        ElkNode node = nodes.get(nodeKey);
        boolean one = node.getProperty(CoreOptions.PORT_CONSTRAINTS) == PortConstraints.FIXED_POS;
        return ports.computeIfAbsent(nodeKey + "\n" + (one ? side.name() : portKey), k -> {
            ElkPort port = ElkGraphUtil.createPort(node);
            port.setProperty(CoreOptions.PORT_SIDE, side);
            if (one) port.setLocation(side == PortSide.EAST ? node.getWidth() : 0, Sizes.SYMBOL / 2);
            return port;
        });
    }

    private void size(Graph.Node n) {
        if (n.form() != Form.BOX && n.form() != Form.REFERENCE) return;
        ElkNode node = nodes.get(n.key());
        long out = node.getPorts().stream()
                .filter(p -> p.getProperty(CoreOptions.PORT_SIDE) == PortSide.EAST)
                .count();
        long most = Math.max(out, node.getPorts().size() - out);
        if (most > 1 || n.form() == Form.BOX) node.setHeight(Math.max(n.minHeight(), (most + 1) * Sizes.PORT_PITCH));
    }

    private Picture picture(Sheet sheet, Graph graph, ElkNode root) {
        List<Picture.Symbol> symbols = new ArrayList<>();
        for (Graph.Node n : graph.nodes.values()) {
            ElkNode at = nodes.get(n.key());
            symbols.add(new Picture.Symbol(
                    n.form(),
                    n.name(),
                    n.kind(),
                    n.detail(),
                    n.drawn(),
                    n.found(),
                    n.verdict(),
                    n.sheet(),
                    at.getX(),
                    at.getY(),
                    at.getWidth(),
                    at.getHeight()));
        }
        List<Picture.Wire> wires = new ArrayList<>();
        Map<String, Picture.Tap> taps = new LinkedHashMap<>();
        Map<String, Joint> joints = new LinkedHashMap<>();
        for (int i = 0; i < edges.size(); i++) {
            Graph.Edge e = graph.edges.get(i);
            List<Point> path = path(edges.get(i));
            lengthen(path, graph.nodes.get(e.from()), graph.nodes.get(e.to()));
            taps(e, path, taps);
            wires.add(wire(e, path));
            edges.get(i)
                    .getProperty(CoreOptions.JUNCTION_POINTS)
                    .forEach(p -> joints.putIfAbsent(p.x + " " + p.y, new Joint(p.x, p.y)));
        }
        return new Picture(
                sheet.number(),
                sheet.title(),
                root.getWidth(),
                root.getHeight(),
                symbols,
                wires,
                List.copyOf(taps.values()),
                List.copyOf(joints.values()));
    }

    private static List<Point> path(ElkEdge edge) {
        List<Point> path = new ArrayList<>();
        for (ElkEdgeSection s : edge.getSections()) {
            path.add(new Point(s.getStartX(), s.getStartY()));
            s.getBendPoints().forEach(b -> path.add(new Point(b.getX(), b.getY())));
            path.add(new Point(s.getEndX(), s.getEndY()));
        }
        return path;
    }

    /** A wire reaches through the name's width to a symbol in the line. */
    private void lengthen(List<Point> path, Graph.Node from, Graph.Node to) {
        if (path.isEmpty()) return;
        Point first = path.get(0), last = path.get(path.size() - 1);
        if (from.form() == Form.IN_LINE) path.set(0, new Point(centre(from) + Sizes.SYMBOL / 2, first.y()));
        if (to.form() == Form.IN_LINE) path.set(path.size() - 1, new Point(centre(to) - Sizes.SYMBOL / 2, last.y()));
    }

    private double centre(Graph.Node n) {
        ElkNode at = nodes.get(n.key());
        return at.getX() + at.getWidth() / 2;
    }

    private void taps(Graph.Edge e, List<Point> path, Map<String, Picture.Tap> taps) {
        if (path.isEmpty()) return;
        Point first = path.get(0), last = path.get(path.size() - 1);
        e.atFrom().ifPresent(d -> tap(d, e, first, false, taps));
        e.atTo().ifPresent(d -> tap(d, e, last, true, taps));
    }

    private void tap(Device d, Graph.Edge e, Point end, boolean arriving, Map<String, Picture.Tap> taps) {
        double x = end.x() + (arriving ? -Sizes.DEVICE : Sizes.DEVICE);
        taps.putIfAbsent(
                d.label() + "\n" + end,
                new Picture.Tap(d, label(d, e, arriving), e.normallyOpen(), arriving, x, end.y()));
    }

    /** Where a wire arrives its mark stands too, and a rating is not repeated. */
    private String label(Device d, Graph.Edge e, boolean arriving) {
        String words = arriving ? d.key() : labels.apply(d);
        String node = arriving ? e.to() : e.from();
        return (node.endsWith(" " + d.in()) ? words : d.in() + "/" + words) + (e.normallyOpen() ? ", drawn open" : "");
    }

    private Picture.Wire wire(Graph.Edge e, List<Point> path) {
        Point mark = mark(path, beforeEnd(e));
        return new Picture.Wire(
                path,
                e.standing(),
                e.normallyOpen(),
                e.from(),
                e.to(),
                e.words(),
                e.count(),
                e.marked(),
                mark.x(),
                mark.y());
    }

    /**
     * The mark stands on the wire's last level stretch, which it shares with no other; where that is too short for the
     * mark and what else stands there, in the middle of the longest.
     */
    private static Point mark(List<Point> path, double beforeEnd) {
        if (path.size() < 2) return new Point(0, 0);
        Point end = path.get(path.size() - 1), before = path.get(path.size() - 2);
        if (end.x() - before.x() >= beforeEnd + 12) return new Point(end.x() - beforeEnd, end.y());
        Point middle = end;
        double longest = -1;
        for (int i = 1; i < path.size(); i++) {
            Point a = path.get(i - 1), b = path.get(i);
            double length = Math.abs(b.x() - a.x());
            if (length > longest) {
                longest = length;
                middle = new Point((a.x() + b.x()) / 2, a.y());
            }
        }
        return middle;
    }
}
