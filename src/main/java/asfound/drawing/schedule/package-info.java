/**
 * Panel schedules: a page becomes words and rulings, these become a reading (an explanation with a score), and the best
 * reading becomes a {@link asfound.model.Directory}.
 *
 * <p>{@code ScheduleReader} has a PDF opened and its pages read ({@code GuardedPdf}, {@code PdfReader}, {@code GuardedPage});
 * tables and worksheets are laid out as pages ({@code TableFileReader}, {@code GridSheet}). {@code SheetReader} reads either:
 *
 * <ol>
 *   <li>{@code TableFinder} finds the columns of position numbers ({@code SpineFinder}), the columns beside them ({@code
 *       ColumnFinder}) and which of these belong to which numbers ({@code Sides});
 *   <li>{@code PanelReader} finds the rows ({@code RowLattice}), puts what stands in the columns into them ({@code
 *       RowReader}) and joins them into devices ({@code Devices});
 *   <li>{@code Headers} reads what is said of the panel around its table;
 *   <li>{@code Leftovers} and {@code Reliability} say what was not understood and what speaks against the reading.
 * </ol>
 *
 * <p>When all pages are read, {@code Continuations} joins what goes on over the end of a page, and {@code Extent} looks
 * whether numbers are missing.
 */
package asfound.drawing.schedule;
