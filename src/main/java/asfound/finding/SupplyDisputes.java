package asfound.finding;

import asfound.finding.Finding.Part;
import asfound.model.Place;
import asfound.network.Connection;
import asfound.network.Device;
import asfound.network.Served;
import asfound.network.Standing;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Drawings that name different supplies for one equipment, or different equipment at one device. */
final class SupplyDisputes {

    private final Facts facts;

    SupplyDisputes(Facts facts) {
        this.facts = facts;
    }

    /** One event for each set of disputed connections that share an equipment or a device. */
    List<Event> events() {
        Map<Object, List<Connection>> sharing = new HashMap<>();
        List<Connection> disputed = facts.network().connections().stream()
                .filter(c -> c.drawn() && c.disputed())
                .toList();
        for (Connection c : disputed)
            for (Object end : ends(c))
                sharing.computeIfAbsent(end, e -> new ArrayList<>()).add(c);
        List<Event> events = new ArrayList<>();
        Set<Connection> met = new HashSet<>();
        for (Connection c : disputed)
            if (met.add(c)) {
                List<Connection> dispute = together(c, sharing, met);
                if (!dispute.stream().allMatch(this::isOnOneLineUncontested)) events.add(event(dispute));
            }
        return events;
    }

    /** The one-line shows it and no schedule denies it: a header that names another supply names one of several. */
    private boolean isOnOneLineUncontested(Connection c) {
        boolean shown = c.drawings().stream().anyMatch(facts.index().paper()::isFeederRow);
        boolean denied = c.devices().stream()
                .flatMap(d -> facts.at(d).stream())
                .flatMap(at -> at.at().showings().stream())
                .anyMatch(s -> s.serves()
                        .flatMap(Served::equipment)
                        .filter(e -> e.equals(c.to())
                                || e.equals(c.from())
                                || facts.through().joins(e, c.to()))
                        .isEmpty());
        return shown && !denied;
    }

    private static List<Object> ends(Connection c) {
        List<Object> ends = new ArrayList<>(c.devices());
        ends.add(c.to());
        return ends;
    }

    private static List<Connection> together(
            Connection first, Map<Object, List<Connection>> sharing, Set<Connection> met) {
        List<Connection> all = new ArrayList<>(List.of(first));
        Deque<Connection> next = new ArrayDeque<>(all);
        while (!next.isEmpty())
            for (Object end : ends(next.remove()))
                for (Connection c : sharing.get(end))
                    if (met.add(c)) {
                        all.add(c);
                        next.add(c);
                    }
        return all;
    }

    private Event event(List<Connection> disputed) {
        Set<String> supplied =
                disputed.stream().map(Connection::to).collect(Collectors.toCollection(LinkedHashSet::new));
        Set<Device> devices = disputed.stream()
                .flatMap(c -> c.devices().stream())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        String each = disputed.stream()
                .map(c -> supplyOf(c) + " ("
                        + c.drawings().stream().map(Place::inWords).collect(Collectors.joining(", ")) + ")")
                .collect(Collectors.joining("; "));
        Set<String> settled = settled(supplied);
        List<Comparison> traced = tracedDevices(devices, settled);
        boolean device = supplied.size() > 1 && devices.size() == 1;
        Part about = device
                ? part(devices.iterator().next())
                : Part.of(supplied.iterator().next());
        String subject =
                device ? "what " + about.inWords() + " feeds" : "the supply of " + Words.list(List.copyOf(supplied));
        boolean fails = supplied.stream().anyMatch(e -> Severities.fails(facts, e));
        String correction = settled.isEmpty()
                ? "Trace " + subject + ", then correct the drawing that is wrong."
                : "Let every drawing say what was traced: " + Words.list(List.copyOf(settled)) + ".";
        Events event = Events.about(about)
                .severity(fails && !settled.isEmpty() ? Severity.DANGER : Severity.WARNING)
                .sides(each, settled.isEmpty() ? "not traced" : String.join("; ", settled))
                .says("Drawings disagree on " + subject + ": " + each + ".", correction);
        for (String e : supplied) event.part(Part.of(e));
        for (Device d : devices) if (!isOpenOtherwise(d, traced)) event.part(part(d));
        for (Connection c : disputed) event.drawings(c.drawings()).evidence(c.evidence());
        if (!settled.isEmpty()) event.corrections(corrections(supplied, traced, correction));
        return event.build();
    }

    private static String supplyOf(Connection c) {
        return SupplyNotes.inWords(c) + " feeds " + c.to();
    }

    /** The connections that a trace confirmed, in words. */
    private Set<String> settled(Set<String> supplied) {
        return supplied.stream()
                .flatMap(e -> facts.index().into(e).stream())
                .filter(c -> c.disputed() && c.standing() == Standing.CONFIRMED)
                .map(SupplyDisputes::supplyOf)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Devices whose drawings a trace settles: seen as one drawing has it, or found without the load that another gives it. */
    private List<Comparison> tracedDevices(Set<Device> devices, Set<String> settled) {
        if (settled.isEmpty()) return List.of();
        return devices.stream()
                .flatMap(d -> facts.at(d).stream())
                .filter(c -> c.answer() == Comparison.Answer.AGREES
                        || c.answer() == Comparison.Answer.NOTHING
                        || c.answer() == Comparison.Answer.OTHER)
                .toList();
    }

    /** The device differs from its drawings in a way that this dispute does not explain. */
    private boolean isOpenOtherwise(Device d, List<Comparison> traced) {
        return facts.at(d)
                .filter(facts::isOpen)
                .filter(c -> !traced.contains(c))
                .isPresent();
    }

    private List<Correction> corrections(Set<String> supplied, List<Comparison> traced, String why) {
        List<Correction> all = new ArrayList<>(Redraw.corrections(facts, traced, why));
        for (String e : supplied) new SupplyNotes(facts, e, why).alternatives(all);
        return all.stream().distinct().toList();
    }

    private static Part part(Device d) {
        return Part.of(d.in(), d.key());
    }
}
