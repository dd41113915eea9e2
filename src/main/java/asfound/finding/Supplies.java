package asfound.finding;

import asfound.model.Directory;
import asfound.model.EquipmentKind;
import asfound.model.Voltage;
import asfound.network.Connection;
import asfound.network.Device;
import java.util.List;
import java.util.Optional;

/** A panel's own bus and voltage beside the feeder that is drawn to it. */
final class Supplies {

    /** What does not fit, and both sides in words. */
    record Mismatch(String what, List<String> sides) {}

    private Supplies() {}

    /**
     * A feeder whose protection is above the bus rating, with no main to protect the bus (NFPA 70 408.36); a panel of one
     * voltage fed straight from a board of another, with no transformer drawn between them.
     */
    static Optional<Mismatch> mismatch(Facts facts, String panel) {
        List<Directory> own = facts.index().paper().directories(panel);
        List<Connection> into = facts.index().into(panel).stream()
                .filter(c -> c.drawn() && !c.disputed() && c.flow() == Connection.Flow.FEEDER)
                .filter(c -> isBoard(facts, c.from()))
                .toList();
        if (own.size() != 1 || into.size() != 1) return Optional.empty();
        return voltage(facts, own.get(0), into.get(0)).or(() -> bus(facts, own.get(0), into.get(0)));
    }

    private static boolean isBoard(Facts facts, String equipment) {
        EquipmentKind kind = facts.kindOf(equipment);
        return kind == EquipmentKind.PANEL || kind == EquipmentKind.SWITCHBOARD;
    }

    private static Optional<Mismatch> voltage(Facts facts, Directory own, Connection feeder) {
        Optional<Voltage> here = own.header().voltage().value();
        List<Voltage> all = Drawn.voltages(facts, feeder.from());
        Optional<Voltage> there = facts.index().paper().directories(feeder.from()).stream()
                .flatMap(d -> d.header().voltage().value().stream())
                .findFirst();
        // where drawings disagree on the feeding board's own voltage, that is told of the board itself
        if (here.isEmpty() || there.isEmpty() || all.stream().anyMatch(v -> Volts.agree(here.get(), v)))
            return Optional.empty();
        return Optional.of(new Mismatch(
                "voltage, with no transformer drawn between them",
                List.of(
                        own.panel() + ": " + here.get().inWords(),
                        feeder.from() + ": " + there.get().inWords())));
    }

    private static Optional<Mismatch> bus(Facts facts, Directory own, Connection feeder) {
        Optional<Integer> bus = own.header().busA().value();
        Optional<Integer> main = own.header().mainA().value();
        boolean mainUnread = own.header().mainA().isUnreadable()
                || own.header()
                                .mains()
                                .value()
                                .filter(m -> m == Directory.Mains.BREAKER)
                                .isPresent()
                        && main.isEmpty();
        if (bus.isEmpty() || mainUnread || main.filter(m -> m <= bus.get()).isPresent()) return Optional.empty();
        for (Device d : feeder.devices())
            for (Comparison c : facts.at(d).stream().toList()) {
                Optional<Integer> rating =
                        Drawn.ratings(c).stream().map(Drawn::value).min(Integer::compare);
                if (rating.filter(r -> r > bus.get()).isPresent())
                    return Optional.of(new Mismatch(
                            "bus rating against its feeder (NFPA 70 408.36)",
                            List.of(
                                    own.panel() + " bus: " + bus.get() + " A",
                                    d.label() + ": " + rating.get() + " A")));
            }
        return Optional.empty();
    }
}
