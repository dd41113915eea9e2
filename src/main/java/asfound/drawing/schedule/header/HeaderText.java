package asfound.drawing.schedule.header;

import asfound.drawing.schedule.text.Value;
import asfound.model.Box;
import asfound.model.Directory.Header;
import asfound.model.Directory.Totals;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/**
 * What stands around a directory about the panel as a whole.
 *
 * @param positions how many positions the panel is said to have
 * @param unread what stands behind a label and was not understood
 * @param labelled where its labels and their values stand
 */
public record HeaderText(Header header, Totals totals, OptionalInt positions, List<Value> unread, Set<Box> labelled) {

    /** With what stands around the further half of the directory, of what is not said around the first. */
    public HeaderText completed(HeaderText further) {
        List<Value> all = new ArrayList<>(unread);
        all.addAll(further.unread);
        Set<Box> both = new HashSet<>(labelled);
        both.addAll(further.labelled);
        return new HeaderText(
                header.completed(further.header),
                totals.equals(Totals.none()) ? further.totals : totals,
                positions.isPresent() ? positions : further.positions,
                all,
                both);
    }
}
