package asfound.bench;

import asfound.sample.RandomBuilding;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.LongStream;

/**
 * How much sooner the plan of traces gets there than tracing in random order: random buildings with an event of every
 * kind, three devices in ten traced at random, the rest traced a few at a time, with a new plan after each few.
 *
 * <p>Two ends are measured, each in traces made after the first three in ten, and on each building against random order.
 * <em>Settled</em>: every verdict that is unsettled at first and that tracing everything would settle, is settled. Unsettled
 * is unproven, and also failing with no found points. <em>Dangers</em>: nine in ten of the dangerous events that tracing
 * everything would find are found, those counted out that the first three in ten show already (a finding of danger names one
 * of their devices; with fewer than ten in a building, nine in ten of them are all).
 *
 * <p>Neither the plan nor the random order is told anything that was not traced. What the figures rest on: feeds and sources
 * that no drawing shows are planted on spares, where the plan looks for them, as the trade would; two branch circuits that are
 * crossed give no sign of it before one is traced, and are the part that no order finds much sooner.
 */
public final class PlanSimulation {

    static final double COVERAGE = 0.3;
    private static final int PANELS = 14;

    private PlanSimulation() {}

    /** {@code PlanSimulation [buildings] [first seed]} */
    public static void main(String[] args) {
        int buildings = args.length > 0 ? Integer.parseInt(args[0]) : 200;
        long first = args.length > 1 ? Long.parseLong(args[1]) : 0;
        List<Pair> pairs = LongStream.range(first, first + buildings)
                .parallel()
                .mapToObj(PlanSimulation::both)
                .toList();
        System.out.printf(
                Locale.ROOT,
                "%d buildings from seed %d; left to trace: median %.0f devices%n",
                buildings,
                first,
                median(pairs, p -> p.site.rest()));
        report("every unsettled verdict settled", pairs, p -> p.site.toSettle() > 0, r -> r.untilSettled);
        report("9 in 10 dangerous events found", pairs, p -> p.site.toFind() > 0, r -> r.untilDangers);
        curves(pairs);
        kinds(pairs);
    }

    private record Pair(PlanSimulationSite site, PlanSimulationSite.Run planned, PlanSimulationSite.Run random) {}

    private static Pair both(long seed) {
        PlanSimulationSite site = new PlanSimulationSite(
                RandomBuilding.withEveryKind(seed, PANELS, 1).building(), seed, COVERAGE);
        return new Pair(site, site.planned(), site.random());
    }

    private static double median(List<Pair> pairs, ToDoubleFunction<Pair> of) {
        return median(pairs.stream().mapToDouble(of).sorted().toArray());
    }

    private static double median(double[] sorted) {
        int n = sorted.length;
        return n == 0 ? Double.NaN : (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
    }

    private static void report(
            String what,
            List<Pair> all,
            java.util.function.Predicate<Pair> hasAny,
            java.util.function.ToIntFunction<PlanSimulationSite.Run> until) {
        List<Pair> pairs = all.stream().filter(hasAny).toList();
        double[] ratios = pairs.stream()
                .mapToDouble(p -> until.applyAsInt(p.planned) / (double) Math.max(1, until.applyAsInt(p.random)))
                .sorted()
                .toArray();
        double
                planned =
                        pairs.stream()
                                .mapToInt(p -> until.applyAsInt(p.planned))
                                .sum(),
                random =
                        pairs.stream().mapToInt(p -> until.applyAsInt(p.random)).sum();
        System.out.printf(
                Locale.ROOT,
                "%s (%d buildings): median traces %.0f planned, %.0f at random; planned / random: median %.2f, nine in"
                        + " ten buildings below %.2f, worst %.2f, all buildings together %.2f%n",
                what,
                pairs.size(),
                median(pairs, p -> until.applyAsInt(p.planned)),
                median(pairs, p -> until.applyAsInt(p.random)),
                median(ratios),
                ratios[(int) (0.9 * (ratios.length - 1))],
                ratios[ratios.length - 1],
                planned / random);
    }

    /** Of all buildings together: the shares settled and found after each share of the traces that are left at first. */
    private static void curves(List<Pair> pairs) {
        System.out.println("traced of the rest | verdicts settled: planned, random | dangers found: planned, random");
        for (int percent = 0; percent <= 100; percent += percent < 50 ? 5 : 10) {
            double[] shares = shares(pairs, percent);
            System.out.printf(
                    Locale.ROOT,
                    "%17d%% | %25.0f%% %6.0f%% | %22.0f%% %6.0f%%%n",
                    percent,
                    shares[0],
                    shares[1],
                    shares[2],
                    shares[3]);
        }
        int planned = firstPercent(pairs, 2), random = firstPercent(pairs, 3);
        System.out.printf(
                Locale.ROOT,
                "9 in 10 of the dangerous events of all buildings together: after %d %% of the rest planned, %d %% at"
                        + " random; planned / random %.2f%n",
                planned,
                random,
                planned / (double) random);
    }

    private static int firstPercent(List<Pair> pairs, int column) {
        int percent = 0;
        while (percent < 100 && shares(pairs, percent)[column] < 90) percent++;
        return percent;
    }

    private static double[] shares(List<Pair> pairs, int percent) {
        double[] reached = new double[4];
        int toSettle = 0, toFind = 0;
        for (Pair p : pairs) {
            toSettle += p.site.toSettle();
            toFind += p.site.toFind();
            int traces = (int) Math.round(percent / 100.0 * p.site.rest());
            reached[0] += p.planned.settledAfter(traces);
            reached[1] += p.random.settledAfter(traces);
            reached[2] += p.planned.foundAfter(traces);
            reached[3] += p.random.foundAfter(traces);
        }
        int verdicts = Math.max(1, toSettle), dangers = Math.max(1, toFind);
        return new double[] {
            100 * reached[0] / verdicts,
            100 * reached[1] / verdicts,
            100 * reached[2] / dangers,
            100 * reached[3] / dangers
        };
    }

    /** After how much of the rest each kind of danger was found, in the mean. */
    private static void kinds(List<Pair> pairs) {
        Map<String, List<double[]>> byKind = new TreeMap<>();
        for (Pair p : pairs)
            for (int i = 0; i < p.site.toFind(); i++)
                byKind.computeIfAbsent(p.site.kind(i), k -> new ArrayList<>()).add(new double[] {
                    p.planned.foundAt(i) / (double) p.site.rest(), p.random.foundAt(i) / (double) p.site.rest()
                });
        System.out.println(
                "kind of danger, how many were left to find, found after (mean share of the rest): planned, random");
        byKind.forEach((kind, at) -> System.out.printf(
                Locale.ROOT,
                "%-40s %4d %5.0f%% %5.0f%%%n",
                kind,
                at.size(),
                100
                        * Arrays.stream(at.toArray(double[][]::new))
                                .mapToDouble(a -> a[0])
                                .average()
                                .orElse(0),
                100
                        * Arrays.stream(at.toArray(double[][]::new))
                                .mapToDouble(a -> a[1])
                                .average()
                                .orElse(0)));
    }
}
