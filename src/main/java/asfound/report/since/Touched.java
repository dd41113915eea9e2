package asfound.report.since;

import asfound.model.Natural;
import asfound.report.since.Comparison.Fate;
import asfound.report.since.Comparison.State;
import asfound.report.since.Comparison.VerdictChange;
import asfound.report.since.WrittenAudit.Input;
import asfound.report.since.WrittenAudit.Judged;
import asfound.report.since.WrittenAudit.Part;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What people may rely on that the changes touch, so that they can be told.
 *
 * @param drawings files that were changed, added or taken away, each with which of these
 * @param cards panels whose directory reads otherwise than before, or whose findings changed: their door cards
 * @param procedures equipment whose verdict or points changed: its lockout procedures and records, with the points before
 *     and now
 */
public record Touched(List<String> drawings, List<String> cards, List<String> procedures) {

    static Touched of(WrittenAudit earlier, WrittenAudit later, List<Fate> findings, List<VerdictChange> verdicts) {
        return new Touched(
                drawings(earlier, later),
                cards(earlier, later, findings),
                verdicts.stream().map(Touched::procedure).toList());
    }

    private static List<String> drawings(WrittenAudit earlier, WrittenAudit later) {
        Set<String> files = new TreeSet<>(earlier.inputs().keySet());
        files.addAll(later.inputs().keySet());
        return files.stream()
                .flatMap(file -> change(file, earlier, later).stream())
                .toList();
    }

    private static Optional<String> change(String file, WrittenAudit earlier, WrittenAudit later) {
        Input before = earlier.inputs().get(file), now = later.inputs().get(file);
        if (!(before == null ? now : before).isDrawing()) return Optional.empty();
        if (before == null) return Optional.of(file + " (added)");
        if (now == null) return Optional.of(file + " (taken away)");
        return before.sha256().equals(now.sha256()) ? Optional.empty() : Optional.of(file + " (changed)");
    }

    private static List<String> cards(WrittenAudit earlier, WrittenAudit later, List<Fate> findings) {
        Set<String> panels = new TreeSet<>(Natural.ORDER);
        Set<String> drawn = new TreeSet<>(earlier.directories().keySet());
        drawn.addAll(later.directories().keySet());
        for (String panel : drawn) {
            Map<String, String> before = earlier.directories().get(panel),
                    now = later.directories().get(panel);
            if (before == null || !before.equals(now)) panels.add(panel);
        }
        for (Fate fate : findings)
            if (fate.state() != State.REMAINING)
                fate.finding().parts().stream()
                        .map(Part::equipment)
                        .filter(drawn::contains)
                        .forEach(panels::add);
        return List.copyOf(panels);
    }

    private static String procedure(VerdictChange change) {
        String before = points(change.earlier()), now = points(change.later());
        return change.equipment()
                + (before.equals(now) ? " (points " + now + ")" : " (points " + before + " -> " + now + ")");
    }

    private static String points(Optional<Judged> judged) {
        return judged.map(j -> j.drawnPoints().isEmpty() ? "none" : String.join(", ", j.drawnPoints()))
                .orElse("not judged");
    }
}
