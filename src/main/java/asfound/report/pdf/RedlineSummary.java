package asfound.report.pdf;

import asfound.finding.Correction;
import asfound.isolation.Verdict.Standing;
import asfound.model.Problem;
import asfound.report.Cautions;
import java.util.ArrayList;
import java.util.List;

/** The page in front of a marked drawing: may it be used for isolation, and what is to be changed where. */
final class RedlineSummary {

    private static final double MARGIN = 42, FOOT = 84;
    private static final double[] WIDTHS = {0.05, 0.06, 0.14, 0.11, 0.21, 0.24, 0.19};
    private static final List<String> HEAD =
            List.of("No.", "Page", "Panel / circuit", "Field", "Reads", "Should read", "Severity and finding");

    private RedlineSummary() {}

    /**
     * At least one page; where the list is longer, the further ones go behind the drawing.
     *
     * @param remarks on how the copy was made
     * @param pages of the drawing that are in the file
     */
    static List<Canvas> of(Redline redline, Typeface typeface, Paper paper, List<String> remarks, int pages) {
        List<Canvas> made = new ArrayList<>();
        Flow flow = new Flow(
                () -> {
                    made.add(new Canvas(typeface, paper.width(), paper.height()));
                    return made.get(made.size() - 1);
                },
                MARGIN,
                MARGIN,
                FOOT);
        flow.text("MARKED DRAWING", Type.bold(8.5).in(Tint.SOFT)).skip(2);
        flow.text(redline.drawing(), Type.bold(17)).skip(1);
        flow.text(redline.building(), Type.plain(10)).skip(9);
        verdict(redline, flow);
        counts(redline, flow, pages);
        for (String remark : remarks) flow.text(remark, Type.plain(8.5));
        for (Problem problem : redline.problems()) flow.text("Not read: " + problem.inWords(), Type.bold(8.5));
        changes(redline, flow);
        for (int i = 0; i < made.size(); i++) foot(made.get(i), redline, i + 1, made.size());
        return made;
    }

    private static void verdict(Redline redline, Flow flow) {
        Standing standing = redline.verdict().map(v -> v.standing()).orElse(null);
        String title = standing == null
                ? "NO VERDICT: do not rely on it"
                : switch (standing) {
                    case FAILS -> "DO NOT USE FOR ISOLATION";
                    case UNPROVEN -> "NOT PROVEN FOR ISOLATION";
                    case AGREES -> "Agrees with the survey";
                };
        boolean filled = standing == Standing.FAILS;
        double high = 34;
        Canvas canvas = flow.canvas();
        if (filled) canvas.fill(flow.left(), flow.y(), flow.width(), high, Tint.RED);
        else canvas.box(flow.left() + 0.75, flow.y(), flow.width() - 1.5, high, new Pen(1.5, Tint.INK));
        canvas.text(title, flow.left() + 11, flow.y() + 23, Type.bold(18).in(filled ? Tint.WHITE : Tint.INK));
        flow.skip(high + 6);
        if (standing == null) flow.text("No equipment was read from this drawing.", Type.plain(9));
        redline.verdict().ifPresent(v -> {
            for (String reason : v.reasons()) flow.text(reason, Type.plain(9));
        });
        flow.text(Cautions.AGREES, Type.plain(8.5).in(Tint.SOFT)).skip(4);
    }

    private static void counts(Redline redline, Flow flow, int pages) {
        int marks = redline.marks().size();
        String where = pages == 0
                ? ""
                : " Page n of the drawing is page n + 1 of this file; " + pages + (pages == 1 ? " page" : " pages")
                        + ", unchanged under the marks.";
        flow.text(
                (marks == 0
                                ? "No entry is marked."
                                : marks + (marks == 1 ? " entry is clouded" : " entries are clouded")
                                        + " or noted; the number leads to the list below, each mark's comment and its"
                                        + " reply to the evidence.")
                        + where,
                Type.plain(9));
        flow.text(
                "SHA-256 of the drawing: " + redline.input().source().sha256(),
                Type.plain(7).in(Tint.SOFT));
    }

    private static void changes(Redline redline, Flow flow) {
        if (redline.marks().isEmpty()) return;
        flow.heading("What is to be changed", 40);
        List<List<String>> rows = new ArrayList<>();
        for (Mark mark : redline.marks()) for (Mark.Note note : mark.notes()) rows.add(row(mark, note));
        flow.table(WIDTHS, HEAD, rows, Type.plain(8));
    }

    private static List<String> row(Mark mark, Mark.Note note) {
        String field = note.correction().map(c -> c.field().word()).orElse("look first");
        String reads = note.correction()
                .map(Correction::reads)
                .orElseGet(() -> note.finding().drawn());
        return List.of(
                Integer.toString(mark.number()),
                Integer.toString(mark.page()),
                mark.at(),
                field,
                reads.isBlank() ? "(nothing)" : reads,
                note.correction()
                        .map(c -> c.shouldRead().isBlank() ? "(take out)" : c.shouldRead())
                        .orElseGet(note::beside),
                note.finding().severity().word() + " " + note.finding().id());
    }

    private static void foot(Canvas canvas, Redline redline, int number, int of) {
        double w = canvas.width() - 2 * MARGIN, y = canvas.height() - FOOT + 12;
        canvas.line(MARGIN, y, canvas.width() - MARGIN, y, Pen.HAIRLINE);
        Type small = Type.plain(7.2).in(Tint.SOFT);
        y = Paragraph.of(Cautions.WORK_AID + " " + Cautions.PARAGRAPH, small, w, canvas.typeface())
                .draw(canvas, MARGIN, y + 4);
        String more = of == 1
                ? "Made by asfound."
                : "Made by asfound. Summary page " + number + " of " + of
                        + (number == 1 ? "; the list goes on behind the drawing." : ", " + redline.drawing());
        canvas.text(more, MARGIN, y + 9, small);
    }
}
