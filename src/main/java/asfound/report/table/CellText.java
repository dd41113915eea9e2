package asfound.report.table;

import java.util.regex.Pattern;

/** Text of a cell that no spreadsheet takes for a formula, and back. The rule is in the package's comment. */
public final class CellText {

    // OWASP, CSV injection: = + - @ tab, carriage return, line feed, and the full-width forms of the signs
    private static final Pattern RUNS = Pattern.compile("^ *[=+\\-@\\t\\r\\n\uFF1D\uFF0B\uFF0D\uFF20]");

    private CellText() {}

    public static String guarded(String text) {
        return text.startsWith("'") || RUNS.matcher(text).find() ? "'" + text : text;
    }

    public static String plain(String cell) {
        return cell.startsWith("'") ? cell.substring(1) : cell;
    }
}
