package asfound.report.pdf;

import java.util.Locale;
import java.util.Optional;

/** The two papers of an office printer, upright, in points. */
public enum Paper {
    LETTER(612, 792),
    A4(595.28, 841.89);

    private final double width;
    private final double height;

    Paper(double width, double height) {
        this.width = width;
        this.height = height;
    }

    public double width() {
        return width;
    }

    public double height() {
        return height;
    }

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The paper of that name; empty where it is neither. */
    public static Optional<Paper> of(String word) {
        for (Paper paper : values()) if (paper.word().equalsIgnoreCase(word.strip())) return Optional.of(paper);
        return Optional.empty();
    }

    /** The paper that suits a drawing of this size: A4 where its sides are in the ratio of the ISO A series. */
    static Paper like(double w, double h) {
        double ratio = Math.max(w, h) / Math.max(1, Math.min(w, h));
        return Math.abs(ratio - Math.sqrt(2)) < 0.01 ? A4 : LETTER;
    }
}
