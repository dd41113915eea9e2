package asfound.report.table;

import asfound.audit.Audit;
import asfound.isolation.DrawingVerdict;
import asfound.isolation.Verdict;
import asfound.network.Device;
import asfound.network.Equipment;
import asfound.report.Cautions;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The verdicts for a spreadsheet: what fails first, then unproven, then what agrees; each in natural order of names. */
public final class IsolationRows {

    /** The caution of this table: a row that says 'agrees' must not be read as more. */
    public static final String CAUTION = Cautions.AGREES + " " + Cautions.SHORT;

    static final String NOT_TRACED = "not traced";
    static final String NONE = "none";

    private static final List<String> COLUMNS = List.of(
            "equipment",
            "kind",
            "verdict",
            "drawn points",
            "found points",
            "live from",
            "path",
            "reason",
            "other drawn sets",
            "also loses supply",
            "drawings",
            "evidence");

    private IsolationRows() {}

    public static Rows of(Audit audit) {
        Map<String, Equipment> equipment = audit.network().equipment().stream()
                .collect(Collectors.toMap(Equipment::name, Function.identity(), (a, b) -> a));
        Map<String, List<String>> drawings = new TreeMap<>();
        for (DrawingVerdict drawing : audit.drawingVerdicts())
            for (String name : drawing.equipment())
                drawings.computeIfAbsent(name, n -> new ArrayList<>()).add(drawing.file());
        return new Rows(
                COLUMNS,
                audit.verdicts().stream()
                        .sorted(Comparator.comparing(Verdict::standing)) // a stable sort: names stay in order
                        .map(v -> row(v, equipment.get(v.equipment()), drawings.getOrDefault(v.equipment(), List.of())))
                        .toList());
    }

    private static List<String> row(Verdict v, Equipment equipment, List<String> drawings) {
        return List.of(
                v.equipment(),
                equipment == null ? "" : equipment.kind().word(),
                v.standing().word(),
                points(v.drawnPoints()),
                v.foundPoints().map(IsolationRows::points).orElse(NOT_TRACED),
                String.join("; ", v.liveFrom()),
                String.join(" > ", v.path()),
                v.reason(),
                v.otherSets() ? "yes" : "no",
                String.join("; ", v.alsoDark()),
                String.join("; ", drawings),
                Evidence.places(v.evidence()));
    }

    private static String points(List<Device> devices) {
        return devices.isEmpty() ? NONE : devices.stream().map(Device::label).collect(Collectors.joining("; "));
    }
}
