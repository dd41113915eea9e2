package asfound.report.since;

import asfound.model.Natural;
import asfound.report.Cautions;
import asfound.report.since.Comparison.Fate;
import asfound.report.since.Comparison.State;
import asfound.report.since.Comparison.VerdictChange;
import asfound.report.since.WrittenAudit.Judged;
import asfound.report.terminal.Shown;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A comparison to be read: what still fails, which verdicts changed, the findings of each drawing, who must be told. */
public final class SinceText {

    private static final String NO_DRAWING = "On no drawing";
    private static final String NOT_TRACED = "not traced";
    private static final int INDENT = 4;

    private final Shown shown;
    private final List<String> lines = new ArrayList<>();

    private SinceText(Shown shown) {
        this.shown = shown;
    }

    /** The lines, without line ends, each at most 80 columns wide. */
    public static List<String> of(Comparison comparison, Charset charset) {
        SinceText text = new SinceText(Shown.in(charset));
        text.write(comparison);
        return text.lines;
    }

    private void write(Comparison c) {
        c.buildings().ifPresent(names -> add(0, "THE AUDITS ARE OF DIFFERENT BUILDINGS: " + names));
        add(0, "Findings: " + counts(c));
        if (!c.in(State.NO_LONGER_SEEN).isEmpty())
            add(0, "No longer seen is not corrected: the later audit did not look there.");
        add(0, failing(c.stillFailing()));
        verdicts(c.verdicts());
        drawings(c);
        touched(c.touched());
        lines.add("");
        add(0, Cautions.AGREES + " " + Cautions.SHORT);
    }

    private static String counts(Comparison c) {
        return Arrays.stream(State.values())
                .map(state -> c.in(state).size() + " " + state.word())
                .collect(Collectors.joining(", "));
    }

    private static String failing(List<Judged> failing) {
        if (failing.isEmpty()) return "In the later audit nothing was found that fails.";
        return "STILL NOT TO BE ISOLATED BY THE DRAWING: " + failing.size() + " ("
                + failing.stream().map(Judged::equipment).collect(Collectors.joining(", ")) + ")";
    }

    private void verdicts(List<VerdictChange> verdicts) {
        if (verdicts.isEmpty()) return;
        title("Verdicts and points that changed");
        for (VerdictChange v : verdicts) {
            add(2, v.equipment() + ": " + change(v, Judged::verdict, "not judged"));
            add(INDENT, "drawn points " + change(v, j -> points(j.drawnPoints()), "none"));
            add(INDENT, "found points " + change(v, SinceText::foundPoints, NOT_TRACED));
            v.later().ifPresent(now -> add(INDENT, now.reason()));
        }
    }

    private static String change(VerdictChange v, Function<Judged, String> what, String absent) {
        String before = v.earlier().map(what).orElse(absent),
                now = v.later().map(what).orElse(absent);
        return before.equals(now) ? now + " as before" : before + " -> " + now;
    }

    private static String foundPoints(Judged judged) {
        return judged.foundPoints().map(SinceText::points).orElse(NOT_TRACED);
    }

    private static String points(List<String> devices) {
        return devices.isEmpty() ? "none" : String.join(", ", devices);
    }

    private void drawings(Comparison c) {
        Map<String, List<Fate>> byDrawing = new TreeMap<>(Natural.ORDER);
        List<Fate> without = new ArrayList<>();
        for (Fate fate : c.findings()) {
            for (String file : fate.finding().drawings())
                byDrawing.computeIfAbsent(file, f -> new ArrayList<>()).add(fate);
            if (fate.finding().drawings().isEmpty()) without.add(fate);
        }
        byDrawing.forEach(this::drawing);
        if (!without.isEmpty()) drawing(NO_DRAWING, without);
    }

    private void drawing(String title, List<Fate> fates) {
        title(title);
        for (Fate fate : fates) {
            String accepted = fate.finding().accepted() ? " (accepted)" : "";
            add(
                    2,
                    fate.state().word().toUpperCase(Locale.ROOT) + ": "
                            + fate.finding().severity() + ", " + fate.finding().kind() + " "
                            + fate.finding().where() + accepted);
            add(INDENT, fate.finding().message());
            for (String why : fate.why()) add(INDENT, why);
        }
    }

    private void touched(Touched touched) {
        if (touched.drawings().isEmpty()
                && touched.cards().isEmpty()
                && touched.procedures().isEmpty()) return;
        title("Look at these, and tell those who rely on them");
        listed("Drawings: ", touched.drawings());
        listed("Door cards of: ", touched.cards());
        listed("Lockout procedures and records of: ", touched.procedures());
        add(2, Cautions.TELL);
    }

    private void listed(String label, List<String> names) {
        if (!names.isEmpty()) add(2, label + String.join(", ", names));
    }

    private void title(String title) {
        lines.add("");
        add(0, title);
    }

    private void add(int indent, String text) {
        List<String> wrapped = shown.wrapped(text, Shown.WIDTH - indent - 2);
        for (int i = 0; i < wrapped.size(); i++) lines.add(" ".repeat(i == 0 ? indent : indent + 2) + wrapped.get(i));
    }
}
