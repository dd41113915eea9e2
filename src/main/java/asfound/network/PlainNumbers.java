package asfound.network;

import asfound.drawing.Drawings;
import asfound.model.CircuitRef;
import asfound.model.Observation;
import asfound.model.OneLine;
import asfound.model.Place;
import asfound.model.Problem;
import asfound.model.Stated;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A plain number at a board with ways and phases: {@code 8} is its eighth position, counted across the ways, and whoever stands
 * before the board may mean way 8. It is taken for the position, and told.
 */
final class PlainNumbers {

    private final Names names;
    private final DeviceKeys keys;

    PlainNumbers(Names names, DeviceKeys keys) {
        this.names = names;
        this.keys = keys;
    }

    /** One for each row, but for those of boards at which the survey counts further than there are ways. */
    List<Problem> problems(List<Observation> survey, Drawings drawings) {
        Set<String> counted = new HashSet<>();
        for (Observation o : survey)
            if (o.panel().isStated() && o.circuit().isStated() && keys.isPosition(panel(o.panel()), ref(o.circuit())))
                counted.add(panel(o.panel()));
        List<Problem> problems = new ArrayList<>();
        for (Observation o : survey)
            if (!counted.contains(o.panel().value().map(names::orItself).orElse("")))
                add(o.panel(), o.circuit(), o.poles(), o.place(), problems);
        for (OneLine.Feeder f : drawings.oneLine().feeders()) add(f.from(), f.device(), f.poles(), f.place(), problems);
        return problems;
    }

    private void add(
            Stated<String> at, Stated<CircuitRef> circuit, Stated<Integer> poles, Place place, List<Problem> problems) {
        if (!at.isStated() || !circuit.isStated()) return;
        String panel = panel(at);
        CircuitRef ref = ref(circuit);
        if (!keys.meant(panel, ref, poles).equals(ref) || !keys.mayBeWay(panel, ref)) return;
        int number = ref.positions().get(0);
        int way = (number + 2) / 3, phase = (number + 2) % 3 + 1;
        problems.add(new Problem(
                place,
                "Circuit '" + number + "' of " + panel + ", a board with ways and phases, was taken for its position "
                        + number + " counted across the ways, " + way + "L" + phase + ".",
                "Where way " + number + " is meant, write its phases as well: " + number + "L1, " + number + "L2, "
                        + number + "L3 or " + number + "TP."));
    }

    private String panel(Stated<String> at) {
        return names.orItself(at.value().orElseThrow());
    }

    private static CircuitRef ref(Stated<CircuitRef> circuit) {
        return circuit.value().orElseThrow();
    }
}
