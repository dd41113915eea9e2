/**
 * What came of the corrections: an earlier and a later {@code audit.json} compared. Findings are the same by kind and
 * place, never by wording. A finding that is gone counts as corrected only where the later audit still looked: where its
 * drawing or its trace is missing there, it is said to be no longer seen.
 */
package asfound.report.since;
