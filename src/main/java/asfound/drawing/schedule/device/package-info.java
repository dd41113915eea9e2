/** Devices: the rows that are the poles of one, and what circuit they make. */
package asfound.drawing.schedule.device;
