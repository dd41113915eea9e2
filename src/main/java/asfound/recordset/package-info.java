/**
 * A folder becomes a list of sources: what each file is, told from its content; its hash; the limits it is read within;
 * the user's settings; and every problem with its place. Files are opened read-only and never changed.
 */
package asfound.recordset;
