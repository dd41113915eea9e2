package asfound.report.pdf;

import asfound.audit.Audit;
import asfound.report.Cautions;
import asfound.trust.Trace;
import java.util.List;
import java.util.Map;

/** Lays out the printed survey sheet: one band for each trace, what to look for on the left, what was seen on the right. */
final class SurveyPages {

    private static final double MARGIN = 34, TOP = 74, FOOT = 62;
    /** Left edges of the columns as shares of the width, and the right edge. */
    private static final double[] AT = {0, 0.033, 0.37, 0.56, 0.77, 0.85, 0.90, 1};

    private static final String[] HEAD = {
        "",
        "Device, and what the drawing says is there",
        "Relation seen",
        "Found at the other end (name, kind)",
        "Method",
        "Poles, A",
        "Note, photo"
    };
    private static final String[] RELATIONS = {"feeds", "fed by", "does not feed", "nothing", "no device"};
    private static final String[] METHODS = {"opened", "tone", "visual", "label"};

    private final Audit audit;
    private final SheetFile file;
    private final Paper paper;

    SurveyPages(Audit audit, SheetFile file, Paper paper) {
        this.audit = audit;
        this.file = file;
        this.paper = paper;
    }

    void draw(Map<String, List<Trace>> groups, int limit) {
        Flow flow = new Flow(this::page, MARGIN, TOP, FOOT);
        int planned = audit.plan().size(), shown = Math.min(limit, planned);
        flow.text(
                planned == 0
                        ? "Nothing is planned: every verdict is settled as far as the survey reaches."
                        : shown < planned
                                ? "The first " + shown + " of " + planned
                                        + " planned traces, grouped by place; the number" + " is the plan's order."
                                : "All " + planned
                                        + " planned traces, grouped by place; the number is the plan's order.",
                Type.plain(9));
        groups.forEach((place, traces) -> {
            flow.need(96);
            flow.skip(7);
            flow.text(place.isEmpty() ? "Place not known" : place, Type.bold(12))
                    .skip(1);
            head(flow);
            for (Trace trace : traces) {
                double high = height(flow, trace);
                if (flow.need(high)) {
                    flow.text((place.isEmpty() ? "Place not known" : place) + ", continued", Type.bold(12))
                            .skip(1);
                    head(flow);
                }
                band(flow, trace, high);
            }
        });
        List<Canvas> pages = file.pages();
        for (int i = 0; i < pages.size(); i++) frame(pages.get(i), i + 1, pages.size());
    }

    private Canvas page() {
        return file.lengthwise(paper);
    }

    private double x(Flow flow, int column) {
        return flow.left() + AT[column] * flow.width();
    }

    private void head(Flow flow) {
        for (int i = 0; i < HEAD.length; i++)
            flow.canvas()
                    .text(HEAD[i], x(flow, i) + 3, flow.y() + 7, Type.bold(7).in(Tint.SOFT));
        flow.skip(10);
        flow.canvas().line(flow.left(), flow.y(), flow.right(), flow.y(), Pen.FIRM);
    }

    private Paragraph left(Flow flow, String text, Type type) {
        return Paragraph.of(
                text, type, (AT[2] - AT[1]) * flow.width() - 8, flow.canvas().typeface());
    }

    private static String device(Trace t) {
        return t.circuit().isBlank() ? t.panel() : t.panel() + " / " + t.circuit();
    }

    private static String expected(Trace t) {
        return "drawn: " + (t.expect().isBlank() ? "nothing" : t.expect()) + ". Settled by: "
                + t.method().word() + ".";
    }

    private double height(Flow flow, Trace t) {
        return Math.max(
                52,
                left(flow, device(t), Type.bold(11)).height()
                        + left(flow, expected(t), Type.plain(8.5)).height()
                        + left(flow, t.why(), Type.plain(7.5)).height()
                        + 7);
    }

    private void band(Flow flow, Trace t, double high) {
        Canvas canvas = flow.canvas();
        double y = flow.y();
        canvas.text(
                Integer.toString(t.rank()), flow.left(), y + 13, Type.bold(10).in(Tint.SOFT));
        double at = left(flow, device(t), Type.bold(11)).draw(canvas, x(flow, 1), y + 2);
        at = left(flow, expected(t), Type.plain(8.5)).draw(canvas, x(flow, 1), at + 0.5);
        left(flow, t.why(), Type.plain(7.5).in(Tint.SOFT)).draw(canvas, x(flow, 1), at + 0.5);
        ticks(canvas, RELATIONS, x(flow, 2) + 3, y + 4, 2, (AT[3] - AT[2]) * flow.width() / 2);
        ticks(canvas, METHODS, x(flow, 4) + 3, y + 4, 1, 0);
        for (int column : new int[] {3, 5, 6})
            canvas.box(
                    x(flow, column) + 2,
                    y + 4,
                    x(flow, column + 1) - x(flow, column) - 4,
                    high - 8,
                    new Pen(0.7, Tint.INK));
        flow.skip(high);
        canvas.line(flow.left(), flow.y(), flow.right(), flow.y(), Pen.HAIRLINE);
    }

    private static void ticks(Canvas canvas, String[] words, double x, double y, int columns, double width) {
        for (int i = 0; i < words.length; i++) {
            double tx = x + i % columns * width, ty = y + i / columns * 11.5;
            canvas.box(tx, ty, 7.5, 7.5, new Pen(0.7, Tint.INK));
            canvas.text(words[i], tx + 11, ty + 6.8, Type.plain(8));
        }
    }

    private void frame(Canvas canvas, int number, int of) {
        double right = canvas.width() - MARGIN, w = right - MARGIN;
        canvas.text("SURVEY SHEET", MARGIN, 38, Type.bold(8.5).in(Tint.SOFT));
        canvas.text(audit.recordSet().building(), MARGIN, 57, Type.bold(17));
        String[] labels = {"By", "Date", "Tester or tracer"};
        double x = right - 420;
        for (String label : labels) {
            double text = canvas.typeface().width(label, Type.plain(8));
            canvas.text(label, x, 57, Type.plain(8));
            canvas.line(x + text + 5, 58, x + 130, 58, Pen.FINE);
            x += 145;
        }
        double y = canvas.height() - FOOT + 8;
        canvas.line(MARGIN, y, right, y, Pen.FINE);
        y = Paragraph.of(
                        "Write only what you saw; leave blank what you did not. A label that was read is no trace. "
                                + Cautions.WORK_AID + " " + Cautions.PARAGRAPH,
                        Type.plain(7.8),
                        w,
                        canvas.typeface())
                .draw(canvas, MARGIN, y + 3);
        canvas.textRight(
                (file.typeface().hasMissing() ? Provenance.MISSING + " " : "") + "Made by asfound. Page " + number
                        + " of " + of,
                right,
                canvas.height() - 18,
                Type.plain(7).in(Tint.SOFT));
    }
}
