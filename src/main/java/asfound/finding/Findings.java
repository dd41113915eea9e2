package asfound.finding;

import asfound.drawing.Drawings;
import asfound.isolation.Verdict;
import asfound.model.Observation;
import asfound.network.Network;
import asfound.recordset.Settings;
import java.util.ArrayList;
import java.util.List;

/** All differences between paper and building. */
public final class Findings {

    private Findings() {}

    /**
     * What came of comparing.
     *
     * @param findings worst first, then in natural order of equipment and device
     * @param unclear devices where a person must say whether the two texts mean one thing; no alarm is raised on them
     */
    public record Told(List<Finding> findings, List<Unclear> unclear) {

        public Told {
            findings = List.copyOf(findings);
            unclear = List.copyOf(unclear);
        }
    }

    /** Compares paper and building throughout. */
    public static Told of(
            Drawings drawings, List<Observation> survey, Network network, List<Verdict> verdicts, Settings settings) {
        Facts facts = Facts.of(drawings, survey, network, verdicts, settings);
        List<Unclear> unclear = facts.unclear();
        List<Finding> findings = new ArrayList<>();
        for (Rule rule : Rules.all()) {
            List<? extends Finding> found = rule.finder().find(facts);
            findings.addAll(found);
            facts = facts.explainedBy(found);
        }
        findings.sort(Finding.WORST_FIRST);
        return new Told(findings, unclear);
    }
}
