package asfound.report.pdf;

import asfound.report.pdf.CardEntry.State;
import java.util.List;

/** The signs for how far an entry can be believed: a full disc, an empty ring, a triangle with a bar. */
final class Sign {

    private Sign() {}

    static void draw(Canvas canvas, State state, double x, double y, double r) {
        switch (state) {
            case TRACED -> canvas.disc(x, y, r, Tint.INK);
            case DRAWN -> canvas.circle(x, y, r - 0.5, new Pen(1, Tint.INK));
            case DOUBTFUL -> {
                double h = r * 1.1;
                List<double[]> triangle = List.of(
                        new double[] {x, y - h}, new double[] {x + h, y + h * 0.85}, new double[] {x - h, y + h * 0.85
                        });
                canvas.polygon(triangle, Tint.INK);
                canvas.line(x, y - h * 0.25, x, y + h * 0.25, new Pen(r * 0.28, Tint.WHITE));
                canvas.disc(x, y + h * 0.55, r * 0.16, Tint.WHITE);
            }
        }
    }
}
