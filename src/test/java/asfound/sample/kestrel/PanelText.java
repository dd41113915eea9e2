package asfound.sample.kestrel;

import asfound.sample.kestrel.DrawnPanel.DrawnCircuit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Panels written as text, the way a drafter would jot them down. First line: name, location, supply, voltage, bus, main
 * (or MLO), interrupting rating, mounting, size, separated by bars. Then one line for each device: lowest position,
 * rating/poles, load in VA over all poles, description. A load of {@code @LP-1A} is what that panel's directory sums up to.
 */
final class PanelText {

    private static final Pattern LINE = Pattern.compile("(\\d+) +(\\d+/\\d|-) +(@\\S+|\\d+|-) *(.*)");

    private PanelText() {}

    static DrawnPanel read(String text, int printedB, Function<String, DrawnPanel> others) {
        List<String> lines = text.strip().lines().map(String::strip).toList();
        String[] head = lines.get(0).split(" *\\| *");
        int size = Integer.parseInt(head[8]);
        List<DrawnCircuit> circuits = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) circuits.add(circuit(line, others));
        circuits.sort(Comparator.comparingInt(DrawnCircuit::position));
        mustFill(head[0], size, circuits);
        return new DrawnPanel(
                head[0],
                head[1],
                head[2],
                head[3],
                Integer.parseInt(head[4]),
                head[5].equals("MLO") ? Optional.empty() : Optional.of(Integer.parseInt(head[5])),
                Integer.parseInt(head[6]),
                head[7],
                size,
                printedB,
                List.copyOf(circuits));
    }

    private static DrawnCircuit circuit(String line, Function<String, DrawnPanel> others) {
        Matcher m = LINE.matcher(line);
        if (!m.matches()) throw new IllegalArgumentException("not a circuit: " + line);
        int position = Integer.parseInt(m.group(1));
        if (m.group(2).equals("-")) return new DrawnCircuit(position, 1, 0, "SPACE", List.of(0));
        String[] device = m.group(2).split("/");
        int poles = Integer.parseInt(device[1]);
        return new DrawnCircuit(
                position, poles, Integer.parseInt(device[0]), m.group(4), load(m.group(3), position, poles, others));
    }

    private static List<Integer> load(String text, int position, int poles, Function<String, DrawnPanel> others) {
        List<Integer> all = new ArrayList<>();
        for (int pole = 0; pole < poles; pole++) {
            if (text.startsWith("@"))
                all.add(others.apply(text.substring(1)).phaseVA(DrawnPanel.phase(position + 2 * pole)));
            else all.add(text.equals("-") ? 0 : Integer.parseInt(text) / poles);
        }
        return List.copyOf(all);
    }

    private static void mustFill(String panel, int size, List<DrawnCircuit> circuits) {
        Set<Integer> taken = new HashSet<>();
        for (DrawnCircuit c : circuits)
            for (int p : c.positions())
                if (p > size || !taken.add(p)) throw new IllegalArgumentException(panel + ": position " + p);
        if (taken.size() != size) throw new IllegalArgumentException(panel + ": " + taken.size() + " of " + size);
    }
}
