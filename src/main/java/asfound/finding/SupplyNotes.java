package asfound.finding;

import asfound.finding.Correction.Field;
import asfound.model.Directory;
import asfound.model.EquipmentKind;
import asfound.model.OneLine;
import asfound.model.Place;
import asfound.model.Stated;
import asfound.network.Connection;
import asfound.network.Device;
import asfound.network.Standing;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/** What the drawings of an equipment itself name as its supply: its directory's header, its row in the equipment list. */
final class SupplyNotes {

    private final Facts facts;
    private final String equipment;
    private final String why;

    SupplyNotes(Facts facts, String equipment, String why) {
        this.facts = facts;
        this.equipment = equipment;
        this.why = why;
    }

    /** Rewrites those whose supply was traced to feed something else or nothing. */
    void corrections(List<Correction> to) {
        all(c -> c.standing() != Standing.CONTRADICTED, to);
    }

    /** Where drawings name alternatives and one of them was traced, every other is wrong. */
    void alternatives(List<Correction> to) {
        all(c -> c.standing() == Standing.CONFIRMED, to);
    }

    private void all(Predicate<Connection> stands, List<Correction> to) {
        for (Directory d : facts.index().paper().directories(equipment))
            note(d.header().fedFrom(), d.place(), stands, to);
        for (OneLine.Listed row : facts.index().paper().listed(equipment)) note(row.fedFrom(), row.place(), stands, to);
    }

    private void note(Stated<String> fedFrom, Place row, Predicate<Connection> holds, List<Correction> to) {
        if (fedFrom.isBlank()) return;
        List<Connection> named = facts.index().into(equipment).stream()
                .filter(c -> c.drawn() && isNamedBy(c, fedFrom, row))
                .toList();
        boolean stands = named.isEmpty() || named.stream().anyMatch(holds);
        if (stands) return;
        String should = traced();
        if (!should.equals(fedFrom.raw().strip()))
            to.add(new Correction(
                    fedFrom.place().orElse(row),
                    equipment,
                    "",
                    Field.FED_FROM,
                    fedFrom.raw().strip(),
                    should,
                    why));
    }

    private static boolean isNamedBy(Connection c, Stated<String> fedFrom, Place row) {
        return c.drawings().contains(row)
                || fedFrom.place().filter(p -> c.drawings().contains(p)).isPresent();
    }

    /**
     * The supply that was traced: {@code MDP CKT 9}; blank where none was, for it is to be found out. An inverter or a
     * battery stands beside the ordinary supply and is never what a panel is fed from; a generator only where nothing else
     * is.
     */
    private String traced() {
        return facts.index().into(equipment).stream()
                .filter(c -> c.standing().isTraced() && c.flow() != Connection.Flow.TIE)
                .filter(c -> kindOf(c) != EquipmentKind.INVERTER && kindOf(c) != EquipmentKind.BATTERY)
                .min(Comparator.comparing(c -> kindOf(c) == EquipmentKind.GENERATOR))
                .map(SupplyNotes::inWords)
                .orElse("");
    }

    private EquipmentKind kindOf(Connection c) {
        return facts.kindOf(c.from());
    }

    static String inWords(Connection c) {
        return c.devices().stream()
                .filter(d -> d.in().equals(c.from()))
                .findFirst()
                .map(SupplyNotes::inWords)
                .orElse(c.from());
    }

    private static String inWords(Device d) {
        return d.in()
                + (Comparisons.isNumber(d.key()) ? " CKT " + d.key() : d.key().isEmpty() ? "" : " CB " + d.key());
    }
}
