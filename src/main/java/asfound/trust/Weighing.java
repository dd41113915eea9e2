package asfound.trust;

import asfound.finding.Finding;
import asfound.isolation.Verdict;
import asfound.model.Directory;
import asfound.network.Connection;
import asfound.network.Device;
import asfound.network.DeviceRecord;
import asfound.network.DeviceRecord.Tracing;
import asfound.network.Equipment;
import asfound.network.Network;
import asfound.network.Standing;
import asfound.trust.Candidate.Band;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;

/** Gathers the reasons for which each candidate is worth a trace. */
final class Weighing {

    private static final double LIFE_SAFETY = 5;

    private final Network network;
    private final Candidates candidates;
    private final Entries entries;
    /** To be asked, never walked: its order is another in each run. */
    private final Set<DeviceRecord> wrongEntries = Collections.newSetFromMap(new IdentityHashMap<>());

    Weighing(Network network, Candidates candidates, Entries entries) {
        this.network = network;
        this.candidates = candidates;
        this.entries = entries;
        for (DeviceRecord record : network.devices()) if (entries.isWrong(record)) wrongEntries.add(record);
    }

    void weigh(List<Verdict> verdicts, List<Finding> findings) {
        byVerdicts(verdicts);
        byConflicts();
        byRivals(verdicts);
        byWrongEntries();
        byHiddenFeeds(verdicts);
        byPanels();
        byFindings(findings);
    }

    /** An equipment whose verdict hangs on few traces goes before one that needs many. */
    private void byVerdicts(List<Verdict> verdicts) {
        Blocking blocking = new Blocking(network);
        Set<String> lifeSafety = new HashSet<>();
        for (Equipment e : network.equipment()) if (e.lifeSafety()) lifeSafety.add(e.name());
        for (Verdict verdict : verdicts) {
            if (!isUnsettled(verdict)) continue;
            List<Candidate> ways = Stream.concat(
                            verdict.drawnPoints().stream(),
                            blocking.of(verdict.equipment(), verdict.drawnPoints()).stream()
                                    .map(candidates::toTrace))
                    .distinct()
                    .flatMap(d -> candidates.at(d).stream())
                    .toList();
            double weight = (lifeSafety.contains(verdict.equipment()) ? LIFE_SAFETY : 1)
                    + Math.log1p(verdict.alsoDark().size());
            for (Candidate way : ways) way.decides(verdict.equipment(), weight / ways.size());
        }
    }

    /** More traces can change what is known: it is unproven, or it fails and nobody knows what feeds it. */
    private static boolean isUnsettled(Verdict verdict) {
        return verdict.standing() == Verdict.Standing.UNPROVEN
                || verdict.standing() == Verdict.Standing.FAILS
                        && verdict.foundPoints().isEmpty();
    }

    private void byConflicts() {
        for (Candidate c : candidates.all()) {
            Tracing tracing =
                    candidates.record(c.device).map(DeviceRecord::tracing).orElse(Tracing.NOT_SEEN);
            if (tracing == Tracing.CONFLICT) {
                c.because(Band.RESOLVES_A_CONFLICT, 2, "Observations of it cannot all be true: shows which holds.");
                c.mustBeOpened();
            } else if (tracing == Tracing.STALE) {
                String why = "Traced only before the latest modification: shows whether that trace still holds.";
                c.because(Band.RESOLVES_A_CONFLICT, 1, why);
            }
        }
    }

    /**
     * Where something else was found on an equipment's drawn point, its own supply is likeliest on the device that is drawn
     * for what was found: the two may be crossed.
     */
    private void byRivals(List<Verdict> verdicts) {
        Map<String, List<Device>> drawnFor = new HashMap<>();
        for (Connection c : network.connections())
            if (c.drawn() && !c.devices().isEmpty())
                drawnFor.computeIfAbsent(c.to(), t -> new ArrayList<>()).add(candidates.toTrace(c));
        for (Verdict verdict : verdicts) {
            if (!isUnsettled(verdict)) continue;
            for (Device point : verdict.drawnPoints())
                for (String other : foundInstead(point))
                    for (Device rival : drawnFor.getOrDefault(other, List.of()))
                        candidates
                                .at(rival)
                                .ifPresent(c -> c.because(
                                        Band.TESTS_AN_EXPLANATION,
                                        1,
                                        other + ", drawn here, was found on " + point.label() + ", which is drawn for "
                                                + verdict.equipment() + ": the two may be crossed."));
        }
    }

    /** Equipment that was traced to the device and that no drawing shows there. */
    private List<String> foundInstead(Device point) {
        return entries.through(point).stream()
                .filter(c -> c.standing() == Standing.FOUND)
                .map(Connection::to)
                .distinct()
                .toList();
    }

    /**
     * A wrong entry is seldom alone: what was found there is drawn at another device, which may feed what is drawn here in
     * exchange; and where entries have moved by a row, the ones next to it are wrong too.
     */
    private void byWrongEntries() {
        Map<String, List<Candidate>> inPanel = new HashMap<>();
        for (Candidate c : candidates.all())
            inPanel.computeIfAbsent(c.device.in(), p -> new ArrayList<>()).add(c);
        for (DeviceRecord wrong : network.devices()) {
            if (!wrongEntries.contains(wrong)) continue;
            Device there = wrong.device();
            for (Candidate c : inPanel.getOrDefault(there.in(), List.of())) {
                DeviceRecord record = candidates.record(c.device).orElse(null);
                if (record == null) continue;
                if (entries.showsWhatWasFound(record, wrong))
                    c.because(
                            Band.TESTS_AN_EXPLANATION,
                            2,
                            "What is drawn here was found on " + there.label() + ": the two may be crossed.");
                if (areNeighbours(c.device, there))
                    c.because(
                            Band.TESTS_AN_EXPLANATION,
                            1,
                            "The entry next to it, " + there.label() + ", is wrong: a run of entries may have moved.");
            }
        }
    }

    private static OptionalInt position(Device device) {
        String key = device.key();
        boolean number = !key.isEmpty() && key.length() <= 3 && key.chars().allMatch(Character::isDigit);
        return number ? OptionalInt.of(Integer.parseInt(key)) : OptionalInt.empty();
    }

    /** Next to each other on one side of a panel. */
    private static boolean areNeighbours(Device a, Device b) {
        OptionalInt here = position(a), there = position(b);
        return here.isPresent() && there.isPresent() && Math.abs(here.getAsInt() - there.getAsInt()) == 2;
    }

    /**
     * An undrawn feed is likeliest on a spare, and most of all on one in the panel where an equipment's supply went missing.
     * Where the spares do not show it, the other entries of that panel may.
     */
    private void byHiddenFeeds(List<Verdict> verdicts) {
        Map<String, List<String>> missing = missingByPanel(verdicts);
        Map<String, Integer> feeders = new HashMap<>();
        for (Connection c : network.connections()) feeders.merge(c.from(), 1, Integer::sum);
        for (Candidate c : candidates.all()) {
            String in = c.device.in();
            List<String> lost = missing.getOrDefault(in, List.of());
            String words = "What feeds " + String.join(", ", lost) + " was not found: it may be here.";
            if (!lost.isEmpty()) c.because(Band.SEARCHES_FOR_A_SUPPLY, lost.size(), words);
            if (!isDrawn(c, Directory.Use.SPARE)) continue;
            int fed = feeders.getOrDefault(in, 0);
            c.because(
                    Band.MAY_HIDE_A_FEED,
                    1 + Math.log1p(fed) + 10.0 * lost.size(),
                    "Drawn as a spare: a feed or a source that is not drawn is likeliest on one"
                            + (fed >= 2 ? ", and in " + in + ", which feeds " + fed + " pieces of equipment." : "."));
        }
    }

    /** The equipment of which nobody knows what feeds it, by the panel in which its supply is drawn. */
    private static Map<String, List<String>> missingByPanel(List<Verdict> verdicts) {
        Map<String, List<String>> missing = new HashMap<>();
        for (Verdict verdict : verdicts)
            if (verdict.standing() == Verdict.Standing.FAILS
                    && verdict.foundPoints().isEmpty())
                verdict.drawnPoints().stream()
                        .map(Device::in)
                        .distinct()
                        .forEach(in -> missing.computeIfAbsent(in, p -> new ArrayList<>())
                                .add(verdict.equipment()));
        return missing;
    }

    private boolean isDrawn(Candidate c, Directory.Use use) {
        return candidates.record(c.device).stream()
                .flatMap(r -> r.showings().stream())
                .anyMatch(s -> s.use() == use);
    }

    /**
     * How likely an entry is to be wrong is taken from its panel as far as that was traced, and from the whole building as if
     * that were two more entries of the panel: little evidence weighs little, and where errors were found goes first.
     */
    private void byPanels() {
        Map<String, int[]> tracedAndWrong = new HashMap<>();
        int traced = 0, wrong = 0;
        for (DeviceRecord record : network.devices()) {
            if (!Entries.isTraced(record)) continue;
            int[] its = tracedAndWrong.computeIfAbsent(record.device().in(), p -> new int[2]);
            its[0]++;
            traced++;
            if (!wrongEntries.contains(record)) continue;
            its[1]++;
            wrong++;
        }
        double ofBuilding = (wrong + 1) / (traced + 2.0);
        Map<String, Integer> perPanel = new HashMap<>();
        for (Candidate c : candidates.all()) {
            int[] its = tracedAndWrong.getOrDefault(c.device.in(), new int[2]);
            if (isDrawn(c, Directory.Use.SPACE)) c.inRound(3);
            else if (perPanel.merge(c.device.in(), 1, Integer::sum) % 2 == 0) c.inRound(2);
            double chance = (its[1] + 2 * ofBuilding) / (its[0] + 2);
            c.because(Band.WIDENS_COVERAGE, chance, widens(c.device.in(), its[0], its[1]));
        }
    }

    private static String widens(String panel, int traced, int wrong) {
        if (traced == 0) return "Nothing in " + panel + " was traced yet.";
        if (wrong == 0) return "Widens what is known of " + panel + ".";
        return wrong + " of " + traced + " traced entries of " + panel + (wrong == 1 ? " is" : " are")
                + " wrong: the rest of it is likelier to be wrong too.";
    }

    private void byFindings(List<Finding> findings) {
        for (Finding finding : findings) {
            bearsOn(finding.equipment(), finding.circuit(), finding.id());
            for (Finding.Part part : finding.others()) bearsOn(part.equipment(), part.circuit(), finding.id());
        }
    }

    private void bearsOn(String in, Optional<String> circuit, String id) {
        circuit.flatMap(key -> candidates.at(new Device(in, key))).ifPresent(c -> c.bearsOn(id));
    }
}
