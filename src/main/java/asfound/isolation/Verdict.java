package asfound.isolation;

import asfound.model.Place;
import asfound.network.Device;
import java.util.List;
import java.util.Optional;

/**
 * Whether the drawn isolation points of one equipment can be believed.
 *
 * @param equipment its one name
 * @param standing the verdict
 * @param drawnPoints the fewest devices, nearest to the equipment, that part it from every source drawn; empty where the
 *     drawings give none
 * @param foundPoints the same on the network as found; empty optional where its supply was not traced or nothing parts it
 * @param otherSets other sets as small part it as well, further from it. The least set nearest to an equipment is unique, so
 *     the choice is a stable one
 * @param liveFrom the sources, or equipment of unknown supply, that still reach it with the drawn points open
 * @param path the devices (and connections without one, in words) that keep it live, from the source on
 * @param reason why, as a sentence an electrician can act on
 * @param alsoDark what else loses supply with the drawn points open and by the drawings should not, life-safety equipment
 *     first
 * @param alsoDarkAsFound the same with the found points open
 * @param evidence places of drawings and observations the verdict rests on
 */
public record Verdict(
        String equipment,
        Standing standing,
        List<Device> drawnPoints,
        Optional<List<Device>> foundPoints,
        boolean otherSets,
        List<String> liveFrom,
        List<String> path,
        String reason,
        List<String> alsoDark,
        List<String> alsoDarkAsFound,
        List<Place> evidence) {

    /** A verdict of which nothing is said about what goes dark with the found points open. */
    public Verdict(
            String equipment,
            Standing standing,
            List<Device> drawnPoints,
            Optional<List<Device>> foundPoints,
            boolean otherSets,
            List<String> liveFrom,
            List<String> path,
            String reason,
            List<String> alsoDark,
            List<Place> evidence) {
        this(
                equipment,
                standing,
                drawnPoints,
                foundPoints,
                otherSets,
                liveFrom,
                path,
                reason,
                alsoDark,
                List.of(),
                evidence);
    }

    /** The three verdicts, worst first. */
    public enum Standing {
        FAILS("fails"),
        UNPROVEN("unproven"),
        AGREES("agrees");

        private final String word;

        Standing(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    public Verdict {
        drawnPoints = List.copyOf(drawnPoints);
        foundPoints = foundPoints.map(List::copyOf);
        liveFrom = List.copyOf(liveFrom);
        path = List.copyOf(path);
        alsoDark = List.copyOf(alsoDark);
        alsoDarkAsFound = List.copyOf(alsoDarkAsFound);
        evidence = List.copyOf(evidence);
    }
}
