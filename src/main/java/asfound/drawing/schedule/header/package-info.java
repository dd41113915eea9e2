/** What stands around a directory about its panel: labels and their values, names, ratings. */
package asfound.drawing.schedule.header;
