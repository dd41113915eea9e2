package asfound.report.pdf;

import asfound.network.Connection;
import asfound.network.Device;
import asfound.network.Network;
import asfound.network.Standing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Where a panel's supply originates, to be marked on it (NFPA 70, 408.4(B)): each way once, traced ones first. What the
 * survey speaks against is left out.
 *
 * @param words {@code MSB, circuit 9}
 */
record PanelSupply(String words, CardEntry.State state) {

    static List<PanelSupply> of(Network network, String panel) {
        List<PanelSupply> all = new ArrayList<>();
        for (Connection c : network.connections()) {
            boolean here = c.to().equals(panel)
                    || (c.flow() == Connection.Flow.TIE && c.from().equals(panel));
            if (!here || c.from().equals(c.to()) || c.standing() == Standing.CONTRADICTED) continue;
            String other = c.to().equals(panel) ? c.from() : c.to();
            String by = c.devices().stream().map(d -> words(d, panel, other)).collect(Collectors.joining(", then "));
            CardEntry.State state = c.standing().isTraced()
                    ? CardEntry.State.TRACED
                    : c.standing() == Standing.UNTRACED && !c.disputed()
                            ? CardEntry.State.DRAWN
                            : CardEntry.State.DOUBTFUL;
            String tie = c.flow() == Connection.Flow.TIE ? " (tie)" : "";
            all.add(new PanelSupply(other + (by.isEmpty() ? ", no device" : ", " + by) + tie, state));
        }
        all.sort(Comparator.comparing(PanelSupply::state));
        return all.stream().distinct().toList();
    }

    private static String words(Device device, String panel, String other) {
        String word = (device.key().matches("\\d+") ? "circuit " : "device ") + device.key();
        if (device.in().equals(panel)) return "by " + word + " of this panel";
        return device.in().equals(other) ? word : device.label();
    }
}
