/** Tables: which columns belong to which positions, and which positions make one panel. */
package asfound.drawing.schedule.table;
