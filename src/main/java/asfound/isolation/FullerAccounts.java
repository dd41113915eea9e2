package asfound.isolation;

import asfound.network.Connection;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;

/**
 * Two accounts of one way: a drawing that shows no device and a trace through one, or a source's own device and, traced,
 * the panel's behind it. As found the fuller account stands for both, so that the device nearer to the panel is named.
 */
final class FullerAccounts {

    private final List<Connection> connections;

    FullerAccounts(List<Connection> connections) {
        this.connections = connections;
    }

    /** Takes out each connection of which another one between the same ends names the same devices and more. */
    void leaveOutTheLess(boolean[] has) {
        Map<String, List<Integer>> byEnds = new HashMap<>();
        for (int c = 0; c < has.length; c++)
            if (has[c])
                byEnds.computeIfAbsent(
                                connections.get(c).from() + "\n"
                                        + connections.get(c).to(),
                                k -> new ArrayList<>(1))
                        .add(c);
        for (List<Integer> same : byEnds.values()) {
            if (same.size() == 1) continue;
            List<Integer> full = same.stream()
                    .filter(c -> connections.get(c).standing().isTraced()
                            && !connections.get(c).devices().isEmpty())
                    .toList();
            List<Integer> series = full.stream()
                    .filter(c -> connections.get(c).devices().size() > 1)
                    .toList();
            for (int less : same) {
                boolean bare = connections.get(less).devices().isEmpty();
                for (int more : bare ? full.subList(0, Math.min(1, full.size())) : series)
                    if (isLess(connections.get(less), connections.get(more))) has[less] = false;
            }
        }
    }

    private static boolean isLess(Connection less, Connection more) {
        if (less.devices().size() >= more.devices().size()) return false;
        // a person who traced that there is no device is not overruled
        if (less.devices().isEmpty() && less.standing().isTraced()) return false;
        return new HashSet<>(more.devices()).containsAll(less.devices());
    }
}
