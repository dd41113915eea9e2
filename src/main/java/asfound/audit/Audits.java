package asfound.audit;

import asfound.drawing.Drawings;
import asfound.finding.Finding;
import asfound.finding.Findings;
import asfound.isolation.Isolation;
import asfound.isolation.Verdict;
import asfound.model.Observation;
import asfound.network.Network;
import asfound.network.Networks;
import asfound.recordset.Limits;
import asfound.recordset.NothingToDoException;
import asfound.recordset.RecordSet;
import asfound.recordset.Settings;
import asfound.trust.Coverages;
import asfound.trust.Plans;
import java.util.List;

/** The main job, from a record set to everything that is known about it. */
public final class Audits {

    private Audits() {}

    /**
     * Reads every source of {@code set} and compares paper with building.
     *
     * @throws NothingToDoException where neither a drawing nor an observation could be read
     */
    public static Audit of(RecordSet set, Limits limits, Stages stages) throws NothingToDoException {
        Settings settings = set.settings();
        Readings read = Readings.of(set, limits, stages);
        read.demandSomething();
        Drawings drawings = read.drawings();
        List<Observation> survey = read.survey();

        stages.at("joining paper and survey", 0, 0);
        Network network = Networks.build(drawings, survey, settings);
        stages.at("isolation points", 0, 0);
        List<Verdict> verdicts = Isolation.verdicts(network);
        stages.at("findings", 0, 0);
        List<Finding> findings = Findings.of(drawings, survey, network, verdicts, settings);
        stages.at("what to trace next", 0, 0);
        return new Audit(
                new RecordSet(set.name(), set.root(), settings, set.sources(), read.lacking()),
                read.inputs(),
                drawings,
                survey,
                network,
                verdicts,
                Isolation.drawingVerdicts(network, verdicts),
                findings,
                List.of(),
                Coverages.of(network, settings),
                Plans.of(network, verdicts, findings, settings));
    }
}
