/** What texts of a schedule say by themselves, wherever they stand: ratings, loads, names, labels, headings. */
package asfound.drawing.schedule.text;
