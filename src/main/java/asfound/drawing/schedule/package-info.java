/**
 * Panel schedules: a page becomes words and rulings, these become a reading (an explanation with a score), and the best
 * reading becomes a {@link asfound.model.Directory}.
 */
package asfound.drawing.schedule;
