/** Worksheets and text tables, laid out as sheets: what only cells have, and pages have not. */
package asfound.drawing.schedule.cell;
