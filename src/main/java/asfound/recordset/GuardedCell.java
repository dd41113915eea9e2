package asfound.recordset;

import java.util.regex.Pattern;

/**
 * The apostrophe that keeps a spreadsheet from running a cell of a CSV file as a formula (OWASP's advice on CSV
 * injection). Our own tables are written with it; a table that comes back, filled in, is read without it.
 */
public final class GuardedCell {

    // = + - @ tab, carriage return, line feed, and the full-width forms of the signs; spaces before them counted out
    private static final Pattern RUNS = Pattern.compile("^ *[=+\\-@\\t\\r\\n\uFF1D\uFF0B\uFF0D\uFF20]");

    private GuardedCell() {}

    /** A text that is written with an apostrophe before it: a spreadsheet could run it, or it begins with one itself. */
    public static boolean isNeededFor(String text) {
        return text.startsWith("'") || RUNS.matcher(text).find();
    }

    /** The text of a cell: an apostrophe that guards is taken off, one that belongs to the text stays. */
    static String text(String cell) {
        return cell.startsWith("'") && isNeededFor(cell.substring(1)) ? cell.substring(1) : cell;
    }
}
