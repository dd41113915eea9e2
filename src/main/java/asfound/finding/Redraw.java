package asfound.finding;

import asfound.finding.Correction.Field;
import asfound.finding.Differences.Difference;
import asfound.model.Observation;
import asfound.model.OneLine;
import asfound.model.Place;
import asfound.network.DeviceRecord.Showing;
import asfound.network.Equipment;
import asfound.network.Served;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The exact changes that make the drawings say what was traced: the directory's entry, the one-line's rows, and what the
 * drawings of the equipment fed name as its supply. Drawings that were not contradicted stay as they are.
 */
final class Redraw {

    private final Facts facts;
    private final String why;
    private final List<Correction> corrections = new ArrayList<>();

    private Redraw(Facts facts, String why) {
        this.facts = facts;
        this.why = why;
    }

    /** Everything that is to be changed for these devices to be drawn as traced. */
    static List<Correction> corrections(Facts facts, List<Comparison> devices, String why) {
        Redraw redraw = new Redraw(facts, why);
        devices.forEach(redraw::device);
        redraw.supplies(devices);
        return redraw.corrections;
    }

    /** One directory's entry alone. */
    static List<Correction> entry(Facts facts, Comparison c, Showing showing, String why) {
        Redraw redraw = new Redraw(facts, why);
        redraw.entry(c, showing);
        return redraw.corrections;
    }

    /** Adds equipment that no drawing shows, and draws what feeds it and what it feeds. */
    static List<Correction> newEquipment(Facts facts, Equipment e, List<Comparison> devices, String why) {
        Redraw redraw = new Redraw(facts, why);
        redraw.equipmentRow(e);
        devices.forEach(redraw::device);
        redraw.supplies(devices);
        return redraw.corrections;
    }

    /** Adds a source where it is not drawn, and draws it at the devices that join it. */
    static List<Correction> newSource(Facts facts, String source, List<Comparison> devices, String why) {
        Redraw redraw = new Redraw(facts, why);
        facts.index().equipment(source).filter(e -> !e.drawn()).ifPresent(redraw::equipmentRow);
        devices.forEach(redraw::device);
        redraw.supplies(devices.stream().filter(c -> !c.backfed()).toList());
        return redraw.corrections;
    }

    /** Takes equipment off the drawings: its rows, its directory, and its entry at the devices that fed it. */
    static List<Correction> withdrawn(Facts facts, Equipment e, List<Comparison> devices, String why) {
        Redraw redraw = new Redraw(facts, why);
        devices.forEach(redraw::device);
        for (OneLine.Listed row : facts.index().paper().listed(e.name()))
            redraw.add(
                    row.place(),
                    e.name(),
                    "",
                    Field.EQUIPMENT_ROW,
                    row.name().raw().strip(),
                    "");
        for (var directory : facts.index().paper().directories(e.name()))
            redraw.add(directory.place(), e.name(), "", Field.EQUIPMENT_ROW, directory.panel(), "");
        return redraw.corrections;
    }

    /** Rating, poles, voltage or phase as seen. */
    static List<Correction> property(Facts facts, Comparison c, Difference difference, String why) {
        return Properties.corrections(facts, c, difference, why);
    }

    /** What an entry should read for what was traced: {@code PANEL LP-2A}, the surveyor's text, {@code SPARE}. */
    static String textOf(Facts facts, Comparison c) {
        if (c.seen().isEmpty())
            return c.evidence().stream().allMatch(o -> o.relation() == Observation.Relation.NO_DEVICE)
                    ? "SPACE"
                    : "SPARE";
        Set<String> texts = new LinkedHashSet<>();
        for (Served s : c.seen()) texts.add(textOf(facts, c, s));
        return String.join("; ", texts);
    }

    private static String textOf(Facts facts, Comparison c, Served seen) {
        if (seen.equipment().isPresent())
            return Words.entryFor(facts, seen.equipment().get());
        return Origins.of(facts, c).stream()
                .flatMap(o -> o.drawn().stream())
                .filter(d -> d.equipment().isEmpty() && facts.sames().same(d, seen))
                .map(Served::text)
                .findFirst()
                .orElse(seen.text());
    }

    private void device(Comparison c) {
        boolean inDirectory = false;
        for (Showing s : c.at().showings()) {
            if (s.circuit().isEmpty()) continue;
            inDirectory = true;
            entry(c, s);
        }
        if (!inDirectory && Comparisons.isNumber(c.device().key())) addEntry(c);
        new FeederRows(facts, c, why).corrections(corrections);
    }

    private void entry(Comparison c, Showing showing) {
        if (saysSo(c, showing)) return;
        var entry = showing.circuit().orElseThrow();
        String reads = entry.description().isBlank()
                ? entry.use() == asfound.model.Directory.Use.LOAD
                        ? ""
                        : entry.use().name()
                : entry.description().raw().strip();
        String should = textOf(facts, c);
        if (!reads.equals(should))
            add(entry.place(), c.panel(), entry.ref().inWords(), Field.DESCRIPTION, reads, should);
    }

    private boolean saysSo(Comparison c, Showing showing) {
        return showing.serves().isPresent()
                && !c.seen().isEmpty()
                && c.seen().stream()
                        .allMatch(s -> facts.sames().same(showing.serves().get(), s));
    }

    /** An entry that the directory lacks; equipment without any directory gets one only where it has none drawn at all. */
    private void addEntry(Comparison c) {
        Place place = facts.index().paper().forNewEntry(c.panel()).orElse(null);
        boolean newPanel =
                facts.index().equipment(c.panel()).filter(e -> !e.drawn()).isPresent();
        if (place == null && !newPanel) return;
        Place where = place == null ? facts.index().paper().forNewRow() : place;
        add(where, c.panel(), circuitAsSeen(c), Field.DESCRIPTION, "", textOf(facts, c));
    }

    /** The positions as the surveyor wrote them, where they say more than the lowest. */
    private static String circuitAsSeen(Comparison c) {
        return c.evidence().stream()
                .flatMap(o -> o.circuit().value().stream())
                .max(java.util.Comparator.comparingInt(r -> r.positions().size()))
                .map(r -> r.inWords())
                .orElse(c.device().key());
    }

    private void equipmentRow(Equipment e) {
        add(facts.index().paper().forNewRow(), e.name(), "", Field.EQUIPMENT_ROW, "", row(e));
    }

    private static String row(Equipment e) {
        return e.kind().word().isEmpty() ? e.name() : e.name() + ", " + e.kind().word();
    }

    /** What the drawings of every equipment named at the devices, drawn or traced, say of its supply. */
    private void supplies(List<Comparison> devices) {
        Set<String> named = new LinkedHashSet<>();
        for (Comparison c : devices) {
            if (c.backfed()) named.add(c.panel());
            else c.seen().forEach(s -> s.equipment().ifPresent(named::add));
            c.drawn().forEach(d -> d.equipment().ifPresent(named::add));
        }
        for (String name : named) new SupplyNotes(facts, name, why).corrections(corrections);
    }

    private void add(Place place, String panel, String circuit, Field field, String reads, String shouldRead) {
        corrections.add(new Correction(place, panel, circuit, field, reads, shouldRead, why));
    }
}
