package asfound.isolation;

import asfound.network.Connection;
import asfound.network.Device;
import java.util.ArrayList;
import java.util.List;

/** What is known of one equipment before it is judged: its points, and what reaches it with them open. */
final class Case {

    final int bus;
    final Points points;

    /** The sources, or equipment of unknown supply, that could still reach it. */
    List<String> liveFrom = List.of();

    /** The arcs over which one of them does. */
    int[] path = new int[0];

    /** The path is enough to say that the drawing fails, not only a possibility. */
    boolean provenLive;

    /** Nodes of drawn points that were not traced to it. */
    final List<Integer> untraced = new ArrayList<>();

    List<Device> drawnPoints = List.of();
    List<Connection> pointWays = List.of();

    Case(int bus, Points points) {
        this.bus = bus;
        this.points = points;
    }

    boolean isLive() {
        return !liveFrom.isEmpty();
    }
}
