/**
 * The sheets that are printed or marked up: marked drawings, door cards, isolation sheets, survey sheets. Everything is
 * drawn with two embedded fonts on one small canvas, so that a sheet has the same bytes everywhere; nothing needs colour
 * to be understood.
 */
package asfound.report.pdf;
