package asfound.report.table;

import java.util.List;

/**
 * A table before it is written: text as it stands, nothing escaped.
 *
 * @param columns the header
 * @param rows each as long as the header
 */
public record Rows(List<String> columns, List<List<String>> rows) {

    public Rows {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<String> row : rows)
            if (row.size() != columns.size())
                throw new IllegalArgumentException(row.size() + " cells under " + columns.size() + " columns");
    }
}
