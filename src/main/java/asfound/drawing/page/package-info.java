/**
 * What stands on a page before anyone explains it: words with their boxes, ruled lines and edges of shaded areas. A PDF
 * page and a sheet of a workbook become the same thing here, so that one way of reading serves both.
 */
package asfound.drawing.page;
