/** Sheets as a whole, and directories that go on from one to the next. */
package asfound.drawing.schedule.sheet;
