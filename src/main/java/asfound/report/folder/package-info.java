/**
 * A report is written whole or not at all.
 *
 * <p>Everything is first written and forced to disk in a working folder beside the report ({@code .NAME.asfound}), then
 * put in place by renames:
 *
 * <pre>
 *   NAME                  -> .NAME.asfound/earlier     (1)
 *   .NAME.asfound/stage   -> NAME                      (2)
 *   .NAME.asfound/earlier -> .NAME.asfound/discard     (3) then deleted
 * </pre>
 *
 * <p>A folder cannot be exchanged for another in one step on every system, so between (1) and (2), some microseconds, the
 * report is not under its name. A run that is killed there leaves it whole in the working folder, and the next command
 * that is given the folder puts it back ({@link asfound.report.folder.OutputFolder#recover}). A run killed anywhere else
 * leaves either the earlier or the new report whole under its name; never a mixture. The lock in the working folder is
 * the operating system's: it ends with the process that holds it.
 *
 * <p>Only a folder that is missing, empty or a report of ours is written to. A report in which anything was changed or
 * added by hand is not deleted: it is kept beside the new one as {@code NAME-kept-1}.
 */
package asfound.report.folder;
