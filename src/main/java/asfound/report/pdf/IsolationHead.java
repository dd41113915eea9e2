package asfound.report.pdf;

import asfound.isolation.Verdict;
import asfound.isolation.Verdict.Standing;
import asfound.network.Equipment;

/** The head of an isolation sheet: whose it is, the verdict in the largest type, and why. */
record IsolationHead(Flow flow, Equipment equipment, Verdict verdict, String building) {

    void draw() {
        head();
        banner();
        flow.text(verdict.reason(), Type.bold(11)).skip(3);
        if (!verdict.path().isEmpty())
            flow.text(
                    (verdict.standing() == Standing.FAILS ? "Stays live by: " : "May stay live by: ")
                            + String.join("  >  ", verdict.path()),
                    Type.plain(9.5));
    }

    private void head() {
        double y = flow.y();
        flow.text("ISOLATION SHEET", Type.bold(8.5).in(Tint.SOFT)).skip(1);
        flow.text(equipment.name(), Type.bold(20));
        flow.canvas()
                .textRight(
                        "verdict: " + verdict.standing().word(),
                        flow.right(),
                        y + 8,
                        Type.bold(8.5).in(Tint.SOFT));
        String kind = equipment.kind().word().isEmpty() ? "" : equipment.kind().word() + ", ";
        String also =
                equipment.alsoWritten().isEmpty() ? "" : "; also written " + String.join(", ", equipment.alsoWritten());
        String about = kind + building + also;
        Type type = Type.plain(9.5);
        double beside = flow.width() - flow.canvas().typeface().width(equipment.name(), Type.bold(20)) - 20;
        if (isLengthwise() && flow.canvas().typeface().width(about, type) < beside)
            flow.canvas().textRight(about, flow.right(), flow.y() - 6, type);
        else flow.text(about, type);
        flow.skip(6);
    }

    private boolean isLengthwise() {
        return flow.width() > 650;
    }

    private void banner() {
        Canvas canvas = flow.canvas();
        double x = flow.left(), y = flow.y(), w = flow.width();
        if (verdict.standing() == Standing.AGREES) {
            canvas.box(x + 0.75, y, w - 1.5, 40, new Pen(1.5, Tint.INK));
            canvas.text("Drawing and survey agree", x + 12, y + 18, Type.bold(15));
            canvas.text("It never means that the equipment is safe or dead. Test.", x + 12, y + 32, Type.plain(9.5));
            flow.skip(46);
            return;
        }
        boolean fails = verdict.standing() == Standing.FAILS;
        boolean oneLine = isLengthwise();
        double high = oneLine ? 40 : 78;
        Tint ground = fails ? Tint.INK : Tint.WHITE, text = fails ? Tint.WHITE : Tint.INK;
        canvas.fill(x, y, w, high, ground);
        canvas.box(x + 1.5, y + 1.5, w - 3, high - 3, new Pen(3, Tint.INK));
        if (oneLine) {
            canvas.text(
                    "THE DRAWING MAY NOT BE USED FOR ISOLATION",
                    x + 14,
                    y + 31,
                    Type.bold(23).in(text));
        } else {
            canvas.text("THE DRAWING MAY NOT BE", x + 14, y + 32, Type.bold(28).in(text));
            canvas.text("USED FOR ISOLATION", x + 14, y + 63, Type.bold(28).in(text));
        }
        String why = fails ? "It fails." : "It is unproven.";
        canvas.textRight(
                why, x + w - 14, y + high - (oneLine ? 13 : 16), Type.bold(12).in(text));
        flow.skip(high + 7);
    }
}
