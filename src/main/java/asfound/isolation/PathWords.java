package asfound.isolation;

import asfound.network.Connection;
import java.util.ArrayList;
import java.util.List;

/** A path of supply as a person would say it: the devices from the source on, and what joins without one. */
final class PathWords {

    private final SupplyGraph graph;
    private final Terrain terrain;

    PathWords(SupplyGraph graph) {
        this.graph = graph;
        this.terrain = graph.terrain();
    }

    List<String> of(int[] arcs) {
        List<String> words = new ArrayList<>();
        for (int i = 0; i < arcs.length; i++) {
            int node = graph.to(arcs[i]);
            if (terrain.isDevice(node)) add(words, terrain.device(node).label());
            else if (isTerminal(node) && i + 1 < arcs.length && !touchesDevice(arcs[i], arcs[i + 1]))
                add(
                        words,
                        "the load side of "
                                + terrain.device(terrain.deviceOfTerminal(node)).label());
            int number = graph.connection(arcs[i]);
            if (number != SupplyGraph.NO_CONNECTION) {
                Connection c = terrain.connection(number);
                if (c.devices().isEmpty()) add(words, c.from() + " to " + c.to() + " without a device");
            }
        }
        return words;
    }

    private boolean isTerminal(int node) {
        return !terrain.isDevice(node) && !terrain.isBus(node) && node != Terrain.SOURCES;
    }

    private boolean touchesDevice(int arc, int next) {
        return terrain.isDevice(graph.from(arc)) || terrain.isDevice(graph.to(next));
    }

    private static void add(List<String> words, String word) {
        if (words.isEmpty() || !words.get(words.size() - 1).equals(word)) words.add(word);
    }

    /** The connections that the path leads over. */
    List<Connection> connections(int[] arcs) {
        List<Connection> over = new ArrayList<>();
        for (int arc : arcs)
            if (graph.connection(arc) != SupplyGraph.NO_CONNECTION) {
                Connection c = terrain.connection(graph.connection(arc));
                if (!over.contains(c)) over.add(c);
            }
        return over;
    }

    /** The path begins at a source, not at equipment of unknown supply. */
    boolean beginsAtSource(int[] arcs) {
        return arcs.length == 0 || graph.isSource(graph.from(arcs[0]));
    }

    String beginning(int[] arcs) {
        return terrain.name(graph.from(arcs[0]));
    }
}
