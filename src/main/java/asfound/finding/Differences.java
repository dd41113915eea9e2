package asfound.finding;

import asfound.finding.Correction.Field;
import asfound.model.Directory.Circuit;
import asfound.model.EquipmentKind;
import asfound.model.Observation;
import asfound.model.Voltage;
import asfound.network.DeviceRecord.Showing;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/** What was seen on a device beside what is drawn of it: rating, poles, phase, voltage. */
final class Differences {

    /**
     * One property that differs.
     *
     * @param drawn where and what the drawings state; empty where convention alone says it
     */
    record Difference(
            Field what, String drawnInWords, String seen, List<Showing> drawn, List<Observation> observations) {}

    private Differences() {}

    static List<Difference> of(Facts facts, PhaseOrder order, Comparison c) {
        List<Difference> all = new ArrayList<>();
        number(Drawn.ratings(c), rating(c), " A", false).ifPresent(all::add);
        number(Drawn.poles(c), polesSeen(c), "-pole", false).ifPresent(all::add);
        voltage(facts, c).ifPresent(all::add);
        phase(order, c).ifPresent(all::add);
        return all;
    }

    /** Rating and poles that differ from what some drawing states, though another may state what was seen. */
    static List<Difference> againstAnyDrawing(Comparison c) {
        List<Difference> all = new ArrayList<>();
        number(Drawn.ratings(c), rating(c), " A", true).ifPresent(all::add);
        number(Drawn.poles(c), polesSeen(c), "-pole", true).ifPresent(all::add);
        return all;
    }

    private static Seen rating(Comparison c) {
        return Seen.of(c, Field.RATING, o -> o.ratingA().value().map(Objects::toString));
    }

    private static Seen polesSeen(Comparison c) {
        return Seen.of(c, Field.POLES, Differences::poles);
    }

    /** Poles as stated; where they are not, as many as the positions that the surveyor names. */
    private static Optional<String> poles(Observation o) {
        if (o.poles().isStated()) return o.poles().value().map(Objects::toString);
        return o.circuit()
                .value()
                .map(r -> r.positions().size())
                .filter(n -> n > 1)
                .map(Objects::toString);
    }

    private static Optional<Difference> number(List<Drawn<Integer>> all, Seen seen, String unit, boolean anyDrawing) {
        if (all.isEmpty() || seen.values().size() != 1) return Optional.empty();
        int value = Integer.parseInt(seen.values().get(0));
        List<Drawn<Integer>> drawn =
                all.stream().filter(d -> d.value() != value).toList();
        if (drawn.isEmpty() || (!anyDrawing && drawn.size() < all.size())) return Optional.empty();
        String states = drawn.stream().map(d -> d.value() + unit).distinct().collect(Collectors.joining(", "));
        return Optional.of(new Difference(
                seen.what(),
                states,
                value + unit,
                drawn.stream().map(Drawn::showing).toList(),
                seen.observations()));
    }

    private static Optional<Difference> voltage(Facts facts, Comparison c) {
        List<Drawn<Voltage>> drawn = Drawn.voltages(c);
        Optional<Voltage> seen = Seen.voltage(c);
        boolean twoSided = facts.kindOf(c.panel()) == EquipmentKind.TRANSFORMER;
        if (drawn.isEmpty() || seen.isEmpty() || twoSided) return Optional.empty();
        if (drawn.stream().anyMatch(d -> Volts.agree(d.value(), seen.get()))) return Optional.empty();
        // drawings that disagree on the board's own voltage are told once, of the board
        if (drawn.stream().allMatch(d -> d.directory().isPresent())
                && Drawn.voltages(facts, c.panel()).stream().anyMatch(v -> Volts.agree(v, seen.get())))
            return Optional.empty();
        String states =
                drawn.stream().map(d -> d.value().inWords() + " V").distinct().collect(Collectors.joining(", "));
        return Optional.of(new Difference(
                Field.VOLTAGE,
                states,
                seen.get().inWords() + " V",
                drawn.stream().map(Drawn::showing).toList(),
                c.evidence()));
    }

    /**
     * By the phases that its position names or by the drawing's load columns, else by the convention that the panel's other
     * devices follow.
     */
    private static Optional<Difference> phase(PhaseOrder order, Comparison c) {
        Seen seen = Seen.of(c, Field.PHASE, o -> Seen.phases(o.phase()));
        Optional<Circuit> entry = PhaseOrder.entry(c);
        if (seen.values().size() != 1 || entry.isEmpty()) return Optional.empty();
        String value = seen.values().get(0);
        if (value.length() != entry.get().poles()) return Optional.empty();
        Optional<String> columns = Phases.named(entry.get()).or(() -> Phases.drawn(entry.get()));
        Optional<String> states = columns.isPresent() ? columns : order.expected(c);
        if (states.isEmpty() || states.get().equals(value)) return Optional.empty();
        List<Showing> drawn = columns.isEmpty()
                ? List.of()
                : c.at().showings().stream()
                        .filter(s -> s.circuit().isPresent())
                        .toList();
        return Optional.of(
                new Difference(Field.PHASE, "phase " + states.get(), "phase " + value, drawn, seen.observations()));
    }
}
