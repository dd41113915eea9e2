package asfound.report.table;

import asfound.audit.Audit;
import asfound.finding.Accepted;
import asfound.finding.Correction;
import asfound.finding.Finding;
import asfound.finding.Severity;
import asfound.model.Box;
import asfound.model.Natural;
import asfound.model.Place;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The drafter's list: one row for each change to one value, in the order in which drawings are worked through. Applied as
 * a whole it leaves no finding on anything that was traced; what no exact change can be given for, a person must look at
 * first, and it stands in the list too ({@link #LOOK_FIRST}). Accepted findings change nothing and are listed apart.
 */
public final class CorrectionRows {

    /** The value of {@code field} where the finding calls for a look before any change. */
    public static final String LOOK_FIRST = "look first";

    static final List<String> COLUMNS = List.of(
            "drawing",
            "sheet or page",
            "panel",
            "circuit",
            "field",
            "reads",
            "should read",
            "change",
            "why",
            "evidence",
            "finding id",
            "severity",
            "done",
            "box");

    private static final String TWO_VALUES = "Two findings ask for different values here; look before changing. ";

    /** A new name comes after all that is known by the old one, so that the list can be worked through from the top. */
    private static final Comparator<Correction> AS_WORKED_THROUGH = Comparator.comparing(Correction::place)
            .thenComparing(Correction::panel, Natural.ORDER)
            .thenComparing(c -> c.field() == Correction.Field.DESIGNATION)
            .thenComparing(Correction::circuit, Natural.ORDER)
            .thenComparing(c -> c.field() == Correction.Field.POSITIONS)
            .thenComparing(Correction::field)
            .thenComparing(Correction::reads)
            .thenComparing(Correction::shouldRead);

    private CorrectionRows() {}

    /** The whole list: the changes, then what needs a look first. */
    public static Rows of(Audit audit) {
        List<List<String>> rows = new ArrayList<>(changes(audit));
        rows.addAll(looks(audit));
        return new Rows(COLUMNS, rows);
    }

    /** The exact changes. A change that several findings ask for is one row. */
    static List<List<String>> changes(Audit audit) {
        Map<Change, List<Asked>> asked = new LinkedHashMap<>();
        for (Finding finding : audit.findings())
            for (Correction c : finding.corrections())
                asked.computeIfAbsent(Change.of(c), change -> new ArrayList<>()).add(new Asked(finding, c));
        Set<Cell> disputed = disputed(asked.keySet());
        return asked.entrySet().stream()
                .sorted(Comparator.comparing(e -> e.getValue().get(0).correction(), AS_WORKED_THROUGH))
                .map(e -> row(e.getValue(), disputed.contains(e.getKey().cell())))
                .toList();
    }

    /** Findings that a person must look at before anything can be changed. */
    static List<List<String>> looks(Audit audit) {
        return audit.findings().stream()
                .filter(f -> f.corrections().isEmpty())
                .map(CorrectionRows::look)
                .toList();
    }

    /** Accepted findings: what was accepted, by whom, when and why, in place of a change. */
    static List<List<String>> accepted(Audit audit) {
        return audit.accepted().stream().map(CorrectionRows::acceptedRow).toList();
    }

    private record Cell(Place place, String panel, String circuit, Correction.Field field) {}

    private record Change(Cell cell, String reads, String shouldRead) {
        static Change of(Correction c) {
            return new Change(new Cell(c.place(), c.panel(), c.circuit(), c.field()), c.reads(), c.shouldRead());
        }
    }

    private record Asked(Finding finding, Correction correction) {}

    private static Set<Cell> disputed(Collection<Change> changes) {
        Map<Cell, Set<String>> values = new HashMap<>();
        for (Change change : changes)
            if (!isAddition(change))
                values.computeIfAbsent(change.cell(), cell -> new HashSet<>()).add(change.shouldRead());
        return values.entrySet().stream()
                .filter(e -> e.getValue().size() > 1)
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
    }

    /** Many rows can be added at one place; they are no dispute. */
    private static boolean isAddition(Change change) {
        return change.cell().field() == Correction.Field.FEEDER_ROW
                || change.cell().field() == Correction.Field.EQUIPMENT_ROW;
    }

    private static List<String> row(List<Asked> asked, boolean disputed) {
        Correction c = asked.get(0).correction();
        List<Finding> findings = asked.stream().map(Asked::finding).distinct().toList();
        Severity worst =
                findings.stream().map(Finding::severity).sorted().findFirst().orElseThrow();
        String why = asked.stream().map(a -> a.correction().why()).distinct().collect(Collectors.joining(" "));
        return List.of(
                c.place().file(),
                c.place().within(),
                c.panel(),
                c.circuit(),
                c.field().word(),
                c.reads(),
                c.shouldRead(),
                change(c),
                (disputed ? TWO_VALUES : "") + why,
                Evidence.inWords(
                        findings.stream().flatMap(f -> f.evidence().stream()).toList()),
                findings.stream().map(Finding::id).collect(Collectors.joining("; ")),
                worst.word(),
                "",
                box(c.place()));
    }

    /** What is to be done, in words: a blank value alone does not say that the entry goes. */
    private static String change(Correction c) {
        return c.shouldRead().isEmpty() ? "take out" : c.reads().isEmpty() ? "add" : "change to";
    }

    private static List<String> look(Finding f) {
        return unchanged(f, LOOK_FIRST, f.message() + " " + f.correction());
    }

    private static List<String> acceptedRow(Accepted a) {
        String why = "Accepted by " + a.by() + " on " + a.date() + ": " + a.reason() + " - "
                + a.finding().message();
        return unchanged(a.finding(), "accepted", why);
    }

    private static List<String> unchanged(Finding f, String field, String why) {
        String file = f.drawings().isEmpty() ? "" : f.drawings().get(0).file();
        String within = f.drawings().isEmpty() ? "" : f.drawings().get(0).within();
        return List.of(
                file,
                within,
                f.equipment(),
                f.circuit().orElse(""),
                field,
                f.drawn(),
                "",
                "",
                why,
                Evidence.inWords(f.evidence()),
                f.id(),
                f.severity().word(),
                "",
                f.drawings().isEmpty() ? "" : box(f.drawings().get(0)));
    }

    /** Where on the page: x, y, width and height in points from the top left of the page as displayed. */
    private static String box(Place place) {
        if (!(place instanceof Place.OnPage page) || page.area().isEmpty()) return "";
        Box box = page.area().get();
        return String.format(Locale.ROOT, "%.2f %.2f %.2f %.2f", box.x(), box.y(), box.w(), box.h());
    }
}
