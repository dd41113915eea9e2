package asfound.drawing.schedule.text;

import asfound.model.Box;

/**
 * What stands beside or below a label.
 *
 * @param weight how surely it belongs to the label: 3 after a colon, 2 in the cell beside or below, 1 in running text
 */
public record Value(Field field, String text, Box box, int weight) {}
