package asfound.report.pdf;

/**
 * How a line is drawn.
 *
 * @param width in points
 * @param dashes lengths of dash and gap in points; none for a solid line
 */
record Pen(double width, Tint tint, double... dashes) {

    static final Pen HAIRLINE = new Pen(0.4, Tint.HAIR);
    static final Pen FINE = new Pen(0.6, Tint.INK);
    static final Pen FIRM = new Pen(1.2, Tint.INK);
}
