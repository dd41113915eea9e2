/** What a reading does not explain, and what speaks against it. */
package asfound.drawing.schedule.doubt;
