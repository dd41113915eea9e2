package asfound.report.pdf;

import asfound.finding.Finding;
import asfound.model.CircuitRef;
import asfound.model.Observation;
import asfound.model.Place;
import java.util.List;
import java.util.stream.Collectors;

/** What was seen, in words: what, how, when, by whom, and the row that says so. */
final class Evidence {

    private Evidence() {}

    /** {@code feeds LP-2B; opened, 2025-03-04, R. Okafor (survey/east.csv, row 12)}. */
    static String inWords(Observation seen) {
        return what(seen) + "; " + how(seen) + " (" + seen.place().inWords() + ")";
    }

    /** The same with the file's own name alone, where there is little room. */
    static String briefly(Observation seen) {
        return what(seen) + "; " + how(seen) + " (" + briefly(seen.place()) + ")";
    }

    /** {@code east.csv, row 12}: the place without its folders. */
    static String briefly(Place place) {
        String file = place.file().substring(place.file().lastIndexOf('/') + 1);
        return place.within().isEmpty() ? file : file + ", " + place.within();
    }

    /** {@code feeds LP-2B}. */
    static String what(Observation seen) {
        return switch (seen.relation()) {
            case FEEDS, FED_BY, DOES_NOT_FEED ->
                seen.relation().word() + " "
                        + (seen.found().isBlank()
                                ? "(not said)"
                                : seen.found().raw().strip());
            case NOTHING -> "nothing connected";
            case NO_DEVICE -> "no device there";
        };
    }

    /** {@code opened, 2025-03-04, R. Okafor}. */
    static String how(Observation seen) {
        String method = seen.method().word().isEmpty()
                ? "method not said"
                : seen.method().word();
        String date = seen.date().isBlank()
                ? "no date"
                : seen.date().value().map(Object::toString).orElse(seen.date().raw());
        return method + ", " + date + ", " + (seen.by().isBlank() ? "by: not said" : seen.by());
    }

    /** Where it was seen: {@code MDP/7}. */
    static String where(Observation seen) {
        String circuit = seen.circuit()
                .value()
                .map(CircuitRef::inWords)
                .orElse(seen.circuit().raw().strip());
        return seen.panel().raw().strip() + (circuit.isEmpty() ? "" : "/" + circuit);
    }

    /** The whole of a finding for the reader of a marked drawing. */
    static String inFull(Finding finding) {
        List<Observation> seen = finding.evidence();
        String rows = seen.stream()
                .map(o -> "- " + where(o) + " " + inWords(o))
                .distinct()
                .collect(Collectors.joining("\n"));
        return finding.severity().word().toUpperCase(java.util.Locale.ROOT) + " " + finding.kind() + " ("
                + finding.id() + ")\n" + finding.message()
                + "\nDrawn: " + finding.drawn() + "\nFound: " + finding.found()
                + (rows.isEmpty() ? "\nEvidence: the drawings alone." : "\nEvidence:\n" + rows)
                + (finding.correction().isBlank() ? "" : "\nTo do: " + finding.correction());
    }
}
