package asfound.report.since;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What an {@code audit.json} says, as far as two of them are compared.
 *
 * @param inputs by file
 * @param findings accepted ones among them
 * @param isolation by equipment
 * @param drawings the equipment that each drawing shows, by file
 * @param equipment names of all equipment
 * @param devices how each device ({@code MDP/7}) is traced; empty where the file does not tell
 * @param directories the entries of each panel's directory, in words, by panel and then by position
 */
public record WrittenAudit(
        String building,
        Map<String, Input> inputs,
        List<Found> findings,
        Map<String, Judged> isolation,
        Map<String, List<String>> drawings,
        List<String> equipment,
        Optional<Map<String, String>> devices,
        Map<String, Map<String, String>> directories) {

    /** An input, what it is, its hash and how many problems it has. */
    public record Input(String kind, String sha256, int problems) {

        boolean isDrawing() {
            return !kind.equals("survey") && !kind.equals("settings") && !kind.equals("unknown");
        }
    }

    /** A verdict; no found points where the supply was not traced. */
    public record Judged(
            String equipment,
            String verdict,
            List<String> drawnPoints,
            Optional<List<String>> foundPoints,
            String reason) {

        boolean fails() {
            return verdict.equals("fails");
        }
    }

    /** One device, or equipment as a whole, that a finding is about. */
    public record Part(String equipment, Optional<String> circuit) {

        /** {@code MDP/7}, or the equipment alone. */
        public String inWords() {
            return equipment + circuit.map(c -> "/" + c).orElse("");
        }
    }

    /**
     * A finding.
     *
     * @param parts what it is about; the first is the finding's own
     * @param drawings files of the drawings
     * @param evidence files of the observations
     */
    public record Found(
            String id,
            String kind,
            String severity,
            List<Part> parts,
            String drawn,
            String found,
            List<String> drawings,
            List<String> evidence,
            String message,
            boolean accepted) {

        Part about() {
            return parts.get(0);
        }

        /** {@code MDP/7, MDP/9}. */
        public String where() {
            return parts.stream().map(Part::inWords).collect(Collectors.joining(", "));
        }
    }
}
