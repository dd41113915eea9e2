/** Pages of a PDF, read side by side within their time, and what is said of those that could not be. */
package asfound.drawing.schedule.pdf;
