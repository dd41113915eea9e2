package asfound.audit;

import asfound.finding.Accepted;
import asfound.finding.Finding;
import asfound.finding.Severity;
import asfound.isolation.DrawingVerdict;
import asfound.model.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Findings of danger against what a drawing shows. Its verdict is that of the equipment on it; a circuit that was traced
 * elsewhere is no equipment, and whoever isolates it by the drawing leaves it live all the same.
 */
final class Dangers {

    /** So many are named in one sentence; of more the number is given. */
    private static final int NAMED = 3;

    private Dangers() {}

    /** Those that are open and those that were accepted, which are dangers still. */
    static List<Finding> of(List<Finding> open, List<Accepted> accepted) {
        List<Finding> all = new ArrayList<>(open);
        accepted.forEach(a -> all.add(a.finding()));
        return all.stream().filter(f -> f.severity() == Severity.DANGER).toList();
    }

    /** Those against what a file shows. */
    static List<Finding> on(String file, List<Finding> dangers) {
        return dangers.stream()
                .filter(f -> f.drawings().stream().map(Place::file).anyMatch(file::equals))
                .toList();
    }

    /** The verdicts, with a sentence in the reasons of each drawing against which there are dangers. */
    static List<DrawingVerdict> told(List<DrawingVerdict> verdicts, List<Finding> dangers) {
        return verdicts.stream().map(v -> told(v, on(v.file(), dangers))).toList();
    }

    private static DrawingVerdict told(DrawingVerdict verdict, List<Finding> dangers) {
        if (dangers.isEmpty()) return verdict;
        String named = dangers.stream().limit(NAMED).map(Finding::inShort).collect(Collectors.joining(", "));
        List<String> reasons = new ArrayList<>(verdict.reasons());
        reasons.add((dangers.size() == 1 ? "1 finding" : dangers.size() + " findings")
                + " of danger against what it shows: "
                + named + (dangers.size() > NAMED ? " and " + (dangers.size() - NAMED) + " more" : "")
                + ". Do not isolate by these entries.");
        return new DrawingVerdict(verdict.file(), verdict.standing(), verdict.equipment(), reasons);
    }
}
