package asfound.bench;

import asfound.finding.Finding;
import asfound.finding.Findings;
import asfound.isolation.Isolation;
import asfound.isolation.Verdict;
import asfound.network.Network;
import asfound.network.Networks;
import asfound.sample.Building;
import asfound.sample.RandomBuilding;
import asfound.trust.Coverages;
import asfound.trust.Plans;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Locale;

/** How long coverage and plan take for a large building, three devices in ten of which were traced. */
public final class PlanBench {

    private PlanBench() {}

    /** Of this thread alone: what a machine with nothing else to do takes. */
    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    /** {@code PlanBench [panels]}; 10,000 where none are given. */
    public static void main(String[] args) {
        int panels = args.length > 0 ? Integer.parseInt(args[0]) : 10_000;
        Building building = RandomBuilding.withEveryKind(1, panels, 0.3).building();
        Network network = Networks.build(building.drawings(), building.survey(), building.settings());
        List<Verdict> verdicts = Isolation.verdicts(network);
        System.out.printf(
                Locale.ROOT,
                "%d panels, %d devices, %d rows of survey%n",
                panels,
                network.devices().size(),
                building.survey().size());
        List<Finding> findings = Findings.of(
                        building.drawings(), building.survey(), network, verdicts, building.settings())
                .findings();
        long start = cpu();
        Coverages.of(network, building.settings());
        long covered = cpu();
        int traces = Plans.of(network, verdicts, findings, building.settings()).size();
        long planned = cpu();
        System.out.printf(
                Locale.ROOT,
                "processor time: coverage %.1f s, plan of %d traces %.1f s%n",
                (covered - start) / 1e9,
                traces,
                (planned - covered) / 1e9);
    }
}
