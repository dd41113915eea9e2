package asfound.report.pdf;

/**
 * A colour in device RGB, each part from 0 to 1. Every sheet must be understood in black and white: a tint may only
 * repeat what line, weight or word already says.
 */
record Tint(double r, double g, double b) {

    static final Tint INK = new Tint(0.09, 0.10, 0.12);
    static final Tint SOFT = new Tint(0.36, 0.38, 0.42);
    static final Tint HAIR = new Tint(0.72, 0.74, 0.77);
    static final Tint WASH = new Tint(0.945, 0.95, 0.955);
    static final Tint WHITE = new Tint(1, 1, 1);
    /** The drafter's red of a marked print. */
    static final Tint RED = new Tint(0.78, 0.05, 0.10);
}
