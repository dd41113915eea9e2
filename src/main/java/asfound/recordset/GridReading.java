package asfound.recordset;

import asfound.model.Problem;
import java.util.List;

/** The sheets of a file as raw cells, and what could not be read of them. */
public record GridReading(List<Grid> grids, List<Problem> problems) {

    public GridReading {
        grids = List.copyOf(grids);
        problems = List.copyOf(problems);
    }
}
