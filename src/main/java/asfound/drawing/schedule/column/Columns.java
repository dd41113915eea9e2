package asfound.drawing.schedule.column;

import java.util.List;

/**
 * The columns of the rows that hang on neighbouring spines.
 *
 * @param all from left to right
 * @param blanks how much blank stands before each, its headings and entries taken together
 * @param headTop where the column headings begin
 * @param top where the first row begins
 * @param ruled whether rules across the rows show how far the table reaches
 */
public record Columns(List<Column> all, List<Double> blanks, double headTop, double top, boolean ruled) {

    public Columns {
        all = List.copyOf(all);
        blanks = List.copyOf(blanks);
    }
}
