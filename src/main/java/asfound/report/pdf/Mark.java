package asfound.report.pdf;

import asfound.finding.Correction;
import asfound.finding.Finding;
import asfound.finding.Severity;
import asfound.model.Box;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One wrong entry of a drawing with all that is to be said about it.
 *
 * @param number on this drawing, from 1, in reading order
 * @param page of the drawing, from 1
 * @param box the entry as displayed; empty where nothing stands on the page yet
 * @param rowPitch of the page's tables, in points; empty where none was read
 * @param near where the panel's directory stands on the page, for a mark without a box of its own
 * @param notes at least one
 */
record Mark(int number, int page, Optional<Box> box, Optional<Double> rowPitch, Optional<Box> near, List<Note> notes) {

    /**
     * One thing to be said about an entry.
     *
     * @param correction the change; empty where a person must look first
     */
    record Note(Finding finding, Optional<Correction> correction) {

        /** What to write beside the entry. */
        String beside() {
            return correction.map(Note::value).orElseGet(finding::correction);
        }

        private static String value(Correction c) {
            String value = c.shouldRead();
            boolean plain = c.field() == Correction.Field.DESCRIPTION || c.field() == Correction.Field.USE;
            if (value.isBlank())
                return "take out" + (plain ? "" : " " + c.field().word());
            return plain ? value : c.field().word() + ": " + value;
        }
    }

    Mark {
        notes = List.copyOf(notes);
        if (notes.isEmpty()) throw new IllegalArgumentException("a mark that says nothing");
    }

    Severity severity() {
        return notes.stream()
                .map(n -> n.finding().severity())
                .min(Comparator.naturalOrder())
                .orElseThrow();
    }

    /** What to write beside the entry, one line for each change, each once; never nothing. */
    List<String> beside() {
        String where = box.isPresent() ? "" : at() + ": ";
        List<String> lines = notes.stream()
                .map(Note::beside)
                .filter(b -> !b.isBlank())
                .map(b -> where + b)
                .distinct()
                .toList();
        return lines.isEmpty() ? List.of(where + "look first") : lines;
    }

    /** The findings, each once, worst first. */
    List<Finding> findings() {
        return notes.stream()
                .map(Note::finding)
                .distinct()
                .sorted(Comparator.comparing(Finding::severity))
                .toList();
    }

    /** The panel and circuit: {@code LP-2A/7}. */
    String at() {
        Note first = notes.get(0);
        String panel = first.correction()
                .map(Correction::panel)
                .orElseGet(() -> first.finding().equipment());
        String circuit = first.correction()
                .map(Correction::circuit)
                .orElseGet(() -> first.finding().circuit().orElse(""));
        return circuit.isBlank() ? panel : panel + "/" + circuit;
    }
}
