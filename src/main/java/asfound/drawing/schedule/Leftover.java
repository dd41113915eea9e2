package asfound.drawing.schedule;

import asfound.model.Box;

/** A text of a table, or beside it, that the reading does not explain. */
record Leftover(String text, Box box) {}
