package asfound.finding;

import asfound.finding.Correction.Field;
import asfound.model.Directory;
import asfound.model.OneLine;
import asfound.network.DeviceRecord.Showing;
import asfound.network.Equipment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Equipment that no drawing shows, and drawn equipment that nobody met, may be one under two names: the drawn one's supply
 * was traced to the other. It is certain enough to correct where the circuits traced in it are those drawn in the other.
 *
 * @param found the name on site
 * @param drawn the name on the drawings
 * @param alike how many circuits traced at one position are drawn at the same position of the other
 * @param unlike how many are not
 */
record Renamed(String found, String drawn, int alike, int unlike) {

    /** Fewer circuits than this may agree by chance. */
    private static final int ENOUGH = 3;

    static Optional<Renamed> of(Facts facts, Equipment e, List<Comparison> feeding, List<Comparison> own) {
        return feeding.stream()
                .flatMap(c -> c.drawn().stream())
                .flatMap(d -> d.equipment().stream())
                .filter(name ->
                        facts.index().equipment(name).filter(o -> !o.found()).isPresent())
                .filter(name -> !facts.kindOf(name).isPureSource())
                .findFirst()
                .map(name -> of(facts, e.name(), name, own));
    }

    private static Renamed of(Facts facts, String found, String drawn, List<Comparison> own) {
        int alike = 0, unlike = 0;
        for (Comparison c : own) {
            var same = facts.index()
                    .at(new asfound.network.Device(drawn, c.device().key()));
            if (same.isEmpty() || same.get().drawn().isEmpty() || c.seen().isEmpty()) continue;
            if (facts.sames().compare(same.get().drawn(), c.seen()) == asfound.names.Sameness.SAME) alike++;
            else unlike++;
        }
        return new Renamed(found, drawn, alike, unlike);
    }

    boolean isCertain() {
        return alike >= ENOUGH && unlike == 0;
    }

    String inWords() {
        return isCertain()
                ? " It is what the drawings call " + drawn + ": " + Words.count(alike, "circuit")
                        + " traced in it are drawn there, and nobody met " + drawn + "."
                : " Nobody met " + drawn + ", which is drawn there: it may be " + drawn
                        + " under another name, or in its place.";
    }

    /** The new name wherever the drawings write the old one. */
    List<Correction> corrections(Facts facts, String why) {
        List<Correction> all = new ArrayList<>();
        Paper paper = facts.index().paper();
        for (Directory d : facts.drawings().directories())
            if (paper.nameOf(d.panel()).equals(drawn))
                all.add(new Correction(d.place(), drawn, "", Field.DESIGNATION, d.panel(), found, why));
        for (OneLine.Listed e : paper.listed(drawn))
            all.add(new Correction(
                    e.place(), drawn, "", Field.DESIGNATION, e.name().raw().strip(), found, why));
        for (OneLine.Feeder f : facts.drawings().oneLine().feeders()) {
            String circuit = f.device().value().map(r -> r.inWords()).orElse("");
            if (paper.nameOf(f.to().or("")).equals(drawn))
                all.add(new Correction(
                        f.place(), drawn, circuit, Field.FEEDER_TO, f.to().raw().strip(), found, why));
            if (paper.nameOf(f.from().or("")).equals(drawn))
                all.add(new Correction(
                        f.place(),
                        drawn,
                        circuit,
                        Field.FEEDER_FROM,
                        f.from().raw().strip(),
                        found,
                        why));
        }
        entries(facts, why, all);
        supplies(facts, why, all);
        return all;
    }

    private void entries(Facts facts, String why, List<Correction> all) {
        for (Comparison c : facts.index().drawnTo(new asfound.network.Served(drawn, Optional.of(drawn))))
            for (Showing s : c.at().showings())
                s.circuit()
                        .ifPresent(e -> all.add(new Correction(
                                e.place(),
                                c.panel(),
                                e.ref().inWords(),
                                Field.DESCRIPTION,
                                e.description().raw().strip(),
                                Words.entryFor(facts, found),
                                why)));
    }

    /** Headers and equipment rows that name the old name as their supply. */
    private void supplies(Facts facts, String why, List<Correction> all) {
        for (var connection : facts.index().touching(drawn)) {
            if (!connection.from().equals(drawn) || !connection.drawn()) continue;
            String should = SupplyNotes.inWords(connection).replaceFirst("^\\Q" + drawn + "\\E", found);
            for (Directory d : facts.index().paper().directories(connection.to()))
                if (!d.header().fedFrom().isBlank())
                    all.add(new Correction(
                            d.header().fedFrom().place().orElse(d.place()),
                            connection.to(),
                            "",
                            Field.FED_FROM,
                            d.header().fedFrom().raw().strip(),
                            should,
                            why));
            for (OneLine.Listed row : facts.index().paper().listed(connection.to()))
                if (!row.fedFrom().isBlank())
                    all.add(new Correction(
                            row.place(),
                            connection.to(),
                            "",
                            Field.FED_FROM,
                            row.fedFrom().raw().strip(),
                            should,
                            why));
        }
    }
}
