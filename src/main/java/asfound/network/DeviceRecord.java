package asfound.network;

import asfound.model.Directory;
import asfound.model.Observation;
import asfound.model.OneLine;
import asfound.model.Place;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * All that is known of one device: what each drawing shows there beside what each observation saw there.
 *
 * @param device the device, keyed by its lowest position as drawn; an observation of any of its positions belongs to it
 * @param showings what drawings show there, one for each drawing's entry
 * @param sightings what was seen there, in order of their rows
 * @param tracing what the observations amount to
 */
public record DeviceRecord(Device device, List<Showing> showings, List<Sighting> sightings, Tracing tracing) {

    public DeviceRecord {
        showings = List.copyOf(showings);
        sightings = List.copyOf(sightings);
    }

    /** What the observations of one device amount to. */
    public enum Tracing {
        /** At least one observation by opened, tone or visual that is not stale, and none in conflict. */
        TRACED,
        /** Observations that cannot all be true. */
        CONFLICT,
        /** Traced only before the latest modification of the equipment. */
        STALE,
        /** Only labels, unknown methods or 'does not feed' rows. */
        NOT_TRACED,
        /** No observation at all. */
        NOT_SEEN
    }

    /**
     * What one drawing shows at the device.
     *
     * @param serves what it is drawn to feed, or empty for a spare, a space or a blank description. For a device that is
     *     drawn as backfed: what feeds it
     * @param use load, spare or space
     * @param circuit the directory's entry, where it is one
     * @param directory the directory that holds the entry
     * @param feeder the one-line's row, where it is one
     */
    public record Showing(
            Optional<Served> serves,
            Directory.Use use,
            Optional<Directory.Circuit> circuit,
            Optional<Directory> directory,
            Optional<OneLine.Feeder> feeder,
            Place place) {}

    /**
     * What one observation saw at the device.
     *
     * @param serves what was found at the other end; empty for nothing and no device
     * @param stale older than the latest modification of the equipment
     */
    public record Sighting(Observation observation, Optional<Served> serves, boolean stale) {

        /** Counts as a trace: by opened, tone or visual, and not stale. */
        public boolean traces() {
            return observation.method().traces() && !stale;
        }
    }

    /** What traced observations found the device to feed (or to be fed by), each once, in order of their names. */
    public List<Served> tracedTo() {
        return sightings.stream()
                .filter(Sighting::traces)
                .filter(s -> s.observation().relation() == Observation.Relation.FEEDS
                        || s.observation().relation() == Observation.Relation.FED_BY)
                .flatMap(s -> s.serves().stream())
                .distinct()
                .sorted(Comparator.comparing(Served::inWords).thenComparing(Served::text))
                .toList();
    }
}
