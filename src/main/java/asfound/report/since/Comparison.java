package asfound.report.since;

import asfound.model.Natural;
import asfound.report.since.WrittenAudit.Found;
import asfound.report.since.WrittenAudit.Judged;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * An earlier and a later audit, compared.
 *
 * @param buildings the names of both buildings where they differ; empty where they are one
 * @param findings every finding of either, once, with what became of it
 * @param verdicts equipment whose verdict or points differ, in natural order
 * @param stillFailing equipment that fails in the later audit, in natural order
 * @param touched what people may rely on that a change touches
 */
public record Comparison(
        Optional<String> buildings,
        List<Fate> findings,
        List<VerdictChange> verdicts,
        List<Judged> stillFailing,
        Touched touched) {

    /** What became of a finding. */
    public enum State {
        NEW("new"),
        CHANGED("changed"),
        REMAINING("remaining"),
        /** Gone, and the later audit did not look where it was. */
        NO_LONGER_SEEN("no longer seen"),
        CORRECTED("corrected");

        private final String word;

        State(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /**
     * A finding and what became of it.
     *
     * @param finding as the later audit has it, or the earlier where it is gone
     * @param why what changed, or why it is not known to be corrected; empty otherwise
     */
    public record Fate(State state, Found finding, List<String> why) {}

    /** An equipment whose verdict or points differ; empty where one audit does not judge it. */
    public record VerdictChange(String equipment, Optional<Judged> earlier, Optional<Judged> later) {

        public boolean isVerdict() {
            return !earlier.map(Judged::verdict).equals(later.map(Judged::verdict));
        }

        boolean isPoints() {
            return !earlier.map(Judged::drawnPoints).equals(later.map(Judged::drawnPoints))
                    || !earlier.map(Judged::foundPoints).equals(later.map(Judged::foundPoints));
        }
    }

    public static Comparison of(WrittenAudit earlier, WrittenAudit later) {
        List<VerdictChange> verdicts = verdicts(earlier, later);
        List<Fate> findings = Fates.of(earlier, later);
        return new Comparison(
                earlier.building().equals(later.building())
                        ? Optional.empty()
                        : Optional.of(earlier.building() + " / " + later.building()),
                findings,
                verdicts,
                later.isolation().values().stream()
                        .filter(Judged::fails)
                        .sorted((a, b) -> Natural.ORDER.compare(a.equipment(), b.equipment()))
                        .toList(),
                Touched.of(earlier, later, findings, verdicts));
    }

    private static List<VerdictChange> verdicts(WrittenAudit earlier, WrittenAudit later) {
        Set<String> names = new TreeSet<>(Natural.ORDER);
        names.addAll(earlier.isolation().keySet());
        names.addAll(later.isolation().keySet());
        List<VerdictChange> changes = new ArrayList<>();
        for (String name : names) {
            VerdictChange change = new VerdictChange(
                    name,
                    Optional.ofNullable(earlier.isolation().get(name)),
                    Optional.ofNullable(later.isolation().get(name)));
            if (change.isVerdict() || change.isPoints()) changes.add(change);
        }
        return changes;
    }

    public List<Fate> in(State state) {
        return findings.stream().filter(f -> Objects.equals(f.state(), state)).toList();
    }
}
