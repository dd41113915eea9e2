package asfound.report.picture;

import asfound.isolation.Verdict;
import asfound.model.EquipmentKind;
import asfound.network.Device;
import asfound.network.Standing;
import asfound.report.picture.Picture.Form;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What one sheet shows, with sizes and without places: the layout's input. Order of insertion is order of preference. */
final class Graph {

    final Map<String, Node> nodes = new LinkedHashMap<>();
    final List<Edge> edges = new ArrayList<>();

    /**
     * @param key unique on the sheet
     * @param linked the equipment's name; empty for ties
     */
    record Node(
            String key,
            Form form,
            String name,
            EquipmentKind kind,
            String detail,
            boolean drawn,
            boolean found,
            Optional<Verdict.Standing> verdict,
            int sheet,
            double width,
            double minHeight) {}

    /**
     * @param fromPort wires with one port at a node leave it at one place: the port of a shared device
     * @param atFrom the device drawn where the wire leaves; empty where it cannot be opened there
     * @param atTo the device drawn where the wire arrives
     * @param marked carries the standing's mark
     */
    record Edge(
            String from,
            String fromPort,
            String to,
            String toPort,
            Optional<Device> atFrom,
            Optional<Device> atTo,
            Standing standing,
            boolean normallyOpen,
            String words,
            int count,
            boolean marked) {}

    void add(Node node) {
        nodes.putIfAbsent(node.key(), node);
    }

    void add(Edge edge) {
        edges.add(edge);
    }
}
