package asfound.finding;

import asfound.model.Observation;
import asfound.model.Place;
import java.util.List;
import java.util.Optional;

/**
 * One difference between paper and building, said once as the event that happened, with both sides.
 */
public interface Finding {

    /** One further device or equipment of the same event. */
    record Part(String equipment, Optional<String> circuit) {}

    /** The kind's word in the record format: {@code crossed-feeds}. */
    String kind();

    Severity severity();

    /** The equipment that it is about, by its one name. */
    String equipment();

    /** The device: its lowest position or its name; empty where it is about the equipment as a whole. */
    Optional<String> circuit();

    /** The further parts of the same event, in order. */
    List<Part> others();

    /** What the drawings say, in words. */
    String drawn();

    /** What was found, in words. */
    String found();

    /** Where the drawings say it. */
    List<Place> drawings();

    /** The observations that it rests on. */
    List<Observation> evidence();

    /** The event in one or two sentences, in the words of the person who will act on it. */
    String message();

    /** What to do about the drawing, as one sentence. */
    String correction();

    /** The exact changes to the drawings; empty where a person must look first. */
    List<Correction> corrections();

    /**
     * Identity across runs: kind and place (equipment, device and the event's further parts), never wording; a short
     * hash. The same facts give the same id.
     */
    default String id() {
        return FindingId.of(this);
    }
}
