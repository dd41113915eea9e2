package asfound.finding;

import asfound.finding.Finding.Part;
import asfound.model.Directory;
import asfound.model.Place;
import asfound.model.Stated;
import asfound.model.Voltage;
import asfound.names.Sameness;
import asfound.network.DeviceRecord.Showing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Function;

/** Drawings that state different ratings, poles, voltages or loads for one device or one panel. */
final class ValueDisputes {

    private final Facts facts;

    ValueDisputes(Facts facts) {
        this.facts = facts;
    }

    List<Event> events() {
        List<Event> events = new ArrayList<>();
        for (Comparison c : facts.comparisons())
            if (c.at().showings().size() > 1) device(c).ifPresent(events::add);
        Set<String> panels = new LinkedHashSet<>();
        for (Directory d : facts.drawings().directories())
            panels.add(facts.index().paper().nameOf(d.panel()));
        for (String panel : panels) panel(panel).ifPresent(events::add);
        return events;
    }

    private Optional<Event> device(Comparison c) {
        Map<String, List<String>> disputed = new LinkedHashMap<>();
        List<Drawn<Integer>> ratings = Drawn.ratings(c), poles = Drawn.poles(c);
        List<Drawn<Voltage>> voltages = Drawn.voltages(c);
        if (differ(ratings, Integer::equals))
            disputed.put("rating", ratings.stream().map(d -> d.inWords() + " A").toList());
        if (differ(poles, Integer::equals))
            disputed.put("poles", poles.stream().map(Drawn::inWords).toList());
        if (differ(voltages, Volts::agree))
            disputed.put("voltage", voltages.stream().map(Drawn::inWords).toList());
        List<String> loads = loads(c);
        if (!loads.isEmpty()) disputed.put("load", loads);
        return event(c.part(), disputed, c.places(), disputed.containsKey("load") ? Severity.WARNING : Severity.CAUTION)
                .map(e -> e.evidence(c.evidence())
                        .corrections(corrections(c, disputed))
                        .build());
    }

    /** Two drawings differ; what one drawing says twice is a clash of positions. */
    private static <T> boolean differ(List<Drawn<T>> drawn, BiPredicate<T, T> agree) {
        for (int i = 0; i < drawn.size(); i++)
            for (int j = i + 1; j < drawn.size(); j++)
                if (!isSameDrawing(drawn.get(i).showing(), drawn.get(j).showing())
                        && !agree.test(drawn.get(i).value(), drawn.get(j).value())) return true;
        return false;
    }

    private static boolean isSameDrawing(Showing a, Showing b) {
        return a.feeder().isPresent() == b.feeder().isPresent()
                && (a.directory().isEmpty()
                        || a.directory().get() == b.directory().orElse(null));
    }

    /** Descriptions of one position on two schedules of one panel. Equipment is told as a dispute of supply. */
    private List<String> loads(Comparison c) {
        List<Showing> entries = c.at().showings().stream()
                .filter(s -> s.circuit().isPresent())
                .filter(s -> s.serves().isPresent() || s.use() != Directory.Use.LOAD)
                .toList();
        for (Showing a : entries)
            for (Showing b : entries)
                if (!isSameDrawing(a, b) && differ(a, b))
                    return entries.stream().map(ValueDisputes::load).toList();
        return List.of();
    }

    private boolean differ(Showing a, Showing b) {
        boolean equipment = a.serves().flatMap(s -> s.equipment()).isPresent()
                || b.serves().flatMap(s -> s.equipment()).isPresent();
        if (equipment) return false;
        if (a.serves().isEmpty() || b.serves().isEmpty())
            return a.serves().isPresent() != b.serves().isPresent();
        return facts.sames().compare(a.serves().get(), b.serves().get()) == Sameness.DIFFERENT;
    }

    private static String load(Showing s) {
        return s.place().inWords() + ": "
                + s.serves().map(x -> x.text()).orElse(s.use().name().toLowerCase(java.util.Locale.ROOT));
    }

    /** Only what was seen on the device settles which drawing is wrong. */
    private List<Correction> corrections(Comparison c, Map<String, List<String>> disputed) {
        List<Correction> all = new ArrayList<>();
        String why = "Seen on the device.";
        for (var d : Differences.againstAnyDrawing(c))
            if (disputed.containsKey(d.what().word())) all.addAll(Redraw.property(facts, c, d, why));
        if (disputed.containsKey("load") && c.answer() == Comparison.Answer.AGREES)
            for (Showing s : c.at().showings()) if (s.circuit().isPresent()) all.addAll(Redraw.entry(facts, c, s, why));
        return all;
    }

    private Optional<Event> panel(String panel) {
        List<Statement<Voltage>> voltages = new ArrayList<>();
        List<Statement<Integer>> buses = new ArrayList<>(), mains = new ArrayList<>();
        for (Directory d : facts.index().paper().directories(panel)) {
            add(voltages, d.header().voltage(), d.place());
            add(buses, d.header().busA(), d.place());
            add(mains, d.header().mainA(), d.place());
        }
        for (var e : facts.index().paper().listed(panel)) {
            if (!facts.through().passes(panel)) add(voltages, e.voltage(), e.place());
            add(buses, e.busA(), e.place());
            add(mains, e.mainA(), e.place());
        }
        Map<String, List<String>> disputed = new LinkedHashMap<>();
        put(disputed, "voltage", voltages, Volts::agree, Voltage::inWords);
        put(disputed, "bus rating", buses, Integer::equals, a -> a + " A");
        put(disputed, "main rating", mains, Integer::equals, a -> a + " A");
        if (disputed.isEmpty()) Supplies.mismatch(facts, panel).ifPresent(m -> disputed.put(m.what(), m.sides()));
        List<Place> places = new ArrayList<>();
        voltages.forEach(s -> places.add(s.place()));
        buses.forEach(s -> places.add(s.place()));
        mains.forEach(s -> places.add(s.place()));
        return event(Part.of(panel), disputed, places, Severity.CAUTION).map(Events::build);
    }

    /** One value where a drawing states it. */
    private record Statement<T>(T value, Place place) {}

    private static <T> void add(List<Statement<T>> to, Stated<T> stated, Place place) {
        stated.value().ifPresent(v -> to.add(new Statement<>(v, place)));
    }

    private static <T> void put(
            Map<String, List<String>> disputed,
            String what,
            List<Statement<T>> statements,
            BiPredicate<T, T> agree,
            Function<T, String> inWords) {
        boolean differ =
                statements.stream().anyMatch(a -> statements.stream().anyMatch(b -> !agree.test(a.value(), b.value())));
        if (differ)
            disputed.put(
                    what,
                    statements.stream()
                            .map(s -> s.place().inWords() + ": " + inWords.apply(s.value()))
                            .toList());
    }

    private static Optional<Events> event(
            Part about, Map<String, List<String>> disputed, List<Place> places, Severity severity) {
        if (disputed.isEmpty()) return Optional.empty();
        List<String> each = new ArrayList<>();
        disputed.forEach((what, sides) -> each.add(what + " (" + String.join("; ", sides) + ")"));
        return Optional.of(Events.about(about)
                .severity(severity)
                .sides(String.join("; ", each), "")
                .says(
                        "Drawings disagree on " + about.inWords() + ": " + Words.list(each) + ".",
                        "Look at " + about.inWords() + " and correct the drawing that is wrong.")
                .drawings(places));
    }
}
