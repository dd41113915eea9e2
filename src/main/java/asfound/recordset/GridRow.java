package asfound.recordset;

import java.util.List;

/**
 * A row of raw cells.
 *
 * @param number the row's number as an editor (for text, of the line it begins on) or a spreadsheet shows it, from 1
 * @param cells the cells' text, untouched; a row may have fewer or more cells than others
 */
public record GridRow(int number, List<String> cells) {

    /** The text of a cell; empty where the row ends before it. */
    public String cell(int index) {
        return index >= 0 && index < cells.size() ? cells.get(index) : "";
    }

    public boolean isBlank() {
        for (String c : cells) if (!c.isBlank()) return false;
        return true;
    }
}
