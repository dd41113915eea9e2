package asfound.finding;

import asfound.model.CircuitRef;
import asfound.model.Directory;
import asfound.model.Directory.Circuit;
import asfound.model.Directory.Header;
import asfound.model.Directory.Totals;
import asfound.model.Directory.Use;
import asfound.model.Place;
import asfound.model.Stated;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** One directory while corrections are made in it. */
final class CorrectedDirectory {

    private final Directory original;
    private final List<Circuit> circuits;
    private String panel;
    private Header header;
    private Totals totals;
    private boolean withdrawn;

    CorrectedDirectory(Directory original) {
        this.original = original;
        circuits = new ArrayList<>(original.circuits());
        panel = original.panel();
        header = original.header();
        totals = original.totals();
    }

    String panel() {
        return panel;
    }

    boolean isWithdrawn() {
        return withdrawn;
    }

    boolean isIn(Place place) {
        return original.place().file().equals(place.file()) && original.place().pageNumber() == place.pageNumber();
    }

    Directory directory() {
        return new Directory(
                panel,
                header,
                circuits.stream()
                        .sorted(Comparator.comparingInt(Circuit::position))
                        .toList(),
                totals,
                original.place(),
                original.confidence(),
                original.unread(),
                original.problems());
    }

    /** The correction's place is the directory's own, its header's, or one of its entries'. */
    boolean holds(Correction c) {
        return original.place().equals(c.place())
                || header.fedFrom().place().filter(c.place()::equals).isPresent()
                || entry(c).isPresent();
    }

    private Optional<Circuit> entry(Correction c) {
        return circuits.stream()
                .filter(e -> e.place().equals(c.place()) && e.ref().inWords().equals(c.circuit()))
                .findFirst();
    }

    boolean make(Correction c) {
        Place at = c.place();
        String should = c.shouldRead();
        switch (c.field()) {
            case FED_FROM -> header = fedFrom(Stated.text(should, at));
            case DESIGNATION -> panel = should;
            case EQUIPMENT_ROW -> withdrawn = should.isEmpty();
            case TOTAL -> totals = total(c);
            default -> {
                Optional<Circuit> entry = entry(c);
                if (entry.isEmpty()) return false;
                circuits.remove(entry.get());
                if (!should.isEmpty()) circuits.add(entry(entry.get(), c));
            }
        }
        return true;
    }

    boolean add(Correction c) {
        List<Integer> positions = CircuitRef.parse(c.circuit()).orElseThrow().positions();
        Place at = Place.row(c.place().file(), "added to " + panel, positions.get(0));
        Circuit blank = new Circuit(
                positions, "", positions.size(), Stated.blank(at), Stated.blank(at), Use.LOAD, List.of(), at);
        return circuits.add(entry(blank, c));
    }

    private static Circuit entry(Circuit e, Correction c) {
        Place at = e.place();
        String should = c.shouldRead();
        return switch (c.field()) {
            case DESCRIPTION, USE -> described(e, should);
            case RATING ->
                with(e, e.positions(), e.poles(), Stated.of(Integer.parseInt(should), should, at), e.loadVA());
            case POLES -> with(e, e.positions(), Integer.parseInt(should), e.ratingA(), e.loadVA());
            case POSITIONS ->
                with(e, CircuitRef.parse(should).orElseThrow().positions(), e.poles(), e.ratingA(), e.loadVA());
            case PHASE -> with(e, e.positions(), e.poles(), e.ratingA(), moved(e.loadVA(), c.reads(), should));
            default ->
                throw new IllegalArgumentException(
                        "an entry has no " + c.field().word());
        };
    }

    /** A spare's or space's own words stand where a description would. */
    private static Circuit described(Circuit e, String should) {
        Use use =
                should.equalsIgnoreCase("SPARE") ? Use.SPARE : should.equalsIgnoreCase("SPACE") ? Use.SPACE : Use.LOAD;
        Stated<String> text = use == Use.LOAD ? Stated.text(should, e.place()) : Stated.blank(e.place());
        return new Circuit(e.positions(), e.label(), e.poles(), e.ratingA(), text, use, e.loadVA(), e.place());
    }

    private static Circuit with(
            Circuit e, List<Integer> positions, int poles, Stated<Integer> rating, List<Stated<Double>> loads) {
        return new Circuit(positions, e.label(), poles, rating, e.description(), e.use(), loads, e.place());
    }

    /** The figures of the phases read stand, in order, at the phases that it should read. */
    private static List<Stated<Double>> moved(List<Stated<Double>> loads, String reads, String should) {
        List<Stated<Double>> moved = new ArrayList<>();
        for (int i = 0; i < 3; i++) moved.add(Stated.blank());
        for (int i = 0; i < reads.length(); i++) moved.set(should.charAt(i) - 'A', loads.get(reads.charAt(i) - 'A'));
        return moved;
    }

    private Header fedFrom(Stated<String> fedFrom) {
        return new Header(
                header.designation(),
                header.location(),
                fedFrom,
                header.voltage(),
                header.phases(),
                header.wires(),
                header.busA(),
                header.mainA(),
                header.mains(),
                header.interruptingKA(),
                header.mounting());
    }

    private Totals total(Correction c) {
        List<Stated<Double>> phases = new ArrayList<>(totals.byPhaseVA());
        Stated<Double> total = totals.totalVA(), amperes = totals.amperes();
        switch (c.circuit()) {
            case "total" -> total = Sums.read(total, c.shouldRead());
            case "amperes" -> amperes = Sums.read(amperes, c.shouldRead());
            default -> {
                int phase = c.circuit().charAt(0) - 'A';
                phases.set(phase, Sums.read(phases.get(phase), c.shouldRead()));
            }
        }
        return new Totals(phases, total, amperes);
    }
}
