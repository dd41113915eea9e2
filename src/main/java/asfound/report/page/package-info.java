/**
 * The report page: one file that opens anywhere, with nothing from outside it. What is shown comes from the audit; the
 * page works without its script, which only adds search, filters, zoom and the equipment's sheet at the side.
 */
package asfound.report.page;
