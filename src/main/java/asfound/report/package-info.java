/** What each reader opens: data, page, marked drawings, workbook, cards, sheets, terminal. Nothing is decided here. */
package asfound.report;
