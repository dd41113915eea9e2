package asfound.trust;

import asfound.model.Observation.Method;
import asfound.network.Device;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A device that could be traced, while the reasons for doing so are gathered. */
final class Candidate {

    /** What a trace is good for, most useful first. Each band goes before the next, whatever the numbers within. */
    enum Band {
        SETTLES_A_VERDICT,
        RESOLVES_A_CONFLICT,
        TESTS_AN_EXPLANATION,
        MAY_HIDE_A_FEED,
        SEARCHES_FOR_A_SUPPLY,
        WIDENS_COVERAGE
    }

    final Device device;
    final Optional<String> location;
    private final String circuit;
    private final String expect;
    private final List<String> why = new ArrayList<>();
    private final Set<String> decides = new LinkedHashSet<>();
    private final Set<String> findings = new LinkedHashSet<>();
    private Band band = Band.WIDENS_COVERAGE;
    private double worth;
    private int round = 1;
    private Method method = Method.TONE;

    Candidate(Device device, String circuit, Optional<String> location, String expect) {
        this.device = device;
        this.circuit = circuit;
        this.location = location;
        this.expect = expect;
    }

    Band band() {
        return band;
    }

    /** How much it is worth within its band. */
    double worth() {
        return worth;
    }

    /**
     * Where nothing but coverage is to be gained, every other device of a panel is left for a second walk: a first one that
     * is spread evenly meets each event sooner, and what it meets is followed up before. A third walk is for what a look
     * shows to be empty.
     */
    void inRound(int number) {
        round = number;
    }

    /** From 1. */
    int round() {
        return band == Band.WIDENS_COVERAGE ? round : 1;
    }

    /** It stands between the equipment and a settled verdict. */
    void decides(String equipment, double by) {
        if (decides.add(equipment)) raise(Band.SETTLES_A_VERDICT, by);
    }

    void bearsOn(String finding) {
        findings.add(finding);
    }

    void because(Band reason, double by, String words) {
        raise(reason, by);
        if (!why.contains(words)) why.add(words);
    }

    /** Only opening the device and testing the far end dead ends an argument between two traces. */
    void mustBeOpened() {
        method = Method.OPENED;
    }

    private void raise(Band reason, double by) {
        if (reason.compareTo(band) < 0) {
            band = reason;
            worth = 0;
        }
        if (reason == band) worth += by;
    }

    Trace trace(int rank) {
        List<String> reasons = new ArrayList<>();
        if (!decides.isEmpty()) reasons.add("Decides whether the drawn points of " + named() + " can be believed.");
        reasons.addAll(why);
        return new Trace(
                rank,
                location,
                device.in(),
                circuit,
                expect,
                method,
                String.join(" ", reasons),
                List.copyOf(decides),
                findings.stream().sorted().toList());
    }

    private String named() {
        List<String> all = List.copyOf(decides);
        if (all.size() <= 3) return String.join(", ", all);
        return String.join(", ", all.subList(0, 3)) + " and " + (all.size() - 3) + " more";
    }
}
