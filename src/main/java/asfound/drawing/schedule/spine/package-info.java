/** Columns of position numbers, which the rows of a directory hang on. */
package asfound.drawing.schedule.spine;
