package asfound.finding;

import asfound.finding.Correction.Field;
import asfound.finding.Differences.Difference;
import asfound.model.CircuitRef;
import asfound.model.Directory.Circuit;
import asfound.model.Directory.Use;
import asfound.model.Observation;
import asfound.model.OneLine;
import asfound.model.Stated;
import asfound.model.Voltage;
import asfound.network.DeviceRecord.Showing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** The exact changes that make a device's rating, poles, phase or voltage read as seen. */
final class Properties {

    private final Facts facts;
    private final Comparison c;
    private final Difference difference;
    private final String why;

    private Properties(Facts facts, Comparison c, Difference difference, String why) {
        this.facts = facts;
        this.c = c;
        this.difference = difference;
        this.why = why;
    }

    static List<Correction> corrections(Facts facts, Comparison c, Difference difference, String why) {
        Properties p = new Properties(facts, c, difference, why);
        List<Correction> all = new ArrayList<>();
        for (Showing s : difference.drawn()) all.addAll(p.at(s));
        return all;
    }

    private List<Correction> at(Showing s) {
        List<Correction> all = new ArrayList<>();
        switch (difference.what()) {
            case RATING -> {
                s.circuit().ifPresent(e -> add(all, s, Field.RATING, e.ratingA(), figure()));
                s.feeder().ifPresent(f -> add(all, s, Field.RATING, f.ratingA(), figure()));
            }
            case POLES -> poles(s, all);
            case PHASE -> {} // moves a load between columns: the panel's balance is to be worked out anew
            case VOLTAGE -> s.feeder().ifPresent(f -> add(all, s, Field.VOLTAGE, f.voltage(), seenVoltage()));
            default -> throw new IllegalStateException("no property of a device: " + difference.what());
        }
        return all;
    }

    /** {@code 100} of {@code 100 A}, {@code 3} of {@code 3-pole}. */
    private String figure() {
        return difference.seen().replaceAll(" A$|-pole$", "");
    }

    private String seenVoltage() {
        return Seen.voltage(c).map(Voltage::inWords).orElseThrow();
    }

    private void poles(Showing s, List<Correction> all) {
        s.feeder().ifPresent(f -> add(all, s, Field.POLES, f.poles(), figure()));
        if (s.circuit().isEmpty()) return;
        Circuit entry = s.circuit().get();
        int poles = Integer.parseInt(figure());
        List<Integer> positions = positionsSeen(poles)
                .orElseGet(() -> IntStream.range(0, poles)
                        .mapToObj(i -> entry.position() + 2 * i)
                        .toList());
        Optional<List<Circuit>> inTheWay = inTheWay(s, entry, positions);
        if (inTheWay.isEmpty()) return;
        for (Circuit other : inTheWay.get())
            all.add(new Correction(
                    other.place(),
                    c.panel(),
                    other.ref().inWords(),
                    Field.POSITIONS,
                    other.ref().inWords(),
                    "",
                    why));
        add(all, s, Field.POLES, Integer.toString(entry.poles()), figure());
        String should = CircuitRef.of(positions).inWords();
        if (!should.equals(entry.ref().inWords()))
            add(all, s, Field.POSITIONS, entry.ref().inWords(), should);
    }

    private Optional<List<Integer>> positionsSeen(int poles) {
        return difference.observations().stream()
                .map(Observation::circuit)
                .flatMap(r -> r.value().stream())
                .map(CircuitRef::positions)
                .filter(p -> p.size() == poles)
                .findFirst();
    }

    /** Entries over whose positions the device reaches: spaces give way; anything else goes to a person (empty). */
    private Optional<List<Circuit>> inTheWay(Showing s, Circuit entry, List<Integer> positions) {
        List<Circuit> others = s.directory().stream()
                .flatMap(d -> d.circuits().stream())
                .filter(o -> !o.equals(entry) && o.positions().stream().anyMatch(positions::contains))
                .toList();
        boolean give = others.stream().allMatch(o -> o.use() != Use.LOAD);
        return give ? Optional.of(others) : Optional.empty();
    }

    private void add(List<Correction> all, Showing s, Field field, Stated<?> stated, String should) {
        if (!stated.isBlank()) add(all, s, field, stated.raw().strip(), should);
    }

    private void add(List<Correction> all, Showing s, Field field, String reads, String should) {
        String circuit = s.circuit()
                .map(Circuit::ref)
                .or(() -> s.feeder().map(OneLine.Feeder::device).flatMap(Stated::value))
                .map(CircuitRef::inWords)
                .orElse(c.device().key());
        all.add(new Correction(s.place(), c.panel(), circuit, field, reads, should, why));
    }
}
