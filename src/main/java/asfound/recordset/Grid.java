package asfound.recordset;

import asfound.model.Place;
import java.util.List;

/**
 * A sheet of raw cells: a whole text table, or one sheet of a workbook. Title rows and header blocks are rows like others.
 *
 * @param sheet the sheet's name; empty for a text table
 * @param rows the rows that are not blank, in order
 */
public record Grid(String file, String sheet, List<GridRow> rows) {

    public Place.InRow place(GridRow row) {
        return new Place.InRow(file, sheet, row.number());
    }
}
