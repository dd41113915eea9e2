package asfound.sample;

import asfound.drawing.Drawings;
import asfound.finding.Finding;
import asfound.finding.Findings;
import asfound.finding.Unclear;
import asfound.isolation.Isolation;
import asfound.isolation.Verdict;
import asfound.model.Directory;
import asfound.model.Observation;
import asfound.model.OneLine;
import asfound.network.Network;
import asfound.network.Networks;
import asfound.recordset.Settings;
import java.util.List;

/**
 * A small building for tests: what its drawings say, what was seen, and the user's settings.
 *
 * <p>{@link #of} reads one fact to a line, as an electrician would jot it down; see {@link Jottings}.
 */
public record Building(Drawings drawings, List<Observation> survey, Settings settings) {

    public Building {
        survey = List.copyOf(survey);
    }

    public static Building of(String... lines) {
        return new Jottings().read(List.of(lines)).building();
    }

    public static Building of(List<String> drawn, List<String> survey) {
        return new Jottings().read(drawn).read(survey).building();
    }

    public Network network() {
        return Networks.build(drawings, survey, settings);
    }

    public List<Verdict> verdicts() {
        return Isolation.verdicts(network());
    }

    public List<Finding> findings() {
        return told().findings();
    }

    public List<Unclear> unclear() {
        return told().unclear();
    }

    private Findings.Told told() {
        Network network = network();
        return Findings.of(drawings, survey, network, Isolation.verdicts(network), settings);
    }

    public Building with(Drawings corrected) {
        return new Building(corrected, survey, settings);
    }

    public Building with(List<Observation> rows) {
        return new Building(drawings, rows, settings);
    }

    public static Drawings drawings(
            List<Directory> directories, List<OneLine.Feeder> feeders, List<OneLine.Listed> equipment) {
        return new Drawings(directories, new OneLine(feeders, equipment));
    }
}
