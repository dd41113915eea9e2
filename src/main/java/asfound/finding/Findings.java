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

    /** The findings, worst first, then in natural order of equipment and device. */
    public static List<Finding> of(
            Drawings drawings, List<Observation> survey, Network network, List<Verdict> verdicts, Settings settings) {
        Facts facts = Facts.of(drawings, survey, network, verdicts, settings);
        List<Finding> findings = new ArrayList<>();
        for (Rule rule : Rules.all()) {
            List<? extends Finding> found = rule.finder().find(facts);
            findings.addAll(found);
            facts = facts.explainedBy(found);
        }
        findings.sort(Finding.WORST_FIRST);
        return List.copyOf(findings);
    }

    /** Devices where a person must say whether the two texts mean one thing. No alarm is raised on them. */
    public static List<Unclear> unclear(
            Drawings drawings, List<Observation> survey, Network network, List<Verdict> verdicts, Settings settings) {
        return Facts.of(drawings, survey, network, verdicts, settings).unclear();
    }
}
