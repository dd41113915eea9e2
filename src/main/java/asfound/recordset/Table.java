package asfound.recordset;

import asfound.model.Place;
import java.util.List;

/**
 * A table with a header row.
 *
 * @param kind what its columns make it
 * @param sheet the sheet of a workbook; empty for a text table
 * @param columns our name of each column, an empty text where it is not known
 * @param headers the header cells as they stand
 * @param rows the rows below the header that are not blank
 */
public record Table(
        String file, String sheet, Source.Kind kind, List<String> columns, List<String> headers, List<GridRow> rows) {

    public boolean has(String column) {
        return columns.contains(column);
    }

    /** A cell's text, untouched; empty where the table has no such column. */
    public String cell(GridRow row, String column) {
        return row.cell(columns.indexOf(column));
    }

    public Place.InRow place(GridRow row) {
        return new Place.InRow(file, sheet, row.number());
    }
}
