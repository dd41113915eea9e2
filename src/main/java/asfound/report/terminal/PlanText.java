package asfound.report.terminal;

import asfound.report.Cautions;
import asfound.trust.Trace;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What to trace next, as a person reads it in a terminal: where to walk, and there each device, what to look for and why. */
public final class PlanText {

    private static final int INDENT = 6;

    private final Shown shown;
    private final List<String> lines = new ArrayList<>();

    private PlanText(Shown shown) {
        this.shown = shown;
    }

    /**
     * The lines, without line ends.
     *
     * @param plan everything that is left to trace, most useful first
     * @param limit how many traces to show at most; how many there are is said in any case
     * @param charset what the terminal can show
     */
    public static List<String> of(String building, List<Trace> plan, int limit, Charset charset) {
        PlanText text = new PlanText(Shown.in(charset));
        text.write(building, plan, Math.min(limit, plan.size()));
        return List.copyOf(text.lines);
    }

    private void write(String building, List<Trace> plan, int count) {
        if (plan.isEmpty()) {
            wrap(0, "Nothing is left to trace at " + building + ".");
            wrap(0, Cautions.AGREES);
            return;
        }
        wrap(0, "What to trace next at " + building + ", most useful first: " + count + " of " + plan.size() + ".");
        Optional<String> here = Optional.empty();
        for (int i = 0; i < count; i++) {
            Optional<String> place = Optional.of(plan.get(i).location().orElse("Location not recorded"));
            if (!place.equals(here)) {
                lines.add("");
                wrap(0, place.get());
                here = place;
            }
            trace(plan.get(i));
        }
        lines.add("");
        wrap(0, "Traced by a plan, circuits are no longer chosen at random: then record.yaml says chosen: targeted.");
        wrap(0, Cautions.SHORT);
    }

    private void trace(Trace t) {
        String device = t.circuit().isEmpty() ? t.panel() + ", no device" : t.panel() + " " + t.circuit();
        String what = device + ": drawn as " + t.expect() + " [" + t.method().word() + "]";
        String number = t.rank() + "  ";
        List<String> first = shown.wrapped(what, Shown.WIDTH - INDENT);
        for (int i = 0; i < first.size(); i++)
            lines.add(
                    i == 0
                            ? " ".repeat(Math.max(0, INDENT - number.length())) + number + first.get(0)
                            : indented(first.get(i)));
        for (String line : shown.wrapped(t.why(), Shown.WIDTH - INDENT)) lines.add(indented(line));
    }

    private void wrap(int indent, String text) {
        for (String line : shown.wrapped(text, Shown.WIDTH - indent)) lines.add(" ".repeat(indent) + line);
    }

    private static String indented(String line) {
        return " ".repeat(INDENT) + line;
    }
}
