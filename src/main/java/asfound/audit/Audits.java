package asfound.audit;

import asfound.drawing.Drawings;
import asfound.finding.Acceptances;
import asfound.finding.Finding;
import asfound.finding.Findings;
import asfound.isolation.Isolation;
import asfound.isolation.Verdict;
import asfound.model.Observation;
import asfound.model.Problem;
import asfound.network.Network;
import asfound.network.Networks;
import asfound.recordset.Limits;
import asfound.recordset.NothingToDoException;
import asfound.recordset.RecordSet;
import asfound.recordset.RecordSets;
import asfound.recordset.Settings;
import asfound.recordset.Source;
import asfound.trust.Coverages;
import asfound.trust.Plans;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

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
        Findings.Told told = Findings.of(drawings, survey, network, verdicts, settings);
        Acceptances.Parted parted = acceptances(set, limits).part(told.findings());
        List<Finding> findings = parted.open();
        stages.at("what to trace next", 0, 0);
        List<Problem> problems = new ArrayList<>(read.lacking());
        problems.addAll(parted.problems());
        set.sources().stream()
                .filter(s -> s.kind() == Source.Kind.SETTINGS)
                .forEach(s -> RecordSets.changed(s).ifPresent(problems::add));
        problems.addAll(SamePanelTwice.problems(drawings.directories(), network));
        return new Audit(
                new RecordSet(set.name(), set.root(), settings, set.sources(), problems),
                read.inputs(),
                drawings,
                survey,
                network,
                verdicts,
                Dangers.told(Isolation.drawingVerdicts(network, verdicts), Dangers.of(findings, parted.accepted())),
                findings,
                parted.accepted(),
                told.unclear(),
                Coverages.of(network, settings),
                Plans.of(network, verdicts, findings, settings));
    }

    /** The user's list of accepted findings, where the record set has one. */
    private static Acceptances acceptances(RecordSet set, Limits limits) {
        return set.sources().stream()
                .filter(s -> s.kind() == Source.Kind.SETTINGS)
                .filter(s -> s.file().toLowerCase(Locale.ROOT).matches("accepted\\.ya?ml"))
                .findFirst()
                .map(list -> Acceptances.read(list, limits))
                .orElseGet(Acceptances::none);
    }
}
