package asfound.report.pdf;

/**
 * How a text is set.
 *
 * @param size in points
 */
record Type(double size, boolean bold, Tint tint) {

    static Type plain(double size) {
        return new Type(size, false, Tint.INK);
    }

    static Type bold(double size) {
        return new Type(size, true, Tint.INK);
    }

    Type in(Tint other) {
        return new Type(size, bold, other);
    }

    Type at(double otherSize) {
        return new Type(otherSize, bold, tint);
    }

    /** From baseline to baseline. */
    double leading() {
        return size * 1.22;
    }

    /** Height of a capital letter. */
    double cap() {
        return size * 0.67;
    }
}
