package asfound.drawing.schedule.header;

import asfound.drawing.schedule.text.Value;
import asfound.model.Box;
import asfound.model.Directory.Header;
import asfound.model.Directory.Totals;
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
public record HeaderText(Header header, Totals totals, OptionalInt positions, List<Value> unread, Set<Box> labelled) {}
