package asfound.trust;

import asfound.finding.Finding;
import asfound.isolation.Verdict;
import asfound.model.CircuitRef;
import asfound.model.Directory;
import asfound.model.Stated;
import asfound.network.Connection;
import asfound.network.Device;
import asfound.network.DeviceRecord;
import asfound.network.DeviceRecord.Tracing;
import asfound.network.Equipment;
import asfound.network.Network;
import asfound.network.Served;
import asfound.trust.Candidate.Band;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Every device that is still worth tracing, with the reasons. */
final class Candidates {

    private final Network network;
    private final Map<Device, Candidate> byDevice = new TreeMap<>();
    private final Map<Device, DeviceRecord> records = new HashMap<>();
    private final Map<String, Equipment> equipment = new HashMap<>();
    private final Entries entries;

    Candidates(Network network, List<Verdict> verdicts, List<Finding> findings) {
        this.network = network;
        this.entries = new Entries(network, (a, b) -> !a.equalsIgnoreCase(b));
        for (Equipment e : network.equipment()) equipment.put(e.name(), e);
        for (DeviceRecord record : network.devices()) {
            records.put(record.device(), record);
            if (record.tracing() != Tracing.TRACED) byDevice.put(record.device(), candidate(record));
        }
        for (Connection c : network.connections())
            if (c.devices().isEmpty() && c.drawn() && Blocking.isUnsettled(c)) withoutDevice(c);
        weighVerdicts(verdicts);
        weighConflicts();
        weighRivals(verdicts);
        weighHiddenFeeds();
        weighPanels();
        weighFindings(findings);
    }

    Collection<Candidate> all() {
        return byDevice.values();
    }

    private void weighVerdicts(List<Verdict> verdicts) {
        Blocking blocking = new Blocking(network);
        for (Verdict verdict : verdicts) {
            if (verdict.standing() == Verdict.Standing.AGREES) continue;
            List<Device> ways = Stream.concat(
                            verdict.drawnPoints().stream(),
                            blocking.of(verdict.equipment(), verdict.drawnPoints()).stream()
                                    .map(this::toTrace))
                    .distinct()
                    .filter(byDevice::containsKey)
                    .toList();
            for (Device way : ways) byDevice.get(way).settles(verdict.equipment(), weight(verdict) / ways.size());
        }
    }

    /** Life-safety equipment and equipment whose loss darkens much count for more. */
    private double weight(Verdict verdict) {
        Equipment e = equipment.get(verdict.equipment());
        boolean lifeSafety = e != null && e.lifeSafety();
        return (lifeSafety ? 5 : 1) + Math.log1p(verdict.alsoDark().size());
    }

    private Device toTrace(Connection c) {
        if (c.devices().isEmpty()) return new Device(c.from(), "");
        return c.devices().stream()
                .filter(byDevice::containsKey)
                .findFirst()
                .orElse(c.devices().get(0));
    }

    private void weighConflicts() {
        for (Candidate c : byDevice.values()) {
            DeviceRecord record = records.get(c.device);
            if (record == null) continue;
            if (record.tracing() == Tracing.CONFLICT) {
                c.because(Band.RESOLVES_A_CONFLICT, 2, "Observations of it cannot all be true: shows which holds.");
                c.mustBeOpened();
            } else if (record.tracing() == Tracing.STALE) {
                c.because(
                        Band.RESOLVES_A_CONFLICT,
                        1,
                        "Traced only before the latest modification: shows whether that trace still holds.");
            }
        }
    }

    /**
     * Where something else was found on an equipment's drawn point, its own supply is likeliest on the device that is drawn
     * for what was found: the two may be crossed.
     */
    private void weighRivals(List<Verdict> verdicts) {
        Map<String, List<Device>> drawnFor = new HashMap<>();
        for (Connection c : network.connections())
            if (c.drawn() && !c.devices().isEmpty())
                drawnFor.computeIfAbsent(c.to(), t -> new ArrayList<>()).add(toTrace(c));
        for (Verdict verdict : verdicts) {
            if (verdict.standing() != Verdict.Standing.FAILS
                    || verdict.foundPoints().isPresent()) continue;
            for (Device point : verdict.drawnPoints())
                for (String other : foundOn(point))
                    for (Device rival : drawnFor.getOrDefault(other, List.of()))
                        if (byDevice.containsKey(rival))
                            byDevice.get(rival)
                                    .because(
                                            Band.TESTS_AN_EXPLANATION,
                                            1,
                                            "The supply of " + verdict.equipment() + " was not found; " + other
                                                    + ", drawn here, was found on " + point.label()
                                                    + ": the two may be crossed.");
        }
    }

    private List<String> foundOn(Device point) {
        DeviceRecord record = records.get(point);
        if (record == null || record.tracing() != Tracing.TRACED) return List.of();
        return record.tracedTo().stream()
                .map(Served::equipment)
                .flatMap(Optional::stream)
                .toList();
    }

    private void weighHiddenFeeds() {
        Map<String, Long> feeders = new HashMap<>();
        for (Connection c : network.connections()) feeders.merge(c.from(), 1L, Long::sum);
        for (Candidate c : byDevice.values()) {
            long fed = feeders.getOrDefault(c.device.in(), 0L);
            if (fed >= 2)
                c.because(
                        Band.MAY_HIDE_A_FEED,
                        fed,
                        c.device.in() + " feeds " + fed
                                + " pieces of equipment: an undrawn feed would likeliest be here.");
        }
    }

    private void weighPanels() {
        Map<String, int[]> seen = new HashMap<>();
        for (DeviceRecord record : network.devices()) {
            int[] tracedAndWrong = seen.computeIfAbsent(record.device().in(), p -> new int[2]);
            if (Entries.isTraced(record)) tracedAndWrong[0]++;
            if (entries.isWrong(record)) tracedAndWrong[1]++;
        }
        for (Candidate c : byDevice.values()) {
            int[] its = seen.getOrDefault(c.device.in(), new int[2]);
            String words = its[1] > 0
                    ? its[1] + " of " + its[0] + " traced entries of " + c.device.in()
                            + " are wrong: the rest of it is likeliest to be wrong too."
                    : its[0] == 0
                            ? "Nothing in " + c.device.in() + " was traced yet."
                            : "Widens what is known of " + c.device.in() + ".";
            // One wrong and one right entry are taken as seen beforehand, so that little evidence weighs little.
            c.because(Band.WIDENS_COVERAGE, (its[1] + 1) / (its[0] + 2.0), words);
        }
    }

    private void weighFindings(List<Finding> findings) {
        for (Finding finding : findings) {
            bears(finding.equipment(), finding.circuit(), finding.id());
            for (Finding.Part part : finding.others()) bears(part.equipment(), part.circuit(), finding.id());
        }
    }

    private void bears(String in, Optional<String> circuit, String id) {
        circuit.map(key -> byDevice.get(new Device(in, key))).ifPresent(c -> c.bears(id));
    }

    private void withoutDevice(Connection c) {
        Device none = new Device(c.from(), "");
        byDevice.putIfAbsent(none, new Candidate(none, "", Optional.empty(), c.to()));
    }

    private static Candidate candidate(DeviceRecord record) {
        return new Candidate(record.device(), circuit(record), location(record), expect(record));
    }

    private static String circuit(DeviceRecord record) {
        Stream<CircuitRef> drawn = record.showings().stream()
                .flatMap(s -> Stream.concat(
                        s.circuit().map(Directory.Circuit::ref).stream(),
                        s.feeder().flatMap(f -> f.device().value()).stream()));
        Stream<CircuitRef> seen = record.sightings().stream().flatMap(s -> s.observation().circuit().value().stream());
        return Stream.concat(drawn, seen)
                .findFirst()
                .map(CircuitRef::inWords)
                .orElse(record.device().key());
    }

    private static Optional<String> location(DeviceRecord record) {
        Stream<String> drawn = record.showings().stream()
                .flatMap(s -> s.directory().stream())
                .map(d -> d.header().location())
                .flatMap(l -> l.value().stream());
        Stream<String> seen = record.sightings().stream()
                .map(s -> s.observation().location())
                .map(Stated::value)
                .flatMap(Optional::stream);
        return Stream.concat(drawn, seen).findFirst();
    }

    private static String expect(DeviceRecord record) {
        if (record.showings().isEmpty()) return "not drawn";
        return record.showings().stream()
                .map(s -> s.serves().map(Served::inWords).orElseGet(() -> blank(s.use())))
                .distinct()
                .reduce((a, b) -> a + ", or " + b)
                .orElseThrow();
    }

    private static String blank(Directory.Use use) {
        return switch (use) {
            case SPARE -> "spare";
            case SPACE -> "space";
            case LOAD -> "no description";
        };
    }
}
