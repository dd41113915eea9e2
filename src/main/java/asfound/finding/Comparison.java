package asfound.finding;

import asfound.finding.Finding.Part;
import asfound.model.Observation;
import asfound.model.Place;
import asfound.network.Device;
import asfound.network.DeviceRecord;
import asfound.network.DeviceRecord.Showing;
import asfound.network.DeviceRecord.Sighting;
import asfound.network.Served;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Paper against survey at one device.
 *
 * @param drawn what drawings say it feeds (or is fed by, where it is drawn backfed), each once
 * @param seen what traced observations found at its other end, each once; where {@code backfed}, what supplies it
 * @param backfed it was traced to be fed from its other end
 */
record Comparison(DeviceRecord at, Answer answer, List<Served> drawn, List<Served> seen, boolean backfed) {

    /** What the comparison comes to. */
    enum Answer {
        /** Traced, and as drawn. */
        AGREES,
        /** Drawn with one thing, traced to another. */
        OTHER,
        /** Drawn with a thing, and seen not to feed it; what it feeds was not seen. */
        NOT_FED,
        /** Drawn with a load, and found feeding nothing or missing. */
        NOTHING,
        /** Drawn spare, as a space or not at all, and traced to something. */
        UNDRAWN,
        /** Drawn in use without a description, and traced. */
        BLANK,
        /** Traced, and a person must say whether the two texts mean one thing. */
        UNCLEAR,
        /** Its observations cannot all be true. */
        CONFLICT,
        /** Nothing was traced, or the drawing could not be read: paper and survey say nothing about each other. */
        SILENT;

        boolean differs() {
            return this == OTHER || this == NOT_FED || this == NOTHING || this == UNDRAWN;
        }
    }

    Comparison {
        drawn = List.copyOf(drawn);
        seen = List.copyOf(seen);
    }

    Device device() {
        return at.device();
    }

    String panel() {
        return at.device().in();
    }

    Part part() {
        return Part.of(at.device().in(), at.device().key());
    }

    /** The observations that trace it; those that say what it does not feed where there are none. */
    List<Observation> evidence() {
        return at.sightings().stream()
                .filter(Sighting::traces)
                .map(Sighting::observation)
                .toList();
    }

    List<Place> places() {
        return at.showings().stream().map(Showing::place).distinct().toList();
    }

    /** What the drawings say, in words: {@code PANEL LP-2A}, {@code spare}, {@code not drawn}. */
    String drawnInWords() {
        if (!drawn.isEmpty()) return Words.list(drawn.stream().map(Served::text).toList());
        if (at.showings().isEmpty()) return "not drawn";
        return at.showings().stream()
                .map(s -> switch (s.use()) {
                    case LOAD -> "no description";
                    case SPARE -> "spare";
                    case SPACE -> "space";
                })
                .distinct()
                .collect(Collectors.joining(", "));
    }

    /** What was seen, in words: {@code feeds LP-2B}, {@code feeds nothing}, {@code no device}. */
    String seenInWords() {
        if (!seen.isEmpty())
            return (backfed ? "fed by " : "feeds ")
                    + Words.list(seen.stream().map(Served::inWords).toList());
        return at.sightings().stream()
                .filter(Sighting::traces)
                .map(s -> switch (s.observation().relation()) {
                    case NOTHING -> "feeds nothing";
                    case NO_DEVICE -> "no device";
                    case DOES_NOT_FEED ->
                        "does not feed " + s.serves().map(Served::inWords).orElse("it");
                    case FEEDS, FED_BY -> "not read";
                })
                .distinct()
                .collect(Collectors.joining(", "));
    }
}
