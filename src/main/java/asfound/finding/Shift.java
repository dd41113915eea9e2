package asfound.finding;

import java.util.List;

/**
 * One way in which a whole run of a panel's entries was displaced at once.
 *
 * @param manner what was done to the card
 * @param how in words: {@code stand one row above where they were traced}
 * @param moved the entries found exactly where this way puts them
 * @param devices all devices that it explains, in order of position
 */
record Shift(Manner manner, String how, List<Comparison> moved, List<Comparison> devices) {

    /** What happens to a card. */
    enum Manner {
        MOVED_ALONG,
        SIDES_EXCHANGED,
        NUMBERED_OTHERWISE
    }

    /** A run shorter than this is told entry by entry. */
    static final int RUN = 3;

    int hits() {
        return moved.size();
    }
}
