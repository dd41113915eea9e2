package asfound.bench;

import asfound.finding.Finding;
import asfound.finding.Findings;
import asfound.finding.Severity;
import asfound.isolation.Isolation;
import asfound.isolation.Verdict;
import asfound.model.Observation;
import asfound.network.Device;
import asfound.network.DeviceRecord;
import asfound.network.Network;
import asfound.network.Networks;
import asfound.sample.Building;
import asfound.sample.RandomBuilding;
import asfound.trust.Plans;
import asfound.trust.Trace;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * How much sooner the plan of traces gets there than tracing in random order: random buildings with an event of every
 * kind, three devices in ten traced at random, the rest traced a few at a time, with a new plan after each few.
 *
 * <p>Two ends are measured. <em>Settled</em>: every verdict that was unproven at first, and that tracing everything would
 * settle, is settled. <em>Dangers</em>: nine in ten of the dangerous events that tracing everything would find are found (by
 * a finding of danger that names one of their devices). Both in traces, and against random order on the same building.
 */
public final class PlanSimulation {

    private static final double COVERAGE = 0.3;
    private static final int PANELS = 14;
    /** Traces between two plans: what one person does before looking at the report again. */
    private static final int FEW = 5;

    private PlanSimulation() {}

    /** {@code PlanSimulation [buildings] [first seed] [feeders]}: with {@code feeders} only the dangers in the supply of equipment. */
    public static void main(String[] args) {
        int buildings = args.length > 0 ? Integer.parseInt(args[0]) : 200;
        long first = args.length > 1 ? Long.parseLong(args[1]) : 0;
        boolean feeders = args.length > 2 && args[2].equals("feeders");
        List<double[]> settled = new ArrayList<>(), dangers = new ArrayList<>();
        Curves curves = new Curves();
        for (long seed = first; seed < first + buildings; seed++) {
            Site site = new Site(seed, feeders);
            Run planned = site.run(true), random = site.run(false);
            curves.add(planned, random);
            if (site.toSettle.size() > 0) settled.add(new double[] {planned.untilSettled, random.untilSettled});
            if (site.dangers.size() > 0) dangers.add(new double[] {planned.untilDangers, random.untilDangers});
        }
        report("every unproven verdict settled", settled);
        report("9 in 10 dangerous events found", dangers);
        curves.print();
    }

    private static void report(String what, List<double[]> runs) {
        double[] ratios = runs.stream()
                .mapToDouble(r -> r[1] == 0 ? 1 : r[0] / r[1])
                .sorted()
                .toArray();
        System.out.printf(
                Locale.ROOT,
                "%s: %d buildings, median traces %.0f planned, %.0f at random; ratio: median %.2f, 90 %% of buildings"
                        + " below %.2f, worst %.2f%n",
                what,
                runs.size(),
                median(runs.stream().mapToDouble(r -> r[0]).sorted().toArray()),
                median(runs.stream().mapToDouble(r -> r[1]).sorted().toArray()),
                median(ratios),
                ratios[(int) (0.9 * (ratios.length - 1))],
                ratios[ratios.length - 1]);
    }

    private static double median(double[] sorted) {
        int n = sorted.length;
        return n == 0 ? Double.NaN : (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
    }

    /** One way through a building: after how many traces each end was reached, and the shares on the way. */
    private static final class Run {
        int untilSettled = -1;
        int untilDangers = -1;
        final TreeMap<Integer, double[]> shares = new TreeMap<>();
    }

    /** A building with everything that tracing it would show. */
    private static final class Site {
        private final Building all;
        private final Map<Device, List<Observation>> rows = new HashMap<>();
        private final List<Observation> others = new ArrayList<>();
        private final Set<Device> tracedAtFirst = new LinkedHashSet<>();
        private final List<Device> rest = new ArrayList<>();
        final Set<String> toSettle = new HashSet<>();
        final List<Finding> dangers;

        Site(long seed, boolean feeders) {
            all = RandomBuilding.withEveryKind(seed, PANELS, 1).building();
            Network network = Networks.build(all.drawings(), all.survey(), all.settings());
            Set<Observation> atDevices = new HashSet<>();
            for (DeviceRecord r : network.devices()) {
                List<Observation> its = r.sightings().stream()
                        .map(DeviceRecord.Sighting::observation)
                        .toList();
                rows.put(r.device(), its);
                atDevices.addAll(its);
                rest.add(r.device());
            }
            all.survey().stream().filter(o -> !atDevices.contains(o)).forEach(others::add);
            Collections.shuffle(rest, new Random(seed * 31 + 7));
            int first = (int) Math.round(COVERAGE * rest.size());
            tracedAtFirst.addAll(rest.subList(0, first));
            rest.subList(0, first).clear();

            State end = new State(all);
            State start = new State(all.with(seen(tracedAtFirst)));
            for (Verdict v : start.verdicts)
                if (v.standing() == Verdict.Standing.UNPROVEN
                        && end.standing(v.equipment()) != Verdict.Standing.UNPROVEN) toSettle.add(v.equipment());
            dangers = end.findings.stream()
                    .filter(f -> f.severity() == Severity.DANGER)
                    .filter(f -> !feeders || isOfFeeders(f, end.network))
                    .toList();
        }

        /** It moves or adds the supply of named equipment, and not of a branch circuit alone. */
        private static boolean isOfFeeders(Finding f, Network network) {
            Set<String> places = State.places(f);
            return network.connections().stream()
                    .flatMap(c -> c.devices().stream())
                    .anyMatch(d -> places.contains(d.label()));
        }

        private List<Observation> seen(Set<Device> traced) {
            List<Observation> seen = new ArrayList<>();
            traced.forEach(d -> seen.addAll(rows.getOrDefault(d, List.of())));
            // Rows that name no device are of the walk itself: they are there from the start.
            seen.addAll(others);
            return seen;
        }

        Run run(boolean planned) {
            Run run = new Run();
            Set<Device> traced = new LinkedHashSet<>(tracedAtFirst);
            List<Device> left = new ArrayList<>(rest);
            for (int count = 0; ; count += FEW) {
                State now = new State(all.with(seen(traced)));
                note(run, now, count);
                if (left.isEmpty() || run.untilSettled >= 0 && run.untilDangers >= 0) return run;
                List<Device> next = planned ? now.next(left) : left;
                List<Device> few = List.copyOf(next.subList(0, Math.min(FEW, next.size())));
                traced.addAll(few);
                left.removeAll(few);
            }
        }

        private void note(Run run, State now, int count) {
            long settled = toSettle.stream()
                    .filter(e -> now.standing(e) != Verdict.Standing.UNPROVEN)
                    .count();
            long found = dangers.stream().filter(now::shows).count();
            if (run.untilSettled < 0 && settled == toSettle.size()) run.untilSettled = count;
            if (run.untilDangers < 0 && found >= Math.ceil(0.9 * dangers.size())) run.untilDangers = count;
            run.shares.put(100 * count / Math.max(1, rest.size()), new double[] {
                toSettle.isEmpty() ? 1 : settled / (double) toSettle.size(),
                dangers.isEmpty() ? 1 : found / (double) dangers.size()
            });
        }
    }

    /** What an audit says at some point. */
    private static final class State {
        private final Building building;
        private final Network network;
        final List<Verdict> verdicts;
        final List<Finding> findings;
        private final Map<String, Verdict.Standing> standing;
        private final Set<String> inDanger;

        State(Building building) {
            this.building = building;
            network = Networks.build(building.drawings(), building.survey(), building.settings());
            verdicts = Isolation.verdicts(network);
            findings = Findings.of(building.drawings(), building.survey(), network, verdicts, building.settings())
                    .findings();
            standing = verdicts.stream().collect(Collectors.toMap(Verdict::equipment, Verdict::standing));
            inDanger = findings.stream()
                    .filter(f -> f.severity() == Severity.DANGER)
                    .flatMap(f -> places(f).stream())
                    .collect(Collectors.toSet());
        }

        Verdict.Standing standing(String equipment) {
            return standing.getOrDefault(equipment, Verdict.Standing.UNPROVEN);
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
            return asfound.model.CircuitRef.parse(circuit)
                    .map(asfound.model.CircuitRef::key)
                    .orElse("");
        }

        private static Set<String> places(Finding f) {
            Set<String> places = new HashSet<>();
            f.circuit().ifPresent(c -> places.add(f.equipment() + "/" + c));
            for (Finding.Part p : f.others()) p.circuit().ifPresent(c -> places.add(p.equipment() + "/" + c));
            if (places.isEmpty()) places.add(f.equipment());
            return places;
        }
    }

    /** The mean shares settled and found after each tenth of the traces that are left at first. */
    private static final class Curves {
        private final double[][] sums = new double[11][4];
        private int runs;

        void add(Run planned, Run random) {
            runs++;
            for (int tenth = 0; tenth <= 10; tenth++) {
                double[] p = at(planned, tenth * 10), r = at(random, tenth * 10);
                for (int i = 0; i < 2; i++) {
                    sums[tenth][2 * i] += p[i];
                    sums[tenth][2 * i + 1] += r[i];
                }
            }
        }

        private static double[] at(Run run, int percent) {
            return run.shares.floorEntry(percent).getValue();
        }

        void print() {
            System.out.println(
                    "traced of the rest | verdicts settled: planned, random | dangers found: planned, random");
            for (int tenth = 0; tenth <= 10; tenth++) {
                double[] s = Arrays.stream(sums[tenth]).map(v -> 100 * v / runs).toArray();
                System.out.printf(
                        Locale.ROOT,
                        "%17d%% | %25.0f%% %6.0f%% | %22.0f%% %6.0f%%%n",
                        tenth * 10,
                        s[0],
                        s[1],
                        s[2],
                        s[3]);
            }
        }
    }
}
