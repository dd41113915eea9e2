/** What the terminal shows: the summary that a tired person can read, and progress while they wait. */
package asfound.report.terminal;
