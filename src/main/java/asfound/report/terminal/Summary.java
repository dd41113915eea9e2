package asfound.report.terminal;

import asfound.audit.Audit;
import asfound.finding.Accepted;
import asfound.finding.Finding;
import asfound.finding.Severity;
import asfound.isolation.DrawingVerdict;
import asfound.isolation.Verdict;
import asfound.isolation.Verdict.Standing;
import asfound.model.Problem;
import asfound.report.Cautions;
import asfound.report.Unread;
import asfound.trust.Coverage;
import asfound.trust.Trace;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * An audit in at most {@value #MOST_LINES} lines of {@value Shown#WIDTH} columns: first what may not be isolated by the
 * drawing, and why. Where not all of it fits, the true count stands there and where the rest is.
 */
public final class Summary {

    public static final int MOST_LINES = 25;

    private static final int LABEL = 13;
    private static final int REASON_LINES = 3;
    private static final int NOTE_LINES = 4;

    private final Audit audit;
    private final Shown shown;

    private Summary(Audit audit, Shown shown) {
        this.audit = audit;
        this.shown = shown;
    }

    /**
     * The lines, without line ends.
     *
     * @param report where the report's first page is, as the user may open it
     * @param notes what the user must know besides, such as an earlier report that was kept; a sentence each
     * @param charset what the terminal can show
     */
    public static List<String> of(Audit audit, String report, List<String> notes, Charset charset) {
        return new Summary(audit, Shown.in(charset)).lines(report, notes);
    }

    private List<String> lines(String report, List<String> notes) {
        List<String> head = head();
        List<String> rest = new ArrayList<>(accepted());
        rest.addAll(others());
        rest.add("");
        rest.add(labelled("Drawings", drawings()));
        rest.add(labelled("Findings", findings()));
        rest.add(labelled("Corrections", corrections()));
        if (!audit.unclear().isEmpty()) rest.add(labelled("To decide", toDecide()));
        rest.add(labelled("Traced", traced()));
        rest.addAll(unread());
        if (!audit.plan().isEmpty())
            rest.add(labelled("Trace next", next(audit.plan().get(0))));
        rest.add(label("Report") + shown.line(report));
        rest.addAll(noted(notes));
        rest.addAll(shown.wrapped(Cautions.SHORT, Shown.WIDTH));

        List<String> all = new ArrayList<>(head);
        all.addAll(failing(MOST_LINES - head.size() - rest.size()));
        all.addAll(rest);
        return all;
    }

    private List<String> noted(List<String> notes) {
        List<String> lines = notes.stream()
                .flatMap(n -> shown.wrapped(n, Shown.WIDTH).stream())
                .toList();
        if (lines.size() <= NOTE_LINES) return lines;
        List<String> first = new ArrayList<>(lines.subList(0, NOTE_LINES));
        first.set(NOTE_LINES - 1, shown.cut(lines.get(NOTE_LINES - 1) + " ...", Shown.WIDTH));
        return first;
    }

    private List<Verdict> of(Standing standing) {
        return audit.verdicts().stream().filter(v -> v.standing() == standing).toList();
    }

    private List<String> head() {
        int all = audit.verdicts().size(), fails = of(Standing.FAILS).size();
        String building = audit.recordSet().building();
        if (all == 0) return firstLines("No equipment of " + building + " could be judged: its isolation is unproven.");
        int dangers = audit.dangers().size();
        if (fails == 0 && dangers > 0)
            return firstLines("DO NOT ISOLATE CIRCUITS BY THE DRAWING: "
                    + (dangers == 1 ? "1 finding" : dangers + " findings") + " of danger in " + building
                    + "; none of " + all + " pieces of equipment was found to fail.");
        if (fails == 0)
            return firstLines(
                    "Nothing was found that fails among " + all + " pieces of equipment of " + building + ".");
        return firstLines("DO NOT ISOLATE BY THE DRAWING: " + fails + " of " + all + (all == 1 ? " piece" : " pieces")
                + " of equipment of " + building);
    }

    private List<String> firstLines(String text) {
        List<String> lines = shown.wrapped(text, Shown.WIDTH);
        return lines.size() <= 2
                ? lines
                : List.of(lines.get(0), shown.cut(lines.get(1) + " " + lines.get(2), Shown.WIDTH));
    }

    /** Each that fails with its reason, as many as the lines allow; then how many more, and where they are. */
    private List<String> failing(int room) {
        List<Verdict> fails = of(Standing.FAILS);
        // That all are named matters more than every word of the first.
        int each = fails.isEmpty() ? 1 : Math.max(1, Math.min(REASON_LINES, room / fails.size()));
        List<List<String>> entries = fails.stream().map(v -> failing(v, each)).toList();
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            boolean last = i == entries.size() - 1;
            if (lines.size() + entries.get(i).size() + (last ? 0 : 1) > room) {
                lines.add(more(fails.subList(i, fails.size()), i));
                break;
            }
            lines.addAll(entries.get(i));
        }
        return lines;
    }

    private List<String> failing(Verdict v, int most) {
        String name = "  " + shown.cut(v.equipment(), 24) + "  ";
        int indent = Math.max(LABEL, Shown.columns(name));
        List<String> reason = shown.wrapped(v.reason(), Shown.WIDTH - indent);
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < Math.min(reason.size(), most); i++) {
            boolean cut = i == most - 1 && reason.size() > most;
            String text =
                    cut ? shown.cut(reason.get(i) + " " + reason.get(i + 1), Shown.WIDTH - indent) : reason.get(i);
            lines.add((i == 0 ? padded(name, indent) : " ".repeat(indent)) + text);
        }
        return lines;
    }

    private String more(List<Verdict> left, int before) {
        String names = left.stream().map(Verdict::equipment).collect(Collectors.joining(", "));
        String line = "  and " + left.size() + (before == 0 ? "" : " more") + " (all in isolation.csv): ";
        return line + shown.cut(names, Shown.WIDTH - line.length());
    }

    /** A danger that was accepted is a danger still. */
    private List<String> accepted() {
        List<Finding> dangers = audit.accepted().stream()
                .map(Accepted::finding)
                .filter(f -> f.severity() == Severity.DANGER)
                .toList();
        if (dangers.isEmpty()) return List.of();
        String where = dangers.stream().map(Finding::inShort).collect(Collectors.joining(", "));
        return List.of(shown.cut("Accepted, and a danger still: " + dangers.size() + " (" + where + ")", Shown.WIDTH));
    }

    private List<String> others() {
        List<Verdict> unproven = of(Standing.UNPROVEN);
        List<String> lines = new ArrayList<>();
        if (!unproven.isEmpty())
            lines.add(shown.cut("Not proven: " + unproven.size() + " (" + names(unproven) + ")", Shown.WIDTH));
        lines.add("Paper and survey agree: " + of(Standing.AGREES).size() + ". That never means dead.");
        return lines;
    }

    private static String names(Collection<Verdict> verdicts) {
        return verdicts.stream().map(Verdict::equipment).collect(Collectors.joining(", "));
    }

    private String drawings() {
        List<String> counts = new ArrayList<>();
        for (Standing standing : Standing.values()) {
            List<DrawingVerdict> those = audit.drawingVerdicts().stream()
                    .filter(d -> d.standing() == standing)
                    .toList();
            counts.add(those.size()
                    + switch (standing) {
                        case FAILS -> " not for isolation" + list(those);
                        case UNPROVEN -> " not proven";
                        case AGREES -> " agree" + inDanger(those);
                    });
        }
        return String.join(", ", counts);
    }

    /** A drawing whose equipment agrees may show circuits that are elsewhere. */
    private String inDanger(List<DrawingVerdict> agreeing) {
        long dangers = agreeing.stream()
                .filter(d -> !audit.dangersOn(d.file()).isEmpty())
                .count();
        return dangers == 0 ? "" : " (" + dangers + " with danger)";
    }

    /** Drawn and found may or may not be one thing: nothing else on this page counts them. */
    private String toDecide() {
        int n = audit.unclear().size();
        return (n == 1 ? "1 device" : n + " devices") + " traced to what may not be what is drawn: "
                + audit.unclear().stream().map(u -> u.device().label()).collect(Collectors.joining(", "));
    }

    private static String list(List<DrawingVerdict> drawings) {
        if (drawings.isEmpty() || drawings.size() > 2) return "";
        return drawings.stream()
                .map(d -> d.file().substring(d.file().lastIndexOf('/') + 1))
                .collect(Collectors.joining(", ", " (", ")"));
    }

    private String findings() {
        String counts = Arrays.stream(Severity.values())
                .map(s ->
                        audit.findings().stream().filter(f -> f.severity() == s).count() + " " + s.word())
                .collect(Collectors.joining(", "));
        return counts
                + (audit.accepted().isEmpty() ? "" : "; " + audit.accepted().size() + " accepted");
    }

    private String corrections() {
        long changes = audit.findings().stream()
                .flatMap(f -> f.corrections().stream())
                .distinct()
                .count();
        long drawings = audit.findings().stream()
                .flatMap(f -> f.corrections().stream())
                .map(c -> c.place().file())
                .distinct()
                .count();
        long looks =
                audit.findings().stream().filter(f -> f.corrections().isEmpty()).count();
        return changes + (changes == 1 ? " change" : " changes") + " on " + drawings
                + (drawings == 1 ? " drawing" : " drawings") + "; " + looks
                + (looks == 1 ? " finding needs" : " findings need") + " a look first";
    }

    private String traced() {
        Coverage.Share all = audit.coverage().building();
        return String.format(Locale.ROOT, "%d of %d circuits (%.0f %%)", all.traced(), all.drawn(), 100 * all.share());
    }

    private List<String> unread() {
        Unread unread = Unread.of(audit);
        List<Problem> problems = unread.all();
        if (problems.isEmpty()) return List.of();
        String count = problems.size()
                + (problems.size() == 1 ? " problem in " : " problems in ")
                + unread.files().size()
                + (unread.files().size() == 1 ? " file" : " files");
        return List.of(
                labelled("NOT READ", count + ". What was not read is not absent."),
                labelled("", "first: " + problems.get(0).inWords()));
    }

    private static String next(Trace t) {
        return t.panel() + "/" + t.circuit() + " by '" + t.method().word() + "': " + t.why();
    }

    private String labelled(String label, String text) {
        return label(label) + shown.cut(text, Shown.WIDTH - LABEL);
    }

    private static String label(String label) {
        return padded(label, LABEL);
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(Math.max(0, width - Shown.columns(text)));
    }
}
