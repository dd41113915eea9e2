package asfound.audit;

import asfound.drawing.Drawings;
import asfound.finding.Accepted;
import asfound.finding.Finding;
import asfound.finding.Unclear;
import asfound.isolation.DrawingVerdict;
import asfound.isolation.Verdict;
import asfound.model.Observation;
import asfound.model.Problem;
import asfound.network.Network;
import asfound.recordset.RecordSet;
import asfound.recordset.Source;
import asfound.trust.Coverage;
import asfound.trust.Trace;
import java.util.List;

/**
 * Everything that is known about one record set.
 *
 * @param inputs each source with what was read of it
 * @param drawings what the paper says
 * @param survey what was seen, in order of file and row
 * @param network paper and survey joined
 * @param verdicts one for each equipment but pure sources, in natural order of name
 * @param drawingVerdicts one for each drawing, in order of file
 * @param findings worst first, then in natural order of equipment and device
 * @param accepted findings that the user accepted, with who, when and why
 * @param unclear devices where a person must say whether drawn and found mean one thing
 * @param coverage how much was traced
 * @param plan what to trace next, most useful first
 */
public record Audit(
        RecordSet recordSet,
        List<Input> inputs,
        Drawings drawings,
        List<Observation> survey,
        Network network,
        List<Verdict> verdicts,
        List<DrawingVerdict> drawingVerdicts,
        List<Finding> findings,
        List<Accepted> accepted,
        List<Unclear> unclear,
        Coverage coverage,
        List<Trace> plan) {

    public Audit {
        inputs = List.copyOf(inputs);
        survey = List.copyOf(survey);
        verdicts = List.copyOf(verdicts);
        drawingVerdicts = List.copyOf(drawingVerdicts);
        findings = List.copyOf(findings);
        accepted = List.copyOf(accepted);
        unclear = List.copyOf(unclear);
        plan = List.copyOf(plan);
    }

    /** The findings of danger: those that are open, and those that were accepted, which are dangers still. */
    public List<Finding> dangers() {
        return Dangers.of(findings, accepted);
    }

    /** Those against what a drawing shows. */
    public List<Finding> dangersOn(String file) {
        return Dangers.on(file, dangers());
    }

    /**
     * A source and what was read of it.
     *
     * @param pages of a drawing; 0 for a table
     * @param rows of a table; 0 for a drawing
     */
    public record Input(Source source, int pages, int rows, List<Problem> problems) {

        public Input {
            problems = List.copyOf(problems);
        }
    }
}
