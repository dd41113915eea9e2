package asfound.finding;

import asfound.model.Observation;
import asfound.model.Place;
import asfound.network.Device;
import java.util.List;

/**
 * A device whose drawn and found descriptions may or may not mean one thing: a person must say. It is no finding.
 *
 * @param drawn what the drawing says, as written
 * @param found what was found, as written
 */
public record Unclear(Device device, String drawn, String found, List<Place> drawings, List<Observation> evidence) {

    public Unclear {
        drawings = List.copyOf(drawings);
        evidence = List.copyOf(evidence);
    }
}
