package asfound.trust;

import asfound.finding.Finding;
import asfound.isolation.Verdict;
import asfound.model.Natural;
import asfound.network.Network;
import asfound.recordset.Settings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Orders the traces that are still to be made, most useful first. */
public final class Plans {

    private Plans() {}

    /**
     * The plan: what settles verdicts comes first, then what resolves conflicts, tests explanations, may hide a feed or an
     * equipment's missing supply, and last what widens coverage. Among traces that are good for the same, those in one place
     * stand together, the place with the most useful trace first, so that a walk makes sense.
     */
    public static List<Trace> of(Network network, List<Verdict> verdicts, List<Finding> findings, Settings settings) {
        Candidates candidates = new Candidates(network);
        new Weighing(network, candidates, new Entries(network, settings)).weigh(verdicts, findings);
        List<Trace> plan = new ArrayList<>();
        for (Candidate candidate : inOrder(candidates)) plan.add(candidate.trace(plan.size() + 1));
        return plan;
    }

    private record Walk(Candidate.Band band, int round, String place) {}

    private static List<Candidate> inOrder(Candidates candidates) {
        Map<Walk, Double> best = new HashMap<>();
        for (Candidate c : candidates.all()) best.merge(walk(c), c.worth(), Math::max);
        List<Candidate> ordered = new ArrayList<>(candidates.all());
        ordered.sort(Comparator.comparing(Candidate::band)
                .thenComparing(Candidate::round)
                .thenComparing(c -> best.get(walk(c)), Comparator.reverseOrder())
                .thenComparing(c -> walk(c).place(), Natural.ORDER)
                .thenComparing(Candidate::worth, Comparator.reverseOrder())
                .thenComparing(c -> c.device));
        return ordered;
    }

    private static Walk walk(Candidate c) {
        return new Walk(c.band(), c.round(), c.location.orElse(c.device.in()));
    }
}
