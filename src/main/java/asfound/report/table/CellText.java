package asfound.report.table;

import asfound.recordset.GuardedCell;

/** Text of a cell that no spreadsheet takes for a formula, and back. The rule is in the package's comment. */
public final class CellText {

    private CellText() {}

    public static String guarded(String text) {
        return GuardedCell.isNeededFor(text) ? "'" + text : text;
    }

    public static String plain(String cell) {
        return cell.startsWith("'") ? cell.substring(1) : cell;
    }
}
