/**
 * What spreadsheets open: the correction list, the isolation verdicts and the traces to make, as CSV by RFC 4180 (UTF-8
 * without a mark, comma, CRLF) and the correction list as a workbook too.
 *
 * <p>Text of a drawing must never run as a formula. In CSV, a cell whose text begins with {@code = + - @}, a tab or a line
 * break (spaces before it counted out, full-width signs counted in) is written with an apostrophe before it, as OWASP's
 * advice on CSV injection has it; so is one that begins with an apostrophe. Whoever takes one leading apostrophe off a
 * cell that has one gets back exactly what stands on the drawing. In the workbook every such cell is typed as text, which
 * no spreadsheet runs, and holds the text itself.
 *
 * <p>A comment line would break readers of RFC 4180, so every row of CSV carries the caution in its last column: a row
 * that is copied out alone still has it.
 */
package asfound.report.table;
