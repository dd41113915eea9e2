package asfound.finding;

import asfound.finding.Finding.Part;
import asfound.model.EquipmentKind;
import asfound.model.OneLine;
import asfound.model.Place;
import asfound.model.Stated;
import asfound.model.Voltage;
import asfound.network.Connection;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A transformer's two sides as they are listed, beside the board drawn before it and what is drawn behind it; and two
 * drawings that list it with different sides.
 */
final class TransformerSides {

    /** What a drawing states of a neighbour's voltage, and where. */
    private record Neighbour(String name, Voltage voltage, Place place) {

        String inWords() {
            return place.inWords() + ": " + name + " " + voltage.inWords();
        }
    }

    private record Listing(Windings windings, String raw, Place place) {

        String inWords() {
            return place.inWords() + ": " + raw.strip();
        }
    }

    private final Facts facts;

    TransformerSides(Facts facts) {
        this.facts = facts;
    }

    List<Event> events() {
        Set<String> transformers = new LinkedHashSet<>();
        for (OneLine.Listed listed : facts.drawings().oneLine().equipment())
            listed.name().value().map(facts.index().paper()::nameOf).ifPresent(transformers::add);
        List<Event> events = new ArrayList<>();
        for (String name : transformers)
            if (facts.kindOf(name) == EquipmentKind.TRANSFORMER) event(name).ifPresent(events::add);
        return events;
    }

    private Optional<Event> event(String transformer) {
        List<Listing> listings = new ArrayList<>();
        for (OneLine.Listed row : facts.index().paper().listed(transformer))
            Windings.of(row.voltage().raw(), row.note())
                    .ifPresent(w -> listings.add(new Listing(w, words(row), row.place())));
        if (listings.isEmpty()) return Optional.empty();
        Listing first = listings.get(0);
        for (Listing other : listings)
            if (!first.windings().agreesWith(other.windings()))
                return Optional.of(event(
                        transformer,
                        "sides",
                        listings.stream().map(Listing::inWords).toList(),
                        listings.stream().map(Listing::place).toList()));
        return beside(transformer, first);
    }

    private static String words(OneLine.Listed row) {
        return Windings.parse(row.voltage().raw()).isPresent()
                ? row.voltage().raw()
                : (row.voltage().raw() + " " + row.note()).strip();
    }

    /** As listed or the other way round, whichever leaves less unexplained: one that steps up is often listed downwards. */
    private Optional<Event> beside(String transformer, Listing listing) {
        List<Neighbour> before = neighbours(transformer, true), behind = neighbours(transformer, false);
        Windings sides = listing.windings();
        List<Neighbour> asListed = strangers(sides.one(), before, sides.other(), behind);
        List<Neighbour> reversed = strangers(sides.other(), before, sides.one(), behind);
        List<Neighbour> strangers = reversed.size() < asListed.size() ? reversed : asListed;
        if (strangers.isEmpty()) return Optional.empty();
        List<String> words = new ArrayList<>(List.of(listing.inWords()));
        List<Place> places = new ArrayList<>(List.of(listing.place()));
        for (Neighbour n : strangers) {
            words.add(n.inWords());
            places.add(n.place());
        }
        boolean supply = before.stream().anyMatch(strangers::contains);
        boolean load = behind.stream().anyMatch(strangers::contains);
        String what =
                supply && load ? "both its sides" : supply ? "the side that is supplied" : "the side that supplies";
        return Optional.of(event(transformer, "voltage of " + what, words, places));
    }

    private static List<Neighbour> strangers(
            Voltage one, List<Neighbour> before, Voltage other, List<Neighbour> behind) {
        List<Neighbour> strangers = new ArrayList<>();
        for (Neighbour n : before) if (!Windings.suits(one, n.voltage())) strangers.add(n);
        for (Neighbour n : behind) if (!Windings.suits(other, n.voltage())) strangers.add(n);
        return strangers;
    }

    /** Boards and feeder rows next to it on one side, looked for through disconnects. */
    private List<Neighbour> neighbours(String transformer, boolean before) {
        List<Neighbour> all = new ArrayList<>();
        Set<String> seen = new LinkedHashSet<>(Set.of(transformer));
        Deque<String> queue = new ArrayDeque<>(List.of(transformer));
        while (!queue.isEmpty()) {
            String here = queue.remove();
            for (Connection c : facts.index().touching(here)) {
                String there = before ? c.from() : c.to();
                if (!c.drawn() || c.disputed() || c.flow() == Connection.Flow.TIE || !seen.add(there)) continue;
                all.addAll(stated(there));
                if (facts.kindOf(there) == EquipmentKind.DISCONNECT) queue.add(there);
            }
        }
        return all;
    }

    /** The voltage of a board; none where its own drawings disagree, which is told by itself. */
    private List<Neighbour> stated(String name) {
        if (facts.through().passes(name)) return List.of();
        List<Neighbour> all = new ArrayList<>();
        for (var d : facts.index().paper().directories(name))
            add(all, name, d.header().voltage(), d.place());
        for (var e : facts.index().paper().listed(name)) add(all, name, e.voltage(), e.place());
        for (Neighbour a : all) for (Neighbour b : all) if (!Volts.agree(a.voltage(), b.voltage())) return List.of();
        return all;
    }

    private static void add(List<Neighbour> to, String name, Stated<Voltage> voltage, Place place) {
        voltage.value().ifPresent(v -> to.add(new Neighbour(name, v, place)));
    }

    private static Event event(String transformer, String what, List<String> sides, List<Place> places) {
        String said = what + " (" + String.join("; ", sides) + ")";
        return Events.about(Part.of(transformer))
                .severity(Severity.CAUTION)
                .sides(said, "")
                .says(
                        "Drawings disagree on " + transformer + ": " + said + ".",
                        "Read the plate of " + transformer + " and correct the drawing that is wrong.")
                .drawings(places)
                .build();
    }
}
