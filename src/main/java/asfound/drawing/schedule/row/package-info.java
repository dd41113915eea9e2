/** Rows: one for each position, with what stands in the columns. */
package asfound.drawing.schedule.row;
