/** What stands together on a sheet, and what it means there: phrases, positions, titles, lines of a header. */
package asfound.drawing.schedule.phrase;
