package asfound.network;

import asfound.model.Observation;
import asfound.model.Place;
import java.util.List;

/**
 * A way for supply to pass from one equipment to another.
 *
 * @param from the supplying equipment's one name
 * @param devices the devices in series on the way, from the supplying end on; each alone parts it. Empty where it cannot
 *     be opened
 * @param to the supplied equipment's one name
 * @param flow which way supply can pass
 * @param drawn a drawing shows it
 * @param disputed drawings name different supplies for {@code to}, and this is one of them
 * @param normallyOpen drawn open. It can be closed, and is taken as closed
 * @param standing how it stands between paper and survey
 * @param drawings where it is drawn
 * @param evidence every observation that bears on it, for or against
 */
public record Connection(
        String from,
        List<Device> devices,
        String to,
        Flow flow,
        boolean drawn,
        boolean disputed,
        boolean normallyOpen,
        Standing standing,
        List<Place> drawings,
        List<Observation> evidence) {

    /** Which way supply can pass. */
    public enum Flow {
        /**
         * A conductor: supply passes towards {@code to}, and back where {@code to} is held live by another source (a
         * backfeed).
         */
        FEEDER,
        /** A tie between two buses: either feeds the other. */
        TIE,
        /** An input of a transfer switch or of a UPS: never passes back. */
        ONE_WAY
    }

    public Connection {
        devices = List.copyOf(devices);
        drawings = List.copyOf(drawings);
        evidence = List.copyOf(evidence);
    }
}
