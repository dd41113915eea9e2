package asfound.drawing.schedule.phrase;

import java.util.regex.Pattern;

/**
 * Rows that part a directory and hold no entry: {@code RCD 1: 63 A 30 mA, ways 1 to 5} over the ways that it protects. They stand
 * alone on their line, across several columns.
 */
public final class SectionRows {

    private static final int WORDS = 4;
    private static final Pattern OF_WAYS = Pattern.compile(
            "(?i)(?:non[- ]?)?(?:RCD|RCCB)\\b(?:.*\\b(?:ways?|circuits?|ccts?|ckts?)\\s*\\d|[\\s.#]*\\d?\\s*[:–—-]\\s*\\d+\\s*A\\b).*");

    private SectionRows() {}

    /** It says over which rows it stands, and nothing else stands beside it. */
    public static boolean isOne(Phrase p, Phrases phrases) {
        if (p.words().size() < WORDS
                || !mayBegin(p.text())
                || !OF_WAYS.matcher(p.text()).matches()) return false;
        return phrases.near(p.centreY(), 0.4 * p.size()).stream()
                .noneMatch(o -> o != p && Math.abs(o.centreY() - p.centreY()) < 0.4 * p.size());
    }

    /** As {@code RCD} or {@code non-RCD} does: most rows are looked at no further. */
    private static boolean mayBegin(String text) {
        return "rRnN".indexOf(text.charAt(0)) >= 0;
    }
}
