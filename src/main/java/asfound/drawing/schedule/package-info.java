/**
 * Panel schedules: a page becomes words and rulings, these become a reading (an explanation with a score), and the best
 * reading becomes a {@link asfound.model.Directory}.
 *
 * <p>{@code ScheduleReader} has a PDF opened and its pages read (package {@code pdf}); tables and worksheets are laid out as
 * pages (package {@code cell}). {@code SheetReader} (package {@code sheet}) reads either. Each package below knows only those
 * before it:
 *
 * <ol>
 *   <li>{@code text}: what a text says by itself, and {@code phrase}: what stands together on a sheet;
 *   <li>{@code header}: what is said of the panel around its table;
 *   <li>{@code spine}: the columns of position numbers, {@code column}: the columns beside them, {@code table}: which of these
 *       belong to which numbers;
 *   <li>{@code row}: what stands in the columns beside each position, {@code device}: the rows joined into devices;
 *   <li>{@code doubt}: what was not understood and what speaks against the reading.
 * </ol>
 *
 * <p>When all pages are read, {@code Continuations} joins what goes on over the end of a page, and {@code Extent} looks
 * whether numbers are missing.
 */
package asfound.drawing.schedule;
