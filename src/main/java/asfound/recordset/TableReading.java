package asfound.recordset;

import asfound.model.Problem;
import java.util.List;

/** The tables of a file, and what could not be read of them. */
public record TableReading(List<Table> tables, List<Problem> problems) {

    public TableReading {
        tables = List.copyOf(tables);
        problems = List.copyOf(problems);
    }

    /** How many rows the tables have together. */
    public int rows() {
        return tables.stream().mapToInt(t -> t.rows().size()).sum();
    }
}
