package asfound.drawing.schedule.row;

import asfound.model.Box;

/** A text of a table, or beside it, that the reading does not explain. */
public record Leftover(String text, Box box) {}
