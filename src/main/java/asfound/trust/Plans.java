package asfound.trust;

import asfound.finding.Finding;
import asfound.isolation.Verdict;
import asfound.network.Network;
import asfound.recordset.Settings;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Orders the traces that are still to be made, most useful first. */
public final class Plans {

    private Plans() {}

    public static List<Trace> of(Network network, List<Verdict> verdicts, List<Finding> findings, Settings settings) {
        Collection<Candidate> candidates = new Candidates(network, verdicts, findings).all();
        List<Trace> plan = new ArrayList<>();
        for (Candidate candidate :
                candidates.stream().sorted(Candidate.MOST_USEFUL_FIRST).toList())
            plan.add(candidate.trace(plan.size() + 1));
        return plan;
    }
}
