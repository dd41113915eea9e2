package asfound.network;

import asfound.model.Observation;
import asfound.model.Place;
import asfound.network.DeviceRecord.Sighting;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** A connection while paper and survey are joined: what speaks for it and what against. */
final class Draft {

    final String from;
    final List<Device> devices;
    final String to;
    final Connection.Flow flow;
    final boolean drawn;
    boolean disputed;
    boolean normallyOpen;
    final Set<Place> drawings = new TreeSet<>(Place.ORDER);

    private final List<Observation> evidence = new ArrayList<>(2);
    private boolean traced;
    private boolean tracedBefore;
    private boolean denied;
    private boolean elsewhere;

    Draft(String from, List<Device> devices, String to, Connection.Flow flow, boolean drawn) {
        this.from = from;
        this.devices = devices;
        this.to = to;
        this.flow = flow;
        this.drawn = drawn;
    }

    boolean joins(String a, String b) {
        return (from.equals(a) && to.equals(b)) || (flow == Connection.Flow.TIE && from.equals(b) && to.equals(a));
    }

    /** It was seen as it is here. A label bears on it and traces nothing. */
    void speakFor(Sighting s) {
        evidence.add(s.observation());
        if (s.traces()) traced = true;
        else if (s.observation().method().traces()) tracedBefore = true;
    }

    /** Outright: it was seen not to be so, nothing is connected, or the device is not there. */
    void deny(Sighting s) {
        evidence.add(s.observation());
        if (s.traces()) denied = true;
    }

    /** A device of it was seen to serve something else. */
    void speakOfAnother(Sighting s) {
        evidence.add(s.observation());
        if (s.traces()) elsewhere = true;
    }

    /** Bears on it without tracing it. */
    void note(Sighting s) {
        evidence.add(s.observation());
    }

    private Standing standing() {
        if (traced && denied) return Standing.IN_CONFLICT;
        if (traced) return drawn ? Standing.CONFIRMED : Standing.FOUND;
        if (denied || (elsewhere && drawn)) return Standing.CONTRADICTED;
        return tracedBefore ? Standing.STALE : Standing.UNTRACED;
    }

    /** The finished connection; a drawn one, or one that someone traced, now or before. */
    Connection connection() {
        return new Connection(
                from,
                devices,
                to,
                flow,
                drawn,
                disputed,
                normallyOpen,
                standing(),
                List.copyOf(drawings),
                evidence.stream()
                        .distinct()
                        .sorted(Comparator.comparing(Observation::place, Place.ORDER))
                        .toList());
    }
}
