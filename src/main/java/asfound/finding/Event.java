package asfound.finding;

import asfound.finding.Finding.Part;
import asfound.model.Observation;
import asfound.model.Place;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;

/**
 * What happened: the part of a finding that all kinds share.
 *
 * @param about the equipment, and the device where it is about one
 * @param others further parts of the same event, each once, in order
 * @param drawn what the drawings say, in words
 * @param found what was found, in words
 * @param drawings where the drawings say it
 * @param evidence the observations that it rests on
 * @param message the event in one or two sentences
 * @param correction what to do about the drawings, as one sentence
 * @param corrections the exact changes; empty where a person must look first
 */
public record Event(
        Severity severity,
        Part about,
        List<Part> others,
        String drawn,
        String found,
        List<Place> drawings,
        List<Observation> evidence,
        String message,
        String correction,
        List<Correction> corrections) {

    public Event {
        others = once(others.stream().filter(o -> !o.equals(about)).toList());
        drawings = once(drawings).stream().sorted().toList();
        evidence = once(evidence);
        corrections = once(corrections);
    }

    /** The part that it is about and all others. */
    public List<Part> parts() {
        List<Part> all = new ArrayList<>();
        all.add(about);
        all.addAll(others);
        return all;
    }

    private static <T> List<T> once(List<T> items) {
        return List.copyOf(new LinkedHashSet<>(items));
    }
}
