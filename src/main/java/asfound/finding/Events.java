package asfound.finding;

import asfound.finding.Finding.Part;
import asfound.model.Observation;
import asfound.model.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Puts an event together from the devices that it holds: both sides in words, places, evidence and exact corrections. */
final class Events {

    private final List<Part> parts = new ArrayList<>();
    private final List<Place> drawings = new ArrayList<>();
    private final List<Observation> evidence = new ArrayList<>();
    private final List<Correction> corrections = new ArrayList<>();
    private Severity severity = Severity.WARNING;
    private String drawn = "";
    private String found = "";
    private String message = "";
    private String correction = "";

    private Events() {}

    static Events about(Part part) {
        Events e = new Events();
        e.parts.add(part);
        return e;
    }

    /** An event of several devices, the first of them first; what is seen at their far ends belongs to it. */
    static Events at(Facts facts, List<Comparison> devices) {
        Events e = new Events();
        for (Comparison c : devices) e.parts.add(c.part());
        e.with(facts, devices);
        e.drawn = devices.stream()
                .map(c -> c.device().label() + ": " + c.drawnInWords())
                .collect(Collectors.joining("; "));
        e.found = devices.stream()
                .map(c -> c.device().label() + " " + c.seenInWords())
                .collect(Collectors.joining("; "));
        return e;
    }

    /** Adds places, evidence, far ends and corrections of devices. */
    Events with(Facts facts, List<Comparison> devices) {
        for (Comparison c : devices) {
            parts.add(c.part());
            parts.addAll(FarEnd.partsOf(facts, c));
            drawings.addAll(c.places());
            evidence.addAll(FarEnd.evidenceOf(facts, c));
        }
        return this;
    }

    Events part(Part part) {
        parts.add(part);
        return this;
    }

    Events severity(Severity severity) {
        this.severity = severity;
        return this;
    }

    Events sides(String drawn, String found) {
        this.drawn = drawn;
        this.found = found;
        return this;
    }

    Events says(String message, String correction) {
        this.message = message;
        this.correction = correction;
        return this;
    }

    Events drawings(List<Place> places) {
        drawings.addAll(places);
        return this;
    }

    Events evidence(List<Observation> observations) {
        evidence.addAll(observations);
        return this;
    }

    Events corrections(List<Correction> exact) {
        corrections.addAll(exact);
        return this;
    }

    Event build() {
        return new Event(
                severity,
                parts.get(0),
                parts.subList(1, parts.size()),
                drawn,
                found,
                drawings,
                evidence,
                message,
                correction,
                corrections);
    }
}
