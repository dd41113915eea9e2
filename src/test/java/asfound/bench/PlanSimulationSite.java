package asfound.bench;

import asfound.finding.Finding;
import asfound.finding.Findings;
import asfound.finding.Severity;
import asfound.isolation.Isolation;
import asfound.isolation.Verdict;
import asfound.model.CircuitRef;
import asfound.model.Directory;
import asfound.model.Observation;
import asfound.network.Device;
import asfound.network.DeviceRecord;
import asfound.network.Network;
import asfound.network.Networks;
import asfound.sample.Building;
import asfound.trust.Plans;
import asfound.trust.Trace;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** One building of the simulation of plans, with everything that tracing it would show, and ways to trace it. */
final class PlanSimulationSite {

    /** Traces between two plans: what one person does before looking at the report again. */
    static final int FEW = 5;

    private static final int STRIDE = 4 * FEW;

    private final Building all;
    private final Map<Device, List<Observation>> rows = new HashMap<>();
    /** Rows that name no device: they are there from the start. */
    private final List<Observation> others = new ArrayList<>();

    private final Set<Device> tracedAtFirst = new LinkedHashSet<>();
    /** In random order. */
    private final List<Device> rest = new ArrayList<>();

    private final Set<String> toSettle = new HashSet<>();
    private final List<Finding> toFind = new ArrayList<>();
    private final List<String> kinds = new ArrayList<>();

    /** {@code all}: a building of which every device was traced. */
    PlanSimulationSite(Building all, long seed, double coverage) {
        this.all = all;
        State end = new State(all);
        Set<Observation> atDevices = new HashSet<>();
        for (DeviceRecord r : end.network.devices()) {
            List<Observation> its = r.sightings().stream()
                    .map(DeviceRecord.Sighting::observation)
                    .toList();
            rows.put(r.device(), its);
            atDevices.addAll(its);
            rest.add(r.device());
        }
        all.survey().stream().filter(o -> !atDevices.contains(o)).forEach(others::add);
        Collections.shuffle(rest, new Random(seed * 31 + 7));
        int first = (int) Math.round(coverage * rest.size());
        tracedAtFirst.addAll(rest.subList(0, first));
        rest.subList(0, first).clear();

        State start = new State(all.with(seen(tracedAtFirst)));
        for (Verdict v : start.verdicts) if (!isSettled(v) && end.isSettled(v.equipment())) toSettle.add(v.equipment());
        for (Finding f : end.findings)
            if (f.severity() == Severity.DANGER && !start.shows(f)) {
                toFind.add(f);
                kinds.add(f.kind() + " (" + where(f, end.network) + ")");
            }
    }

    int rest() {
        return rest.size();
    }

    int toSettle() {
        return toSettle.size();
    }

    int toFind() {
        return toFind.size();
    }

    String kind(int danger) {
        return kinds.get(danger);
    }

    /** On what entries the event stands, as drawn. */
    private static String where(Finding f, Network network) {
        Set<String> places = State.places(f);
        Set<Device> feeders = network.connections().stream()
                .flatMap(c -> c.devices().stream())
                .collect(Collectors.toSet());
        Set<String> entries = new TreeSet<>();
        for (DeviceRecord r : network.devices())
            if (places.contains(r.device().label()))
                entries.add(
                        r.showings().isEmpty()
                                ? "not drawn"
                                : r.showings().stream().anyMatch(s -> s.use() == Directory.Use.SPARE)
                                        ? "spare"
                                        : feeders.contains(r.device()) ? "feeder" : "branch");
        return String.join(", ", entries);
    }

    private List<Observation> seen(Set<Device> traced) {
        List<Observation> seen = new ArrayList<>();
        traced.forEach(d -> seen.addAll(rows.getOrDefault(d, List.of())));
        seen.addAll(others);
        return seen;
    }

    /** A new plan after each few traces. */
    Run planned() {
        Run run = new Run();
        Set<Device> traced = new LinkedHashSet<>(tracedAtFirst);
        List<Device> left = new ArrayList<>(rest);
        for (int count = 0; ; count += FEW) {
            State now = new State(all.with(seen(traced)));
            run.note(now, count);
            if (left.isEmpty() || run.isOver()) return run;
            List<Device> next = now.next(left);
            List<Device> few = List.copyOf(next.subList(0, Math.min(FEW, next.size())));
            traced.addAll(few);
            left.removeAll(few);
        }
    }

    /** Looks after every few traces too, but skips where nothing changed between two looks further apart. */
    Run random() {
        Run run = new Run();
        State before = after(0);
        run.note(before, 0);
        for (int count = 0; !run.isOver() && count < rest.size(); count += STRIDE) {
            State then = after(count + STRIDE);
            boolean changes = !run.sees(before).equals(run.sees(then));
            for (int at = count + FEW; at < count + STRIDE && !run.isOver(); at += FEW)
                run.note(changes ? after(at) : before, at);
            if (!run.isOver()) run.note(then, count + STRIDE);
            before = then;
        }
        return run;
    }

    private State after(int count) {
        Set<Device> traced = new LinkedHashSet<>(tracedAtFirst);
        traced.addAll(rest.subList(0, Math.min(count, rest.size())));
        return new State(all.with(seen(traced)));
    }

    /** One way through the building: what was reached after how many traces. */
    final class Run {
        int untilSettled = -1;
        int untilDangers = -1;
        private final List<Integer> settled = new ArrayList<>();
        private final Map<Integer, Integer> foundAt = new HashMap<>();

        private void note(State now, int count) {
            settled.add((int) toSettle.stream().filter(now::isSettled).count());
            for (int i = 0; i < toFind.size(); i++) if (now.shows(toFind.get(i))) foundAt.putIfAbsent(i, count);
            if (untilSettled < 0 && settled.get(settled.size() - 1) == toSettle.size()) untilSettled = count;
            if (untilDangers < 0 && foundAt.size() >= Math.ceil(0.9 * toFind.size())) untilDangers = count;
        }

        private boolean isOver() {
            return untilSettled >= 0 && foundAt.size() == toFind.size();
        }

        /** What matters of a state here: the dangers that it shows, and whether all is settled. */
        private Set<Integer> sees(State state) {
            Set<Integer> sees = new HashSet<>();
            for (int i = 0; i < toFind.size(); i++) if (state.shows(toFind.get(i))) sees.add(i);
            if (toSettle.stream().allMatch(state::isSettled)) sees.add(-1);
            return sees;
        }

        int settledAfter(int traces) {
            return settled.get(Math.min(traces / FEW, settled.size() - 1));
        }

        int foundAt(int danger) {
            return foundAt.getOrDefault(danger, rest.size());
        }

        int foundAfter(int traces) {
            return (int) foundAt.values().stream().filter(at -> at <= traces).count();
        }
    }

    /** More traces could say more: it is unproven, or it fails and nobody knows what feeds it. */
    private static boolean isSettled(Verdict v) {
        return v.standing() == Verdict.Standing.AGREES
                || v.standing() == Verdict.Standing.FAILS && v.foundPoints().isPresent();
    }

    /** What an audit says at some point. */
    private static final class State {
        private final Building building;
        private final Network network;
        final List<Verdict> verdicts;
        final List<Finding> findings;
        private final Set<String> settled;
        private final Set<String> inDanger;

        State(Building building) {
            this.building = building;
            network = Networks.build(building.drawings(), building.survey(), building.settings());
            verdicts = Isolation.verdicts(network);
            findings = Findings.of(building.drawings(), building.survey(), network, verdicts, building.settings())
                    .findings();
            settled = verdicts.stream()
                    .filter(PlanSimulationSite::isSettled)
                    .map(Verdict::equipment)
                    .collect(Collectors.toSet());
            inDanger = findings.stream()
                    .filter(f -> f.severity() == Severity.DANGER)
                    .flatMap(f -> places(f).stream())
                    .collect(Collectors.toSet());
        }

        boolean isSettled(String equipment) {
            return settled.contains(equipment);
        }

        boolean shows(Finding danger) {
            return places(danger).stream().anyMatch(inDanger::contains);
        }

        /** The devices left, in the order of the plan; those that no plan names come last. */
        List<Device> next(List<Device> left) {
            Map<String, Device> byLabel = new HashMap<>();
            for (Device d : left) byLabel.put(d.label(), d);
            Set<Device> next = new LinkedHashSet<>();
            for (Trace t : Plans.of(network, verdicts, findings, building.settings())) {
                Device d = byLabel.get(t.panel() + "/" + key(t.circuit()));
                if (d != null) next.add(d);
            }
            next.addAll(left);
            return List.copyOf(next);
        }

        private static String key(String circuit) {
            return CircuitRef.parse(circuit).map(CircuitRef::key).orElse("");
        }

        private static Set<String> places(Finding f) {
            Set<String> places = new HashSet<>();
            f.circuit().ifPresent(c -> places.add(f.equipment() + "/" + c));
            for (Finding.Part p : f.others()) p.circuit().ifPresent(c -> places.add(p.equipment() + "/" + c));
            if (places.isEmpty()) places.add(f.equipment());
            return places;
        }
    }
}
