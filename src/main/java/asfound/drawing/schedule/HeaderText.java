package asfound.drawing.schedule;

import asfound.model.Box;
import asfound.model.Directory.Header;
import asfound.model.Directory.Totals;
import java.util.Set;

/**
 * What stands around a directory about the panel as a whole.
 *
 * @param labelled where its labels and their values stand
 */
record HeaderText(Header header, Totals totals, Set<Box> labelled) {}
