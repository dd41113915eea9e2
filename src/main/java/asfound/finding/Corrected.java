package asfound.finding;

import asfound.drawing.Drawings;
import asfound.model.Directory;
import asfound.model.OneLine;
import asfound.model.Place;
import asfound.names.Designation;
import java.util.ArrayList;
import java.util.List;

/**
 * The drawings as they read once corrections have been made, exactly as a drafter would make them: each changes the one
 * value that its place, panel, circuit and field name. The files themselves are never changed.
 */
public final class Corrected {

    private final List<CorrectedDirectory> directories = new ArrayList<>();
    private final CorrectedOneLine oneLine;

    private Corrected(Drawings drawings) {
        for (Directory d : drawings.directories()) directories.add(new CorrectedDirectory(d));
        oneLine = new CorrectedOneLine(drawings.oneLine());
    }

    /** The drawings with every correction of every finding made. */
    public static Drawings of(Drawings drawings, List<Finding> findings) {
        return apply(
                drawings,
                findings.stream()
                        .flatMap(f -> f.corrections().stream())
                        .distinct()
                        .toList());
    }

    /**
     * The drawings with these corrections made, in order.
     *
     * @throws IllegalArgumentException where a correction names a place that the drawings do not have
     */
    public static Drawings apply(Drawings drawings, List<Correction> corrections) {
        Corrected corrected = new Corrected(drawings);
        for (Correction c : corrections) corrected.make(c);
        return corrected.drawings();
    }

    private Drawings drawings() {
        List<Directory> all = directories.stream()
                .filter(d -> !d.isWithdrawn())
                .map(CorrectedDirectory::directory)
                .toList();
        OneLine lines = oneLine.oneLine();
        return new Drawings(all, lines);
    }

    private void make(Correction c) {
        boolean made = switch (c.field()) {
            case DESCRIPTION, USE -> c.reads().isEmpty() ? describe(c) : inDirectory(c);
            case POSITIONS, PHASE, LOAD -> inDirectory(c);
            case RATING, POLES, VOLTAGE, WIRE, FED_FROM, DESIGNATION -> oneLine.make(c) || inDirectory(c);
            case TOTAL -> directory(c).make(c);
            case FEEDER_TO, FEEDER_DEVICE, FEEDER_FROM, FEEDER_ROW -> oneLine.make(c);
            case EQUIPMENT_ROW -> oneLine.make(c) || inDirectory(c);
        };
        if (!made)
            throw new IllegalArgumentException(
                    "no place for this correction: " + c.place().inWords() + ", " + c.panel() + " " + c.circuit() + ", "
                            + c.field().word());
    }

    private boolean inDirectory(Correction c) {
        for (CorrectedDirectory d : directories) if (d.holds(c) && d.make(c)) return true;
        return false;
    }

    /** A blank entry is filled in; one that is not there is added. */
    private boolean describe(Correction c) {
        return inDirectory(c) || directory(c).add(c);
    }

    /** The directory of the panel in the correction's file; a new one where there is none. */
    private CorrectedDirectory directory(Correction c) {
        for (CorrectedDirectory d : directories) if (isOf(d, c.panel()) && d.isIn(c.place())) return d;
        for (CorrectedDirectory d : directories) if (isOf(d, c.panel())) return d;
        CorrectedDirectory added = new CorrectedDirectory(new Directory(
                c.panel(),
                Directory.Header.empty(),
                List.of(),
                Directory.Totals.none(),
                Place.file(c.place().file() + " (new directory of " + c.panel() + ")"),
                1,
                List.of(),
                List.of()));
        directories.add(added);
        return added;
    }

    private static boolean isOf(CorrectedDirectory d, String panel) {
        return d.panel().equals(panel)
                || Designation.of(d.panel()).core().equals(Designation.of(panel).core());
    }
}
