/** What was read from drawings, and nothing else: as JSON, as a table, and as pictures to check a reading by. */
package asfound.report.reading;
