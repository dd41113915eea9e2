/** The columns beside the positions: how far they reach, where they are cut, what they tell. */
package asfound.drawing.schedule.column;
