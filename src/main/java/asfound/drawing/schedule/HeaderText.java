package asfound.drawing.schedule;

import asfound.model.Directory.Header;
import asfound.model.Directory.Totals;

/** What stands around a directory about the panel as a whole. */
record HeaderText(Header header, Totals totals) {}
