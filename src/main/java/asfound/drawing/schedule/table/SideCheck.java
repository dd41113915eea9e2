package asfound.drawing.schedule.table;

import asfound.drawing.schedule.column.Column;
import asfound.drawing.schedule.phrase.Meanings;
import asfound.drawing.schedule.spine.Spine;
import asfound.drawing.schedule.text.Headings;
import asfound.drawing.schedule.text.Role;
import java.util.List;

/** Whether a column of numbers with what stands beside it is the side of a directory, or another list. */
final class SideCheck {

    private final Meanings meanings;

    SideCheck(Meanings meanings) {
        this.meanings = meanings;
    }

    /** In a list of several panels figures alone are no ratings: a list of rooms has its own. */
    private boolean isRated(Side side) {
        boolean listed = side.roles().containsKey(Role.PANEL);
        Column rating = side.roles().get(Role.RATING);
        boolean headed = rating != null && (!listed || meanings.weight(rating.heading(), Role.RATING) > 0);
        return headed || side.roles().containsKey(Role.DEVICE);
    }

    private boolean isHeadedDescription(Side side) {
        Column c = side.roles().get(Role.DESCRIPTION);
        return c != null && meanings.weight(c.heading(), Role.DESCRIPTION) > 0;
    }

    /** What stands beside the positions is what a directory says of them. */
    boolean isSide(Side side) {
        boolean described = side.roles().containsKey(Role.DESCRIPTION);
        boolean rated = isRated(side);
        if (!described && !rated) return false;
        if (side.spine().isNamed() && !(rated && isHeadedDescription(side))) return false;
        // places and figures under headings of another kind: a calculation, a list of rooms
        if (!rated && side.columns().size() > 2) {
            double says = meanings.weight(side.roles().get(Role.DESCRIPTION).heading(), Role.DESCRIPTION);
            if (says > 0 && says < 0.5) return false;
        }
        return side.spine().headed() ? side.quality() > 0.8 : described && rated && side.quality() > 1.8;
    }

    /**
     * A plain directory as it hangs in a panel's door: numbers and what they feed, with neither headings nor ratings. Odd
     * and even numbers that complete each other are no chance.
     */
    static boolean arePlainHalves(List<Side> sides) {
        if (sides.size() != 2) return false;
        Spine odd = sides.get(0).spine(), even = sides.get(1).spine();
        return odd.isOdd()
                && even.isEven()
                && odd.numbers().get(0) == 1
                && even.numbers().get(0) == 2
                && Math.min(odd.tokens().size(), even.tokens().size()) >= TableFinder.PLAIN_ROWS
                && Math.abs(odd.tokens().size() - even.tokens().size()) <= 1
                && odd.regular() > 0.9
                && even.regular() > 0.9
                && sides.stream().allMatch(s -> s.roles().containsKey(Role.DESCRIPTION))
                && sides.stream().flatMap(s -> s.columns().stream()).noneMatch(SideCheck::isOfOtherList);
    }

    /** Its heading is none that a directory has: {@code OUTLET}, {@code PORT}. */
    private static boolean isOfOtherList(Column c) {
        return !c.isBlank()
                && !c.heading().isEmpty()
                && c.heading().chars().allMatch(Character::isLetter)
                && Headings.weigh(c.heading()).isEmpty();
    }
}
