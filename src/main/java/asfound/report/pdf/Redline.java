package asfound.report.pdf;

import asfound.audit.Audit;
import asfound.isolation.DrawingVerdict;
import asfound.model.Problem;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the marked copy of one drawing is made of.
 *
 * @param input the drawing
 * @param name its file name in the output folder: {@code redlines/LP-2A.pdf}
 * @param marks in reading order
 * @param verdict of the whole drawing, where there is one
 * @param pages what keeps each page from being used; pages that agree, and pages that show no equipment, are left out
 * @param problems what could not be read of the drawing
 * @param building whose drawing it is
 */
public record Redline(
        Audit.Input input,
        String name,
        List<Mark> marks,
        Optional<DrawingVerdict> verdict,
        Map<Integer, PageVerdict> pages,
        List<Problem> problems,
        String building) {

    /** Why one page may not be relied on, and its equipment that fails or is unproven. */
    public record PageVerdict(PageState state, List<String> equipment) {}

    public Redline {
        marks = List.copyOf(marks);
        problems = List.copyOf(problems);
    }

    public String drawing() {
        return input.source().file();
    }

    /** The page of the marked copy that shows a page of the drawing: one summary page stands in front. */
    public static int pageOf(int drawingPage) {
        return drawingPage + 1;
    }
}
